package buildup.engine.hold.framing;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What there is to nail to along the plan.
 *
 * @param landings one for each row that needs framing, on each stick
 * @param proposed the same for the best row that could be driven into each piece
 * @param blocks behind sprung moldings
 */
public record Framed(List<Landing> landings, List<Landing> proposed, List<BackingBlock> blocks) {
    public Framed {
        landings = List.copyOf(landings);
        proposed = List.copyOf(proposed);
        blocks = List.copyOf(blocks);
    }

    /** Asks for the rows of the document, for those that were proposed, and for blocks; says which rows miss. */
    public static Framed of(
            Section section, List<Fixed> fixed, List<Proposal> proposals, Optional<Job> job, Notices notices) {
        List<Fixed> best = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        proposals.stream()
                .map(Proposal::fixed)
                .filter(one -> seen.add(one.piece()))
                .forEach(best::add);
        return new Framed(
                Landings.of(section, fixed, job, notices),
                Landings.of(section, best, job, new Notices()),
                Blocking.of(section, job));
    }
}

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

    /**
     * Asks for rows that were proposed, and for blocks.
     *
     * @param landings of the rows of the document
     */
    public static Framed of(Section section, List<Landing> landings, List<Proposal> proposals, Optional<Job> job) {
        List<Fixed> best = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        proposals.stream()
                .map(Proposal::fixed)
                .filter(one -> seen.add(one.piece()))
                .forEach(best::add);
        return new Framed(
                landings,
                Landings.of(section, best, job, new Notices()),
                Blocking.of(section, job).stream().map(BackingBlock::cut).toList());
    }
}

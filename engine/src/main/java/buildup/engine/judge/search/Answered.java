package buildup.engine.judge.search;

import buildup.engine.judge.must.MustResult;
import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * A stack that a search proposes.
 *
 * @param candidate its sizes, and how it stands to the goal
 * @param changes what differs from today's
 * @param faults what is wrong with it and not with today's
 * @param wished for each wish, what it has of the figure; absent for a wish without one; empty where nothing is wished or
 *     it is not built
 */
public record Answered(
        Candidate candidate, List<SizeChange> changes, List<Phrase> faults, List<Optional<MustResult>> wished) {
    /** Copies the lists. */
    public Answered {
        changes = List.copyOf(changes);
        faults = List.copyOf(faults);
        wished = List.copyOf(wished);
    }
}

package buildup.engine.judge.search;

import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * A stack that a search proposes.
 *
 * @param candidate its sizes, and how it stands to the goal
 * @param changes what differs from today's
 * @param faults what is wrong with it and not with today's
 */
public record Answered(Candidate candidate, List<SizeChange> changes, List<Phrase> faults) {
    /** Copies the lists. */
    public Answered {
        changes = List.copyOf(changes);
        faults = List.copyOf(faults);
    }
}

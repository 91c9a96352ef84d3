package buildup.engine.judge.search;

import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * A stack that was tried and could not be put together: it is no stack that fails a line.
 *
 * @param changes what differs from today's stack
 * @param why the first thing that is refused in it
 */
public record Unbuilt(List<SizeChange> changes, Phrase why) {
    /** Copies the list. */
    public Unbuilt {
        changes = List.copyOf(changes);
    }
}

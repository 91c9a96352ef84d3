package buildup.cli.watch;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;

/** What the page that follows has to say of itself. */
public final class WatchNotices {
    private static final Code WENT_WRONG = Code.of("went-wrong", "The program has a fault of its own.");
    private static final Kind FAULT_INSIDE = WENT_WRONG.refusal(
            "Something went wrong inside: {fault}.",
            "Take the last change back, or go on: the next save is another try.");

    private WatchNotices() {}

    /** What a save led to that should never happen. */
    public static Notice fault(Throwable fault) {
        return FAULT_INSIDE.with("fault", fault.toString());
    }
}

package buildup.engine.hold.backing;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the search for backing gives cause to say. */
final class BackingNotices {
    private static final Code NO_BACKING =
            Code.of("no-backing", "A piece of trim has nothing behind, above or below it to nail into.");
    static final Kind NOTHING_BEHIND = NO_BACKING.problem(
            "'{piece}' has no nailer or framing within {reach} of it to nail into.",
            "Add a nailer behind, above or below it.");

    private BackingNotices() {}
}

package buildup.engine.hold.backing;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the search for backing gives cause to say. */
final class BackingNotices {
    private static final Code NO_BACKING =
            Code.of("no-backing", "A piece of trim has nothing behind, above or below it to nail into.");
    static final Kind NOTHING_BEHIND =
            NO_BACKING.problem("'{piece}' has no nailer or framing within {reach} of it to nail into.", "");

    /** In place of the cure where nothing is near to pin it to, and nothing that stands to nail a block to. */
    static final Phrase NOTHING_NEAR = Phrase.of(
            "None of the changes tried cures this: it can be pinned to no trim that is held, and nothing that stands is near enough for a"
                    + " block.");

    private BackingNotices() {}
}

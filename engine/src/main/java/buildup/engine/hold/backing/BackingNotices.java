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

    /** The same of what lies flat against wood that no nail square to its faces meets: the front edge of a lid is too far from it. */
    static final Kind NOT_SQUARE =
            NO_BACKING.problem("No nail square to a face of '{piece}' goes into {target}, which it lies against.", "");

    /** In place of the cure where nothing is near to pin it to, and nothing that stands to nail a block to. */
    static final Phrase NOTHING_NEAR = Phrase.of(
            "None of the changes tried cures this: it can be pinned to no trim that is held, and no block fits between it"
                    + " and what stands.");

    /** The same where a nail would hold it, and something leaves the tool no room. */
    static final Phrase NO_ROOM_FOR_THE_TOOL = Phrase.of(
            "None of the changes tried cures this: it could be pinned to trim that is held, but {bodies} {leave} no tool"
                    + " of the list room.");

    private BackingNotices() {}
}

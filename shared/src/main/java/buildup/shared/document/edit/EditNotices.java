package buildup.shared.document.edit;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What can be said of an edit that cannot be done. */
final class EditNotices {
    static final Code UNKNOWN_PLACE =
            Code.of("unknown-place", "An edit names a place that the document does not have.");

    static final Kind NO_PLACE = UNKNOWN_PLACE.refusal("No place is named.", "Name one, as frieze.profile.");

    static final Kind NOTHING_CALLED = UNKNOWN_PLACE.refusal("Nothing {where} is called '{asked}'.", "{nearest}");

    static final Kind NOTHING_BELOW = UNKNOWN_PLACE.refusal(
            "'{where}' holds one value, so there is no '{asked}' in it.", "Name '{where}' itself.");

    static final Kind NO_ENTRY =
            UNKNOWN_PLACE.refusal("'{where}' holds {count}, so there is no number {asked}.", "Count from 1.");

    static final Code AMBIGUOUS_PLACE = Code.of("ambiguous-place", "An edit names a place that may be one or another.");

    static final Kind AMBIGUOUS = AMBIGUOUS_PLACE.refusal(
            "'{place}' may be the piece '{name}' or the key '{name}'.",
            "Write pieces.{place} for the piece; to reach the key, give the piece another name first.");

    static final Kind SAME_NAME = AMBIGUOUS_PLACE.refusal(
            "{count} entries of '{where}' are called '{name}'.", "Take the number of the one you mean, as {example}.");

    static final Kind TWICE_NAMED = AMBIGUOUS_PLACE.refusal(
            "Several entries of '{where}' are called '{name}'.", "Set the name of one of them by its number first.");

    static final Code REPEATED =
            Code.of("repeated-elsewhere", "An edit would change a part that is repeated elsewhere.");

    static final Kind SHOWS_ELSEWHERE = REPEATED.refusal(
            "'{place}' is marked '&{mark}' or lies in what is, and '*{mark}' repeats it: the change would show there too.",
            "Write it out where it is repeated, then change it.");

    static final Code NOT_A_LIST = Code.of("not-a-list", "An entry was to be put into something that is not a list.");

    static final Kind NO_LIST =
            NOT_A_LIST.refusal("'{place}' is not a list, so no entry can be put into it.", "Name a list, as pieces.");

    static final Code NOT_A_VALUE = Code.of("not-a-value", "What was to be put into a document is not a single value.");

    static final Kind NO_VALUE = NOT_A_VALUE.refusal(
            "'{source}' is not one value in YAML.", "Write one value, or a list in [ ] or keys in {{ } in one line.");

    static final Code BY_HAND = Code.of("edit-by-hand", "A part is written in a way that only a person can change.");

    static final Kind ODD_FORM = BY_HAND.refusal(
            "What stands round '{place}' is written with '?', under '|+' or without braces of its own.",
            "Change it by hand.");

    static final Kind BROKEN =
            BY_HAND.refusal("After this change the file could not be read any more.", "Change it by hand.");

    static final Code NEW_NAME = Code.of("unusable-new-name", "The name that something was to get cannot be given.");

    static final Kind NAME_TAKEN =
            NEW_NAME.refusal("There is a {kind} called '{name}' already.", "Take a name that is free.");

    static final Kind NAME_BLANK = NEW_NAME.refusal("The new name of '{name}' is blank.", "Give it a name.");

    static final Code LAYOUT =
            Code.of("layout-by-hand", "A document cannot be laid out without changing what it says.");

    static final Kind WOULD_CHANGE = LAYOUT.refusal(
            "The document is written in a way that cannot be laid out without changing what it says.",
            "Lay it out by hand.");

    private EditNotices() {}
}

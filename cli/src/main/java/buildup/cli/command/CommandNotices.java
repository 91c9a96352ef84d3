package buildup.cli.command;

import buildup.shared.document.DocumentCodes;
import buildup.shared.notice.Kind;

/** What commands have to say of their own words and files. */
final class CommandNotices {
    static final Kind UNUSABLE_NAME = DocumentCodes.UNUSABLE_NAME.refusal(
            "'{name}' cannot name a profile.", "Take small letters, digits and hyphens.");
    static final Kind UNKNOWN_UNIT =
            DocumentCodes.UNKNOWN_NAME.refusal("There is no unit '{word}'.", "Take in, mm, cm or ft.");
    static final Kind NO_SIZE = DocumentCodes.NOT_A_SIZE.refusal(
            "{option} must be more than nothing, not {text}.", "Give it a size, or leave it out.");
    static final Kind UNKNOWN_KIND = DocumentCodes.UNKNOWN_NAME.note("No profile of the catalog is a '{kind}'.", "");

    private CommandNotices() {}
}

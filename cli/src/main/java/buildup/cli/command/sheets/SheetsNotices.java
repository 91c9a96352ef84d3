package buildup.cli.command.sheets;

import buildup.cli.command.files.FileNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.notice.Kind;

/** What the command has to say of its own words. */
final class SheetsNotices {
    static final Kind UNKNOWN_SHEET = DocumentCodes.UNKNOWN_NAME.refusal("No sheet is called '{name}'.", "");
    static final Kind EMPTY_SHEET = DocumentCodes.MISSING_KEY.note(
            "The stack holds nothing for the sheet '{name}'.", "Leave it out of --only.");
    static final Kind NO_SHEET = DocumentCodes.MISSING_KEY.refusal(
            "The stack holds nothing for any of the sheets asked for.", "Leave --only out.");

    static final Kind NO_SHEETS_ENDING = FileNotices.UNKNOWN_FORMAT.refusal(
            "The ending of {file} names no kind of file that sheets are written to.",
            "Let it end in .pdf, .html or .zip, or give a folder/.");

    private SheetsNotices() {}
}

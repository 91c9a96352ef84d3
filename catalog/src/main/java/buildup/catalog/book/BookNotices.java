package buildup.catalog.book;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Kind;

/** What a list of orders and proportions gives cause to say. */
final class BookNotices {
    static final Phrase A_BOOK = Phrase.of("author and title");

    static final Kind NO_PARTS = DocumentCodes.MISSING_KEY.refusal(
            "'{piece}' has no parts.", "Add 'parts: {{ architrave: 1/2, frieze: 3/4, cornice: 3/4 }'.");

    static final Kind NO_NUMBER = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not a number for '{key}' of '{piece}'.", "Write it as 3/4, 1-1/4 or 0.675, above 0.");

    static final Kind NO_SHARE = DocumentCodes.MISSING_KEY.refusal(
            "'{piece}' says neither the least nor the most.", "Add 'least: 1/30', 'most: 1/20' or both.");

    static final Kind NO_WORD =
            DocumentCodes.UNKNOWN_NAME.refusal("'{text}' is not a '{key}' of '{piece}'.", "Write one of {words}.");

    private BookNotices() {}
}

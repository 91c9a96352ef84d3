package buildup.cli.command.search;

import buildup.shared.document.DocumentCodes;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What there is to say of sizes that the command line leaves free. */
final class FreedNotices {
    static final Kind NOT_FREED = Code.of(
                    "not-freed", "A word of the command line should name a place and its choices.")
            .refusal(
                    "'{words}' does not say which size is free.",
                    "Write 'PLACE=CHOICES', as 'sizes.lip=between 1/8 and 1 by 1/16'.");

    static final Kind NO_SUCH_SIZE = DocumentCodes.UNKNOWN_NAME.refusal(
            "No size of the stack is called '{name}': there is nothing to leave free.", "{nearest}");

    static final Kind TOO_FEW = DocumentCodes.NOT_A_NUMBER.refusal(
            "A search cannot have {option} {count}.", "Give {option} 1 or more, or leave it out.");

    static final Kind CATALOG_AGAIN = Code.of(
                    "answers-want-catalog", "The answers of a search want lists that were given on the command line.")
            .note("The answers in {folder} want the lists that --catalog gave.", "Give them with --catalog again.");

    private FreedNotices() {}
}

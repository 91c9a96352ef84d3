package buildup.cli.command.search;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What there is to say of sizes that the command line leaves free. */
final class FreedNotices {
    static final Kind NOT_FREED = Code.of(
                    "not-freed", "A word of the command line should name a place and its choices.")
            .refusal(
                    "'{words}' does not say which size is free.",
                    "Write 'PLACE=CHOICES', as 'sizes.lip=between 1/8 and 1 by 1/16'.");

    private FreedNotices() {}
}

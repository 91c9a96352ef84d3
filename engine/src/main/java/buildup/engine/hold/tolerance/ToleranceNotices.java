package buildup.engine.hold.tolerance;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the saw's error gives cause to say. */
final class ToleranceNotices {
    static final Kind UNKNOWN_SHAPE = DocumentCodes.UNKNOWN_NAME.refusal(
            "No spread of errors is called '{word}'.",
            "Write uniform (each as likely) or normal (most near the middle).");

    static final Kind NOT_A_COUNT = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{text}' is not a number for '{key}'.", "Write a whole number from 1 to {most}.");

    static final Kind NOT_A_LEAN = DocumentCodes.NOT_A_SIZE.refusal(
            "A wall cannot lean that far.", "Write how far over what height, as 'plumb: {{ out: 1/4, over: 32 }'.");

    static final Kind NOT_A_LEVEL = DocumentCodes.NOT_A_SIZE.refusal(
            "A ceiling cannot stray by less than 0.", "Write plus and minus, as 'ceiling: 1/4'.");

    /** {@code limit}: a phrase; {@code chance}: share of the builds. */
    static final Kind ADDS_UP = Code.of(
                    "error-adds-up", "The errors of sizes add up, so that a figure fails in too many builds.")
            .problem("The {figure}, {drawn} as drawn, comes out {limit} in {chance} of builds.", "");

    static final Phrase UNDER = Phrase.of("under {least}");
    static final Phrase OVER = Phrase.of("over {most}");
    static final Phrase BESIDE = Phrase.of("under {least} or over {most}");

    static final Phrase HOLD = Phrase.of("Hold the {sizes} to {to}: then {chance} of builds are right.");
    static final Phrase ADJUST = Phrase.of(
            "Leave '{piece}' wide and rip it on site until its {edge} sits at {at}: then {chance} of builds are right.");
    static final Phrase NO_LONGER = Phrase.of("Drive it where it goes through less before it bites.");
    static final Phrase MORE_ROOM = Phrase.of("Leave {more} more as drawn.");

    private ToleranceNotices() {}
}

package buildup.engine.hold.framing;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What studs and joists give cause to say. */
final class FramingNotices {
    private static final Code MISSES_CODE =
            Code.of("misses-the-framing", "Nails or screws of a row go between the studs or joists.");
    static final Kind MISSES = MISSES_CODE.problem(
            "'{piece}' on '{stretch}': row '{row}' misses the {framing} in {misses} of {of} places, at {places}{more}.",
            "");
    static final Phrase SET_OUT = Phrase.of("Set it out with 'first: {first}' and 'spacing: {spacing}'.");
    static final Phrase SPACE = Phrase.of("Set it out with 'spacing: {spacing}'; each stretch then begins on a stud.");
    static final Phrase FREE =
            Phrase.of("Set it out with 'first: 0' and 'spacing: {spacing}'; each stretch then begins on a stud.");
    static final Phrase SET_OUT_ROWS = Phrase.of("Set out {rows}.");
    static final Phrase FREE_ROWS = Phrase.of("Set out {rows}; each stretch then begins on a stud.");
    static final Phrase SET_OUT_ROW = Phrase.of("'{row}' with 'first: {first}' and 'spacing: {spacing}'");
    static final Phrase LEAVE_OUT = Phrase.of("Set it out with 'first: {first}' and 'spacing: {spacing}'; or leave"
            + " 'first:' out, and each stretch is set out by itself.");
    static final Phrase BLOCK_BETWEEN = Phrase.of("Add blocking between them, or nail where they are.");
    static final Kind BETWEEN_JOISTS = MISSES_CODE.problem(
            "'{piece}' on '{stretch}': row '{row}' goes in {amount} beside the joists, which run along the wall.", "");
    static final Phrase FARTHER_OUT = Phrase.of("Nail it {by} farther out, at {to}.");
    static final Phrase NEARER_TO_THE_WALL = Phrase.of("Nail it {by} nearer to the wall, at {to}.");
    static final Phrase BLOCK_JOISTS = Phrase.of("Add blocking between the joists.");
    static final Phrase BLOCK_JOISTS_OR_WALL = Phrase.of("Add blocking between the joists, or nail into the wall.");

    static final Kind SAID_TWICE = Code.of(
                    "framing-said-twice",
                    "Studs of a plan are not counted, since the nails go into framing that is given as a piece.")
            .note(
                    "{rows} {go} into '{framing}', which is given as a piece and counts all along the run: 'studs:' of the"
                            + " plan does not count for {them}.",
                    "Take '{framing}' out if it stands for those studs; else leave it so.");

    private static final Code SHORT_CODE = Code.of(
            "short-bite-in-joist", "Nails or screws of a row go less far into a joist than the rule of thumb asks.");
    static final Kind SHORT_IN_JOISTS = SHORT_CODE.note(
            "'{piece}' on '{stretch}': row '{row}' goes {bite} into the joists; 12 diameters of a nail, or 6 of a screw, are"
                    + " {wanted} (rule of thumb).",
            "");
    static final Phrase LONGER = Phrase.of("Take {use}.");
    static final Phrase LONGER_OR_WALL = Phrase.of("Take {use}, or nail into the wall.");
    static final Phrase INTO_THE_WALL = Phrase.of("Nail into the wall.");
    static final Phrase OTHERWISE =
            Phrase.of("Drive it straight into the middle of the joist, or take a fastener that is sold longer.");

    private FramingNotices() {}
}

package buildup.shared.document;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.LengthReader;
import buildup.shared.length.Reading;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Suggestion;

/** What is to be said of a size that cannot be read, or that could have been meant otherwise. */
public final class SizeNotices {
    private static final Code FRACTION_MISTYPED =
            Code.of("fraction-mistyped", "The denominator of a fraction stands on no tape.");
    private static final Code AMBIGUOUS = Code.of(
            "ambiguous",
            "A size can be read in two ways. If one is in inches and one metric, it is asked; else it is noted.");
    private static final Code MIXED_MARKS =
            Code.of("mixed-marks", "A bare number behind feet has been taken as inches.");
    private static final Code TRAILING_MARK =
            Code.of("trailing-mark", "The + or - behind a printed size has been dropped.");
    private static final Code READING_ECHO =
            Code.of("reading-echo", "A comma in a size has been taken as its decimal point.");

    private static final Phrase HOW_TO_WRITE = Phrase.of("Write it as 3/4, 1-3/8, 5'-6 1/2\", 38 mm or 0.75.");
    private static final Phrase HOW_TO_WRITE_METRIC = Phrase.of("Write it as 38, 38 mm, 3.8 cm or 1-1/2 in.");
    private static final Phrase FRACTION_MEANT = Phrase.of("Meant {fraction}?");
    private static final Phrase AS_A_DECIMAL = Phrase.of("Write it as a decimal.");

    private static final Kind NOTHING = DocumentCodes.NOT_A_LENGTH.refusal("No length is given.", "");
    private static final Kind LONG_TEXT =
            DocumentCodes.NOT_A_LENGTH.refusal("A text of {letters} characters is not a length.", "");
    private static final Kind NO_SIZE = DocumentCodes.NOT_A_LENGTH.refusal("'{text}' is not a length.", "");
    private static final Kind ENDS_IN_A_SIGN =
            DocumentCodes.NOT_A_LENGTH.refusal("'{text}' ends in a sign with nothing behind it.", "");
    private static final Kind DIVIDES_BY_ZERO = DocumentCodes.NOT_A_LENGTH.refusal("'{text}' divides by zero.", "");
    private static final Kind BEYOND_ANY_BUILDING =
            DocumentCodes.NOT_A_LENGTH.refusal("'{text}' is longer than {most}.", "Check the figure and its unit.");
    private static final Kind NO_SHOP_FRACTION = FRACTION_MISTYPED.refusal(
            "{text} is not a shop fraction (halves, quarters, 8ths, 16ths, 32nds, 64ths).", "");
    private static final Kind INCHES_OR_METRIC =
            AMBIGUOUS.refusal("{text} in or {unit}?", "Write {text} in, or {decimal} {unit}.");
    private static final Kind UNKNOWN_NAME = DocumentCodes.UNKNOWN_NAME.refusal("No length is called '{text}'.", "");

    private static final Kind SLIP = AMBIGUOUS.note("{text} read as {size}: is that meant?", "");
    private static final Kind BARE_INCHES = MIXED_MARKS.note("{text} read as {size}.", "");
    private static final Kind MARK_DROPPED =
            TRAILING_MARK.note("{text} read as {size}: the mark behind a printed size was dropped.", "");
    private static final Kind COMMA = READING_ECHO.note("{text} read as {size}.", "");

    private SizeNotices() {}

    /** Why a text is no length: a refusal. */
    public static Notice of(Reading.Bad bad) {
        return switch (bad.fault()) {
            case NOTHING -> NOTHING.notice().cure(howToWrite(bad));
            case LONG_TEXT ->
                LONG_TEXT.with("letters", Figure.count(bad.written().length())).cure(howToWrite(bad));
            case NO_SIZE -> NO_SIZE.with("text", bad.written()).cure(howToWrite(bad));
            case ENDS_IN_A_SIGN -> ENDS_IN_A_SIGN.with("text", bad.written()).cure(howToWrite(bad));
            case DIVIDES_BY_ZERO -> DIVIDES_BY_ZERO.with("text", bad.written()).cure(howToWrite(bad));
            case BEYOND_ANY_BUILDING ->
                BEYOND_ANY_BUILDING
                        .with("text", bad.written())
                        .with(
                                "most",
                                Figure.of(Quantity.RUN, LengthReader.GREATEST.toInches() / 12)
                                        .rounded(Rounding.decimals(0)));
            case NO_SHOP_FRACTION ->
                NO_SHOP_FRACTION
                        .with("text", bad.written())
                        .cure(bad.names().stream()
                                .findFirst()
                                .map(meant -> FRACTION_MEANT.with("fraction", meant))
                                .orElse(AS_A_DECIMAL));
            case INCHES_OR_METRIC ->
                INCHES_OR_METRIC
                        .with("text", bad.written())
                        .with("unit", bad.bareUnit().symbol())
                        .with("decimal", String.join("", bad.names()));
            case UNKNOWN_NAME ->
                UNKNOWN_NAME
                        .with("text", bad.written())
                        .cure(bad.names().isEmpty() ? howToWrite(bad) : Suggestion.phrase(bad.written(), bad.names()));
        };
    }

    private static Phrase howToWrite(Reading.Bad bad) {
        return bad.bareUnit().isMetric() ? HOW_TO_WRITE_METRIC : HOW_TO_WRITE;
    }

    /** How a size was taken: a note. */
    public static Notice of(Reading.Echo echo) {
        Kind kind = switch (echo.doubt()) {
            case SLIP -> SLIP;
            case BARE_INCHES -> BARE_INCHES;
            case MARK_DROPPED -> MARK_DROPPED;
            case COMMA -> COMMA;
        };
        return kind.with("text", echo.written()).with("size", echo.readAs());
    }
}

package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthUnit;
import java.util.OptionalDouble;

/**
 * Figures as people read them, in the unit of the document: millimetres where it counts in millimetres or centimetres,
 * else inches to the nearest 1/16 with {@code +} or {@code -} behind a size that is truly a little more or less.
 */
public record Printed(LengthUnit unit) {
    public boolean metric() {
        return unit.isMetric();
    }

    public String size(double inches) {
        Length length = Length.inches(inches);
        return metric() ? LengthPrinter.millimetres(length) : LengthPrinter.sixteenths(length);
    }

    /** One figure with its unit. */
    public String figure(Figure figure) {
        return new FigurePrinter(unit).print(figure);
    }

    /** Words with figures in them. */
    public String words(Phrase phrase) {
        return new FigurePrinter(unit).print(phrase);
    }

    public Cell cell(double inches) {
        return Cell.of(size(inches), inches);
    }

    public Cell cell(OptionalDouble inches) {
        return inches.isPresent() ? cell(inches.getAsDouble()) : Cell.EMPTY;
    }

    /** A figure that is no length, with so many decimals. */
    public static String decimals(double figure, int places) {
        return LengthPrinter.decimals(Length.inches(figure), places);
    }

    public static Cell figure(double figure, int places) {
        return Cell.of(decimals(figure, places), figure);
    }

    /** How the sizes are to be read. */
    public String legend() {
        return metric()
                ? "Sizes in millimetres."
                : "Sizes in inches to the nearest 1/16; + or - behind one: truly a little more or less.";
    }
}

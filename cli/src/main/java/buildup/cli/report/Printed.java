package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthUnit;
import java.util.OptionalDouble;

/**
 * Figures as people read them, in the unit of the document: millimetres where it counts in millimetres or centimetres,
 * else inches to the nearest 1/16 with {@code +} or {@code -} behind a size that is truly a little more or less.
 */
record Printed(LengthUnit unit) {
    private boolean metric() {
        return unit == LengthUnit.MILLIMETRE || unit == LengthUnit.CENTIMETRE;
    }

    String size(double inches) {
        Length length = Length.inches(inches);
        return metric() ? LengthPrinter.millimetres(length) : LengthPrinter.sixteenths(length);
    }

    Cell cell(double inches) {
        return Cell.of(size(inches), inches);
    }

    Cell cell(OptionalDouble inches) {
        return inches.isPresent() ? cell(inches.getAsDouble()) : Cell.EMPTY;
    }

    /** A figure that is no length, with so many decimals. */
    static String decimals(double figure, int places) {
        return LengthPrinter.decimals(Length.inches(figure), places);
    }

    static Cell figure(double figure, int places) {
        return Cell.of(decimals(figure, places), figure);
    }

    /** How the sizes are to be read. */
    String legend() {
        return metric()
                ? "Sizes in millimetres."
                : "Sizes in inches to the nearest 1/16; + or - behind one: truly a little more or less.";
    }
}

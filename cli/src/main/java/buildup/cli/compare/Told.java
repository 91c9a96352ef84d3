package buildup.cli.compare;

import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.report.Printed;
import buildup.cli.table.Cell;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Figures and differences as people read them. */
record Told(Printed printed) {
    /** A computed length this near to a sixteenth is that sixteenth. */
    private static final double ON_A_SIXTEENTH = 1e-6;

    private static final int SIXTEENTHS = 16;

    /** Decimals that tell any two figures apart that are not alike. */
    private static final int FINE = 6;

    private static final int COARSE = 3;

    /** Figures farther apart than this differ in three decimals. */
    private static final double VISIBLE = 0.001;

    Cell cell(Figure figure, Kind kind) {
        return figure.number().isPresent()
                ? Cell.of(
                        text(figure.number().getAsDouble(), kind),
                        figure.number().getAsDouble())
                : Cell.of(figure.words().orElse(""));
    }

    String text(double number, Kind kind) {
        return switch (kind) {
            case LENGTH -> printed.size(number);
            case AREA, WEIGHT, DEGREES, TIMES -> Printed.decimals(number, 2);
            case SHARE -> Printed.decimals(100 * number, 1) + " %";
            case WORDS -> throw new IllegalArgumentException("a number is no words");
        };
    }

    /**
     * A difference with its sign in front. One that is no whole number of sixteenths is told in thousandths, so that
     * nothing stands behind it that could be taken for a second sign.
     */
    Cell difference(double more, Kind kind) {
        return Cell.of((more < 0 ? "-" : "+") + amount(Math.abs(more), kind), more);
    }

    private String amount(double amount, Kind kind) {
        return switch (kind) {
            case LENGTH -> length(amount);
            case AREA, WEIGHT, TIMES -> Printed.decimals(amount, amount < 0.005 ? 4 : 2);
            default -> text(amount, kind);
        };
    }

    /** From one figure to another; in decimals where both would be printed alike. */
    String change(Figure from, Figure to, Kind kind) {
        String first = cell(from, kind).text();
        String second = cell(to, kind).text();
        if (first.equals(second) && from.number().isPresent() && to.number().isPresent()) {
            int places = Math.abs(from.number().getAsDouble() - to.number().getAsDouble()) < VISIBLE ? FINE : COARSE;
            first = Printed.decimals(from.number().getAsDouble(), places);
            second = Printed.decimals(to.number().getAsDouble(), places);
        }
        return (first.isEmpty() ? "none" : first) + " -> " + (second.isEmpty() ? "none" : second);
    }

    /** An amount of length without a sign. */
    String length(double amount) {
        double steps = amount * SIXTEENTHS;
        if (printed.metric()) {
            return printed.size(amount);
        }
        return Math.abs(steps - Math.rint(steps)) <= ON_A_SIXTEENTH * SIXTEENTHS
                ? LengthPrinter.fraction(Length.inches(Math.rint(steps) / SIXTEENTHS), SIXTEENTHS)
                : Printed.decimals(amount, amount < 0.0005 ? 5 : 3);
    }
}

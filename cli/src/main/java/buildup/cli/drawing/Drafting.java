package buildup.cli.drawing;

import buildup.engine.section.stack.Stack;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Sizes and distances of the drawing, in: as large as is read at arm's length. */
final class Drafting {
    /** Sizes of text. */
    static final double TITLE = 0.24;

    static final double TEXT = 0.13;
    static final double FIGURES = 0.14;
    static final double LETTER = 0.16;

    /** Radius of the ring round a letter on a piece, and of that before a figure or in the list. */
    static final double RING = 0.13;

    static final double SMALL_RING = 0.085;
    static final double SMALL_LETTER = 0.105;

    /** What stays free round every text. */
    static final double AIR = 0.03;

    /** From an edge to the beginning of an extension line, and from its end past the dimension line. */
    static final double EXTENSION_GAP = 0.04;

    static final double EXTENSION_PAST = 0.06;

    /** From one dimension line to the next beside it. */
    static final double LANE = 0.24;

    private Drafting() {}

    /** A size as the shop reads it. */
    static String shop(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    /** A size in the unit of a stack, which stands with the sheet. */
    static String size(Stack stack, double inches) {
        return isMetric(stack)
                ? LengthPrinter.millimetres(Length.inches(inches)).replace(" mm", "")
                : shop(inches);
    }

    /** The unit of its sizes, in full. */
    static String units(Stack stack) {
        return isMetric(stack) ? "millimetres" : "inches";
    }

    /** The same, short, behind a size. */
    static String unit(Stack stack) {
        return isMetric(stack) ? " mm" : " in";
    }

    private static boolean isMetric(Stack stack) {
        return stack.lengths().bareUnit().isMetric();
    }

    /** A size as a plane or a knife is set. */
    static String decimals(double inches) {
        return LengthPrinter.decimals(Length.inches(inches), 3);
    }
}

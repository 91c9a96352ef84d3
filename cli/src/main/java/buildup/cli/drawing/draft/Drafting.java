package buildup.cli.drawing.draft;

import buildup.engine.section.stack.Stack;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Sizes and distances of the drawing, in: as large as is read at arm's length. */
public final class Drafting {
    /** Sizes of text. */
    public static final double TITLE = 0.24;

    public static final double TEXT = 0.13;
    public static final double FIGURES = 0.14;
    public static final double LETTER = 0.16;

    /** Radius of the ring round a letter on a piece, and of that before a figure or in the list. */
    public static final double RING = 0.13;

    public static final double SMALL_RING = 0.085;
    public static final double SMALL_LETTER = 0.105;

    /** What stays free round every text. */
    public static final double AIR = 0.03;

    /** From an edge to the beginning of an extension line, and from its end past the dimension line. */
    public static final double EXTENSION_GAP = 0.04;

    public static final double EXTENSION_PAST = 0.06;

    /** From one dimension line to the next beside it. */
    public static final double LANE = 0.24;

    private Drafting() {}

    /** A size as the shop reads it. */
    public static String shop(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    /** A size in the unit of a stack, which stands with the sheet. */
    public static String size(Stack stack, double inches) {
        return isMetric(stack)
                ? LengthPrinter.millimetres(Length.inches(inches)).replace(" mm", "")
                : shop(inches);
    }

    /** The unit of its sizes, in full. */
    public static String units(Stack stack) {
        return isMetric(stack) ? "millimetres" : "inches";
    }

    /** The same, short, behind a size. */
    public static String unit(Stack stack) {
        return isMetric(stack) ? " mm" : " in";
    }

    private static boolean isMetric(Stack stack) {
        return stack.lengths().bareUnit().isMetric();
    }

    /** A size as a plane or a knife is set. */
    public static String decimals(double inches) {
        return LengthPrinter.decimals(Length.inches(inches), 3);
    }
}

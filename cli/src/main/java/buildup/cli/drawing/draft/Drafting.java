package buildup.cli.drawing.draft;

import buildup.engine.section.stack.Stack;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;

/** Sizes and distances of the drawing, in: as large as is read at arm's length. */
public final class Drafting {
    /** Sizes of text. */
    public static final double TITLE = 0.24;

    public static final double TEXT = 0.13;
    public static final double FIGURES = 0.14;
    public static final double LETTER = 0.16;

    /** Six points: nothing smaller is read on paper. */
    public static final double SMALLEST = 6.0 / 72;

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

    /** Figures as they stand on a drawing of a stack: in the unit of its document. */
    public static FigurePrinter printer(Stack stack) {
        return new FigurePrinter(stack.lengths().bareUnit());
    }

    /** A size in the unit of a stack, which stands with the sheet. */
    public static String size(Stack stack, double inches) {
        return printer(stack).bare(Figure.length(inches));
    }

    /** The same with its unit, in a sentence that may stand alone. */
    public static String spelled(Stack stack, double inches) {
        return size(stack, inches) + " " + Quantity.LENGTH.unit(printer(stack).metric());
    }

    /** So many times smaller is no scale that a rule reads: such a picture is made to fit its page. */
    public static final int FITTED = 128;

    /** How large a picture is drawn, in words; {@code smaller} is 1 at full size, {@link #FITTED} where it is made to fit. */
    public static String scale(int smaller) {
        return smaller == FITTED ? "not to scale" : smaller == 1 ? "full size" : "1 : " + smaller;
    }

    /** The unit of its sizes, in full. */
    public static String units(Stack stack) {
        return printer(stack).metric() ? "millimeters" : "inches";
    }
}

package buildup.cli.table;

import java.util.OptionalDouble;

/**
 * One cell.
 *
 * @param text as people read it
 * @param value the figure behind the text, in the unit that the column's heading names; absent where there is none
 */
public record TableCell(String text, OptionalDouble value) {
    /** A cell with nothing in it. */
    public static final TableCell EMPTY = of("");

    /** A cell of words. */
    public static TableCell of(String text) {
        return new TableCell(text, OptionalDouble.empty());
    }

    /** A figure and how it is printed. */
    public static TableCell of(String text, double value) {
        return new TableCell(text, OptionalDouble.of(value));
    }
}

package buildup.cli.table;

import java.util.OptionalDouble;

/**
 * One cell.
 *
 * @param text as people read it
 * @param value the figure behind the text, in the unit that the column's heading names; absent where there is none
 */
public record Cell(String text, OptionalDouble value) {
    /** A cell with nothing in it. */
    public static final Cell EMPTY = of("");

    /** A cell of words. */
    public static Cell of(String text) {
        return new Cell(text, OptionalDouble.empty());
    }

    /** A figure and how it is printed. */
    public static Cell of(String text, double value) {
        return new Cell(text, OptionalDouble.of(value));
    }
}

package buildup.cli.table;

import java.util.Arrays;
import java.util.List;

/**
 * A table.
 *
 * @param title one line over it
 * @param rows each with a cell for each column
 */
public record Table(String title, List<TextColumn> columns, List<List<TableCell>> rows) {
    /** On which side a column's cells line up. */
    public enum Align {
        LEFT,
        RIGHT
    }

    /**
     * A column.
     *
     * @param heading the words over it
     * @param unit of the figures behind its cells, where the heading does not say it; a spreadsheet needs it
     */
    public record TextColumn(String heading, Align align, String unit) {
        /** A column whose heading says all. */
        public TextColumn(String heading, Align align) {
            this(heading, align, "");
        }
    }

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException when a row does not have a cell for each column
     */
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<TableCell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("row of " + row.size() + " cells in " + columns.size() + " columns");
            }
        }
    }

    /** Columns from their headings; one that begins with {@code >} lines up on the right. */
    public static List<TextColumn> columns(String... headings) {
        return Arrays.stream(headings)
                .map(heading -> heading.startsWith(">")
                        ? new TextColumn(heading.substring(1), Align.RIGHT)
                        : new TextColumn(heading, Align.LEFT))
                .toList();
    }
}

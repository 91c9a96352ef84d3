package buildup.cli.tell;

import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.List;
import java.util.Optional;

/**
 * Where a column of a table comes from: a column of a sheet, or one below it.
 *
 * @param at the place of the column in the sheet
 * @param below the place of the column below it
 */
record ColumnSource(Column column, int at, Optional<Integer> below) {
    /**
     * The column of that key.
     *
     * @param key as in a {@link buildup.shared.sheet.Layout}
     * @throws IllegalArgumentException when there is none
     */
    static ColumnSource of(Sheet sheet, String key) {
        int dot = key.indexOf('.');
        String own = dot < 0 ? key : key.substring(0, dot);
        int at = sheet.at(own).orElseThrow(() -> absent(sheet, key));
        Column column = sheet.columns().get(at);
        if (dot < 0 || !(column.type() instanceof Type.Nested nested)) {
            return new ColumnSource(column, at, Optional.empty());
        }
        List<String> below = nested.columns().stream().map(Column::key).toList();
        int belowAt = below.indexOf(key.substring(dot + 1));
        if (belowAt < 0) {
            throw absent(sheet, key);
        }
        return new ColumnSource(nested.columns().get(belowAt), at, Optional.of(belowAt));
    }

    private static IllegalArgumentException absent(Sheet sheet, String key) {
        return new IllegalArgumentException(sheet.key() + " has no column " + key);
    }

    /** What a row has there. */
    Cell cell(Row row) {
        Cell own = row.cells().get(at);
        if (below.isEmpty()) {
            return own;
        }
        return own instanceof Cell.Rows rows && !rows.rows().isEmpty()
                ? rows.rows().get(0).cells().get(below.get())
                : Cell.NONE;
    }
}

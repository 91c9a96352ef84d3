package buildup.shared.sheet;

import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The answer to one question as rows of typed cells.
 *
 * @param key of the block in JSON; {@code support.balances} lies in the object {@code support}; empty for figures of the
 *     whole answer, which stand in no block
 * @param title over it where people read it
 * @param single one object; else a list of rows
 * @param asked whether the document asked for it; a sheet that was not asked for is written nowhere
 * @param columns of every row
 * @param rows in the order of the report
 * @param tables in which people read it; none where programs alone read it
 */
public record Sheet(
        String key,
        Phrase title,
        boolean single,
        boolean asked,
        List<Column> columns,
        List<Row> rows,
        List<Layout> tables) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException when a row does not have a cell for each column
     */
    public Sheet {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        tables = List.copyOf(tables);
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException("a row of " + key + " does not fit its columns");
            }
        }
    }

    /** A list of rows, one for each of these. */
    public static <T> Columns<T> of(String key, String title, List<T> rows) {
        return new Columns<>(key, Phrase.of(title), false, rows);
    }

    /** A list of rows under a title that holds figures. */
    public static <T> Columns<T> of(String key, Phrase title, List<T> rows) {
        return new Columns<>(key, title, false, rows);
    }

    /** One object. */
    public static <T> Columns<T> single(String key, String title, T object) {
        return new Columns<>(key, Phrase.of(title), true, List.of(object));
    }

    /** One object that may not be there; its columns are known all the same. */
    public static <T> Columns<T> single(String key, String title, Optional<T> object) {
        return new Columns<>(key, Phrase.of(title), true, object.stream().toList());
    }

    /** Whether programs read any of it. */
    public boolean toPrograms() {
        return columns.stream().anyMatch(column -> column.shown() != Column.Shown.TEXT);
    }

    /** The place of the column with that key, if there is one. */
    public Optional<Integer> at(String columnKey) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).key().equals(columnKey))
                .boxed()
                .findFirst();
    }

    /** The cell of a row under a column. */
    public Cell cell(Row row, String columnKey) {
        return at(columnKey).map(i -> row.cells().get(i)).orElse(Cell.NONE);
    }

    /** What a row is known by, in the order of the columns. */
    public List<String> names(Row row) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name()) {
                names.add(row.cells().get(i) instanceof Cell.Words words ? words.words() : "");
            }
        }
        return List.copyOf(names);
    }

    /** The same, written nowhere unless that holds. */
    public Sheet askedIf(boolean wanted) {
        return new Sheet(key, title, single, wanted, columns, rows, tables);
    }
}

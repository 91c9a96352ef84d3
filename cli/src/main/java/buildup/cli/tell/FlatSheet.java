package buildup.cli.tell;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Column.Trait;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A sheet as programs read it, laid flat: a point becomes two lengths, an object below a row its figures, and rows below
 * a row become a sheet of their own, {@code pieces.bearing}, known by the names of both.
 */
final class FlatSheet {
    /** A column of the flat sheet, and what it takes from a row of the sheet; nothing from rows that are not there. */
    private record Leaf(Column column, Function<Row, Cell> of) {}

    private final Predicate<Column> wanted;
    private final List<Sheet> sheets = new ArrayList<>();

    private FlatSheet(Predicate<Column> wanted) {
        this.wanted = wanted;
    }

    /** The sheet, and behind it one for each column of rows; of the columns that are wanted. */
    static List<Sheet> of(Sheet sheet, Predicate<Column> wanted) {
        FlatSheet flat = new FlatSheet(wanted);
        flat.lay(sheet);
        return flat.sheets.stream().filter(laid -> !laid.columns().isEmpty()).toList();
    }

    private void lay(Sheet sheet) {
        List<Leaf> leaves = leaves("", "", sheet.columns(), Optional::of);
        sheets.add(new Sheet(
                sheet.key(),
                sheet.title(),
                sheet.single(),
                sheet.asked(),
                leaves.stream().map(Leaf::column).toList(),
                sheet.rows().stream().map(row -> row(leaves, row)).toList(),
                List.of()));
        for (int i = 0; i < sheet.columns().size(); i++) {
            Column column = sheet.columns().get(i);
            if (wanted.test(column) && column.type() instanceof Type.Nested nested && nested.many()) {
                lay(below(sheet, column, i, nested));
            }
        }
    }

    private static Row row(List<Leaf> leaves, Row row) {
        return new Row(leaves.stream().map(leaf -> leaf.of().apply(row)).toList());
    }

    /** The rows below those of a sheet, each behind the names of its row. */
    private static Sheet below(Sheet sheet, Column column, int at, Type.Nested nested) {
        List<Integer> names = Stream.iterate(0, i -> i + 1)
                .limit(sheet.columns().size())
                .filter(i -> sheet.columns().get(i).name())
                .toList();
        List<Column> columns = new ArrayList<>();
        names.forEach(i -> columns.add(sheet.columns().get(i)));
        columns.addAll(nested.columns());
        List<Row> rows = new ArrayList<>();
        for (Row row : sheet.rows()) {
            if (row.cells().get(at) instanceof Cell.Rows inner) {
                for (Row one : inner.rows()) {
                    List<Cell> cells = new ArrayList<>();
                    names.forEach(i -> cells.add(row.cells().get(i)));
                    cells.addAll(one.cells());
                    rows.add(new Row(cells));
                }
            }
        }
        String title = head(sheet) + ": " + column.heading();
        return new Sheet(
                sheet.key() + "." + column.key(), Phrase.plain(title), false, sheet.asked(), columns, rows, List.of());
    }

    /** The title without what it explains. */
    private static String head(Sheet sheet) {
        String title = FigurePrinter.INCHES.print(sheet.title());
        return title.split("[;:]", 2)[0];
    }

    private List<Leaf> leaves(String key, String heading, List<Column> columns, Function<Row, Optional<Row>> within) {
        List<Leaf> leaves = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            int at = i;
            if (wanted.test(column)) {
                Function<Row, Cell> cell = row ->
                        within.apply(row).map(found -> found.cells().get(at)).orElse(Cell.NONE);
                leaves.addAll(leaves(key, heading, column, cell));
            }
        }
        return leaves;
    }

    private List<Leaf> leaves(String key, String heading, Column column, Function<Row, Cell> cell) {
        String ownKey = key.isEmpty() ? column.key() : key + "." + column.key();
        String own = heading.isEmpty() || column.heading().isEmpty()
                ? heading + column.heading()
                : heading + " " + column.heading();
        if (column.type() instanceof Type.Nested nested) {
            return nested.many()
                    ? List.of()
                    : leaves(
                            ownKey,
                            own,
                            nested.columns(),
                            row -> cell.apply(row) instanceof Cell.Rows rows
                                    ? rows.rows().stream().findFirst()
                                    : Optional.empty());
        }
        if (column.type() instanceof Type.Place) {
            return List.of(
                    new Leaf(
                            length(ownKey + ".x", own + " out", column.traits()),
                            row -> cell.apply(row) instanceof Cell.Place place
                                    ? new Cell.Decimal(place.x())
                                    : Cell.NONE),
                    new Leaf(
                            length(ownKey + ".y", own + " up", column.traits()),
                            row -> cell.apply(row) instanceof Cell.Place place
                                    ? new Cell.Decimal(place.y())
                                    : Cell.NONE));
        }
        return List.of(new Leaf(new Column(ownKey, own, column.type(), column.shown(), column.traits()), cell));
    }

    private static Column length(String key, String heading, Set<Trait> traits) {
        return new Column(key, heading, new Type.Measure(Quantity.LENGTH, Rounding.NEAREST), Column.Shown.BOTH, traits);
    }
}

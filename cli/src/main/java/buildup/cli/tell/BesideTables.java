package buildup.cli.tell;

import buildup.cli.table.Table;
import buildup.cli.table.Table.Align;
import buildup.cli.table.TableCell;
import buildup.cli.tell.Beside.Pair;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Layout;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two answers beside each other as tables: what is alike in one line, what differs with A over B over their difference.
 *
 * @param printer in which unit; the tables have the same rows in every unit
 */
public record BesideTables(FigurePrinter printer) {
    /** The columns of one table: what a row is known by, then its figures. */
    private record Heads(List<Integer> names, List<Integer> figures) {}

    /** The tables that have rows, in the order of a report. */
    public List<Table> of(List<Beside> all) {
        return all.stream()
                .flatMap(one -> one.sheet().tables().stream().flatMap(layout -> tables(one, layout)))
                .filter(table -> !table.rows().isEmpty())
                .toList();
    }

    private Stream<Table> tables(Beside beside, Layout layout) {
        Sheet sheet = beside.sheet();
        Heads heads = heads(sheet, layout);
        if (heads.figures().isEmpty()) {
            return Stream.empty();
        }
        String title = printer.print(layout.title());
        if (sheet.single()) {
            return Stream.of(figureByFigure(title, heads, beside.pairs()));
        }
        Optional<Integer> each = layout.each().flatMap(sheet::at);
        if (each.isPresent()) {
            return Stream.of(eachBelow(title, beside, layout, shown(heads.names(), sheet, layout), each.get()));
        }
        Map<String, List<Pair>> parts = new LinkedHashMap<>();
        for (Pair pair : beside.pairs()) {
            if (counts(sheet, layout, pair)) {
                parts.computeIfAbsent(apart(layout, pair), word -> new ArrayList<>())
                        .add(pair);
            }
        }
        return parts.entrySet().stream()
                .map(part -> table(SheetTables.titled(title, part.getKey()), sheet.columns(), heads, part.getValue()));
    }

    /** A line, or three, for every row below a row: under the names of that one, then what the table shows of it. */
    private Table eachBelow(String title, Beside beside, Layout layout, List<Integer> names, int nested) {
        Sheet sheet = beside.sheet();
        List<ColumnSource> sources = layout.keys().stream()
                .map(key -> ColumnSource.of(sheet, key))
                .filter(source -> source.at() == nested && source.below().isPresent())
                .toList();
        List<Column> columns = Stream.concat(
                        names.stream().map(sheet.columns()::get),
                        sources.stream().map(ColumnSource::column))
                .toList();
        List<Pair> pairs = new ArrayList<>();
        for (Pair pair : beside.pairs()) {
            List<Row> a = below(pair.a(), names, sources, nested);
            List<Row> b = below(pair.b(), names, sources, nested);
            for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
                pairs.add(new Pair(columns, pair.names(), i + 1, at(a, i), at(b, i)));
            }
        }
        Heads heads = new Heads(
                IntStream.range(0, names.size()).boxed().toList(),
                IntStream.range(names.size(), columns.size()).boxed().toList());
        return table(title, columns, heads, pairs);
    }

    /** The names that the table shows. */
    private static List<Integer> shown(List<Integer> names, Sheet sheet, Layout layout) {
        return names.stream()
                .filter(i -> layout.keys().contains(sheet.columns().get(i).key()))
                .toList();
    }

    private static List<Row> below(Optional<Row> row, List<Integer> names, List<ColumnSource> sources, int nested) {
        if (row.isEmpty() || !(row.get().cells().get(nested) instanceof Cell.Rows rows)) {
            return List.of();
        }
        return rows.rows().stream()
                .map(one -> new Row(Stream.concat(
                                names.stream().map(row.get().cells()::get),
                                sources.stream()
                                        .map(source ->
                                                one.cells().get(source.below().orElseThrow())))
                        .toList()))
                .toList();
    }

    private static Optional<Row> at(List<Row> rows, int i) {
        return i < rows.size() ? Optional.of(rows.get(i)) : Optional.empty();
    }

    private static Heads heads(Sheet sheet, Layout layout) {
        List<String> keys = layout.keys();
        List<Integer> names = IntStream.range(0, sheet.columns().size())
                .filter(i -> sheet.columns().get(i).name())
                .filter(i -> !layout.apart()
                        .equals(Optional.of(sheet.columns().get(i).key())))
                .boxed()
                .toList();
        List<Integer> figures = keys.stream()
                .map(key -> sheet.at(key.split("\\.", 2)[0]).orElseThrow())
                .filter(i ->
                        !sheet.columns().get(i).name() && sheet.columns().get(i).compared())
                .distinct()
                .toList();
        return new Heads(names, figures);
    }

    /** What runs across in a report of one is told of two only where it differs. */
    private static boolean counts(Sheet sheet, Layout layout, Pair pair) {
        boolean told = layout.across().isEmpty() || !pair.alike();
        return told
                && Stream.of(pair.a(), pair.b())
                        .flatMap(Optional::stream)
                        .anyMatch(row -> SheetTables.belongs(sheet, layout, row));
    }

    private static String apart(Layout layout, Pair pair) {
        return layout.apart()
                .map(pair::at)
                .flatMap(at -> Stream.of(pair.cellOfA(at), pair.cellOfB(at))
                        .filter(Cell.Words.class::isInstance)
                        .findFirst())
                .map(cell -> ((Cell.Words) cell).words())
                .orElse("");
    }

    private Table figureByFigure(String title, Heads heads, List<Pair> pairs) {
        Cells cells = new Cells(printer);
        List<List<TableCell>> rows = new ArrayList<>();
        for (Pair pair : pairs) {
            for (int i : heads.figures()) {
                Column column = pair.columns().get(i);
                if (!Cell.isNone(pair.cellOfA(i)) || !Cell.isNone(pair.cellOfB(i))) {
                    rows.add(List.of(
                            TableCell.of(cells.heading(column)),
                            Cells.inOne(cells.cells(column, pair.cellOfA(i))),
                            Cells.inOne(cells.cells(column, pair.cellOfB(i))),
                            Cells.inOne(difference(pair, i))));
                }
            }
        }
        return new Table(title, Table.columns("", ">A", ">B", ">B - A"), rows);
    }

    private Table table(String title, List<Column> all, Heads heads, List<Pair> pairs) {
        Cells cells = new Cells(printer);
        List<Table.TextColumn> columns = new ArrayList<>();
        columns.addAll(cells.columns(heads.names().stream().map(all::get).toList()));
        columns.add(new Table.TextColumn("in", Align.LEFT));
        columns.addAll(cells.columns(heads.figures().stream().map(all::get).toList()));
        return new Table(
                title,
                columns,
                pairs.stream().flatMap(pair -> rows(heads, pair)).toList());
    }

    private Stream<List<TableCell>> rows(Heads heads, Pair pair) {
        List<TableCell> names = names(heads, pair);
        if (!pair.both()) {
            return Stream.of(pair.a().isPresent() ? a(heads, pair, names, "A only") : b(heads, pair, names, "B only"));
        }
        if (heads.figures().stream().allMatch(pair::alike)) {
            return Stream.of(a(heads, pair, names, "both"));
        }
        List<TableCell> ditto = names.stream().map(name -> TableCell.EMPTY).toList();
        return Stream.of(
                a(heads, pair, names, "A"),
                b(heads, pair, ditto, "B"),
                row(heads, ditto, "B - A", i -> difference(pair, i)));
    }

    private List<TableCell> names(Heads heads, Pair pair) {
        Cells cells = new Cells(printer);
        return heads.names().stream()
                .flatMap(i ->
                        cells.cells(pair.columns().get(i), pair.a().isPresent() ? pair.cellOfA(i) : pair.cellOfB(i)))
                .toList();
    }

    private List<TableCell> a(Heads heads, Pair pair, List<TableCell> names, String in) {
        return row(
                heads, names, in, i -> new Cells(printer).cells(pair.columns().get(i), pair.cellOfA(i)));
    }

    private List<TableCell> b(Heads heads, Pair pair, List<TableCell> names, String in) {
        return row(
                heads, names, in, i -> new Cells(printer).cells(pair.columns().get(i), pair.cellOfB(i)));
    }

    /** @param told the cells that a column of the sheet becomes */
    private static List<TableCell> row(
            Heads heads, List<TableCell> names, String in, IntFunction<Stream<TableCell>> told) {
        List<TableCell> cells = new ArrayList<>(names);
        cells.add(TableCell.of(in));
        heads.figures().forEach(i -> told.apply(i).forEach(cells::add));
        return cells;
    }

    /** B less A; as many cells as the column takes. */
    private Stream<TableCell> difference(Pair pair, int column) {
        Type type = pair.columns().get(column).type();
        if (type instanceof Type.Place) {
            boolean both = pair.cellOfA(column) instanceof Cell.Place && pair.cellOfB(column) instanceof Cell.Place;
            return both && !pair.alike(column)
                    ? places((Cell.Place) pair.cellOfA(column), (Cell.Place) pair.cellOfB(column))
                    : Stream.of(pair.alike(column) ? TableCell.EMPTY : TableCell.of("differs"), TableCell.EMPTY);
        }
        if (pair.alike(column)) {
            return Stream.of(TableCell.EMPTY);
        }
        return Stream.of(figure(pair, column).map(this::difference).orElse(TableCell.of("differs")));
    }

    private Stream<TableCell> places(Cell.Place a, Cell.Place b) {
        return Stream.of(b.x() - a.x(), b.y() - a.y())
                .map(more -> Math.abs(more) < Tolerance.SAW_CUT ? TableCell.EMPTY : difference(Figure.length(more)));
    }

    /** How much more B has; absent where one of the two has no number. */
    private static Optional<Figure> figure(Pair pair, int column) {
        OptionalDouble more = pair.more(column);
        if (more.isEmpty()) {
            return Optional.empty();
        }
        if (pair.columns().get(column).type() instanceof Type.Measure measure) {
            return Optional.of(new Figure(measure.quantity(), more.getAsDouble(), measure.rounding()));
        }
        Figure a = ((Cell.Amount) pair.cellOfA(column)).figure();
        return Optional.of(new Figure(a.quantity(), more.getAsDouble(), a.rounding()));
    }

    /** With its sign in front, and without a mark behind that could be taken for a second one. */
    private TableCell difference(Figure figure) {
        return TableCell.of(
                (figure.amount() < 0 ? "-" : "+") + new FigureChange(printer).amount(figure),
                figure.quantity().shown(figure.amount(), printer.metric()));
    }
}

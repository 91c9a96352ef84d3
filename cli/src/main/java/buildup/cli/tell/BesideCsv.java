package buildup.cli.tell;

import buildup.cli.table.Csv;
import buildup.cli.table.Table;
import buildup.cli.table.Table.Align;
import buildup.cli.table.TableCell;
import buildup.cli.tell.Beside.Pair;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Two answers beside each other for a spreadsheet: each sheet under its title, of each row A, B and, where they differ, B
 * less A. Figures are not rounded; the headings name the units.
 *
 * @param printer in which unit
 */
public record BesideCsv(FigurePrinter printer) {
    /** The sheets that have rows. */
    public String write(List<Beside> flat) {
        return flat.stream()
                .filter(beside -> !beside.pairs().isEmpty())
                .map(beside -> Csv.titled(table(beside)))
                .collect(Collectors.joining(Csv.between()));
    }

    private Table table(Beside beside) {
        List<Column> all = beside.sheet().columns();
        List<Integer> names = places(all, true);
        List<Integer> figures = places(all, false);
        SheetCsv csv = new SheetCsv(printer);
        List<Table.TextColumn> columns = new ArrayList<>();
        names.forEach(i -> csv.columns(all.get(i)).forEach(columns::add));
        columns.add(new Table.TextColumn("in", Align.LEFT));
        figures.forEach(i -> csv.columns(all.get(i)).forEach(columns::add));
        return new Table(
                printer.print(beside.sheet().title()),
                columns,
                beside.pairs().stream()
                        .flatMap(pair -> rows(pair, names, figures))
                        .toList());
    }

    private static List<Integer> places(List<Column> columns, boolean names) {
        return Stream.iterate(0, i -> i + 1)
                .limit(columns.size())
                .filter(i -> columns.get(i).name() == names)
                .toList();
    }

    private Stream<List<TableCell>> rows(Pair pair, List<Integer> names, List<Integer> figures) {
        List<List<TableCell>> rows = new ArrayList<>();
        if (pair.a().isPresent()) {
            rows.add(row(pair, names, "A", figures, i -> cells(pair, i, pair.cellOfA(i))));
        }
        if (pair.b().isPresent()) {
            rows.add(row(pair, names, "B", figures, i -> cells(pair, i, pair.cellOfB(i))));
        }
        if (pair.both() && !pair.alike()) {
            rows.add(row(pair, names, "B - A", figures, i -> difference(pair, i)));
        }
        return rows.stream();
    }

    /** @param told the cells that a column of the sheet becomes */
    private List<TableCell> row(
            Pair pair, List<Integer> names, String in, List<Integer> figures, IntFunction<Stream<TableCell>> told) {
        List<TableCell> row = new ArrayList<>();
        names.forEach(i -> cells(pair, i, pair.a().isPresent() ? pair.cellOfA(i) : pair.cellOfB(i))
                .forEach(row::add));
        row.add(TableCell.of(in));
        figures.forEach(i -> told.apply(i).forEach(row::add));
        return row;
    }

    private Stream<TableCell> cells(Pair pair, int column, Cell cell) {
        return new SheetCsv(printer).cells(pair.columns().get(column), cell);
    }

    private Stream<TableCell> difference(Pair pair, int column) {
        OptionalDouble more = pair.more(column);
        Cell said = pair.cellOfA(column);
        Stream<TableCell> cells = cells(pair, column, Cell.NONE);
        if (pair.alike(column)) {
            return cells;
        }
        if (more.isPresent()) {
            return cells(
                    pair,
                    column,
                    said instanceof Cell.Amount amount
                            ? new Cell.Amount(new Figure(
                                    amount.figure().quantity(),
                                    more.getAsDouble(),
                                    amount.figure().rounding()))
                            : new Cell.Decimal(more.getAsDouble()));
        }
        return Stream.concat(Stream.of(TableCell.of("differs")), cells.skip(1));
    }
}

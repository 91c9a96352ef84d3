package buildup.cli.compare;

import buildup.cli.compare.Comparison.Block;
import buildup.cli.compare.Comparison.Pair;
import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Quantity;
import buildup.cli.compare.Sheet.Row;
import buildup.cli.report.Printed;
import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.cli.table.Table.Align;
import buildup.cli.table.Table.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A comparison as tables: what is alike in one line, what differs with A over B over their difference. */
final class ComparisonTables {
    /** With more names than this a row is too wide for a page of 80 columns. */
    private static final int MOST_NAMES = 2;

    private final Told told;

    private ComparisonTables(Printed printed) {
        this.told = new Told(printed);
    }

    /**
     * The whole stack first, one figure a line; then block by block.
     *
     * @param printed in which unit; the tables have the same rows in every unit
     */
    static List<Table> of(Comparison comparison, Printed printed) {
        ComparisonTables tables = new ComparisonTables(printed);
        List<Table> all = new ArrayList<>();
        for (Block block : comparison.blocks()) {
            if (block.heads().key().equals(SectionSheets.TOTALS)) {
                all.add(0, tables.figureByFigure(block));
            } else if (block.heads().names().size() > MOST_NAMES) {
                all.addAll(tables.apart(block));
            } else if (!block.pairs().isEmpty()) {
                all.add(tables.rowByRow(block.heads().title(), block, 0, block.pairs()));
            }
        }
        return all;
    }

    private Table figureByFigure(Block block) {
        Pair pair = block.pairs().get(0);
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < block.heads().quantities().size(); i++) {
            Quantity quantity = block.heads().quantities().get(i);
            Figure a = pair.a().orElseThrow().figures().get(i);
            Figure b = pair.b().orElseThrow().figures().get(i);
            if (!a.isEmpty() || !b.isEmpty()) {
                rows.add(List.of(
                        Cell.of(quantity.head().heading()),
                        told.cell(a, quantity.kind()),
                        told.cell(b, quantity.kind()),
                        difference(pair, i, quantity.kind())));
            }
        }
        return new Table(block.heads().title(), Table.columns("", ">A", ">B", ">B - A"), rows);
    }

    /** A table for each light, eye or level, whose name would fill a column. */
    private List<Table> apart(Block block) {
        Map<String, List<Pair>> parts = new LinkedHashMap<>();
        block.pairs()
                .forEach(pair -> parts.computeIfAbsent(pair.names().get(0), name -> new ArrayList<>())
                        .add(pair));
        List<Table> tables = new ArrayList<>();
        parts.forEach((name, pairs) -> tables.add(rowByRow(titled(block, name), block, 1, pairs)));
        return tables;
    }

    /** The name goes before what the title explains behind a semicolon. */
    private static String titled(Block block, String name) {
        String title = block.heads().title();
        int end = title.contains(";") ? title.indexOf(';') : title.length();
        return title.substring(0, end) + ", " + name + title.substring(end);
    }

    /** @param from the first of the names that has a column */
    private Table rowByRow(String title, Block block, int from, List<Pair> pairs) {
        List<Column> columns = new ArrayList<>();
        block.heads().names().stream().skip(from).forEach(name -> columns.add(new Column(name.heading(), Align.LEFT)));
        columns.add(new Column("in", Align.LEFT));
        block.heads()
                .quantities()
                .forEach(quantity -> columns.add(new Column(
                        quantity.head().heading(), quantity.kind() == Kind.WORDS ? Align.LEFT : Align.RIGHT)));
        List<List<Cell>> rows = new ArrayList<>();
        pairs.forEach(pair -> rows(block, pair).forEach(row -> rows.add(row.subList(from, row.size()))));
        return new Table(title, columns, rows);
    }

    private List<List<Cell>> rows(Block block, Pair pair) {
        if (pair.alike()) {
            return List.of(row(block, pair.names(), "both", pair.a()));
        }
        if (pair.a().isEmpty() || pair.b().isEmpty()) {
            String only = pair.a().isPresent() ? "A only" : "B only";
            return List.of(row(block, pair.names(), only, pair.a().or(pair::b)));
        }
        List<String> ditto = pair.names().stream().map(name -> "").toList();
        return List.of(
                row(block, pair.names(), "A", pair.a()),
                row(block, ditto, "B", pair.b()),
                differences(block, ditto, pair));
    }

    private List<Cell> row(Block block, List<String> names, String in, Optional<Row> row) {
        List<Cell> cells = start(block, names, in);
        List<Figure> figures = row.orElseThrow().figures();
        for (int i = 0; i < figures.size(); i++) {
            cells.add(
                    told.cell(figures.get(i), block.heads().quantities().get(i).kind()));
        }
        return cells;
    }

    private List<Cell> differences(Block block, List<String> names, Pair pair) {
        List<Cell> cells = start(block, names, "B - A");
        for (int i = 0; i < block.heads().quantities().size(); i++) {
            cells.add(difference(pair, i, block.heads().quantities().get(i).kind()));
        }
        return cells;
    }

    private static List<Cell> start(Block block, List<String> names, String in) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            boolean code = block.heads().names().get(i).key().equals("code");
            cells.add(Cell.of(code ? names.get(i).replace('-', ' ') : names.get(i)));
        }
        cells.add(Cell.of(in));
        return cells;
    }

    private Cell difference(Pair pair, int quantity, Kind kind) {
        if (pair.alike(quantity)) {
            return Cell.EMPTY;
        }
        OptionalDouble more = pair.more(quantity);
        return more.isPresent() ? told.difference(more.getAsDouble(), kind) : Cell.of("differs");
    }
}

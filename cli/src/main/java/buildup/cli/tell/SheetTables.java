package buildup.cli.tell;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.cli.table.Table.Align;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
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
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Sheets as tables that people read.
 *
 * @param printer in the unit of the document
 */
public record SheetTables(FigurePrinter printer) {
    /** Between the numbers of one size, which stay in one line. */
    private static final String BY = "\u00A0x\u00A0";

    /** Where a cell of a table comes from: a column, or one below it. */
    private record Source(Column column, int at, Optional<Column> below, int belowAt) {
        Column leaf() {
            return below.orElse(column);
        }
    }

    /** The tables of these sheets that have rows, in order; those that nobody asked for are left out. */
    public List<Table> of(List<Sheet> sheets) {
        return sheets.stream()
                .filter(Sheet::asked)
                .flatMap(sheet -> of(sheet).stream())
                .filter(table -> !table.rows().isEmpty())
                .toList();
    }

    /** The tables of one sheet, also without rows. */
    public List<Table> of(Sheet sheet) {
        return sheet.tables().stream().flatMap(layout -> tables(sheet, layout)).toList();
    }

    private Stream<Table> tables(Sheet sheet, Layout layout) {
        List<Source> sources =
                layout.keys().stream().map(key -> source(sheet, key)).toList();
        String title = printer.print(layout.title());
        List<Row> rows = lines(sheet, layout);
        if (sheet.single()) {
            return Stream.of(figureByFigure(title, sources, rows));
        }
        if (layout.apart().isEmpty()) {
            return Stream.of(table(title, sources, rows));
        }
        Map<String, List<Row>> parts = new LinkedHashMap<>();
        String apart = layout.apart().get();
        for (Row row : rows) {
            parts.computeIfAbsent(words(sheet, row, apart), name -> new ArrayList<>())
                    .add(row);
        }
        return parts.entrySet().stream().map(part -> table(titled(title, part.getKey()), sources, part.getValue()));
    }

    /** The rows that the table shows; one for each nested row where it asks for that. */
    private static List<Row> lines(Sheet sheet, Layout layout) {
        List<Source> where =
                layout.where().stream().map(key -> source(sheet, key)).toList();
        Stream<Row> shown = sheet.rows().stream()
                .filter(row -> where.isEmpty() || where.stream().anyMatch(source -> holds(cell(source, row))));
        return layout.each()
                .flatMap(sheet::at)
                .map(at -> shown.flatMap(row -> each(row, at)))
                .orElse(shown)
                .toList();
    }

    private static boolean holds(buildup.shared.sheet.Cell cell) {
        if (cell instanceof buildup.shared.sheet.Cell.Number number) {
            return Math.abs(number.amount()) > Tolerance.COINCIDENT;
        }
        return cell instanceof buildup.shared.sheet.Cell.Flag flag
                ? flag.yes()
                : cell != buildup.shared.sheet.Cell.NONE;
    }

    private static Stream<Row> each(Row row, int at) {
        return row.cells().get(at) instanceof buildup.shared.sheet.Cell.Rows nested
                ? nested.rows().stream().map(one -> {
                    List<buildup.shared.sheet.Cell> cells = new ArrayList<>(row.cells());
                    cells.set(at, new buildup.shared.sheet.Cell.Rows(List.of(one)));
                    return new Row(cells);
                })
                : Stream.empty();
    }

    private static String words(Sheet sheet, Row row, String key) {
        return sheet.cell(row, key) instanceof buildup.shared.sheet.Cell.Words words ? words.words() : "";
    }

    /** The name goes before what the title explains behind a semicolon or colon. */
    static String titled(String title, String name) {
        int end = Stream.of(title.indexOf(';'), title.indexOf(':'))
                .filter(at -> at >= 0)
                .min(Integer::compare)
                .orElse(title.length());
        return title.substring(0, end) + ", " + name + title.substring(end);
    }

    private static Source source(Sheet sheet, String key) {
        int dot = key.indexOf('.');
        String own = dot < 0 ? key : key.substring(0, dot);
        int at = sheet.at(own).orElseThrow(() -> new IllegalArgumentException(sheet.key() + " has no column " + key));
        Column column = sheet.columns().get(at);
        if (dot < 0 || !(column.type() instanceof Type.Nested nested)) {
            return new Source(column, at, Optional.empty(), 0);
        }
        List<String> below = nested.columns().stream().map(Column::key).toList();
        int belowAt = below.indexOf(key.substring(dot + 1));
        return new Source(column, at, Optional.of(nested.columns().get(belowAt)), belowAt);
    }

    /** One table of all that people read of a sheet, each heading with the unit of its figures: for a spreadsheet. */
    public Table whole(Sheet sheet) {
        List<Source> sources = new ArrayList<>();
        for (int at = 0; at < sheet.columns().size(); at++) {
            Column column = sheet.columns().get(at);
            if (column.shown() == Column.Shown.JSON) {
                continue;
            }
            if (column.type() instanceof Type.Nested nested && !nested.many()) {
                for (int below = 0; below < nested.columns().size(); below++) {
                    if (nested.columns().get(below).shown() != Column.Shown.JSON) {
                        sources.add(new Source(
                                column, at, Optional.of(nested.columns().get(below)), below));
                    }
                }
            } else {
                sources.add(new Source(column, at, Optional.empty(), 0));
            }
        }
        return new Table("", columns(sources, true), rows(sources, sheet.rows()));
    }

    private String spelled(Column column) {
        String unit = column.type() instanceof Type.Measure measure
                ? measure.quantity().unit(printer.metric())
                : "";
        return unit.isEmpty() || column.heading().endsWith(unit)
                ? column.heading()
                : (column.heading() + " " + unit).strip();
    }

    private Table table(String title, List<Source> sources, List<Row> rows) {
        return new Table(title, columns(sources, false), rows(sources, rows));
    }

    private List<List<Cell>> rows(List<Source> sources, List<Row> rows) {
        return rows.stream()
                .map(row -> sources.stream()
                        .flatMap(source -> cells(source.leaf(), cell(source, row)))
                        .toList())
                .toList();
    }

    /**
     * The heads of the columns. A second place says which it is.
     *
     * @param spelled with the unit of every figure, lengths too
     */
    private List<Table.Column> columns(List<Source> sources, boolean spelled) {
        String unit = spelled ? " " + Quantity.LENGTH.unit(printer.metric()) : "";
        List<Table.Column> columns = new ArrayList<>();
        boolean second = false;
        for (Source source : sources) {
            Column leaf = source.leaf();
            if (leaf.type() instanceof Type.Place) {
                String which = second ? leaf.heading() + " " : "";
                columns.add(new Table.Column(which + "out" + unit, Align.RIGHT));
                columns.add(new Table.Column(which + "up" + unit, Align.RIGHT));
                second = true;
            } else {
                boolean number = leaf.type() instanceof Type.Measure || leaf.type() instanceof Type.Amount;
                columns.add(
                        new Table.Column(spelled ? spelled(leaf) : heading(leaf), number ? Align.RIGHT : Align.LEFT));
            }
        }
        return columns;
    }

    /** One object: a line for each of its figures that is there; figures alone line up on the right. */
    private Table figureByFigure(String title, List<Source> sources, List<Row> rows) {
        List<List<Cell>> lines = new ArrayList<>();
        for (Row row : rows) {
            for (Source source : sources) {
                buildup.shared.sheet.Cell cell = cell(source, row);
                if (cell != buildup.shared.sheet.Cell.NONE) {
                    lines.add(List.of(
                            Cell.of(heading(source.leaf())),
                            cells(source.leaf(), cell)
                                    .reduce((one, other) -> Cell.of(one.text() + ", " + other.text()))
                                    .orElse(Cell.EMPTY)));
                }
            }
        }
        boolean figures = sources.stream().allMatch(source -> source.leaf().type() instanceof Type.Measure);
        return new Table(title, Table.columns("", figures ? ">" : ""), lines);
    }

    private static buildup.shared.sheet.Cell cell(Source source, Row row) {
        buildup.shared.sheet.Cell own = row.cells().get(source.at());
        if (source.below().isEmpty()) {
            return own;
        }
        return own instanceof buildup.shared.sheet.Cell.Rows rows
                        && !rows.rows().isEmpty()
                ? rows.rows().get(0).cells().get(source.belowAt())
                : buildup.shared.sheet.Cell.NONE;
    }

    /** With the unit of what is no length, once for the whole column. */
    private String heading(Column column) {
        if (column.type() instanceof Type.Measure measure
                && measure.quantity() != Quantity.LENGTH
                && measure.quantity() != Quantity.ANGLE) {
            String unit = measure.quantity().unit(printer.metric());
            boolean said = unit.isEmpty() || column.heading().endsWith(unit) || measure.quantity() == Quantity.SHARE;
            return said ? column.heading() : (column.heading() + ", " + unit).replaceFirst("^, ", "");
        }
        return column.heading();
    }

    private Stream<Cell> cells(Column column, buildup.shared.sheet.Cell cell) {
        if (column.type() instanceof Type.Place) {
            return cell instanceof buildup.shared.sheet.Cell.Place place
                    ? Stream.of(length(place.x()), length(place.y()))
                    : Stream.of(Cell.EMPTY, Cell.EMPTY);
        }
        return Stream.of(cell(column.type(), cell));
    }

    private Cell length(double inches) {
        Figure figure = Figure.length(inches);
        return Cell.of(printer.bare(figure), inches);
    }

    private Cell cell(Type type, buildup.shared.sheet.Cell cell) {
        if (cell instanceof buildup.shared.sheet.Cell.Number number && type instanceof Type.Measure measure) {
            Figure figure = new Figure(measure.quantity(), number.amount(), measure.rounding());
            String bare = printer.bare(figure);
            return Cell.of(measure.quantity() == Quantity.SHARE ? bare + " %" : bare, shown(figure));
        }
        if (cell instanceof buildup.shared.sheet.Cell.Amount amount) {
            return Cell.of(printer.print(amount.figure()), shown(amount.figure()));
        }
        return Cell.of(text(type, cell));
    }

    /** The figure in the unit that the column tells. */
    private double shown(Figure figure) {
        return figure.quantity().shown(figure.amount(), printer.metric());
    }

    private String text(Type type, buildup.shared.sheet.Cell cell) {
        if (cell instanceof buildup.shared.sheet.Cell.Words words) {
            return words.words();
        }
        if (cell instanceof buildup.shared.sheet.Cell.Flag flag) {
            return flag.yes() ? "yes" : "no";
        }
        if (cell instanceof buildup.shared.sheet.Cell.Names names) {
            return String.join(", ", names.names());
        }
        if (cell instanceof buildup.shared.sheet.Cell.Saying saying) {
            return printer.print(saying.phrase());
        }
        if (cell instanceof buildup.shared.sheet.Cell.Sayings sayings) {
            return sayings.phrases().stream().map(printer::print).collect(Collectors.joining(" "));
        }
        if (cell instanceof buildup.shared.sheet.Cell.Called called && type instanceof Type.Called figures) {
            return called(called, figures);
        }
        if (cell instanceof buildup.shared.sheet.Cell.Numbers numbers && type instanceof Type.Measures measures) {
            return numbers.amounts().stream()
                    .map(amount -> printer.bare(new Figure(measures.quantity(), amount, measures.rounding())))
                    .collect(Collectors.joining(", "));
        }
        if (cell instanceof buildup.shared.sheet.Cell.Rows rows && type instanceof Type.Nested nested) {
            return rows.rows().stream().map(row -> inOneCell(nested, row)).collect(Collectors.joining(", "));
        }
        return "";
    }

    /** {@code width x height: 1 x 2, 3 x 4}. */
    private String called(buildup.shared.sheet.Cell.Called cell, Type.Called type) {
        String sizes = cell.rows().stream()
                .map(row -> row.stream()
                        .map(amount -> printer.bare(new Figure(type.quantity(), amount, type.rounding())))
                        .collect(Collectors.joining(BY)))
                .collect(Collectors.joining(", "));
        String names = String.join(" x ", cell.names());
        return sizes.isEmpty() ? names : names + ": " + sizes;
    }

    private String inOneCell(Type.Nested nested, Row row) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < nested.columns().size(); i++) {
            Column column = nested.columns().get(i);
            if (column.shown() != Column.Shown.JSON && row.cells().get(i) != buildup.shared.sheet.Cell.NONE) {
                parts.add(cells(column, row.cells().get(i)).map(Cell::text).collect(Collectors.joining(", ")));
            }
        }
        return String.join(nested.between(), parts);
    }
}

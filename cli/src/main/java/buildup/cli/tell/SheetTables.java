package buildup.cli.tell;

import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.profiles.outline.Tolerance;
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
import java.util.stream.Stream;

/**
 * Sheets as tables that people read.
 *
 * @param printer in the unit of the document
 */
public record SheetTables(FigurePrinter printer) {
    /** Columns side by side that leave room for the names on a page of 80 columns. */
    private static final int MOST_ABREAST = 7;

    /** The tables of these sheets that have rows, in order; those that nobody asked for are left out. */
    public List<Table> of(List<Sheet> sheets) {
        return sheets.stream()
                .filter(Sheet::asked)
                .flatMap(sheet -> of(sheet).stream())
                .filter(table -> !table.rows().isEmpty())
                .toList();
    }

    /** The tables of one sheet, also without rows; those of one word that sets them apart stand together. */
    public List<Table> of(Sheet sheet) {
        List<Table> tables = new ArrayList<>();
        List<Layout> layouts = sheet.tables();
        for (int i = 0; i < layouts.size(); ) {
            Optional<String> apart = layouts.get(i).apart();
            int end = i + 1;
            while (apart.isPresent()
                    && end < layouts.size()
                    && layouts.get(end).apart().equals(apart)) {
                end++;
            }
            List<Layout> together = layouts.subList(i, end);
            if (apart.isEmpty()) {
                tables.addAll(tables(sheet, layouts.get(i), "", sheet.rows()));
            } else {
                parts(sheet, apart.get())
                        .forEach((word, rows) ->
                                together.forEach(layout -> tables.addAll(tables(sheet, layout, word, rows))));
            }
            i = end;
        }
        return List.copyOf(tables);
    }

    /** The rows of each word of a column, in the order in which the words come. */
    static Map<String, List<Row>> parts(Sheet sheet, String apart) {
        Map<String, List<Row>> parts = new LinkedHashMap<>();
        for (Row row : sheet.rows()) {
            parts.computeIfAbsent(words(sheet.cell(row, apart)), word -> new ArrayList<>())
                    .add(row);
        }
        return parts;
    }

    private static String words(Cell cell) {
        return cell instanceof Cell.Words words ? words.words() : "";
    }

    private List<Table> tables(Sheet sheet, Layout layout, String apart, List<Row> all) {
        List<ColumnSource> sources =
                layout.keys().stream().map(key -> ColumnSource.of(sheet, key)).toList();
        String title = titled(printer.print(layout.title()), apart);
        List<Row> rows = lines(sheet, layout, sources, all);
        if (sheet.single() && layout.each().isEmpty()) {
            return List.of(figureByFigure(title, sources, rows));
        }
        return layout.across()
                .map(across -> across(sheet, title, sources, across, rows))
                .orElseGet(() -> List.of(table(title, sources, rows)));
    }

    /** The rows that the table shows; one for each nested row where it asks for that. */
    private static List<Row> lines(Sheet sheet, Layout layout, List<ColumnSource> sources, List<Row> all) {
        Stream<Row> shown = all.stream()
                .filter(row -> belongs(sheet, layout, row))
                .filter(row -> sources.stream().anyMatch(source -> !Cell.isNone(source.cell(row))));
        return layout.each()
                .flatMap(sheet::at)
                .map(at -> shown.flatMap(row -> each(row, at)))
                .orElse(shown)
                .toList();
    }

    /** Whether the row has something where the table asks for it. */
    static boolean belongs(Sheet sheet, Layout layout, Row row) {
        return layout.where().isEmpty()
                || layout.where().stream()
                        .anyMatch(key -> holds(ColumnSource.of(sheet, key).cell(row)));
    }

    private static boolean holds(Cell cell) {
        if (cell instanceof Cell.Decimal number) {
            return Math.abs(number.amount()) > Tolerance.COINCIDENT;
        }
        return cell instanceof Cell.Flag flag ? flag.yes() : !Cell.isNone(cell);
    }

    private static Stream<Row> each(Row row, int at) {
        return row.cells().get(at) instanceof Cell.Rows nested
                ? nested.rows().stream().map(one -> {
                    List<Cell> cells = new ArrayList<>(row.cells());
                    cells.set(at, new Cell.Rows(List.of(one)));
                    return new Row(cells);
                })
                : Stream.empty();
    }

    /** The name goes before what the title explains behind a semicolon or colon. */
    static String titled(String title, String name) {
        if (name.isEmpty()) {
            return title;
        }
        int end = Stream.of(title.indexOf(';'), title.indexOf(':'))
                .filter(at -> at >= 0)
                .min(Integer::compare)
                .orElse(title.length());
        return title.substring(0, end) + ", " + name + title.substring(end);
    }

    /** One table of all that people read of a sheet. */
    Table whole(Sheet sheet) {
        List<ColumnSource> sources = new ArrayList<>();
        for (Column column : sheet.columns()) {
            if (column.shown() == Column.Shown.JSON) {
                continue;
            }
            if (column.type() instanceof Type.Nested nested && !nested.many()) {
                nested.columns().stream()
                        .filter(below -> below.shown() != Column.Shown.JSON)
                        .forEach(below -> sources.add(ColumnSource.of(sheet, column.key() + "." + below.key())));
            } else {
                sources.add(ColumnSource.of(sheet, column.key()));
            }
        }
        return table("", sources, sheet.rows());
    }

    private Table table(String title, List<ColumnSource> sources, List<Row> rows) {
        Cells cells = new Cells(printer);
        return new Table(
                title,
                cells.columns(sources.stream().map(ColumnSource::column).toList()),
                rows.stream()
                        .map(row -> sources.stream()
                                .flatMap(source -> cells.cells(source.column(), source.cell(row)))
                                .toList())
                        .toList());
    }

    /** One object: a line for each of its figures that is there; figures alone line up on the right. */
    private Table figureByFigure(String title, List<ColumnSource> sources, List<Row> rows) {
        Cells cells = new Cells(printer);
        List<List<TableCell>> lines = new ArrayList<>();
        for (Row row : rows) {
            for (ColumnSource source : sources) {
                TableCell told = Cells.inOne(cells.cells(source.column(), source.cell(row)));
                // a list without names says nothing to people
                if (!Cell.isNone(source.cell(row)) && !told.text().isEmpty()) {
                    lines.add(List.of(TableCell.of(cells.heading(source.column())), told));
                }
            }
        }
        boolean figures = sources.stream().allMatch(source -> source.column().type() instanceof Type.Measure);
        return new Table(title, Table.columns("", figures ? ">" : ""), lines);
    }

    /** A column for each word of one column, with the last source below; as many tables as that takes. */
    private List<Table> across(Sheet sheet, String title, List<ColumnSource> sources, String across, List<Row> rows) {
        List<ColumnSource> heads = sources.subList(0, sources.size() - 1);
        ColumnSource last = sources.get(sources.size() - 1);
        List<String> words = rows.stream()
                .map(row -> words(sheet.cell(row, across)))
                .distinct()
                .toList();
        Map<List<Cell>, Map<String, Row>> lines = new LinkedHashMap<>();
        for (Row row : rows) {
            List<Cell> head = heads.stream().map(source -> source.cell(row)).toList();
            lines.computeIfAbsent(head, key -> new LinkedHashMap<>()).putIfAbsent(words(sheet.cell(row, across)), row);
        }
        List<Table> tables = new ArrayList<>();
        for (int start = 0; start < words.size(); start += MOST_ABREAST) {
            List<String> abreast = words.subList(start, Math.min(words.size(), start + MOST_ABREAST));
            tables.add(abreast(title, heads, last, abreast, lines));
        }
        return tables;
    }

    private Table abreast(
            String title,
            List<ColumnSource> heads,
            ColumnSource last,
            List<String> words,
            Map<List<Cell>, Map<String, Row>> lines) {
        Cells cells = new Cells(printer);
        List<Table.TextColumn> columns = new ArrayList<>();
        heads.forEach(source -> cells.columns(source.column()).forEach(columns::add));
        words.forEach(word -> cells.columns(last.column())
                .forEach(column -> columns.add(new Table.TextColumn(word, column.align(), column.unit()))));
        List<List<TableCell>> rows = new ArrayList<>();
        lines.forEach((head, found) -> {
            List<TableCell> row = new ArrayList<>();
            for (int i = 0; i < heads.size(); i++) {
                cells.cells(heads.get(i).column(), head.get(i)).forEach(row::add);
            }
            words.forEach(word -> cells.cells(
                            last.column(),
                            Optional.ofNullable(found.get(word)).map(last::cell).orElse(Cell.NONE))
                    .forEach(row::add));
            rows.add(row);
        });
        return new Table(title, columns, rows);
    }
}

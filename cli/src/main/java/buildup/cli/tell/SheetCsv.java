package buildup.cli.tell;

import buildup.cli.table.Csv;
import buildup.cli.table.Table;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Sheets for a spreadsheet. Figures are not rounded, and in the units in which people read them; the headings name the
 * units.
 *
 * @param printer in the unit of the document
 */
public record SheetCsv(FigurePrinter printer) {
    /**
     * The rows of these sheets one below the other, for whoever reads one list: what people read of each.
     *
     * @param sheets with the same columns; nothing is written when there are none
     */
    public String rows(List<Sheet> sheets) {
        List<Table> tables =
                sheets.stream().map(new SheetTables(printer)::whole).toList();
        return tables.isEmpty()
                ? ""
                : Csv.write(new Table(
                        "",
                        tables.get(0).columns(),
                        tables.stream().flatMap(table -> table.rows().stream()).toList()));
    }

    /** Each of the sheets that were asked for and have rows, under its title. */
    public String write(List<Sheet> sheets) {
        return sheets.stream()
                .filter(Sheet::asked)
                .flatMap(sheet -> Flat.of(sheet, SheetCsv::told).stream())
                .filter(sheet -> !sheet.rows().isEmpty())
                .map(sheet -> Csv.titled(table(sheet)))
                .collect(Collectors.joining(Csv.between()));
    }

    /** All but sentences in which people read the figures of other columns. */
    private static boolean told(Column column) {
        return !(column.type() instanceof Type.Saying) || column.shown() != Column.Shown.TEXT;
    }

    private Table table(Sheet sheet) {
        Cells cells = new Cells(printer);
        return new Table(
                printer.print(sheet.title()),
                sheet.columns().stream()
                        .flatMap(column -> cells.columns(named(column)))
                        .toList(),
                sheet.rows().stream().map(row -> cells(cells, sheet, row)).toList());
    }

    private static List<buildup.cli.table.Cell> cells(Cells cells, Sheet sheet, Row row) {
        return IntStream.range(0, sheet.columns().size())
                .boxed()
                .flatMap(i -> cells.cells(sheet.columns().get(i), row.cells().get(i)))
                .toList();
    }

    /** A column without a heading is called by its key. */
    private static Column named(Column column) {
        return column.heading().isEmpty()
                ? new Column(column.key(), column.key(), column.type(), column.shown(), column.traits())
                : column;
    }
}

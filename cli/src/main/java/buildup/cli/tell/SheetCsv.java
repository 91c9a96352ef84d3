package buildup.cli.tell;

import buildup.cli.table.Csv;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
                .flatMap(sheet -> FlatSheet.of(sheet, SheetCsv::told).stream())
                .filter(sheet -> !sheet.rows().isEmpty() && !sheet.columns().isEmpty())
                .map(sheet -> Csv.titled(table(sheet)))
                .collect(Collectors.joining(Csv.between()));
    }

    /** All but sentences in which people read the figures of other columns. */
    private static boolean told(Column column) {
        return !(column.type() instanceof Type.Saying) || column.shown() != Column.Shown.TEXT;
    }

    private Table table(Sheet sheet) {
        return new Table(
                printer.print(sheet.title()),
                sheet.columns().stream().flatMap(this::columns).toList(),
                sheet.rows().stream().map(row -> cells(sheet, row)).toList());
    }

    private List<TableCell> cells(Sheet sheet, Row row) {
        return IntStream.range(0, sheet.columns().size())
                .boxed()
                .flatMap(i -> cells(sheet.columns().get(i), row.cells().get(i)))
                .toList();
    }

    /** A figure that brings its quantity with it has its unit in a column of its own. */
    Stream<Table.TextColumn> columns(Column column) {
        // a column without a heading is called by its key
        String heading = column.heading().isEmpty() ? column.key() : column.heading();
        Column named = new Column(column.key(), heading, column.type(), column.shown(), column.traits());
        Stream<Table.TextColumn> own = new Cells(printer).columns(named);
        return column.type() instanceof Type.Amount
                ? Stream.concat(own, Stream.of(new Table.TextColumn("unit of " + heading, Table.Align.LEFT)))
                : own;
    }

    /** As many as the columns. */
    Stream<TableCell> cells(Column column, Cell cell) {
        if (cell instanceof Cell.Amount amount) {
            Quantity quantity = amount.figure().quantity();
            double shown = quantity.shown(amount.figure().amount(), printer.metric());
            return Stream.of(TableCell.of("", shown), TableCell.of(quantity.unit(printer.metric())));
        }
        Stream<TableCell> own = new Cells(printer).cells(column, cell);
        return column.type() instanceof Type.Amount ? Stream.concat(own, Stream.of(TableCell.EMPTY)) : own;
    }
}

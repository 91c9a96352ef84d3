package buildup.cli.tell;

import buildup.cli.table.Csv;
import buildup.cli.table.Table;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Sheet;
import java.util.List;

/** Rows for a spreadsheet: all that people read of each, figures in the unit that stands in the heading. */
public final class SheetCsv {
    private SheetCsv() {}

    /**
     * The rows of these sheets one below the other.
     *
     * @param sheets with the same columns; nothing is written when there are none
     * @param printer in the unit of the headings
     */
    public static String write(List<Sheet> sheets, FigurePrinter printer) {
        List<Table> tables = sheets.stream()
                .map(sheet -> new SheetTables(printer).whole(sheet))
                .toList();
        return tables.isEmpty()
                ? ""
                : Csv.write(new Table(
                        "",
                        tables.get(0).columns(),
                        tables.stream().flatMap(table -> table.rows().stream()).toList()));
    }
}

package buildup.cli.report;

import buildup.cli.table.Table;
import buildup.cli.tell.SheetTables;
import buildup.engine.Answers;
import buildup.engine.Sheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of one stack, in the order of a report; some without rows.
 *
 * @param printer in whose unit; there are the same tables with the same rows in every unit
 */
public record SectionTables(Answers known, FigurePrinter printer) {
    /** All of them, the figures of the whole first. */
    public List<Table> all() {
        SheetTables tables = new SheetTables(printer);
        List<Table> all = new ArrayList<>();
        for (Sheet sheet : Sheets.of(known)) {
            if (sheet.asked()) {
                all.addAll(tables.of(sheet));
            }
        }
        return List.copyOf(all);
    }
}

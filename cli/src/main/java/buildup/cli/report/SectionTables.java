package buildup.cli.report;

import buildup.cli.table.Table;
import buildup.cli.tell.SheetTables;
import buildup.engine.Answers;
import buildup.engine.Sheets;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;

/** The tables of one stack, in the order of a report; some without rows. */
public final class SectionTables {
    private final Answers known;
    private final Printed printed;

    public SectionTables(Answers known, Printed printed) {
        this.known = known;
        this.printed = printed;
    }

    public List<Table> all() {
        SheetTables sheets = new SheetTables(new FigurePrinter(printed.unit()));
        List<Table> tables = new ArrayList<>();
        Sheets.of(known).stream().filter(sheet -> !sheet.single()).forEach(sheet -> tables.addAll(sheets.of(sheet)));
        tables.addAll(new SupportTables(known, printed).all());
        tables.addAll(new NailTables(known, printed).all());
        tables.addAll(new LightTables(known, printed).all());
        tables.addAll(new SightTables(known, printed).all());
        return tables;
    }
}

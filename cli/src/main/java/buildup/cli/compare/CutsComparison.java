package buildup.cli.compare;

import buildup.cli.report.CutsTelling;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.cli.tell.Beside;
import buildup.cli.tell.BesideJson;
import buildup.cli.tell.BesideTables;
import buildup.cli.tell.Json;
import buildup.cli.tell.TellText;
import buildup.cli.tell.Telling;
import buildup.engine.Cuts;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Set;

/** What two stacks take, beside each other; the whole of each is another call. */
public record CutsComparison(Cuts a, Cuts b) {
    /** Sheets of the wood and the work; lengths and settings are read by themselves. */
    private static final Set<String> TAKEN = Set.of("totals", "wood", "joints", "shopping", "cost");

    /** As text; sizes in the unit of A. */
    public String text() {
        StringBuilder text = new StringBuilder();
        line(text, "A: " + a.answer().title() + " (" + a.answer().file() + ")");
        line(text, "B: " + b.answer().title() + " (" + b.answer().file() + ")");
        tables().forEach(table -> text.append('\n').append(TextTable.write(table, TellText.WIDTH)));
        return text.toString();
    }

    private static void line(StringBuilder text, String words) {
        Display.wrap(words, TellText.WIDTH).forEach(line -> text.append(line).append('\n'));
    }

    /** What both take, figure by figure; none when either has no sticks. */
    public List<Table> tables() {
        return new BesideTables(new FigurePrinter(a.answer().unit())).of(Beside.of(taken(a), taken(b)));
    }

    private List<Sheet> taken(Cuts cuts) {
        boolean both = List.of(a, b).stream()
                .allMatch(one -> one.known().flatMap(Cuts.Known::list).isPresent());
        return both
                ? sheets(cuts).stream()
                        .filter(sheet -> TAKEN.contains(sheet.key()))
                        .toList()
                : List.of();
    }

    /** Puts every figure that differs, where both are known. */
    public Json put(Json json) {
        if (a.known().isPresent() && b.known().isPresent()) {
            BesideJson.put(
                    json,
                    Beside.flat(sheets(a), sheets(b)),
                    new FigurePrinter(a.answer().unit()));
        }
        return json;
    }

    private static List<Sheet> sheets(Cuts cuts) {
        Telling telling = CutsTelling.of(cuts);
        return telling.sheets().stream().filter(Sheet::toPrograms).toList();
    }
}

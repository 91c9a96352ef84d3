package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Csv;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.sticks.Bill;
import buildup.engine.sticks.CutList;
import buildup.engine.sticks.Joint;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The cuts of a stack as text and for a spreadsheet, and those of two stacks beside each other. */
public final class CutsText {
    private CutsText() {}

    /** Lengths, saw settings, sticks, cost; nothing when they are not known. */
    public static String write(Cuts cuts) {
        StringBuilder text = new StringBuilder();
        cuts.known().ifPresent(known -> write(text, cuts.answer(), known));
        return text.toString();
    }

    private static void write(StringBuilder text, Answer answer, Cuts.Known known) {
        Printed printed = new Printed(answer.unit());
        CutTables lengths = new CutTables(known.job(), known.covings(), printed);
        lines(text, answer.title());
        lines(text, printed.legend());
        Stream.concat(
                        lengths.all().stream(),
                        known.list().stream().flatMap(list -> new StickTables(list, printed).all().stream()))
                .filter(table -> !table.rows().isEmpty())
                .forEach(table -> table(text, table));
        text.append('\n');
        lengths.cautions().forEach(caution -> lines(text, caution));
    }

    private static void table(StringBuilder text, Table table) {
        text.append('\n').append(TextTable.write(table, TextReport.WIDTH));
    }

    private static void lines(StringBuilder text, String words) {
        Display.wrap(words, TextReport.WIDTH).forEach(line -> text.append(line).append('\n'));
    }

    /** The pieces of one stack, or of several one below the other, for a spreadsheet; inches and degrees. */
    public static String csv(List<Cuts> all) {
        List<List<Cell>> rows = new ArrayList<>();
        List<Table.Column> columns = List.of();
        for (Cuts cuts : all) {
            Optional<Table> pieces = cuts.known()
                    .map(known -> known.list().orElseGet(() -> CutList.withoutStock(known.job())))
                    .map(list -> StickTables.pieces(list, cuts.answer().title()));
            columns = pieces.map(Table::columns).orElse(columns);
            pieces.ifPresent(table -> rows.addAll(table.rows()));
        }
        return columns.isEmpty() ? "" : Csv.write(new Table("", columns, rows));
    }

    /** What two stacks take, beside each other; the whole of each is another call. */
    public static String beside(Cuts a, Cuts b) {
        StringBuilder text = new StringBuilder();
        Optional<CutList> first = a.known().flatMap(Cuts.Known::list);
        Optional<CutList> second = b.known().flatMap(Cuts.Known::list);
        lines(text, "A: " + a.answer().title() + " (" + a.answer().file() + ")");
        lines(text, "B: " + b.answer().title() + " (" + b.answer().file() + ")");
        if (first.isPresent() && second.isPresent()) {
            table(text, new Beside(first.get(), second.get()).table());
        }
        return text.toString();
    }

    /** Figures of two cut lists in pairs. */
    private record Beside(CutList a, CutList b) {
        Table table() {
            List<List<Cell>> rows = new ArrayList<>();
            rows.add(row("pieces", list -> list.pieces().size(), 0));
            rows.add(row("feet of pieces", CutList::feetWanted, 1));
            Set<String> names = new LinkedHashSet<>();
            Stream.of(a, b).forEach(list -> list.bills().forEach(bill -> names.add(name(bill))));
            names.forEach(name -> rows.add(row("sticks: " + name, list -> sum(list, name, Bill::sticks), 0)));
            rows.add(row("sticks", list -> list.sticks().size(), 0));
            rows.add(row("feet of sticks", list -> sum(list, Bill::feet), 1));
            rows.add(row("board feet", list -> sum(list, Bill::boardFeet), 2));
            rows.add(row("waste, board feet", list -> sum(list, bill -> bill.boardFeet() * bill.wasted()), 2));
            for (Joint joint : Joint.values()) {
                if (a.joints().containsKey(joint) || b.joints().containsKey(joint)) {
                    rows.add(
                            row("joints: " + joint.word(), list -> list.joints().getOrDefault(joint, 0), 0));
                }
            }
            rows.add(row("wood", list -> list.price() / 100.0, 2));
            rows.add(row("labor", list -> list.labor() / 100.0, 2));
            rows.add(row("together", list -> (list.price() + list.labor()) / 100.0, 2));
            return new Table("WHAT THEY TAKE", Table.columns("", ">A", ">B", ">B less A"), rows);
        }

        private static String name(Bill bill) {
            return bill.name() + ", " + bill.wood();
        }

        private static double sum(CutList list, ToDoubleFunction<Bill> figure) {
            return list.bills().stream().mapToDouble(figure).sum();
        }

        private static double sum(CutList list, String name, ToDoubleFunction<Bill> figure) {
            return list.bills().stream()
                    .filter(bill -> name(bill).equals(name))
                    .mapToDouble(figure)
                    .sum();
        }

        private List<Cell> row(String name, ToDoubleFunction<CutList> figure, int places) {
            double one = figure.applyAsDouble(a);
            double other = figure.applyAsDouble(b);
            return List.of(
                    Cell.of(name),
                    Printed.figure(one, places),
                    Printed.figure(other, places),
                    Printed.figure(other - one, places));
        }
    }
}

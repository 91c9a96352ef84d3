package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Bill;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.Joint;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** What two stacks take, beside each other. */
public final class CutsBeside {
    private CutsBeside() {}

    private static void table(StringBuilder text, Table table) {
        text.append('\n').append(TextTable.write(table, TextReport.WIDTH));
    }

    private static void lines(StringBuilder text, String words) {
        Display.wrap(words, TextReport.WIDTH).forEach(line -> text.append(line).append('\n'));
    }

    /** What two stacks take, beside each other; the whole of each is another call. */
    public static String write(Cuts a, Cuts b) {
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
            rows.add(row("total", list -> (list.price() + list.labor()) / 100.0, 2));
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

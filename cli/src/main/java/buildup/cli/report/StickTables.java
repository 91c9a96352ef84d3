package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.sticks.Bill;
import buildup.engine.sticks.CutList;
import buildup.engine.sticks.End;
import buildup.engine.sticks.Fine;
import buildup.engine.sticks.LotPlan;
import buildup.engine.sticks.Piece;
import buildup.engine.sticks.Shop;
import buildup.engine.sticks.Stick;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Sticks to take, what each is cut into, and what it all costs; some tables without rows. */
final class StickTables {
    private static final double HUNDREDTHS = 100;

    private final CutList list;
    private final Printed printed;

    StickTables(CutList list, Printed printed) {
        this.list = list;
        this.printed = printed;
    }

    List<Table> all() {
        return List.of(take(), byStick(), without(), wood(), plans(), cost());
    }

    /** Sticks that are alike. */
    private record Alike(String name, String wood, Stick.Origin origin, int length, long price) {
        static Alike of(Stick stick) {
            return new Alike(
                    stick.supply().name(), stick.supply().wood(), stick.origin(), stick.length(), stick.price());
        }
    }

    private Table take() {
        Map<Alike, Integer> counts = new LinkedHashMap<>();
        list.sticks().forEach(stick -> counts.merge(Alike.of(stick), 1, Integer::sum));
        List<List<Cell>> rows = new ArrayList<>();
        counts.forEach((stick, count) -> rows.add(List.of(
                Cell.of(stick.name()),
                Cell.of(stick.wood()),
                Cell.of(origin(stick.origin())),
                length(stick.length()),
                Cell.of(String.valueOf(count), count),
                stick.price() == 0 ? Cell.EMPTY : money(stick.price()),
                stick.price() == 0 ? Cell.EMPTY : money(stick.price() * count))));
        return new Table(
                "STICKS TO TAKE",
                Table.columns("stick", "wood", "from", ">length", ">count", ">each", ">together"),
                rows);
    }

    static String origin(Stick.Origin origin) {
        return switch (origin) {
            case ON_HAND -> "on hand";
            case BOUGHT -> "to buy";
            case MISSING -> "to find";
        };
    }

    private Cell length(int steps) {
        double inches = Fine.inches(steps);
        return Cell.of(printed.figure(list.shop().grid().stick(steps)), inches);
    }

    private Table byStick() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < list.sticks().size(); i++) {
            Stick stick = list.sticks().get(i);
            for (int j = 0; j < stick.strips().size(); j++) {
                Stick.Strip strip = stick.strips().get(j);
                boolean first = j == 0;
                rows.add(List.of(
                        first ? Cell.of(String.valueOf(i + 1), i + 1) : Cell.EMPTY,
                        first
                                ? Cell.of(stick.supply().name() + ", "
                                        + length(stick.length()).text())
                                : Cell.EMPTY,
                        strip.ripped() ? printed.cell(Fine.inches(strip.width())) : Cell.EMPTY,
                        Cell.of(strip.pieces().stream()
                                .map(lie -> lie.piece().id() + "\u00A0"
                                        + printed.size(Fine.inches(lie.piece().length())))
                                .collect(Collectors.joining(", "))),
                        rest(strip)));
            }
        }
        boolean glued = list.sticks().stream()
                .flatMap(stick -> stick.strips().stream())
                .flatMap(strip -> strip.pieces().stream())
                .anyMatch(lie -> lie.piece().gluedUp());
        return new Table(
                "STICK BY STICK: pieces from the left, long point to long point; rests to keep, others in brackets"
                        + (glued ? "; plies are cut square, long point to long point, glued up, and mitered then" : ""),
                Table.columns(">no", "stick", ">ripped to", "pieces", ">rest"),
                rows);
    }

    private Cell rest(Stick.Strip strip) {
        double inches = Fine.inches(strip.rest());
        String size = printed.size(inches);
        return Cell.of(list.keeps(strip) ? size : "(" + size + ")", inches);
    }

    private Table without() {
        return new Table(
                "NO STICK FOR",
                Table.columns("piece", "course", "stretch", ">length"),
                list.without().stream()
                        .map(piece -> List.of(
                                Cell.of(piece.id()),
                                Cell.of(piece.course()),
                                Cell.of(piece.stretch()),
                                printed.cell(Fine.inches(piece.length()))))
                        .toList());
    }

    private Table wood() {
        return new Table(
                "WOOD: shares in pieces, in rests that are kept, and wasted in kerfs, ends, edges, short rests; board feet by"
                        + " nominal sizes",
                Table.columns(
                        "stick",
                        "wood",
                        ">sticks",
                        ">feet",
                        ">board feet",
                        ">pieces %",
                        ">kept %",
                        ">waste %",
                        ">price"),
                list.bills().stream().map(StickTables::wood).toList());
    }

    private static List<Cell> wood(Bill bill) {
        return List.of(
                Cell.of(bill.name()),
                Cell.of(bill.wood()),
                Cell.of(String.valueOf(bill.sticks()), bill.sticks()),
                Printed.figure(bill.feet(), 1),
                Printed.figure(bill.boardFeet(), 2),
                share(bill.used()),
                share(bill.kept()),
                share(bill.wasted()),
                bill.priced() ? money(bill.price()) : Cell.of("?"));
    }

    private static Cell share(double share) {
        return Printed.figure(100 * share, 1);
    }

    static Cell money(long hundredths) {
        return Printed.figure(hundredths / HUNDREDTHS, 2);
    }

    private Table plans() {
        List<List<Cell>> rows = new ArrayList<>();
        list.lots()
                .forEach(lot -> rows.add(List.of(
                        Cell.of(printed.words(lot.name())),
                        Cell.of(lot.wood()),
                        Cell.of(String.valueOf(lot.pieces()), lot.pieces()),
                        Cell.of(String.valueOf(lot.sticks()), lot.sticks()),
                        Cell.of(known(lot)))));
        list.rips()
                .forEach(rip -> rows.add(List.of(
                        Cell.of("boards " + printed.size(rip.thickness()) + ", ripped"),
                        Cell.of(rip.wood()),
                        Cell.EMPTY,
                        Cell.EMPTY,
                        Cell.of(known(rip.aim(), rip.over())))));
        return new Table(
                "HOW GOOD IT IS: each lot by itself; then the boards that are ripped, against any other way to rip them",
                Table.columns("lot", "wood", ">pieces", ">sticks, strips", "what is known"),
                rows);
    }

    /** What is proved of a lot, in words. */
    private static String known(LotPlan lot) {
        if (lot.missing()) {
            return "sticks are missing";
        }
        return lot.ripped() ? "ripped: see below" : known(lot.aim(), lot.over());
    }

    private static String known(Shop.Aim aim, long over) {
        boolean cheapest = aim == Shop.Aim.CHEAPEST;
        if (over == 0) {
            return cheapest ? "least price, proved" : "fewest to buy, proved";
        }
        return cheapest
                ? "at most " + Printed.decimals(over / HUNDREDTHS, 2) + " over the least price"
                : "at most " + over + " more than the fewest";
    }

    private Table cost() {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(List.of(
                Cell.of(list.priced() ? "wood" : "wood, as far as it has prices"),
                Cell.EMPTY,
                Cell.EMPTY,
                money(list.price())));
        list.joints().forEach((joint, count) -> {
            long price = list.shop().joints().getOrDefault(joint, 0L);
            rows.add(List.of(
                    Cell.of(joint.word()),
                    Cell.of(String.valueOf(count), count),
                    price == 0 ? Cell.EMPTY : money(price),
                    price == 0 ? Cell.EMPTY : money(price * count)));
        });
        rows.add(List.of(Cell.of("together"), Cell.EMPTY, Cell.EMPTY, money(list.price() + list.labor())));
        return new Table("COST: wood, and joints to make", Table.columns("what", ">count", ">each", ">price"), rows);
    }

    /** Every piece that is cut, with its stick: one row for each, for a spreadsheet. */
    static Table pieces(CutList list, String stack) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < list.sticks().size(); i++) {
            Stick stick = list.sticks().get(i);
            for (Stick.Strip strip : stick.strips()) {
                for (Stick.Lie lie : strip.pieces()) {
                    List<Cell> row = new ArrayList<>(piece(stack, lie.piece()));
                    row.add(Cell.of(String.valueOf(i + 1), i + 1));
                    row.add(Cell.of(stick.supply().name()));
                    row.add(Cell.of(stick.supply().wood()));
                    row.add(Cell.of(origin(stick.origin())));
                    row.add(inches(stick.length()));
                    row.add(inches(strip.width()));
                    row.add(inches(lie.from()));
                    rows.add(row);
                }
            }
        }
        for (Piece piece : list.without()) {
            List<Cell> row = new ArrayList<>(piece(stack, piece));
            while (row.size() < COLUMNS.size()) {
                row.add(Cell.EMPTY);
            }
            rows.add(row);
        }
        return new Table("PIECES", COLUMNS, rows);
    }

    private static final List<Table.Column> COLUMNS = Table.columns(
            "stack",
            "piece",
            "course",
            "stretch",
            "part",
            "length in",
            "left cut",
            "left miter deg",
            "left bevel deg",
            "right cut",
            "right miter deg",
            "right bevel deg",
            "stick",
            "of",
            "wood",
            "from",
            "stick length in",
            "width in",
            "begins at in");

    private static List<Cell> piece(String stack, Piece piece) {
        List<Cell> row = new ArrayList<>(List.of(
                Cell.of(stack),
                Cell.of(piece.id()),
                Cell.of(piece.course()),
                Cell.of(piece.stretch()),
                Cell.of(piece.part()),
                inches(piece.length())));
        row.addAll(end(piece.left()));
        row.addAll(end(piece.right()));
        return row;
    }

    private static List<Cell> end(End end) {
        return List.of(Cell.of(end.joint().word()), Printed.figure(end.miter(), 1), Printed.figure(end.bevel(), 1));
    }

    private static Cell inches(int steps) {
        return Cell.of("", Fine.inches(steps));
    }
}

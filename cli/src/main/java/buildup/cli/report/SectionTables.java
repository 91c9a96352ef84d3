package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Table;
import buildup.engine.Answers;
import buildup.engine.backing.Backing;
import buildup.engine.compose.Body;
import buildup.engine.compose.Contact;
import buildup.engine.compose.Section;
import buildup.engine.compose.Standing;
import buildup.engine.placing.Placed;
import buildup.engine.stack.Kind;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The tables of one stack, in the order of a report; some without rows. */
public final class SectionTables {
    private final Section section;
    private final Answers known;
    private final Printed printed;

    public SectionTables(Answers known, Printed printed) {
        this.section = known.section();
        this.known = known;
        this.printed = printed;
    }

    public List<Table> all() {
        List<Table> tables = new ArrayList<>(
                List.of(pieces(), places(), holds(), steps(), members(), reveals(), contacts(), overlaps(), voids()));
        tables.addAll(new SupportTables(known, printed).all());
        tables.addAll(new NailTables(known, printed).all());
        tables.addAll(new LightTables(known, printed).all());
        tables.addAll(new SightTables(known, printed).all());
        return tables;
    }

    private Table pieces() {
        String list = section.stack().boardList();
        return new Table(
                "PIECES in the order of putting up; blanks thickness x width; boards of the list " + list,
                Table.columns("", "piece", "kind", "profile", "blank", "cut from"),
                ofPieces((number, placed) -> List.of(
                        Cell.of(Section.letter(number)),
                        Cell.of(placed.name()),
                        Cell.of(placed.piece().kind().word()),
                        Cell.of(placed.piece().stock().name()),
                        Cell.of(blank(placed)),
                        Cell.of(Blank.stock(placed, known)
                                .filter(stock ->
                                        !stock.equals(placed.piece().stock().name()))
                                .orElse("")))));
    }

    /** Framing is there already: nobody cuts it. */
    private String blank(Placed placed) {
        return placed.piece().kind() == Kind.FRAMING
                ? ""
                : printed.size(placed.blankThickness()) + " x " + printed.size(placed.blankWidth());
    }

    private Table places() {
        return new Table(
                "WHERE THEY SIT: heights from the datum, out from the wall plane",
                Table.columns("", "piece", ">bottom", ">top", ">back", ">face", ">sq in"),
                ofPieces((number, placed) -> {
                    Box box = placed.outline().box();
                    return List.of(
                            Cell.of(Section.letter(number)),
                            Cell.of(placed.name()),
                            printed.cell(box.bottom()),
                            printed.cell(box.top()),
                            printed.cell(box.back()),
                            printed.cell(box.face()),
                            Printed.figure(placed.outline().area(), 2));
                }));
    }

    private Table holds() {
        return new Table(
                "WHAT HOLDS THEM, fastenings not counted; with the width that bears and the face that takes a nail",
                Table.columns("", "piece", "held", "bears on", "backing to nail to"),
                ofPieces((number, placed) -> List.of(
                        Cell.of(Section.letter(number)),
                        Cell.of(placed.name()),
                        Cell.of(held(number)),
                        Cell.of(bearing(number)),
                        Cell.of(backing(number)))));
    }

    private interface PieceRow {
        List<Cell> of(int number, Placed placed);
    }

    private List<List<Cell>> ofPieces(PieceRow row) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            int number = i;
            section.body(i).placed().ifPresent(placed -> rows.add(row.of(number, placed)));
        }
        return rows;
    }

    private String held(int number) {
        Body body = section.body(number);
        Standing standing = standing(number);
        if (body.framing()) {
            return "framing";
        }
        return standing.fixed() ? "fixed" : standing.grounded() ? "stands" : "hangs";
    }

    private String bearing(int number) {
        Map<String, Double> widths = new LinkedHashMap<>();
        standing(number).bearing().forEach(one -> widths.merge(section.name(one.on()), one.width(), Double::sum));
        return listed(widths);
    }

    private String backing(int number) {
        Map<String, Double> lengths = new LinkedHashMap<>();
        known.backings().stream()
                .filter(backing -> backing.body() == number)
                .map(Backing::stretches)
                .flatMap(List::stream)
                .forEach(one -> lengths.merge(section.name(one.by()), one.from().distance(one.to()), Double::sum));
        return listed(lengths);
    }

    private String listed(Map<String, Double> sizes) {
        return sizes.entrySet().stream()
                .map(entry -> entry.getKey() + " " + printed.size(entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private Standing standing(int number) {
        return section.standing().stream()
                .filter(one -> one.body() == number)
                .findFirst()
                .orElseThrow();
    }

    private Table steps() {
        return new Table(
                "STEP BY STEP: the whole stack once each piece is up",
                Table.columns("", "piece", ">height", ">projection", ">top"),
                section.steps().stream()
                        .map(step -> List.of(
                                Cell.of(Section.letter(step.body())),
                                Cell.of(section.name(step.body())),
                                printed.cell(step.height()),
                                printed.cell(step.projection()),
                                printed.cell(step.top())))
                        .toList());
    }

    private Table members() {
        return new Table(
                "MEMBERS along the room side, from below; step: how far a piece stands out beyond the one before",
                Table.columns("piece", "member", ">length", ">bottom", ">top", ">projection", ">step"),
                section.members().stream()
                        .map(member -> List.of(
                                Cell.of(section.name(member.body())),
                                Cell.of(member.member()),
                                printed.cell(member.length()),
                                printed.cell(member.box().bottom()),
                                printed.cell(member.box().top()),
                                printed.cell(member.projection()),
                                printed.cell(member.step())))
                        .toList());
    }

    private Table reveals() {
        return new Table(
                "REVEALS: how far the first shows past the second; where they meet",
                Table.columns("piece", "over", ">reveal", "along", ">step", ">out", ">up"),
                section.reveals().stream()
                        .map(reveal -> row(
                                List.of(
                                        Cell.of(section.name(reveal.piece())),
                                        Cell.of(section.name(reveal.over())),
                                        printed.cell(reveal.amount()),
                                        Cell.of(reveal.along().word()),
                                        printed.cell(reveal.step())),
                                reveal.at()))
                        .toList());
    }

    private Table contacts() {
        return new Table(
                "CONTACTS; slope in degrees from level",
                Table.columns("piece", "", "piece", ">length", ">slope"),
                section.contacts().stream()
                        .map(contact -> List.of(
                                Cell.of(section.name(contact.a())),
                                Cell.of(contact.facing()
                                        .map(Contact.Facing::word)
                                        .orElse("meets")),
                                Cell.of(section.name(contact.b())),
                                printed.cell(contact.length()),
                                contact.stretch().isPresent() ? Printed.figure(contact.slope(), 1) : Cell.EMPTY))
                        .toList());
    }

    private Table overlaps() {
        return new Table(
                "OVERLAPS: wood in the same place twice",
                Table.columns("piece", "piece", ">depth", ">sq in", ">out", ">up"),
                section.overlaps().stream()
                        .map(overlap -> row(
                                List.of(
                                        Cell.of(section.name(overlap.a())),
                                        Cell.of(section.name(overlap.b())),
                                        printed.cell(overlap.depth()),
                                        Printed.figure(overlap.area(), 2)),
                                overlap.at()))
                        .toList());
    }

    private Table voids() {
        return new Table(
                "VOIDS: air shut in",
                Table.columns(">sq in", ">out", ">up", "closed by"),
                section.voids().stream()
                        .map(hollow -> List.of(
                                Printed.figure(hollow.area(), 2),
                                printed.cell(hollow.at().x()),
                                printed.cell(hollow.at().y()),
                                Cell.of(
                                        hollow.closedBy().isEmpty()
                                                ? "wood alone"
                                                : "wood and " + String.join(", ", hollow.closedBy()))))
                        .toList());
    }

    private List<Cell> row(List<Cell> cells, Point at) {
        List<Cell> row = new ArrayList<>(cells);
        row.add(printed.cell(at.x()));
        row.add(printed.cell(at.y()));
        return row;
    }
}

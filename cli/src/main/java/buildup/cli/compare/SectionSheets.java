package buildup.cli.compare;

import static buildup.cli.compare.Sheet.length;
import static buildup.cli.compare.Sheet.names;
import static buildup.cli.compare.Sheet.words;

import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Quantity;
import buildup.cli.compare.Sheet.Row;
import buildup.engine.Answers;
import buildup.engine.hold.backing.Backing;
import buildup.engine.hold.support.Support;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.compose.Totals;
import buildup.engine.section.placing.Blank;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sheets of what the section itself says. */
record SectionSheets(Answers known, Section section) {
    static final String TOTALS = "totals";
    static final String STOCK = "stock";
    static final String PLACES = "pieces";
    static final String HOLDS = "holds";
    static final String REVEALS = "reveals";

    List<Sheet> all() {
        return List.of(totals(), stock(), blanks(), places(), holds(), steps(), members(), reveals());
    }

    private Sheet totals() {
        Totals totals = section.totals();
        Optional<Support.Verdict> whole = known.support().whole();
        List<Quantity> quantities = List.of(
                length("height"),
                length("projection"),
                length("bottom"),
                length("top"),
                length("trimHeight", "height of the trim"),
                length("trimProjection", "projection of the trim"),
                length("ceilingLeft", "left under the ceiling"),
                length("projectionLeft", "projection left"),
                Sheet.of("area", "area, sq in", Kind.AREA),
                Sheet.of("weightPerFoot", "weight, lb a foot", Kind.WEIGHT),
                words("stands", "as fastened it"),
                Sheet.of("factor", "loads may grow, times", Kind.TIMES));
        List<Figure> figures = List.of(
                Figure.of(totals.height()),
                Figure.of(totals.projection()),
                Figure.of(totals.bottom()),
                Figure.of(totals.top()),
                Figure.of(totals.trimHeight()),
                Figure.of(totals.trimProjection()),
                Figure.of(section.ceilingLeft()),
                Figure.of(section.projectionLeft()),
                Figure.of(totals.area()),
                Figure.of(totals.weightPerFoot()),
                Figure.of(whole.map(verdict -> verdict.stands() ? "stands" : "falls")
                        .orElse("")),
                Figure.of(whole.map(Support.Verdict::factor)
                        .filter(Double::isFinite)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty())));
        return new Sheet(TOTALS, "THE WHOLE STACK", List.of(), quantities, List.of(new Row(List.of(), figures)));
    }

    private interface PieceRow {
        List<Figure> of(int number, Placed placed);
    }

    private List<Row> ofPieces(PieceRow figures) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            int number = i;
            section.body(i)
                    .placed()
                    .ifPresent(placed -> rows.add(new Row(List.of(placed.name()), figures.of(number, placed))));
        }
        return rows;
    }

    private Sheet stock() {
        return new Sheet(
                STOCK,
                "WHAT THEY ARE",
                names("piece"),
                List.of(words("kind", "kind"), words("profile", "profile"), words("wood", "wood")),
                ofPieces((number, placed) -> List.of(
                        Figure.of(placed.piece().kind().word()),
                        Figure.of(placed.piece().stock().name()),
                        Figure.of(placed.piece().wood().name()))));
    }

    private Sheet blanks() {
        return new Sheet(
                "blanks",
                "BLANKS, and the listed boards they are cut from",
                names("piece"),
                List.of(length("thickness"), length("width"), words("stock", "cut from")),
                ofPieces((number, placed) -> List.of(
                        Figure.of(placed.blankThickness()),
                        Figure.of(placed.blankWidth()),
                        Figure.of(Blank.stock(
                                        placed, known.catalog(), section.stack().boardList())
                                .orElse("")))));
    }

    private Sheet places() {
        return new Sheet(
                PLACES,
                "WHERE THEY SIT: heights from the datum, out from the wall plane",
                names("piece"),
                List.of(
                        length("bottom"),
                        length("top"),
                        length("back"),
                        length("face"),
                        Sheet.of("area", "sq in", Kind.AREA)),
                ofPieces((number, placed) -> {
                    Box box = placed.outline().box();
                    return List.of(
                            Figure.of(box.bottom()),
                            Figure.of(box.top()),
                            Figure.of(box.back()),
                            Figure.of(box.face()),
                            Figure.of(placed.outline().area()));
                }));
    }

    private Sheet holds() {
        return new Sheet(
                HOLDS,
                "WHAT HOLDS THEM, fastenings not counted",
                names("piece"),
                List.of(
                        words("held", "held"),
                        length("bearing", "width that bears"),
                        words("bearsOn", "on"),
                        length("backing", "to nail to"),
                        words("backedBy", "behind it")),
                ofPieces(this::held));
    }

    private List<Figure> held(int number, Placed placed) {
        Standing standing = section.standing().stream()
                .filter(one -> one.body() == number)
                .findFirst()
                .orElseThrow();
        List<Backing.Stretch> backing = known.backings().stream()
                .filter(one -> one.body() == number)
                .flatMap(one -> one.stretches().stream())
                .toList();
        return List.of(
                Figure.of(word(section.body(number), standing)),
                Figure.of(standing.bearing().stream()
                        .mapToDouble(Standing.Bearing::width)
                        .sum()),
                Figure.of(listed(standing.bearing().stream().map(Standing.Bearing::on))),
                Figure.of(backing.stream()
                        .mapToDouble(one -> one.from().distance(one.to()))
                        .sum()),
                Figure.of(listed(backing.stream().map(Backing.Stretch::by))));
    }

    private static String word(Body body, Standing standing) {
        if (body.framing()) {
            return "framing";
        }
        return standing.fixed() ? "fixed" : standing.grounded() ? "stands" : "hangs";
    }

    private String listed(Stream<Integer> bodies) {
        return bodies.distinct().map(section::name).collect(Collectors.joining(", "));
    }

    private Sheet steps() {
        return new Sheet(
                "steps",
                "STEP BY STEP: the whole stack once each piece is up",
                names("piece"),
                List.of(length("height"), length("projection"), length("top")),
                section.steps().stream()
                        .map(step -> new Row(
                                List.of(section.name(step.body())),
                                List.of(Figure.of(step.height()), Figure.of(step.projection()), Figure.of(step.top()))))
                        .toList());
    }

    private Sheet members() {
        return new Sheet(
                "members",
                "MEMBERS along the room side",
                names("piece", "member"),
                List.of(length("length"), length("bottom"), length("top"), length("projection"), length("step")),
                section.members().stream()
                        .map(member -> new Row(
                                List.of(section.name(member.body()), member.member()),
                                List.of(
                                        Figure.of(member.length()),
                                        Figure.of(member.box().bottom()),
                                        Figure.of(member.box().top()),
                                        Figure.of(member.projection()),
                                        Figure.of(member.step()))))
                        .toList());
    }

    private Sheet reveals() {
        return new Sheet(
                REVEALS,
                "REVEALS: how far the first shows past the second; where they meet",
                names("piece", "over"),
                List.of(
                        length("amount", "reveal"),
                        words("along", "along"),
                        length("step"),
                        length("out"),
                        length("up")),
                section.reveals().stream()
                        .map(reveal -> new Row(
                                List.of(section.name(reveal.piece()), section.name(reveal.over())),
                                List.of(
                                        Figure.of(reveal.amount()),
                                        Figure.of(reveal.along().word()),
                                        Figure.of(reveal.step()),
                                        Figure.of(reveal.at().x()),
                                        Figure.of(reveal.at().y()))))
                        .toList());
    }
}

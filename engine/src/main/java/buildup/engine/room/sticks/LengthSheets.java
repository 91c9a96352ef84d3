package buildup.engine.room.sticks;

import buildup.engine.room.run.Saw;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The lengths that are cut, as sheets. */
public final class LengthSheets {
    /** A length that goes up, and whether there is a stick for it. */
    private record Wanted(StickPiece piece, boolean hasStick) {}

    /** Where a length lies in its stick. */
    private record Place(int number, Stick stick, Stick.Strip strip, int from) {}

    /** A length as it is cut, in its stick if it has one. */
    private record Line(StickPiece piece, Optional<Phrase> held, Optional<Place> place) {
        <T> Optional<T> of(Function<Place, T> part) {
            return place.map(part);
        }

        OptionalDouble length(Function<Place, Integer> part) {
            return place.map(one -> OptionalDouble.of(LengthSteps.inches(part.apply(one))))
                    .orElse(OptionalDouble.empty());
        }
    }

    private LengthSheets() {}

    /** The lengths as they go up, before any is spliced or glued up; people read of those without a stick. */
    static Sheet lengths(Optional<CutList> list) {
        return Sheet.of("pieces", "NO STICK FOR", StickSheets.all(list, LengthSheets::wanted))
                .name("id", "label", row -> row.piece().id())
                .words("course", "piece", row -> row.piece().course())
                .words("stretch", "stretch", row -> row.piece().stretch())
                .length("length", "length", row -> row.piece().inches())
                .words("left", "left end", row -> row.piece().left().joint().word())
                .words("right", "right end", row -> row.piece().right().joint().word())
                .flag("hasStick", "has a stick", Wanted::hasStick)
                .flag("noStick", "has no stick", row -> !row.hasStick())
                .text()
                .tableWhere(List.of("noStick"), "NO STICK FOR", "id", "course", "stretch", "length")
                .sheet();
    }

    private static List<Wanted> wanted(CutList list) {
        Set<String> without =
                new HashSet<>(list.without().stream().map(StickPiece::id).toList());
        return list.pieces().stream()
                .map(piece -> new Wanted(piece, !without.contains(piece.id())))
                .toList();
    }

    /**
     * Every length that is cut, with its stick: a row for each, for a spreadsheet.
     *
     * @param stack the title of its stack
     */
    public static Sheet cutList(String stack, CutList list) {
        return cuts(Sheet.of("cutList", "CUT LIST", lines(list)).name("stack", "stack", row -> stack))
                .people()
                .sheet();
    }

    /** What stands on the label of each length as it is cut: what it is, where it goes, how long, how its ends are sawn. */
    public static Sheet labels(Optional<CutList> list) {
        return cuts(Sheet.of("labels", "LABELS", StickSheets.all(list, LengthSheets::inOrder)))
                .table(
                        "LABELS: lengths as they are cut, and both ends at the saw, blade tilted to the left",
                        "id",
                        "course",
                        "stretch",
                        "length",
                        "left.side",
                        "right.side")
                .tableWhere(
                        List.of("hold"),
                        "SHORT LENGTHS: how each is held while it is sawn; the saw maker's manual rules",
                        "id",
                        "course",
                        "stretch",
                        "length",
                        "hold")
                .sheet();
    }

    private static Columns<Line> cuts(Columns<Line> columns) {
        return columns.name("id", "label", row -> row.piece().id())
                .words("course", "piece", row -> row.piece().course())
                .words("stretch", "stretch", row -> row.piece().stretch())
                .wordsIf("part", "part", row -> Optional.of(row.piece().part()).filter(part -> !part.isEmpty()))
                .length("length", "length", row -> row.piece().inches())
                .one(
                        "left",
                        "left",
                        ", ",
                        end("left"),
                        row -> Optional.of(row.piece().left()))
                .one(
                        "right",
                        "right",
                        ", ",
                        end("right"),
                        row -> Optional.of(row.piece().right()))
                .measureIf(
                        "stick",
                        "stick",
                        Quantity.COUNT,
                        Rounding.NEAREST,
                        row -> row.place()
                                .map(place -> OptionalDouble.of(place.number()))
                                .orElse(OptionalDouble.empty()))
                .wordsIf(
                        "of",
                        "of",
                        row -> row.of(place -> place.stick().supply().name()))
                .wordsIf(
                        "wood",
                        "wood",
                        row -> row.of(place -> place.stick().supply().wood()))
                .wordsIf(
                        "from",
                        "from",
                        row -> row.of(place -> place.stick().origin().word()))
                .lengthIf(
                        "stickLength",
                        "stick length",
                        row -> row.length(place -> place.stick().length()))
                .lengthIf(
                        "width",
                        "width",
                        row -> row.length(place -> place.strip().width()))
                .lengthIf("begins", "begins at", row -> row.length(Place::from))
                .sayingIf("hold", "how it is held", Line::held)
                .both();
    }

    private static Columns<End> end(String hand) {
        return Columns.<End>inner()
                .words("cut", hand + " cut", end -> end.joint().word())
                .measure("miter", hand + " miter", Quantity.ANGLE, End::miter)
                .measure("bevel", hand + " bevel", Quantity.ANGLE, End::bevel)
                .wordsIf(
                        "swing",
                        hand + " swing",
                        end -> end.setting().map(setting -> setting.swing().word()))
                .wordsIf(
                        "edge",
                        hand + " edge at the fence",
                        end -> end.setting().map(Saw.Setting::edge))
                .wordsIf(
                        "keep",
                        hand + " keep",
                        end -> end.setting().map(setting -> setting.keep().word()))
                .saying("how", hand + " how", End::how)
                .both()
                .saying("side", hand + " end", End::side)
                .text();
    }

    private static List<Line> inOrder(CutList list) {
        Map<String, Line> lines = new HashMap<>();
        lines(list).forEach(line -> lines.put(line.piece().id(), line));
        return list.asCut().stream()
                .flatMap(piece -> Optional.ofNullable(lines.get(piece.id())).stream())
                .toList();
    }

    private static List<Line> lines(CutList list) {
        List<Line> lines = new ArrayList<>();
        Map<String, Phrase> held = list.held();
        for (int i = 0; i < list.sticks().size(); i++) {
            Stick stick = list.sticks().get(i);
            int number = i + 1;
            stick.strips()
                    .forEach(strip -> strip.pieces()
                            .forEach(lie -> lines.add(new Line(
                                    lie.piece(),
                                    Optional.ofNullable(held.get(lie.piece().id())),
                                    Optional.of(new Place(number, stick, strip, lie.from()))))));
        }
        Stream<Line> without = list.without().stream()
                .map(piece -> new Line(piece, Optional.ofNullable(held.get(piece.id())), Optional.empty()));
        return Stream.concat(lines.stream(), without).toList();
    }
}

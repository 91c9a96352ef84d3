package buildup.engine.room.sticks;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
    private record Line(String stack, StickPiece piece, Optional<Place> place) {
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
        return Sheet.of("cutList", "CUT LIST", lines(stack, list))
                .name("stack", "stack", Line::stack)
                .name("id", "label", row -> row.piece().id())
                .words("course", "piece", row -> row.piece().course())
                .words("stretch", "stretch", row -> row.piece().stretch())
                .wordsIf("part", "part", row -> Optional.of(row.piece().part()))
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
                .people()
                .sheet();
    }

    private static Columns<End> end(String hand) {
        return Columns.<End>inner()
                .words("cut", hand + " cut", end -> end.joint().word())
                .measure("miter", hand + " miter", Quantity.ANGLE, End::miter)
                .measure("bevel", hand + " bevel", Quantity.ANGLE, End::bevel);
    }

    private static List<Line> lines(String stack, CutList list) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < list.sticks().size(); i++) {
            Stick stick = list.sticks().get(i);
            int number = i + 1;
            stick.strips()
                    .forEach(strip -> strip.pieces()
                            .forEach(lie -> lines.add(new Line(
                                    stack, lie.piece(), Optional.of(new Place(number, stick, strip, lie.from()))))));
        }
        Stream<Line> without = list.without().stream().map(piece -> new Line(stack, piece, Optional.empty()));
        return Stream.concat(lines.stream(), without).toList();
    }
}

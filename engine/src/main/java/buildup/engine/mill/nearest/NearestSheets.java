package buildup.engine.mill.nearest;

import buildup.profiles.outline.Point;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The profiles that come nearest to one, and what to do with each, as sheets. */
public final class NearestSheets {
    /** How the table is to be read. */
    public static final Phrase LEGEND = Phrase.of(
            "Area between: what lies in one of the two alone. Largest gap: the farthest that a point of either outline"
                    + " lies from the other. Sides are those of the profile as the catalog draws it. A sprung molding is"
                    + " compared as it is run, flat on its back. Boards are left out.");

    private static final Rounding FOUR_PLACES = Rounding.decimals(4);

    /** The profile asked about, with what was found. */
    private record Asked(String name, Neighbors nearest) {}

    private NearestSheets() {}

    /** The answer in a sentence. */
    public static Phrase answer(Neighbors nearest) {
        return NearestWords.answer(nearest);
    }

    /**
     * The answer, and the profiles from the nearest on.
     *
     * @param name of the profile asked about
     * @param nearest absent for the columns alone
     */
    public static List<Sheet> of(String name, Optional<Neighbors> nearest) {
        return List.of(
                Sheet.single("", "ANSWER", nearest.map(found -> new Asked(name, found)))
                        .words("name", "the profile asked about", Asked::name)
                        .saying("answer", "what to do", asked -> NearestWords.answer(asked.nearest()))
                        .both()
                        .wordsIf(
                                "use",
                                "the profile to use",
                                asked -> asked.nearest()
                                        .use()
                                        .map(one -> one.profile().name()))
                        .silent()
                        .sheet(),
                neighbors(name, nearest.map(Neighbors::list).orElse(List.of())));
    }

    private static Sheet neighbors(String name, List<Neighbor> list) {
        Phrase title = Phrase.of("NEAREST to {name}").with("name", name);
        return Sheet.of("nearest", title, list)
                .name("profile", "profile", one -> one.profile().name())
                .words("kind", "kind", one -> one.profile().kind())
                .json()
                .flag("over", "flipped over", one -> one.pose().over())
                .json()
                .measure("turn", "turned", Quantity.ANGLE, one -> one.pose().turned())
                .json()
                .measure("scale", "scale", Quantity.RATIO, one -> one.pose().scale())
                .json()
                .saying("laid", "laid", one -> NearestWords.laid(one.pose()))
                .measure("areaBetween", "area between", Quantity.AREA, FOUR_PLACES, Neighbor::apart)
                .fine("gap", "largest gap", Neighbor::gap)
                .place(
                        "gapAt",
                        "where it gapes",
                        one -> one.gapAt().x(),
                        one -> one.gapAt().y())
                .json()
                .one("advice", "advice", ", ", advice(), one -> Optional.of(one.advice()))
                .json()
                .saying("sentence", "what to do", one -> NearestWords.sentence(one.advice()))
                .both()
                .sheet();
    }

    private static Columns<Advice> advice() {
        return Columns.<Advice>inner()
                .words("do", "as-it-is, plane, run, mill-anew or leave", NearestSheets::does)
                .many(
                        "cuts",
                        "straight cuts",
                        Columns.<Advice.Off>inner()
                                .words("side", "side", cut -> cut.side().name().toLowerCase(Locale.ROOT))
                                .fine("amount", "amount", Advice.Off::amount),
                        advice -> advice instanceof Advice.Plane plane ? plane.cuts() : List.of())
                .lengthIf("off", "how far it then differs at most", NearestSheets::off)
                .measureIf(
                        "area",
                        "area that comes off",
                        Quantity.AREA,
                        FOUR_PLACES,
                        advice -> advice instanceof Advice.Covers covers
                                ? OptionalDouble.of(covers.area())
                                : OptionalDouble.empty())
                .lengthIf(
                        "deepest",
                        "deepest cut",
                        advice -> advice instanceof Advice.Covers covers
                                ? OptionalDouble.of(covers.deepest())
                                : OptionalDouble.empty())
                .lengthIf(
                        "tooSmallBy",
                        "short by",
                        advice -> advice instanceof Advice.TooSmall small
                                ? OptionalDouble.of(small.by())
                                : OptionalDouble.empty())
                .placeIf("at", "where", NearestSheets::at);
    }

    private static String does(Advice advice) {
        if (advice instanceof Advice.AsItIs) {
            return "as-it-is";
        }
        if (advice instanceof Advice.Plane) {
            return "plane";
        }
        if (advice instanceof Advice.Anew) {
            return "mill-anew";
        }
        return advice instanceof Advice.Covers ? "run" : "leave";
    }

    private static OptionalDouble off(Advice advice) {
        if (advice instanceof Advice.AsItIs asItIs) {
            return OptionalDouble.of(asItIs.off());
        }
        if (advice instanceof Advice.Anew anew) {
            return OptionalDouble.of(anew.off());
        }
        return advice instanceof Advice.Plane plane ? OptionalDouble.of(plane.off()) : OptionalDouble.empty();
    }

    private static Optional<Cell.Place> at(Advice advice) {
        if (advice instanceof Advice.Covers covers) {
            return Optional.of(place(covers.at()));
        }
        return advice instanceof Advice.TooSmall small ? Optional.of(place(small.at())) : Optional.empty();
    }

    private static Cell.Place place(Point at) {
        return new Cell.Place(at.x(), at.y());
    }
}

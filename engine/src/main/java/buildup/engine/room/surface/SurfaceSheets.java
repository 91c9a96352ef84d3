package buildup.engine.room.surface;

import buildup.engine.room.run.Saw;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The room as it is, as sheets. */
public final class SurfaceSheets {
    private static final Phrase AWAY = Phrase.of("{what}, {move} away from the {surface}");
    private static final Phrase TOWARD = Phrase.of("{what}, moved {move} toward the {surface}");
    private static final Phrase STAYS = Phrase.of("{what}, as drawn");
    private static final Phrase TILTED = Phrase.of("{what}: its right end {move} {way}");

    private SurfaceSheets() {}

    /** All of them; none is written when nothing was measured. */
    public static List<Sheet> of(Surfaced surfaced) {
        return Stream.concat(
                        Stream.of(gaps(surfaced), ways(surfaced), rolled(surfaced)), sloped(surfaced.sloped()).stream())
                .toList();
    }

    private static Sheet gaps(Surfaced surfaced) {
        return Sheet.of(
                        "surfaces",
                        "GAP ALONG CEILING, FLOOR AND WALL as measured; less than 0 is a clash",
                        surfaced.gaps())
                .name("run", "run", GapAlong::run)
                .name("stretch", "stretch", GapAlong::stretch)
                .name("surface", "at the", gap -> gap.surface().word())
                .words("course", "piece", gap -> gap.fit().course().name())
                .length("least", "least gap", gap -> gap.least().amount())
                .length("leastAt", "least at", gap -> gap.least().along())
                .length("most", "widest gap", gap -> gap.most().amount())
                .length("mostAt", "widest at", gap -> gap.most().along())
                .length("varies", "gap varies by", gap -> gap.gap().variation())
                .length("clashLength", "clashes over", gap -> gap.gap().lengthBelow())
                .measure("openArea", "open", Quantity.AREA, gap -> gap.gap().area(1))
                .measure("clashArea", "clash", Quantity.AREA, gap -> gap.gap().area(-1))
                .length("outOfLine", "best out of level by", GapAlong::outOfLine)
                .length("leftOver", "then varies by", GapAlong::leftOver)
                .table(
                        "GAP ALONG CEILING, FLOOR AND WALL as measured; less than 0 is a clash",
                        "stretch",
                        "surface",
                        "course",
                        "least",
                        "leastAt",
                        "most",
                        "mostAt",
                        "openArea",
                        "clashArea")
                .sheet()
                .askedIf(!surfaced.gaps().isEmpty());
    }

    private static Sheet ways(Surfaced surfaced) {
        return Sheet.of("surfaceWays", "WHERE TO TAKE IT", surfaced.ways())
                .name("run", "run", way -> way.of().run())
                .name("stretch", "stretch", way -> way.of().stretch())
                .name("surface", "at the", way -> way.of().surface().word())
                .name("way", "way", way -> way.kind().words())
                .saying("how", "how", SurfaceSheets::how)
                .length("move", "moved by", Remedy::move)
                .length("narrowest", "narrowest", Remedy::least)
                .length("widest", "widest", Remedy::most)
                .lengthIf("pieceLeft", "piece left", SurfaceSheets::pieceLeft)
                .table(
                        "WHERE TO TAKE IT: reveal or strip, or what comes off or goes behind, at its narrowest and"
                                + " widest",
                        "stretch",
                        "surface",
                        "how",
                        "narrowest",
                        "widest",
                        "pieceLeft")
                .sheet()
                .askedIf(!surfaced.ways().isEmpty());
    }

    private static Phrase how(Remedy way) {
        boolean tilts = way.kind() == Remedy.Kind.FOLLOW || way.kind() == Remedy.Kind.TURN;
        if (tilts) {
            boolean wall = way.of().surface() == Surface.WALL;
            // the gap grows to the right where a ceiling rises, a floor falls or a wall falls back
            boolean grows = way.move() > 0;
            String side =
                    wall ? (grows ? "back" : "out") : (way.of().surface() == Surface.CEILING) == grows ? "up" : "down";
            return TILTED.with("what", way.kind().words())
                    .with("move", Figure.length(Math.abs(way.move())))
                    .with("way", side);
        }
        if (Math.abs(way.move()) <= Tolerance.TOUCHING) {
            return STAYS.with("what", way.kind().words());
        }
        return (way.move() > 0 ? AWAY : TOWARD)
                .with("what", way.kind().words())
                .with("move", way.move() > 0 ? Figure.atLeast(way.move()) : Figure.length(-way.move()))
                .with("surface", way.of().surface().word());
    }

    /** What is left of the height, or on a wall of the thickness, of a piece where most is scribed off it. */
    private static OptionalDouble pieceLeft(Remedy way) {
        if (way.kind() != Remedy.Kind.SCRIBE) {
            return OptionalDouble.empty();
        }
        double whole = way.of().surface() == Surface.WALL
                ? way.of().fit().course().box().width()
                : way.of().fit().course().box().height();
        return OptionalDouble.of(whole - way.most());
    }

    private static Sheet rolled(Surfaced surfaced) {
        return Sheet.of(
                        "rolled",
                        "CROWN ROLLED under the ceiling, about its lower edge; degrees for the stick flat on the table",
                        surfaced.rolled())
                .name("run", "run", rolled -> rolled.of().run())
                .name("stretch", "stretch", rolled -> rolled.of().stretch())
                .name("where", "where", Rolled::where)
                .words("course", "piece", rolled -> rolled.of().fit().course().name())
                .length("along", "along", Rolled::along)
                .length("down", "top down by", Rolled::down)
                .measure("spring", "rolled spring", Quantity.ANGLE, Rolled::spring)
                .length("projection", "rolled projection", Rolled::projection)
                .fine("opens", "off the wall", Rolled::opens)
                .measureIf("miter", "miter", Quantity.ANGLE, Rounding.NEAREST, flat(Rolled::rolled, Saw.Flat::miter))
                .measureIf("bevel", "bevel", Quantity.ANGLE, Rounding.NEAREST, flat(Rolled::rolled, Saw.Flat::bevel))
                .measureIf(
                        "drawnMiter",
                        "miter as drawn",
                        Quantity.ANGLE,
                        Rounding.NEAREST,
                        flat(Rolled::drawn, Saw.Flat::miter))
                .measureIf(
                        "drawnBevel",
                        "bevel as drawn",
                        Quantity.ANGLE,
                        Rounding.NEAREST,
                        flat(Rolled::drawn, Saw.Flat::bevel))
                .table(
                        "CROWN ROLLED under the ceiling, about its lower edge; degrees for the stick flat on the table",
                        "stretch",
                        "where",
                        "down",
                        "spring",
                        "projection",
                        "miter",
                        "bevel",
                        "drawnMiter",
                        "drawnBevel")
                .sheet()
                .askedIf(!surfaced.rolled().isEmpty());
    }

    /** Sprung moldings under a sloped ceiling; asked for the cuts too. */
    public static List<Sheet> sloped(List<SlopedCrown> sloped) {
        Sheet tilts = Sheet.of("slopedCrowns", "CROWN UNDER A SLOPED CEILING", tilts(sloped))
                .name("course", "piece", crown -> crown.course().name())
                .name("tilt", "tilted", crown -> crown.tilt().word())
                .measure("spring", "tilted spring", Quantity.ANGLE, SlopedCrown::spring)
                .fine("offWall", "off the wall", SlopedCrown::offWall)
                .fine("offCeiling", "off the ceiling", SlopedCrown::offCeiling)
                .length("height", "up the fence", SlopedCrown::height)
                .length("projection", "out on the table", SlopedCrown::projection)
                .table(
                        "CROWN UNDER A SLOPED CEILING: how its flats stand open; where it stands when cut against the fence",
                        "course",
                        "tilt",
                        "spring",
                        "offWall",
                        "offCeiling",
                        "height",
                        "projection")
                .sheet()
                .askedIf(!sloped.isEmpty());
        return List.of(
                tilts,
                miters(sloped.stream().filter(crown -> crown.corner() > 0).toList()));
    }

    private static List<SlopedCrown> tilts(List<SlopedCrown> sloped) {
        Set<String> seen = new HashSet<>();
        return sloped.stream()
                .filter(crown ->
                        seen.add(crown.course().name() + ", " + crown.tilt().word()))
                .toList();
    }

    private static Sheet miters(List<SlopedCrown> sloped) {
        String title = "MITERS UNDER A SLOPED CEILING: flat on the table, or against the fence";
        return Sheet.of("slopedMiters", title, sloped)
                .name("course", "piece", crown -> crown.course().name())
                .name("tilt", "tilted", crown -> crown.tilt().word())
                .name("corner", "corner", crown -> crown.inside() ? "inside" : "outside")
                .measure("angle", "corner angle", Quantity.ANGLE, SlopedCrown::corner)
                .measure(
                        "miter",
                        "tilted miter",
                        Quantity.ANGLE,
                        crown -> Math.abs(crown.flat().miter()))
                .measure(
                        "bevel",
                        "tilted bevel",
                        Quantity.ANGLE,
                        crown -> Math.abs(crown.flat().bevel()))
                .measure(
                        "fenceMiter",
                        "miter at the fence",
                        Quantity.ANGLE,
                        crown -> Math.abs(Saw.nested(crown.corner())))
                .sheet()
                .askedIf(!sloped.isEmpty());
    }

    private static Function<Rolled, OptionalDouble> flat(
            Function<Rolled, Optional<Saw.Flat>> which, ToDoubleFunction<Saw.Flat> angle) {
        return rolled -> which.apply(rolled)
                .map(flat -> OptionalDouble.of(Math.abs(angle.applyAsDouble(flat))))
                .orElse(OptionalDouble.empty());
    }
}

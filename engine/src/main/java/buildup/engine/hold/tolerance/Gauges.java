package buildup.engine.hold.tolerance;

import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The figures that are taken of every build: height, projection, the room left, each reveal, bearing and bite. Places of the
 * wood are followed; what meets what stays as drawn.
 */
final class Gauges {
    private final Section section;
    private final Assembly assembly;
    private final List<Wanted> wanted;
    private final double foot;
    private final List<Gauged> all = new ArrayList<>();

    private Gauges(Assembly assembly, List<Wanted> wanted) {
        this.section = assembly.section();
        this.assembly = assembly;
        this.wanted = wanted;
        this.foot = section.totals().bottom();
    }

    static List<Gauged> of(Assembly assembly, List<Fixed> fixed, List<Wanted> wanted) {
        Gauges gauges = new Gauges(assembly, wanted);
        gauges.whole();
        gauges.section.reveals().forEach(gauges::reveal);
        for (Standing standing : gauges.section.standing()) {
            if (gauges.section.body(standing.body()).inStack()) {
                standing.bearing().forEach(bearing -> gauges.bearing(standing.body(), bearing));
            }
        }
        fixed.forEach(gauges::bite);
        return List.copyOf(gauges.all);
    }

    private void add(String name, Wanted usual, double drawn, Gauged.Gauge gauge) {
        Wanted own = wanted.stream()
                .filter(one -> one.sheet().equals(usual.sheet())
                        && one.column().equals(usual.column())
                        && one.names().equals(usual.names()))
                .reduce(usual, Gauges::both);
        all.add(new Gauged(name, own, drawn, gauge));
    }

    /** The tighter of two wishes. */
    private static Wanted both(Wanted one, Wanted two) {
        return new Wanted(
                one.sheet(),
                one.column(),
                one.names(),
                IntStream.range(0, 2)
                        .mapToObj(i -> i == 0 ? one.least() : two.least())
                        .flatMapToDouble(OptionalDouble::stream)
                        .max(),
                IntStream.range(0, 2)
                        .mapToObj(i -> i == 0 ? one.most() : two.most())
                        .flatMapToDouble(OptionalDouble::stream)
                        .min());
    }

    private static Wanted usual(String sheet, String column, List<String> names, OptionalDouble least) {
        return new Wanted(sheet, column, names, least, OptionalDouble.empty());
    }

    private static final OptionalDouble NOTHING = OptionalDouble.empty();

    private void whole() {
        int[] own = IntStream.range(0, section.pieces().size())
                .filter(i -> section.body(i).inStack())
                .toArray();
        add(
                "height",
                usual("totals", "height", List.of(), NOTHING),
                section.totals().height(),
                (pieces, lean, rise) -> top(pieces, own) - bottom(pieces, own));
        add(
                "projection",
                usual("totals", "projection", List.of(), NOTHING),
                section.totals().projection(),
                (pieces, lean, rise) -> face(pieces, own));
        section.stack()
                .space()
                .ceiling()
                .ifPresent(ceiling -> add(
                        "room under the ceiling",
                        usual("space", "ceilingLeft", List.of(), OptionalDouble.of(0)),
                        ceiling - section.reach(),
                        (pieces, lean, rise) -> ceiling + rise - reach(pieces, own)));
        section.stack()
                .space()
                .projection()
                .ifPresent(allowed -> add(
                        "room left of the projection",
                        usual("space", "projectionLeft", List.of(), OptionalDouble.of(0)),
                        allowed - section.totals().projection(),
                        (pieces, lean, rise) -> allowed - face(pieces, own)));
    }

    /** As drawn, and raised or brought out as each piece's upper outer corner is; level, that is the top. */
    private double reach(List<BuiltPiece> pieces, int[] own) {
        Space space = section.stack().space();
        double reach = Double.NEGATIVE_INFINITY;
        for (int i : own) {
            Outline drawn = section.body(i).outline();
            double up = pieces.get(i).top - drawn.box().top();
            double out = pieces.get(i).face - drawn.box().face();
            reach = Math.max(reach, space.reach(drawn) + up - space.slope() * out);
        }
        return reach;
    }

    private static double top(List<BuiltPiece> pieces, int[] own) {
        double top = Double.NEGATIVE_INFINITY;
        for (int i : own) {
            top = Math.max(top, pieces.get(i).top);
        }
        return top;
    }

    private static double bottom(List<BuiltPiece> pieces, int[] own) {
        double bottom = Double.POSITIVE_INFINITY;
        for (int i : own) {
            bottom = Math.min(bottom, pieces.get(i).bottom);
        }
        return bottom;
    }

    private static double face(List<BuiltPiece> pieces, int[] own) {
        double face = Double.NEGATIVE_INFINITY;
        for (int i : own) {
            face = Math.max(face, pieces.get(i).face);
        }
        return face;
    }

    /** How far a place of a body lies along a direction. */
    private Gauged.Gauge along(int body, Point place, Point way) {
        if (section.body(body).piece()) {
            Point fromHome = assembly.shape(body).fromHome(place);
            return (pieces, lean, rise) ->
                    pieces.get(body).x(fromHome) * way.x() + pieces.get(body).y(fromHome) * way.y();
        }
        double still = place.dot(way);
        double over = place.y() - foot;
        return switch (section.name(body)) {
            case "wall" -> (pieces, lean, rise) -> still + lean * over * way.x();
            case "ceiling" -> (pieces, lean, rise) -> still + rise * way.y();
            default -> (pieces, lean, rise) -> still;
        };
    }

    private void reveal(Reveal reveal) {
        Point way = reveal.way();
        Gauged.Gauge end = along(section.endOf(reveal), reveal.to(), way);
        Gauged.Gauge joint = along(reveal.over(), reveal.at(), way);
        String piece = section.name(reveal.piece());
        String over = section.name(reveal.over());
        add(
                "reveal of " + piece + " over " + over,
                usual(
                        "reveals",
                        "amount",
                        List.of(piece, over),
                        // what is flush within a saw's cut was meant to be flush
                        reveal.amount() > Tolerance.SAW_CUT ? OptionalDouble.of(Tolerance.TOUCHING) : NOTHING),
                reveal.amount(),
                (pieces, lean, rise) -> end.of(pieces, lean, rise) - joint.of(pieces, lean, rise));
    }

    /** From the inner of what ends it toward the wall to the inner of what ends it toward the room. */
    private void bearing(int body, Standing.Bearing bearing) {
        Point low = bearing.from().x() < bearing.to().x() ? bearing.from() : bearing.to();
        Point high = bearing.from().x() < bearing.to().x() ? bearing.to() : bearing.from();
        List<Gauged.Gauge> lows = ends(body, bearing.on(), low);
        List<Gauged.Gauge> highs = ends(body, bearing.on(), high);
        if (lows.isEmpty() || highs.isEmpty()) {
            return;
        }
        String piece = section.name(body);
        String on = section.name(bearing.on());
        add(
                "bearing of " + piece + " on " + on,
                usual("bearing", "width", List.of(piece, on), OptionalDouble.of(Tolerance.TOUCHING)),
                bearing.width(),
                (pieces, lean, rise) -> highs.stream()
                                .mapToDouble(one -> one.of(pieces, lean, rise))
                                .min()
                                .orElse(0)
                        - lows.stream()
                                .mapToDouble(one -> one.of(pieces, lean, rise))
                                .max()
                                .orElse(0));
    }

    private List<Gauged.Gauge> ends(int one, int two, Point end) {
        return IntStream.of(one, two)
                .filter(body -> section.hasCorner(body, end))
                .mapToObj(body -> along(body, end, new Point(1, 0)))
                .toList();
    }

    /** What the bite of a row is called. */
    static String biteOf(Fixed nail) {
        return "bite of " + nail.fastening().name();
    }

    /** A nail keeps its length: what its way through the piece and the air grows by, its bite loses. */
    private void bite(Fixed nail) {
        boolean ends = nail.drive().last().filter(Crossing::holds).isPresent();
        if (!ends || nail.beyond().isEmpty()) {
            return;
        }
        Point entry = nail.drive().at(nail.spent());
        int beyond = nail.beyond().get(0).body();
        Gauged.Gauge head = depth(nail.piece(), nail.head(), nail.way());
        Gauged.Gauge meets = depth(beyond, entry, nail.way());
        double spent = entry.minus(nail.head()).dot(nail.way());
        add(
                biteOf(nail),
                usual(
                        "bite",
                        "bite",
                        List.of(nail.fastening().name()),
                        OptionalDouble.of(nail.biteCheck().needs())),
                nail.bite(),
                (pieces, lean, rise) ->
                        nail.bite() + spent - meets.of(pieces, lean, rise) + head.of(pieces, lean, rise));
    }

    /** How far along a nail it meets a face, which moves square to itself. */
    private Gauged.Gauge depth(int body, Point place, Point way) {
        Point normal = normal(section.body(body).outline(), place);
        double slant = normal.dot(way);
        if (Math.abs(slant) < 0.1) {
            return (pieces, lean, rise) -> place.dot(way);
        }
        Gauged.Gauge square = along(body, place, normal);
        double drawn = place.dot(normal);
        double still = place.dot(way);
        return (pieces, lean, rise) -> still + (square.of(pieces, lean, rise) - drawn) / slant;
    }

    private static Point normal(Outline outline, Point place) {
        Segment face = outline.segments().stream()
                .min(Comparator.comparingDouble(segment -> segment.distance(place)))
                .orElseThrow();
        return face.direction(face.nearest(place)).right();
    }
}

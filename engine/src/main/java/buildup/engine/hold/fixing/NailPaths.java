package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Crossing.Stuff;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Drive.BreakOut;
import buildup.engine.section.compose.ClosedVoid;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Follows nails through what stands in a step. */
final class NailPaths {
    /** Shares of a crossing at which the wood beside the nail is measured; its ends lie in the faces themselves. */
    private static final List<Double> STATIONS = List.of(0.1, 0.3, 0.5, 0.7, 0.9);

    /** A measure across a body goes on this far, in: nobody asks whether more wood than that stands beside a nail. */
    private static final double ACROSS = 6;

    private final Timber timber;

    NailPaths(Timber timber) {
        this.timber = timber;
    }

    private record Inside(double from, double to) {}

    Drive follow(Point head, Point way, double length, int step) {
        Line axis = new Line(head, head.plus(way.times(length)));
        List<Crossing> solid = new ArrayList<>();
        for (int i = 0; i < timber.count(); i++) {
            if (timber.up(i, step)) {
                solids(i, axis, solid);
            }
        }
        solid.sort(Comparator.comparingDouble(Crossing::from)
                .thenComparingInt(c -> c.body().orElse(-1)));
        List<Crossing> crossings = new ArrayList<>();
        double at = 0;
        for (Crossing next : solid) {
            // where two bodies overlap the nail is counted in the first alone
            double from = Math.max(at, next.from());
            if (next.to() - from > Tolerance.TOUCHING) {
                air(at, from, crossings);
                crossings.add(new Crossing(next.body(), next.stuff(), from, next.to()));
                at = next.to();
            }
        }
        double out = length - at;
        if (out <= Tolerance.TOUCHING || crossings.isEmpty()) {
            return new Drive(head, way, length, crossings, Optional.empty());
        }
        return new Drive(
                head, way, length, crossings, Optional.of(breakOut(axis, at, crossings.get(crossings.size() - 1))));
    }

    private static void air(double from, double to, List<Crossing> out) {
        if (to - from > Tolerance.TOUCHING) {
            out.add(new Crossing(OptionalInt.empty(), Stuff.AIR, from, to));
        }
    }

    private void solids(int body, Line axis, List<Crossing> out) {
        if (!timber.holds(body)) {
            inside(timber.solid(body), axis)
                    .forEach(run -> out.add(new Crossing(OptionalInt.of(body), Stuff.COVERING, run.from(), run.to())));
            return;
        }
        List<Inside> wood = inside(timber.wood(body), axis);
        wood.forEach(run -> out.add(new Crossing(OptionalInt.of(body), Stuff.WOOD, run.from(), run.to())));
        if (timber.covering(body) > 0) {
            for (Inside run : inside(timber.solid(body), axis)) {
                // the covering is what of the wall is not wood
                double to = wood.stream()
                        .mapToDouble(Inside::from)
                        .filter(from -> from >= run.from())
                        .min()
                        .orElse(run.to());
                if (to > run.from()) {
                    out.add(new Crossing(OptionalInt.of(body), Stuff.COVERING, run.from(), Math.min(to, run.to())));
                }
            }
        }
    }

    /** The stretches of a line inside an outline: cut at every crossing, each stretch judged at its middle. */
    private static List<Inside> inside(Timber.Solid solid, Line axis) {
        List<Inside> runs = new ArrayList<>();
        Outline outline = solid.outline();
        if (!outline.box().near(axis.box(), 0)) {
            return runs;
        }
        double length = axis.length();
        Point way = axis.direction(0);
        List<Double> cuts = new ArrayList<>(List.of(0.0, length));
        for (Stroke stroke : outline.strokes()) {
            for (Point met : met(axis, stroke.segment())) {
                cuts.add(Math.max(0, Math.min(length, met.minus(axis.from()).dot(way))));
            }
        }
        cuts.sort(Comparator.naturalOrder());
        double from = -1;
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double a = cuts.get(i);
            double b = cuts.get(i + 1);
            boolean in = b - a > Tolerance.SNAP && solid.holds(axis.at((a + b) / 2 / length));
            if (in && from < 0) {
                from = a;
            }
            if (b - a > Tolerance.SNAP && !in && from >= 0) {
                runs.add(new Inside(from, a));
                from = -1;
            }
        }
        if (from >= 0) {
            runs.add(new Inside(from, length));
        }
        return runs;
    }

    /** Where a line meets a segment; most that lie wholly to one side of it are seen to without looking closer. */
    private static List<Point> met(Line line, Segment segment) {
        // in plain numbers: asked thousands of times for each stack
        double x = line.from().x();
        double y = line.from().y();
        double alongX = line.to().x() - x;
        double alongY = line.to().y() - y;
        double from =
                alongX * (segment.from().y() - y) - alongY * (segment.from().x() - x);
        double to = alongX * (segment.to().y() - y) - alongY * (segment.to().x() - x);
        double slack = Tolerance.SNAP * (Math.abs(alongX) + Math.abs(alongY));
        boolean beside = segment instanceof Line && ((from > slack && to > slack) || (from < -slack && to < -slack));
        return beside ? List.of() : Crossings.of(line, segment, Tolerance.SNAP);
    }

    private BreakOut breakOut(Line axis, double at, Crossing last) {
        int body = last.body().orElseThrow();
        Point out = axis.at(at / axis.length());
        Spot spot = Spot.nearest(body, timber.body(body).outline(), out);
        return new BreakOut(
                body, axis.length() - at, out, spot.side(), hollow(axis.to()).isPresent());
    }

    /**
     * Where a nail that goes on into something shows on its way: it comes out of a piece by a face on the room side of the
     * finished section, and not by one that looks toward the wall, which hides it.
     */
    Optional<BreakOut> open(Drive drive) {
        List<Crossing> crossings = drive.crossings();
        for (int i = 1; i < crossings.size(); i++) {
            Crossing air = crossings.get(i);
            OptionalInt left = crossings.get(i - 1).body();
            if (air.stuff() == Stuff.AIR && left.isPresent()) {
                Point at = drive.at(air.from());
                int body = left.getAsInt();
                String side =
                        Spot.nearest(body, timber.body(body).outline(), at).side();
                if (!side.equals("back") && shown(body, at)) {
                    return Optional.of(new BreakOut(body, air.length(), at, side, false));
                }
            }
        }
        return Optional.empty();
    }

    private boolean shown(int body, Point at) {
        return timber.section().members().stream()
                .filter(member -> member.body() == body)
                .flatMap(member -> member.segments().stream())
                .anyMatch(segment -> segment.distance(at) <= Tolerance.TOUCHING);
    }

    /** The closed hollow of the finished section that a place lies in. */
    Optional<ClosedVoid> hollow(Point p) {
        return timber.section().voids().stream()
                .filter(hollow -> holds(hollow, p))
                .findFirst();
    }

    private static boolean holds(ClosedVoid hollow, Point p) {
        List<Point> ring = new ArrayList<>();
        for (Bound bound : hollow.ring().bounds()) {
            ring.addAll(bound.segment().flattened(Tolerance.CHORD));
        }
        return Outline.isInside(ring, p);
    }

    /**
     * Least wood to either side of a nail in any of the pieces that it crosses, the faces by which it goes in and out
     * not counted; nothing where no face lies beside it. Measured at several depths, from the nail to the nearest place of
     * each face that lies beside it.
     */
    OptionalDouble edge(Drive drive) {
        return edge(drive, 0);
    }

    /** The same; where it is less than {@code enough}, something less than that. */
    OptionalDouble edge(Drive drive, double enough) {
        double least = ACROSS;
        List<Crossing> crossings = drive.crossings();
        for (int i = 0; i < crossings.size() && least >= enough; i++) {
            if (crossings.get(i).holds()) {
                boolean last = i == crossings.size() - 1 && drive.last().isPresent();
                least = Math.min(least, edge(drive, crossings.get(i), last, enough));
            }
        }
        return least < ACROSS ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    private double edge(Drive drive, Crossing crossing, boolean last, double enough) {
        List<Stroke> strokes =
                timber.wood(crossing.body().orElseThrow()).outline().strokes();
        // the face that the point looks at lies ahead, not beside
        double ahead = last ? left(drive).orElse(0) : 0;
        Point in = drive.at(crossing.from());
        Point out = drive.at(crossing.to() + ahead);
        double least = ACROSS;
        for (double share : STATIONS) {
            Point station = drive.at(crossing.from() + share * crossing.length());
            for (Point way : List.of(drive.way().left(), drive.way().right())) {
                Line across = new Line(station, station.plus(way.times(ACROSS)));
                least = Math.min(least, nearestBeside(across, strokes, in, out));
            }
            if (least < enough) {
                break;
            }
        }
        return least;
    }

    /**
     * Distance to the face that a line across the nail meets first, when that is one beside it: neither that by which the
     * nail comes in nor that by which it goes out.
     */
    private static double nearestBeside(Line across, List<Stroke> strokes, Point in, Point out) {
        Segment first = across;
        double met = ACROSS;
        for (Stroke stroke : strokes) {
            for (Point p : met(across, stroke.segment())) {
                double distance = p.distance(across.from());
                if (distance < met) {
                    met = distance;
                    first = stroke.segment();
                }
            }
        }
        boolean beside =
                met < ACROSS && first.distance(in) > Tolerance.TOUCHING && first.distance(out) > Tolerance.TOUCHING;
        return beside ? first.distance(across.from()) : ACROSS;
    }

    /** How far the point could go on before it meets air, at most so far: bodies that follow each other count together. */
    double ahead(Drive drive, double most, int step) {
        Drive longer = follow(drive.head(), drive.way(), drive.length() + most, step);
        double to = drive.length();
        for (Crossing crossing : longer.crossings()) {
            boolean goesOn = crossing.from() <= to + Tolerance.TOUCHING && crossing.to() > to;
            to = goesOn && crossing.stuff() != Stuff.AIR ? crossing.to() : to;
        }
        return Math.min(most, to - drive.length());
    }

    /** How far the point could go on along the nail before it comes out of what it ends in; absent in the open. */
    OptionalDouble left(Drive drive) {
        Optional<Crossing> last =
                drive.last().filter(crossing -> crossing.body().isPresent());
        if (last.isEmpty()) {
            return OptionalDouble.empty();
        }
        Outline wood = timber.wood(last.get().body().orElseThrow()).outline();
        double far = wood.box().width() + wood.box().height();
        Line on = new Line(drive.point(), drive.at(drive.length() + far));
        return wood.strokes().stream()
                .flatMap(stroke -> met(on, stroke.segment()).stream())
                .mapToDouble(met -> met.distance(drive.point()))
                .min();
    }
}

package buildup.engine.hold.order;

import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Surroundings;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Pairs.Pair;
import buildup.profiles.travel.Parting;
import buildup.profiles.travel.Parting.Stretch;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The ways of the bodies of a section past each other. Pieces that lap are not in each other's way: that they lap is said
 * elsewhere. Each answer is worked out once. Fewer bodies that stand bar no way that more leave free.
 */
final class Ways {
    private static final double OUT = 0;
    private static final double UP = 90;
    private static final double BACK = 180;
    private static final double DOWN = 270;

    /** Ends of a way: into the room, up, down. */
    static final List<Double> EXITS = List.of(OUT, UP, DOWN);

    /** A slanted side shorter than this does not lead a piece, in: common practice, no source. */
    private static final double LEADS = 1.0 / 4;

    /** Directions in degrees, as they come. Spelled out: what a record does of itself as a key is slow to start. */
    private record Going(int body, int past, double first, double then) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Going going
                    && going.body == body
                    && going.past == past
                    && Double.compare(going.first, first) == 0
                    && Double.compare(going.then, then) == 0;
        }

        @Override
        public int hashCode() {
            return 31 * (31 * body + past) + Double.hashCode(first) + 7 * Double.hashCode(then);
        }
    }

    private final Section section;
    /** No shift is longer than this: the room has no end, whatever its outlines have, in. */
    private final double farthest;

    /** Round all pieces. */
    private final Box all;

    private final List<Outline> outlines;
    private final Set<Pair> lapped = new HashSet<>();
    private final Map<Going, Double> rooms = new HashMap<>();
    private final Map<Going, Boolean> aways = new HashMap<>();
    private final Map<Going, List<Stretch>> barred = new HashMap<>();
    private final Map<Integer, List<Double>> slants = new HashMap<>();

    Ways(Section section) {
        this.section = section;
        this.all = Box.around(
                section.pieces().stream().map(body -> body.outline().box()).toList());
        this.farthest = all.width() + all.height();
        this.outlines = section.bodies().stream()
                .map(body -> body.name().equals("ceiling")
                                && section.stack().space().slope() < 0
                        // a piece that is out past all others is tilted: how low the ceiling is farther on bars no way
                        ? Surroundings.ceilingNear(
                                section.stack().space(), body.outline().box().face(), all.face() + all.width())
                        : body.outline())
                .toList();
        for (Overlap lap : section.overlaps()) {
            lapped.add(pair(lap.a(), lap.b()));
        }
    }

    private static Pair pair(int a, int b) {
        return new Pair(Math.min(a, b), Math.max(a, b));
    }

    private Outline outline(int body) {
        return outlines.get(body);
    }

    /** The way into place past what stands that needs the least, a straight one first; absent when there is none. */
    Optional<WayIn> best(Unit unit, Collection<Integer> standing) {
        for (double then : EXITS) {
            if (standing.stream().allMatch(past -> away(unit, past, then))) {
                return Optional.of(clear(unit, WayIn.straight(then), standing));
            }
        }
        Optional<WayIn> best = Optional.empty();
        for (double then : EXITS) {
            for (double first : firsts(unit, then)) {
                Optional<WayIn> bent = least(unit, first, then, standing);
                if (bent.isPresent()
                        && blockers(unit, bent.get(), standing).isEmpty()
                        && (best.isEmpty() || bent.get().shift() < best.get().shift() - Tolerance.COINCIDENT)) {
                    best = bent;
                }
            }
        }
        return best.map(way -> clear(unit, way, standing));
    }

    /** The bent way that fails by the least, for saying what it needs; absent when no shift would do. */
    Optional<WayIn> nearest(Unit unit, Collection<Integer> standing) {
        // what ends the room ends the shift first, and is named for that
        List<Integer> pieces =
                standing.stream().filter(body -> section.body(body).piece()).toList();
        Optional<WayIn> nearest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (double then : EXITS) {
            for (double first : firsts(unit, then)) {
                Optional<WayIn> bent = least(unit, first, then, pieces)
                        .filter(way -> blockers(unit, way, standing).stream()
                                .allMatch(past -> room(unit, past, first) < way.shift()));
                double lacks = bent.map(way -> way.shift() - room(unit, first, standing))
                        .orElse(Double.POSITIVE_INFINITY);
                if (lacks < least - Tolerance.COINCIDENT) {
                    least = lacks;
                    nearest = bent;
                }
            }
        }
        return nearest.map(way -> clear(unit, way, standing));
    }

    /** The least shift in a direction from which it can leave in another; the room for the shift is not asked. */
    private Optional<WayIn> least(Unit unit, double first, double then, Collection<Integer> standing) {
        List<Stretch> all = standing.stream()
                .flatMap(past -> barred(unit, past, first, then).stream())
                .sorted((a, b) -> Double.compare(a.from(), b.from()))
                .toList();
        double shift = 0;
        for (Stretch stretch : all) {
            if (stretch.bars(shift) || (shift == 0 && stretch.from() <= Tolerance.COINCIDENT)) {
                shift = Math.max(shift, stretch.to());
            }
        }
        // a later stretch may begin before and end after the last end
        double found = shift;
        boolean free = all.stream().noneMatch(stretch -> stretch.bars(found));
        return free && found > 0 && found <= farthest
                ? Optional.of(new WayIn(first, found, then, 0))
                : Optional.empty();
    }

    /** Every way that might be the least one for some of the bodies standing. */
    List<WayIn> all(Unit unit, Collection<Integer> others) {
        List<WayIn> ways = new ArrayList<>();
        for (double then : EXITS) {
            ways.add(WayIn.straight(then));
            for (double first : firsts(unit, then)) {
                others.stream()
                        .flatMap(past -> barred(unit, past, first, then).stream())
                        .map(Stretch::to)
                        .filter(shift -> shift <= farthest && shift > Tolerance.TOUCHING)
                        .distinct()
                        .forEach(shift -> ways.add(new WayIn(first, shift, then, 0)));
            }
        }
        return ways;
    }

    /** The bodies that are in the way of a unit. */
    List<Integer> blockers(Unit unit, WayIn way, Collection<Integer> standing) {
        return standing.stream().filter(past -> blocks(unit, way, past)).toList();
    }

    private boolean blocks(Unit unit, WayIn way, int past) {
        return way.isStraight()
                ? !away(unit, past, way.then())
                : room(unit, past, way.first()) < way.shift() - Tolerance.TOUCHING
                        || barred(unit, past, way.first(), way.then()).stream()
                                .anyMatch(stretch -> stretch.bars(way.shift()));
    }

    /** Room in a direction before any of the bodies stops the unit, in; may be infinite. */
    double room(Unit unit, double first, Collection<Integer> standing) {
        return standing.stream()
                .mapToDouble(past -> room(unit, past, first))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double room(Unit unit, int past, double first) {
        return unit.bodies().stream()
                .mapToDouble(body -> passes(body, past)
                        ? Double.POSITIVE_INFINITY
                        : rooms.computeIfAbsent(
                                new Going(body, past, first, first),
                                going -> Parting.room(outline(body), outline(past), first)))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean away(Unit unit, int past, double then) {
        return leavesRoom(unit, past, then)
                || unit.bodies().stream()
                        .allMatch(body -> passes(body, past)
                                || isBeside(outline(body).box(), outline(past).box(), then)
                                || aways.computeIfAbsent(
                                        new Going(body, past, then, then),
                                        going -> Parting.away(outline(body), outline(past), then)));
    }

    /** Whether by their boxes the one never comes near the other on its way. */
    private static boolean isBeside(Box moving, Box staying, double then) {
        boolean level = then == OUT;
        return level
                ? staying.top() <= moving.bottom()
                        || moving.top() <= staying.bottom()
                        || staying.face() <= moving.back()
                : staying.face() <= moving.back()
                        || moving.face() <= staying.back()
                        || (then == UP ? staying.top() <= moving.bottom() : moving.top() <= staying.bottom());
    }

    /**
     * Whether a floor that a unit goes down to, or a level ceiling that it goes up to, leaves room for it under or over all
     * pieces: from there it goes on into the room. Before a solid wall alone: else nobody says that behind the pieces is room.
     */
    private boolean leavesRoom(Unit unit, int past, double then) {
        boolean down = then == DOWN && section.body(past).name().equals("floor");
        boolean up = then == UP
                && section.body(past).name().equals("ceiling")
                && section.stack().space().slope() == 0;
        boolean room =
                section.stack().space().wall().solid() && !section.body(past).piece();
        if (!room || !(down || up)) {
            return false;
        }
        double height = boxOf(unit).height();
        Box end = outline(past).box();
        return down ? all.bottom() - end.top() >= height : end.bottom() - all.top() >= height;
    }

    private List<Stretch> barred(Unit unit, int past, double first, double then) {
        if (leavesRoom(unit, past, then)) {
            return List.of();
        }
        return unit.bodies().stream()
                .filter(body -> !passes(body, past))
                .flatMap(body -> barred
                        .computeIfAbsent(
                                new Going(body, past, first, then),
                                going -> Parting.barred(outline(body), outline(past), first, then))
                        .stream())
                .toList();
    }

    private boolean passes(int body, int past) {
        return body == past || lapped.contains(pair(body, past));
    }

    /** Directions of a shift before it leaves: up, down, back, out, and along its own slanted sides. */
    private List<Double> firsts(Unit unit, double then) {
        return Stream.concat(
                        Stream.of(UP, DOWN, BACK, OUT), unit.bodies().stream().flatMap(body -> slants(body).stream()))
                .distinct()
                .filter(first -> Math.abs(Math.sin(Math.toRadians(first - then))) > Tolerance.SAME_DIRECTION)
                .toList();
    }

    private List<Double> slants(int body) {
        return slants.computeIfAbsent(body, number -> {
            List<Double> found = new ArrayList<>();
            for (Stroke stroke : outline(number).strokes()) {
                if (stroke.segment() instanceof Line line && line.length() >= LEADS) {
                    Point way = line.direction(0);
                    double degrees = Math.toDegrees(way.angle());
                    boolean square = Math.min(Math.abs(way.x()), Math.abs(way.y())) <= Tolerance.SAME_DIRECTION;
                    if (!square) {
                        for (double angle : new double[] {degrees, degrees + BACK}) {
                            if (found.stream()
                                    .noneMatch(other -> Math.abs(Math.sin(Math.toRadians((other - angle) / 2)))
                                            < Tolerance.SAME_DIRECTION)) {
                                found.add(angle);
                            }
                        }
                    }
                }
            }
            return List.copyOf(found);
        });
    }

    /** How far a way goes on until the unit is past the boxes of all pieces that stand. */
    private WayIn clear(Unit unit, WayIn way, Collection<Integer> standing) {
        Box own = boxOf(unit);
        Point shift = Point.towards(Math.toRadians(way.first())).times(way.shift());
        double past = standing.stream()
                .filter(body -> section.body(body).piece())
                .mapToDouble(body -> past(outline(body).box(), own, shift, way.then()))
                .max()
                .orElse(0);
        double size = way.then() == OUT ? own.width() : own.height();
        return way.clearBy(Math.max(past, size));
    }

    private Box boxOf(Unit unit) {
        return Box.around(
                unit.bodies().stream().map(body -> outline(body).box()).toList());
    }

    private static double past(Box staying, Box moving, Point shift, double then) {
        return then == OUT
                ? staying.face() - moving.back() - shift.x()
                : then == UP
                        ? staying.top() - moving.bottom() - shift.y()
                        : moving.top() + shift.y() - staying.bottom();
    }
}

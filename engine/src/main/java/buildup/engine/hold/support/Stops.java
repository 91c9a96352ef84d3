package buildup.engine.hold.support;

import buildup.engine.hold.support.Fall.Stop;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Follows pieces that turn or slide until they meet something that does not move along. Outlines are taken with their
 * chords, so a meeting on an arc is found within {@link Tolerance#CHORD}.
 */
final class Stops {
    /** Beyond a quarter turn nobody asks where it stops. */
    private static final double FARTHEST = Math.PI / 2;

    /** What has moved less than this still touches where it began, in. */
    private static final double BEGUN = 2 * Tolerance.TOUCHING;

    /** What turns on an edge rolls over it if that is eased: so near to it no meeting is a stop, in. */
    private static final double EDGE = 1.0 / 4;

    private Stops() {}

    /** One side of an outline, as a chord. */
    private record Side(int body, Point from, Point to) {}

    /** A meeting, by how far the pieces have come: radians, or inches. */
    private record Meeting(int body, Point at, double travel, double share) {}

    /** @param outward whether they turn clockwise, the room on the right */
    static Optional<Stop> ofTurn(Section section, List<Integer> moving, Point about, boolean outward) {
        List<Meeting> meetings = new ArrayList<>();
        List<Side> own = sides(section, moving);
        List<Side> others = sides(section, others(section, moving));
        for (Side side : own) {
            others.forEach(other -> turned(side.from, other, about, outward, other.body, false, meetings));
        }
        for (Side other : others) {
            own.forEach(side -> turned(other.from, side, about, !outward, other.body, true, meetings));
        }
        return first(meetings).map(met -> new Stop(met.body, met.at, met.travel, Math.toDegrees(met.share)));
    }

    /** @param way unit direction */
    static Optional<Stop> ofSlide(Section section, List<Integer> moving, Point way) {
        List<Meeting> meetings = new ArrayList<>();
        List<Side> own = sides(section, moving);
        List<Side> others = sides(section, others(section, moving));
        // middles too: two faces of one width meet corner to corner, which is no meeting of a corner with a side
        for (Side side : own) {
            for (Point corner : List.of(side.from, side.from.towards(side.to, 0.5))) {
                others.forEach(other -> slid(corner, other, way, other.body, false, meetings));
            }
        }
        for (Side other : others) {
            own.forEach(side -> slid(other.from, side, way.times(-1), other.body, true, meetings));
        }
        return first(meetings).map(met -> new Stop(met.body, met.at, met.travel, 0));
    }

    private static Optional<Meeting> first(List<Meeting> meetings) {
        return meetings.stream().min(Comparator.comparingDouble(Meeting::share).thenComparing(Meeting::body));
    }

    private static List<Integer> others(Section section, List<Integer> moving) {
        return IntStream.range(0, section.bodies().size())
                .filter(body -> !moving.contains(body))
                .boxed()
                .toList();
    }

    private static List<Side> sides(Section section, List<Integer> bodies) {
        List<Side> sides = new ArrayList<>();
        for (int body : bodies) {
            List<Point> ring = section.body(body).outline().flattened(Tolerance.CHORD);
            for (int i = 0; i < ring.size(); i++) {
                sides.add(new Side(body, ring.get(i), ring.get((i + 1) % ring.size())));
            }
        }
        return sides;
    }

    /**
     * A corner carried round a center until it meets a side.
     *
     * @param standing whether it is the corner that stands and the side that comes
     */
    private static void turned(
            Point corner, Side side, Point about, boolean clockwise, int stop, boolean standing, List<Meeting> out) {
        double radius = corner.distance(about);
        if (radius <= EDGE) {
            return;
        }
        Point along = side.to.minus(side.from);
        Point start = side.from.minus(about);
        double a = along.dot(along);
        double b = start.dot(along);
        double root = b * b - a * (start.dot(start) - radius * radius);
        if (a <= 0 || root < 0) {
            return;
        }
        for (int sign : List.of(-1, 1)) {
            double share = (-b + sign * Math.sqrt(root)) / a;
            if (share >= 0 && share <= 1) {
                Point met = side.from.plus(along.times(share));
                double angle = met.minus(about).angle() - corner.minus(about).angle();
                double turn = positive(clockwise ? -angle : angle);
                if (turn * radius > BEGUN && turn <= FARTHEST) {
                    out.add(new Meeting(stop, standing ? corner : met, turn * radius, turn));
                }
            }
        }
    }

    private static double positive(double angle) {
        double full = 2 * Math.PI;
        double turn = angle % full;
        return turn < 0 ? turn + full : turn;
    }

    private static void slid(Point corner, Side side, Point way, int stop, boolean standing, List<Meeting> out) {
        Point along = side.to.minus(side.from);
        double across = way.cross(along);
        if (Math.abs(across) <= Tolerance.SAME_DIRECTION * along.length()) {
            return;
        }
        Point to = side.from.minus(corner);
        double travel = to.cross(along) / across;
        double share = to.cross(way) / across;
        if (travel > BEGUN && share > 0 && share < 1) {
            out.add(new Meeting(stop, standing ? corner : corner.plus(way.times(travel)), travel, travel));
        }
    }
}

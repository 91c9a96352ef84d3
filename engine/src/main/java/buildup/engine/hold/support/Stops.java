package buildup.engine.hold.support;

import buildup.engine.hold.support.Fall.Stop;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    private final Section section;
    private final boolean[] moves;
    /** The nearest meeting so far: of which body, where, how far its place has come (in), and the share (radians or in). */
    private int body;

    private double atX;
    private double atY;
    private double travel;
    private double share = Double.POSITIVE_INFINITY;
    /** The cosine of the least turn so far. */
    private double leastCosine;

    private Stops(Section section, List<Integer> moving) {
        this.section = section;
        this.moves = new boolean[section.bodies().size()];
        for (int piece : moving) {
            moves[piece] = true;
        }
    }

    /** @param outward whether they turn clockwise, the room on the right */
    static Optional<Stop> ofTurn(Section section, List<Integer> moving, Point about, boolean outward) {
        Stops stops = new Stops(section, moving);
        List<Ring> turning = new ArrayList<>();
        double nearest = Double.POSITIVE_INFINITY;
        double farthest = 0;
        for (int piece : moving) {
            Ring ring = new Ring(piece, stops.ring(piece), about);
            nearest = Math.min(nearest, ring.nearest);
            farthest = Math.max(farthest, ring.farthest);
            turning.add(ring);
        }
        List<Ring> standing = new ArrayList<>();
        for (int one = 0; one < stops.moves.length; one++) {
            if (!stops.moves[one] && between(section.body(one).outline().box(), about, nearest, farthest)) {
                standing.add(new Ring(one, stops.ring(one), about));
            }
        }
        // the corners of what moves meet sides that stand; then, turned the other way, the other way round
        for (Ring corners : turning) {
            for (Ring sides : standing) {
                stops.turned(corners, sides, about, outward, false);
            }
        }
        for (Ring corners : standing) {
            for (Ring sides : turning) {
                stops.turned(corners, sides, about, !outward, true);
            }
        }
        return stops.met(Math.toDegrees(stops.share));
    }

    /** Whether what lies in a box may be as far from a place as something between two distances, these squared. */
    private static boolean between(Box box, Point about, double nearest, double farthest) {
        double inX = Math.max(0, Math.max(box.back() - about.x(), about.x() - box.face()));
        double inY = Math.max(0, Math.max(box.bottom() - about.y(), about.y() - box.top()));
        double outX = Math.max(about.x() - box.back(), box.face() - about.x());
        double outY = Math.max(about.y() - box.bottom(), box.top() - about.y());
        double slack = Tolerance.SNAP * (1 + farthest);
        return inX * inX + inY * inY <= farthest + slack && outX * outX + outY * outY >= nearest - slack;
    }

    /** The corners of an outline as seen from the center of a turn, and their distances from it, squared too. */
    private static final class Ring {
        private final int body;
        private final double[] x;
        private final double[] y;
        private final double[] square;
        private final double back;
        private final double face;
        private final double bottom;
        private final double top;
        private final double nearest;
        private double farthest;

        Ring(int body, List<Point> points, Point about) {
            this.body = body;
            int count = points.size();
            x = new double[count + 1];
            y = new double[count + 1];
            square = new double[count + 1];
            double left = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= count; i++) {
                Point p = points.get(i < count ? i : 0);
                x[i] = p.x() - about.x();
                y[i] = p.y() - about.y();
                square[i] = x[i] * x[i] + y[i] * y[i];
                farthest = Math.max(farthest, square[i]);
                left = Math.min(left, x[i]);
                right = Math.max(right, x[i]);
                low = Math.min(low, y[i]);
                high = Math.max(high, y[i]);
            }
            back = left;
            face = right;
            bottom = low;
            top = high;
            double inX = Math.max(0, Math.max(back, -face));
            double inY = Math.max(0, Math.max(bottom, -top));
            nearest = inX * inX + inY * inY;
        }

        /** Whether a circle about the center may meet it: not when it is wholly inside or wholly outside. */
        boolean reaches(double squared, double slack) {
            return nearest <= squared + slack && farthest >= squared - slack;
        }

        /** Whether some of it may lie nearer to some of another than this. */
        boolean near(Ring other, double far) {
            double outX = Math.max(0, Math.max(back - other.face, other.back - face));
            double outY = Math.max(0, Math.max(bottom - other.top, other.bottom - top));
            return outX * outX + outY * outY <= far * far;
        }

        /** Whether some of it may lie nearer to a place than this. */
        boolean near(double atX, double atY, double far) {
            double outX = Math.max(0, Math.max(back - atX, atX - face));
            double outY = Math.max(0, Math.max(bottom - atY, atY - top));
            return outX * outX + outY * outY <= far * far;
        }
    }

    /**
     * The corners of one body carried round a center until they meet sides of another.
     *
     * @param standing whether it is the corners that stand and the sides that come
     */
    private void turned(Ring corners, Ring sides, Point about, boolean clockwise, boolean standing) {
        // a corner comes no farther, as the crow flies, than its way along the circle to the nearest meeting so far
        if (!sides.near(corners, Math.min(share, FARTHEST) * Math.sqrt(corners.farthest) + Tolerance.SNAP)) {
            return;
        }
        for (int i = 0; i + 1 < corners.x.length; i++) {
            double squared = corners.square[i];
            double radius = Math.sqrt(squared);
            double slack = Tolerance.SNAP * radius;
            double far = Math.min(share, FARTHEST) * radius + Tolerance.SNAP;
            if (radius > EDGE && sides.reaches(squared, slack) && sides.near(corners.x[i], corners.y[i], far)) {
                for (int j = 0; j + 1 < sides.x.length; j++) {
                    // a side with both ends inside the circle does not meet it
                    if (sides.square[j] >= squared - slack || sides.square[j + 1] >= squared - slack) {
                        turned(corners, i, radius, sides, j, about, clockwise, standing);
                    }
                }
            }
        }
    }

    private void turned(
            Ring corners, int i, double radius, Ring sides, int j, Point about, boolean clockwise, boolean standing) {
        double x = corners.x[i];
        double y = corners.y[i];
        double startX = sides.x[j];
        double startY = sides.y[j];
        double alongX = sides.x[j + 1] - startX;
        double alongY = sides.y[j + 1] - startY;
        double a = alongX * alongX + alongY * alongY;
        double b = startX * alongX + startY * alongY;
        double root = b * b - a * (sides.square[j] - corners.square[i]);
        // a side that gets no nearer between its ends than the nearer of them, and that is outside, meets no circle
        boolean inside = b < 0 && a + b > 0;
        double slack = Tolerance.SNAP * radius;
        double outside = corners.square[i] + slack;
        if (a <= 0 || root < 0 || (!inside && sides.square[j] > outside && sides.square[j + 1] > outside)) {
            return;
        }
        for (int sign = -1; sign <= 1; sign += 2) {
            double along = (-b + sign * Math.sqrt(root)) / a;
            if (along >= 0 && along <= 1) {
                double metX = startX + alongX * along;
                double metY = startY + alongY * along;
                double ahead = (x * metY - y * metX) * (clockwise ? -1 : 1);
                double beside = x * metX + y * metY;
                // an angle is worked out only where it has plainly begun and may be less than the least so far
                boolean wanted = ahead > BEGUN / 2 * radius
                        && beside >= (leastCosine - Tolerance.COINCIDENT) * corners.square[i];
                double turn = wanted ? Math.atan2(ahead, beside) : Double.POSITIVE_INFINITY;
                if (turn * radius > BEGUN && turn <= FARTHEST) {
                    leastCosine = Math.max(leastCosine, beside / corners.square[i]);
                    meets(
                            standing ? corners.body : sides.body,
                            about.x() + (standing ? x : metX),
                            about.y() + (standing ? y : metY),
                            turn * radius,
                            turn);
                }
            }
        }
    }

    /** @param way unit direction */
    static Optional<Stop> ofSlide(Section section, List<Integer> moving, Point way) {
        Stops stops = new Stops(section, moving);
        for (boolean standing : new boolean[] {false, true}) {
            for (int one = 0; one < stops.moves.length; one++) {
                if (stops.moves[one] != standing) {
                    stops.slid(one, standing ? way.times(-1) : way, standing);
                }
            }
        }
        return stops.met(0);
    }

    private void slid(int one, Point way, boolean standing) {
        List<Point> ring = ring(one);
        for (int i = 0; i < ring.size(); i++) {
            Point corner = ring.get(i);
            slid(corner, one, way, standing);
            if (!standing) {
                // middles too: two faces of one width meet corner to corner, which is no meeting of a corner with a
                // side
                slid(corner.towards(ring.get((i + 1) % ring.size()), 0.5), one, way, false);
            }
        }
    }

    private Optional<Stop> met(double degrees) {
        return Double.isInfinite(share)
                ? Optional.empty()
                : Optional.of(new Stop(body, new Point(atX, atY), travel, degrees));
    }

    private List<Point> ring(int one) {
        return section.body(one).outline().chords();
    }

    /** Keeps the nearest meeting, and of two that are as near that with the body of the lower number. */
    private void meets(int with, double x, double y, double by, double nearness) {
        if (nearness < share || (nearness <= share && with < body)) {
            body = with;
            atX = x;
            atY = y;
            travel = by;
            share = nearness;
        }
    }

    /** A corner that slides until it meets a side of a body on the other part. */
    private void slid(Point corner, int own, Point way, boolean standing) {
        for (int other = 0; other < moves.length; other++) {
            if (moves[other] == standing) {
                List<Point> ring = ring(other);
                for (int i = 0; i < ring.size(); i++) {
                    Point to = ring.get(i + 1 < ring.size() ? i + 1 : 0);
                    slid(corner, ring.get(i), to, way, standing ? own : other, standing);
                }
            }
        }
    }

    private void slid(Point corner, Point from, Point to, Point way, int stop, boolean standing) {
        Point along = to.minus(from);
        double across = way.cross(along);
        if (Math.abs(across) <= Tolerance.SAME_DIRECTION * along.length()) {
            return;
        }
        Point gap = from.minus(corner);
        double by = gap.cross(along) / across;
        double where = gap.cross(way) / across;
        if (by > BEGUN && where > 0 && where < 1) {
            Point at = standing ? corner : corner.plus(way.times(by));
            meets(stop, at.x(), at.y(), by, by);
        }
    }
}

package buildup.profiles.region;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How two outlines lie against each other where they meet exactly: along stretches that both walk, one each way, or at
 * corners. Where they come near without meeting, or lie in each other, there is no such answer, and only a union can say
 * what they make together.
 */
public final class Abutment {
    /** Nearer than this a union by chords would weld, and what it makes is not what the outlines as given make, in. */
    private static final double DOUBTFUL = 2 * Tolerance.TOUCHING;

    /** Farther apart than doubtful: the two have nothing to do with each other. */
    static final Abutment APART = new Abutment(List.of(), List.of());

    /**
     * A stretch of one stroke along which the other outline lies; a corner where both ends are one place.
     *
     * @param stroke its number on the outline
     * @param start, end places on it, t
     */
    record Covered(int stroke, double start, double end) {}

    private final List<Covered> ofFirst;
    private final List<Covered> ofSecond;

    private Abutment(List<Covered> ofFirst, List<Covered> ofSecond) {
        this.ofFirst = ofFirst;
        this.ofSecond = ofSecond;
    }

    List<Covered> ofFirst() {
        return ofFirst;
    }

    List<Covered> ofSecond() {
        return ofSecond;
    }

    /** How two outlines meet; nothing where they nearly do, or where one lies in the other. */
    public static Optional<Abutment> of(Outline first, Outline second) {
        if (!first.box().near(second.box(), DOUBTFUL)) {
            return Optional.of(APART);
        }
        Finding finding = new Finding();
        for (int i = 0; i < first.strokes().size(); i++) {
            Stroke mine = first.strokes().get(i);
            if (!mine.segment().box().near(second.box(), DOUBTFUL)) {
                continue;
            }
            for (int j = 0; j < second.strokes().size(); j++) {
                Segment its = second.strokes().get(j).segment();
                if (mine.segment().box().near(its.box(), DOUBTFUL) && !finding.meet(i, mine.segment(), j, its)) {
                    return Optional.empty();
                }
            }
        }
        return overlap(first, second)
                ? Optional.empty()
                : Optional.of(new Abutment(List.copyOf(finding.ofFirst), List.copyOf(finding.ofSecond)));
    }

    private static boolean overlap(Outline first, Outline second) {
        Box a = first.box();
        Box b = second.box();
        return a.near(b, -Tolerance.COINCIDENT)
                && Difference.from(first).shared(Difference.from(second)) > Tolerance.NO_AREA;
    }

    /** Gathers what two outlines have in common, stroke by stroke. */
    private static final class Finding {
        private final List<Covered> ofFirst = new ArrayList<>();
        private final List<Covered> ofSecond = new ArrayList<>();

        /** Whether it is beyond doubt how two strokes meet. */
        boolean meet(int i, Segment a, int j, Segment b) {
            if (runOnEachOther(a, b)) {
                along(i, a, j, b);
                return true;
            }
            return corner(i, a, b.from(), false)
                    && corner(i, a, b.to(), false)
                    && corner(j, b, a.from(), true)
                    && corner(j, b, a.to(), true)
                    && feet(a, b)
                    && feet(b, a);
        }

        /**
         * An end of one stroke beside another.
         *
         * @param i the stroke beside which the end lies, and its segment
         * @param swapped whether that stroke is of the second outline
         */
        private boolean corner(int i, Segment a, Point end, boolean swapped) {
            double t = a.nearest(end);
            double off = a.at(t).distance(end);
            if (off >= DOUBTFUL) {
                return true;
            }
            if (off > Tolerance.COINCIDENT) {
                return false;
            }
            (swapped ? ofSecond : ofFirst).add(new Covered(i, t, t));
            return true;
        }

        /** Two strokes in line; where they leave a gap, the stroke that comes next at its end is too near to the other. */
        private void along(int i, Segment a, int j, Segment b) {
            double start = Math.max(0, place(a, b.to()));
            double end = Math.min(1, place(a, b.from()));
            if ((end - start) * a.length() > Tolerance.COINCIDENT) {
                ofFirst.add(new Covered(i, start, end));
                ofSecond.add(new Covered(j, b.nearest(a.at(end)), b.nearest(a.at(start))));
            }
        }

        /** Where a place in line with a segment lies on it, t; outside 0 to 1 when it lies beyond an end. */
        private static double place(Segment a, Point p) {
            if (a instanceof Line line) {
                Point way = line.to().minus(line.from());
                return p.minus(line.from()).dot(way) / way.dot(way);
            }
            Arc arc = (Arc) a;
            return arc.atAngle(p.minus(arc.center()).angle());
        }

        /** Whether the two lie in one line, or on one circle, and are walked each its own way. */
        private static boolean runOnEachOther(Segment a, Segment b) {
            if (a instanceof Line mine && b instanceof Line its) {
                Point way = mine.direction(0);
                return way.dot(its.direction(0)) < 0
                        && Math.abs(way.cross(its.from().minus(mine.from()))) <= Tolerance.COINCIDENT
                        && Math.abs(way.cross(its.to().minus(mine.from()))) <= Tolerance.COINCIDENT;
            }
            return a instanceof Arc mine
                    && b instanceof Arc its
                    && mine.counterclockwise() != its.counterclockwise()
                    && mine.center().near(its.center(), Tolerance.COINCIDENT)
                    && Math.abs(mine.radius() - its.radius()) <= Tolerance.COINCIDENT;
        }

        /** Whether an arc comes near another stroke, square to both, only at its ends. */
        private static boolean feet(Segment a, Segment b) {
            if (!(a instanceof Arc arc)) {
                return true;
            }
            Point way = b instanceof Line line
                    ? line.direction(0).left()
                    : ((Arc) b).center().minus(arc.center()).unit();
            for (Point spoke : List.of(way, way.times(-1))) {
                double t = way.length() > 0 ? arc.atAngle(spoke.angle()) : -1;
                if (t > 0 && t < 1) {
                    Point foot = arc.at(t);
                    boolean atEnd =
                            foot.near(arc.from(), Tolerance.COINCIDENT) || foot.near(arc.to(), Tolerance.COINCIDENT);
                    if (!atEnd && b.distance(foot) < DOUBTFUL) {
                        return false;
                    }
                }
            }
            return true;
        }
    }
}

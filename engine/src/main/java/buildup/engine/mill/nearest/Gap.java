package buildup.engine.mill.nearest;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * How far two outlines gape: the farthest that a point of either lies from the other, square to the curve, on true
 * segments.
 *
 * @param missing how far at most the wood laid on falls short of what is wanted, in
 * @param missingAt where
 * @param spare how far at most it stands out beyond what is wanted, in
 * @param spareAt where
 */
record Gap(double missing, Point missingAt, double spare, Point spareAt) {
    /** The place of a peak in the middle of a curve is narrowed down by a third so often. */
    private static final int NARROWED = 40;

    /** Twice the greatest side that any mill runs, in: what is larger is measured as coarsely as it is larger. */
    private static final double GREATEST = 24;

    /** A stretch of one outline with the distances of its ends from the other. */
    private record Stretch(Segment segment, double a, double b, double atA, double atB) {
        /** A distance changes by no more than the way walked. */
        double most() {
            return (atA + atB + (b - a) * segment.length()) / 2;
        }
    }

    /** A place on an outline and its distance from the other. */
    private record Place(Segment segment, double t, double distance) {
        Point at() {
            return segment.at(t);
        }
    }

    /**
     * One outline against another.
     *
     * @param sign 1 to look for what lies outside the other, -1 for what lies inside it
     * @param fine what is this little farther off than the farthest known is not looked for, in
     */
    private record Look(MeasuredOutline from, MeasuredOutline other, int sign, double fine) {
        double far(Segment segment, double t) {
            return sign * other.outside(segment.at(t));
        }

        Place farthest() {
            Segment first = from.segments().get(0);
            Place best = new Place(first, 0, Math.max(0, far(first, 0)));
            List<Stretch> open = new ArrayList<>();
            for (Segment segment : from.segments()) {
                Stretch whole = new Stretch(segment, 0, 1, far(segment, 0), far(segment, 1));
                open.add(whole);
                best = whole.atA() > best.distance() ? new Place(segment, 0, whole.atA()) : best;
            }
            while (!open.isEmpty()) {
                Stretch stretch = open.remove(open.size() - 1);
                if (stretch.most() <= best.distance() + fine) {
                    continue;
                }
                double middle = (stretch.a() + stretch.b()) / 2;
                double there = far(stretch.segment(), middle);
                best = there > best.distance() ? new Place(stretch.segment(), middle, there) : best;
                open.add(new Stretch(stretch.segment(), stretch.a(), middle, stretch.atA(), there));
                open.add(new Stretch(stretch.segment(), middle, stretch.b(), there, stretch.atB()));
            }
            return best.t() > 0 && best.t() < 1 ? narrowed(best) : best;
        }

        private Place narrowed(Place place) {
            Segment segment = place.segment();
            double reach = 2 * fine / segment.length() + 0.02;
            double low = Math.max(0, place.t() - reach);
            double high = Math.min(1, place.t() + reach);
            for (int i = 0; i < NARROWED; i++) {
                double third = (high - low) / 3;
                if (far(segment, low + third) < far(segment, high - third)) {
                    low += third;
                } else {
                    high -= third;
                }
            }
            double t = (low + high) / 2;
            double there = far(segment, t);
            return there > place.distance() ? new Place(segment, t, there) : place;
        }
    }

    static Gap between(Outline wanted, Outline laid) {
        // along faces that lie even, as many places are measured as the fineness goes into them
        double coarser = Math.max(1, Math.max(side(wanted), side(laid)) / GREATEST);
        double fine = Tolerance.FARTHEST_FOUND * coarser;
        MeasuredOutline a = MeasuredOutline.of(wanted, coarser);
        MeasuredOutline b = MeasuredOutline.of(laid, coarser);
        Place missing = farther(new Look(a, b, 1, fine).farthest(), new Look(b, a, -1, fine).farthest());
        Place spare = farther(new Look(b, a, 1, fine).farthest(), new Look(a, b, -1, fine).farthest());
        return new Gap(missing.distance(), missing.at(), spare.distance(), spare.at());
    }

    private static double side(Outline outline) {
        Box box = outline.box();
        return Math.max(box.width(), box.height());
    }

    private static Place farther(Place a, Place b) {
        return a.distance() >= b.distance() ? a : b;
    }

    /** The farther of the two. */
    double most() {
        return Math.max(missing, spare);
    }

    Point at() {
        return missing > spare ? missingAt : spareAt;
    }
}

package buildup.profiles.travel;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A stretch of a true segment over which it has one height at each x, by its ends from left to right. */
record SegmentPart(Segment segment, Point left, Point right) {

    /** The stretches of a segment; an arc is cut at its x extremes, an upright line has none. */
    static List<SegmentPart> of(Segment segment) {
        if (!(segment instanceof Arc arc)) {
            return part(segment, 0, 1).stream().toList();
        }
        List<Double> cuts = new ArrayList<>(List.of(0.0));
        List.of(arc.atAngle(0), arc.atAngle(Math.PI)).stream()
                .filter(t -> t > 0 && t < 1)
                .sorted()
                .forEach(cuts::add);
        cuts.add(1.0);
        List<SegmentPart> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i++) {
            part(segment, cuts.get(i), cuts.get(i + 1)).ifPresent(pieces::add);
        }
        return pieces;
    }

    private static Optional<SegmentPart> part(Segment segment, double from, double to) {
        Segment part = segment.part(from, to);
        Point a = part.from();
        Point b = part.to();
        if (Math.abs(a.x() - b.x()) <= Tolerance.COINCIDENT) {
            return Optional.empty();
        }
        return Optional.of(a.x() < b.x() ? new SegmentPart(part, a, b) : new SegmentPart(part, b, a));
    }

    /** The height at {@code x}; beyond an end, the height of that end. */
    double height(double x) {
        // at an upright tangent a height computed from x would lose half its digits
        if (x <= left.x() + Tolerance.COINCIDENT) {
            return left.y();
        }
        if (x >= right.x() - Tolerance.COINCIDENT) {
            return right.y();
        }
        if (segment instanceof Arc arc) {
            double off = x - arc.center().x();
            return arc.center().y() + bulge(arc) * Math.sqrt(Math.max(0, (arc.radius() - off) * (arc.radius() + off)));
        }
        return left.y() + (right.y() - left.y()) * ((x - left.x()) / (right.x() - left.x()));
    }

    /** 1 for an arc over its center, -1 for one under it. */
    private static int bulge(Arc arc) {
        return arc.at(0.5).y() > arc.center().y() ? 1 : -1;
    }

    /** How far this piece stands over {@code other} at most, from one x to another: at an end or where both are equally steep. */
    double over(SegmentPart other, double from, double to) {
        double most = Math.max(height(from) - other.height(from), height(to) - other.height(to));
        double x = equallySteep(other);
        return from < x && x < to ? Math.max(most, height(x) - other.height(x)) : most;
    }

    /**
     * The x at which this piece and {@code other} are equally steep, so that the height between them can be least
     * there; NaN or a place off the pieces when there is none.
     */
    private double equallySteep(SegmentPart other) {
        if (segment instanceof Arc a) {
            return other.segment instanceof Arc b ? equallySteep(a, b) : equallySteep(a, other);
        }
        return other.segment instanceof Arc b ? equallySteep(b, this) : Double.NaN;
    }

    private static double equallySteep(Arc arc, SegmentPart line) {
        double rise = line.right.y() - line.left.y();
        double run = line.right.x() - line.left.x();
        return arc.center().x() - bulge(arc) * arc.radius() * rise / Math.hypot(rise, run);
    }

    /** Equal slope means equal, or for a round on a round opposite, (x - c)/r. */
    private static double equallySteep(Arc a, Arc b) {
        double ra = a.radius();
        double rb = bulge(a) == bulge(b) ? -b.radius() : b.radius();
        double sum = ra + rb;
        return Math.abs(sum) <= Tolerance.COINCIDENT
                ? Double.NaN
                : (a.center().x() * rb + b.center().x() * ra) / sum;
    }
}

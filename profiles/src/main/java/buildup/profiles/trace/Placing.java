package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.List;
import java.util.Optional;

/** Brings a ring of curves to where profiles stand: the back at x = 0, the lowest point at y = 0. */
final class Placing {
    /** A line this near to the edge of the box, in standard deviations of a point, is the edge. */
    private static final double AT_EDGE = 4;

    private Placing() {}

    /** The box of the curves from corner to corner; empty when they do not close. */
    static Optional<Box> box(Fitting fitting) {
        return Corners.segments(fitting.curves(), fitting.kinds(), fitting.starts())
                .map(segments -> Box.around(segments.stream().map(Segment::box).toList()))
                .filter(box -> Double.isFinite(box.width()) && Double.isFinite(box.height()));
    }

    /** By the line at the edge that has most points, where there is one. */
    static Fitting home(Fitting fitting) {
        return box(fitting)
                .map(box -> fitting.moved(Motion.shift(
                        -level(fitting, box.back(), new Point(-1, 0)),
                        -level(fitting, box.bottom(), new Point(0, -1)))))
                .orElse(fitting);
    }

    private static double level(Fitting fitting, double edge, Point outward) {
        double level = edge;
        int most = 0;
        List<Curve> curves = fitting.curves();
        for (int i = 0; i < curves.size(); i++) {
            boolean there = curves.get(i) instanceof Curve.Straight line
                    && line.normal().near(outward, Tolerance.SNAP)
                    && Math.abs(-line.offset() - edge)
                            < AT_EDGE * fitting.noise().scatter();
            if (there && fitting.points().get(i).size() > most) {
                most = fitting.points().get(i).size();
                level = -((Curve.Straight) curves.get(i)).offset();
            }
        }
        return level;
    }
}

package buildup.cli.write;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** A cubic curve from {@code from} to {@code to} with two handles. */
record Cubic(Point from, Point first, Point second, Point to) {
    /**
     * The arc as cubic curves with handles of 4/3 tan(step/4) radii, which meet the circle at both ends and in the
     * middle of the step. Such a curve strays by at most r 4/27 sin^6(step/4) / cos^2(step/4): formula from memory, and
     * the test measures it.
     */
    static List<Cubic> along(Arc arc) {
        int steps = (int) Math.ceil(Math.abs(arc.sweep()) / (Math.PI / 2));
        while (stray(arc.radius(), arc.sweep() / steps) > Tolerance.WRITTEN_CURVE) {
            steps++;
        }
        double handle = 4.0 / 3 * Math.tan(Math.abs(arc.sweep()) / steps / 4) * arc.radius();
        List<Cubic> curves = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            double start = (double) i / steps;
            double end = (double) (i + 1) / steps;
            Point from = arc.at(start);
            Point to = arc.at(end);
            curves.add(new Cubic(
                    from,
                    from.plus(arc.direction(start).times(handle)),
                    to.minus(arc.direction(end).times(handle)),
                    to));
        }
        return curves;
    }

    private static double stray(double radius, double step) {
        double sine = Math.sin(step / 4);
        double cosine = Math.cos(step / 4);
        return radius * 4 / 27 * Math.pow(sine, 6) / (cosine * cosine);
    }

    /** The place at a share of the parameter, 0 to 1. */
    Point at(double t) {
        double s = 1 - t;
        return from.times(s * s * s)
                .plus(first.times(3 * s * s * t))
                .plus(second.times(3 * s * t * t))
                .plus(to.times(t * t * t));
    }
}

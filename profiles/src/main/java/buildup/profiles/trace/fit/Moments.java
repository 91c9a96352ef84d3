package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * Sums over stretches of a run of points, each in constant time, and the best line and circle that follow from them.
 *
 * <p>Line: least squares of the distances, from the smaller eigenvalue of the scatter. Circle: the algebraic fit of G.
 * Taubin, "Estimation of planar curves", IEEE Trans. PAMI 13 (1991) 1115-1138, by Newton's method as in N. Chernov,
 * "Circular and Linear Regression" (CRC Press, 2010), chapter 5; its eigenvalue is the mean square of the distances to
 * first order.
 */
final class Moments {
    /** Newton steps from below, each at least halving what is left of the eigenvalue; rounding stops them earlier. */
    private static final int MOST_STEPS = 20;

    private final Point middle;
    /** Running sums of x, y, xx, xy, yy, xz, yz, z and zz, where z = xx + yy; nine for each point. */
    private final double[] sums;

    private static final int KINDS = 9;

    private Moments(Point middle, double[] sums) {
        this.middle = middle;
        this.sums = sums;
    }

    /** A circle or, when the points are straight, nothing. */
    record Circle(Point center, double radius) {}

    static Moments of(List<Point> points) {
        double x = 0;
        double y = 0;
        for (Point p : points) {
            x += p.x() / points.size();
            y += p.y() / points.size();
        }
        double[] sums = new double[KINDS * (points.size() + 1)];
        for (int i = 0; i < points.size(); i++) {
            double u = points.get(i).x() - x;
            double v = points.get(i).y() - y;
            double z = u * u + v * v;
            double[] terms = {u, v, u * u, u * v, v * v, u * z, v * z, z, z * z};
            for (int k = 0; k < KINDS; k++) {
                sums[KINDS * (i + 1) + k] = sums[KINDS * i + k] + terms[k];
            }
        }
        return new Moments(new Point(x, y), sums);
    }

    private double sum(int kind, int from, int to) {
        return sums[KINDS * to + kind] - sums[KINDS * from + kind];
    }

    /** Square root of the mean square distance of all points from their middle, in. */
    double spread() {
        int n = sums.length / KINDS - 1;
        return Math.sqrt(sum(7, 0, n) / n);
    }

    /** Mean of the points {@code from} to {@code to}, the last not among them. */
    Point mean(int from, int to) {
        double n = to - from;
        return new Point(middle.x() + sum(0, from, to) / n, middle.y() + sum(1, from, to) / n);
    }

    /** Sum of the squared distances from the best line, sq in. */
    double lineError(int from, int to) {
        double n = to - from;
        double a = sum(0, from, to) / n;
        double b = sum(1, from, to) / n;
        double xx = sum(2, from, to) - n * a * a;
        double xy = sum(3, from, to) - n * a * b;
        double yy = sum(4, from, to) - n * b * b;
        double apart = Math.sqrt((xx - yy) * (xx - yy) + 4 * xy * xy);
        // the product over the greater eigenvalue loses fewer digits than the difference
        double greater = (xx + yy + apart) / 2;
        return greater > 0 ? Math.max(0, (xx * yy - xy * xy) / greater) : 0;
    }

    /** Direction of the best line, in radians, either way. */
    double lineAngle(int from, int to) {
        double n = to - from;
        double a = sum(0, from, to) / n;
        double b = sum(1, from, to) / n;
        double xx = sum(2, from, to) - n * a * a;
        double xy = sum(3, from, to) - n * a * b;
        double yy = sum(4, from, to) - n * b * b;
        return Math.atan2(2 * xy, xx - yy) / 2;
    }

    /** Sum of the squared distances from the best circle, sq in, to first order. */
    double circleError(int from, int to) {
        return new Central(from, to).eigenvalue() * (to - from);
    }

    /** The best circle. */
    Circle circle(int from, int to) {
        Central c = new Central(from, to);
        double eigen = c.eigenvalue();
        double det = eigen * eigen - eigen * c.z + c.cov;
        double u = (c.xz * (c.yy - eigen) - c.yz * c.xy) / det / 2;
        double v = (c.yz * (c.xx - eigen) - c.xz * c.xy) / det / 2;
        return new Circle(new Point(middle.x() + c.a + u, middle.y() + c.b + v), Math.sqrt(u * u + v * v + c.z));
    }

    /** Mean moments about the mean of a stretch, in Chernov's letters. */
    private final class Central {
        private final double a;
        private final double b;
        private final double xx;
        private final double xy;
        private final double yy;
        private final double xz;
        private final double yz;
        private final double zz;
        private final double z;
        private final double cov;

        Central(int from, int to) {
            double n = to - from;
            a = sum(0, from, to) / n;
            b = sum(1, from, to) / n;
            double sxx = sum(2, from, to) / n;
            double sxy = sum(3, from, to) / n;
            double syy = sum(4, from, to) / n;
            double sxz = sum(5, from, to) / n;
            double syz = sum(6, from, to) / n;
            double sz = sum(7, from, to) / n;
            double szz = sum(8, from, to) / n;
            double c = a * a + b * b;
            xx = sxx - a * a;
            xy = sxy - a * b;
            yy = syy - b * b;
            z = xx + yy;
            // w = z - 2ax - 2by + c about the mean
            double shiftedX = sxz - 2 * a * sxx - 2 * b * sxy + c * a;
            double shiftedY = syz - 2 * a * sxy - 2 * b * syy + c * b;
            xz = shiftedX - a * z;
            yz = shiftedY - b * z;
            zz = szz
                    + 4 * a * a * sxx
                    + 4 * b * b * syy
                    + c * c
                    - 4 * a * sxz
                    - 4 * b * syz
                    + 2 * c * sz
                    + 8 * a * b * sxy
                    - 4 * c * c;
            cov = xx * yy - xy * xy;
        }

        double eigenvalue() {
            double varZ = zz - z * z;
            double a3 = 4 * z;
            double a2 = -3 * z * z - zz;
            double a1 = varZ * z + 4 * cov * z - xz * xz - yz * yz;
            double a0 = xz * (xz * yy - yz * xy) + yz * (yz * xx - xz * xy) - varZ * cov;
            double eigen = 0;
            for (int step = 0; step < MOST_STEPS; step++) {
                double value = a0 + eigen * (a1 + eigen * (a2 + eigen * a3));
                double slope = a1 + eigen * (2 * a2 + eigen * 3 * a3);
                if (slope == 0) {
                    break;
                }
                double next = eigen - value / slope;
                boolean done = Math.abs(next - eigen) <= Tolerance.LAST_STEP * Math.abs(next);
                if (next < 0 || !Double.isFinite(next)) {
                    break;
                }
                eigen = next;
                if (done) {
                    break;
                }
            }
            return eigen;
        }
    }
}

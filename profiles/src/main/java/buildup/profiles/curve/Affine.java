package buildup.profiles.curve;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;

/** A straight map of the plane, stretching and skewing included: (x, y) goes to (a x + c y + e, b x + d y + f). */
public record Affine(double a, double b, double c, double d, double e, double f) {
    public static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    /** A move to the right and up, in the unit of the points. */
    public static Affine shift(double right, double up) {
        return new Affine(1, 0, 0, 1, right, up);
    }

    /** Larger or smaller about the origin, by a factor each way; a negative one mirrors. */
    public static Affine scale(double x, double y) {
        return new Affine(x, 0, 0, y, 0, 0);
    }

    /** A turn about the origin, degrees counterclockwise where y goes up; whole quarters are exact. */
    public static Affine turn(double degrees) {
        double quarter = degrees / 90;
        boolean whole = Math.abs(quarter) < 1e9 && Math.abs(quarter - Math.rint(quarter)) < Tolerance.ROUNDING;
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return whole
                ? new Affine(Math.rint(cos), Math.rint(sin), -Math.rint(sin), Math.rint(cos), 0, 0)
                : new Affine(cos, sin, -sin, cos, 0, 0);
    }

    /** Where a point comes to lie. */
    public Point apply(Point p) {
        Point turned = step(p);
        return new Point(turned.x() + e, turned.y() + f);
    }

    /** The same of a step from one place to another, which no shift changes. */
    public Point step(Point step) {
        return new Point(a * step.x() + c * step.y(), b * step.x() + d * step.y());
    }

    /** This map first, then {@code next}. */
    public Affine then(Affine next) {
        Point x = next.step(new Point(a, b));
        Point y = next.step(new Point(c, d));
        Point origin = next.apply(new Point(e, f));
        return new Affine(x.x(), x.y(), y.x(), y.y(), origin.x(), origin.y());
    }

    /** Whether every number of it is a number and none is beyond {@code most}. */
    public boolean within(double most) {
        return Math.abs(a) <= most
                && Math.abs(b) <= most
                && Math.abs(c) <= most
                && Math.abs(d) <= most
                && Math.abs(e) <= most
                && Math.abs(f) <= most;
    }
}

package buildup.profiles.outline;

/** A place in the section, or the step from one place to another: inches, x out from the wall, y up. */
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    /** As a record has it; written out, since it is asked at every start, and the JVM would first have to spin it. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Point p && Double.compare(x, p.x) == 0 && Double.compare(y, p.y) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(x) + Double.hashCode(y);
    }

    /** The unit step in a direction given in radians counterclockwise from straight out. */
    public static Point towards(double angle) {
        return new Point(Math.cos(angle), Math.sin(angle));
    }

    /** The point one step on. */
    public Point plus(Point step) {
        return new Point(x + step.x, y + step.y);
    }

    /** The step from the other point to this one. */
    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    /** The step made longer by a factor; negative turns it round. */
    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    /** The dot product of two steps, sq in: positive when they point the same way. */
    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** Positive when {@code other} is counterclockwise from this step. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    /** The step turned a quarter counterclockwise. */
    public Point left() {
        return new Point(-y, x);
    }

    /** The step turned a quarter clockwise. */
    public Point right() {
        return new Point(y, -x);
    }

    /** How far it lies from the origin, or how long the step is, in. */
    public double length() {
        // plain root: no length here comes near overflow, and the library's careful one takes ten times as long
        return Math.sqrt(x * x + y * y);
    }

    /** How far apart the two points are, in. */
    public double distance(Point other) {
        return minus(other).length();
    }

    /** This step at length one; the zero step stays as it is. */
    public Point unit() {
        double length = length();
        return length > 0 ? times(1 / length) : this;
    }

    /** Direction in radians, in (-pi, pi]. */
    public double angle() {
        return Math.atan2(y, x);
    }

    /** The point so much of the way to the other, 0 being here and 1 there. */
    public Point towards(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    /** Whether the other point is at most {@code within} inches away. */
    public boolean near(Point other, double within) {
        return distance(other) <= within;
    }
}

package buildup.profiles.curve;

import buildup.profiles.outline.Point;

/** A cubic Bezier curve: two ends and two handles. */
public record Bezier(Point from, Point first, Point second, Point to) implements Curve {
    /** The quadratic curve with one handle, raised to a cubic. */
    public static Bezier quadratic(Point from, Point handle, Point to) {
        return new Bezier(from, from.towards(handle, 2.0 / 3), to.towards(handle, 2.0 / 3), to);
    }

    @Override
    public Point at(double t) {
        if (t <= 0 || t >= 1) {
            return t <= 0 ? from : to;
        }
        Point a = from.towards(first, t);
        Point b = first.towards(second, t);
        Point c = second.towards(to, t);
        return a.towards(b, t).towards(b.towards(c, t), t);
    }

    @Override
    public Bezier moved(Affine map) {
        return new Bezier(map.apply(from), map.apply(first), map.apply(second), map.apply(to));
    }

    /**
     * A chord over a step h of the parameter strays by at most h^2/8 of the second derivative, which is at most six times
     * the greater of the two second differences of the four points: error of linear interpolation.
     */
    @Override
    public int chords(double chordError) {
        double bend = 6
                * Math.max(
                        from.minus(first.times(2)).plus(second).length(),
                        first.minus(second.times(2)).plus(to).length());
        double chords = Math.sqrt(bend / (8 * chordError));
        return straight(chordError) ? 1 : Curve.bounded(chords);
    }

    /** Whether both handles lie on the line between the ends, so that nothing of it leaves the line. */
    private boolean straight(double within) {
        return onChord(first, within / 2) && onChord(second, within / 2);
    }

    private boolean onChord(Point handle, double within) {
        Point chord = to.minus(from);
        double length = chord.length();
        Point step = handle.minus(from);
        return length > 0
                && Math.abs(chord.cross(step)) <= within * length
                && chord.dot(step) >= 0
                && chord.dot(step) <= length * length;
    }
}

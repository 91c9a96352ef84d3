package buildup.profiles.curve;

import buildup.profiles.outline.Point;

/** A straight stretch. */
public record Straight(Point from, Point to) implements DrawnCurve {
    @Override
    public Point at(double t) {
        return t <= 0 ? from : t >= 1 ? to : from.towards(to, t);
    }

    @Override
    public Straight moved(Affine map) {
        return new Straight(map.apply(from), map.apply(to));
    }

    @Override
    public int chords(double chordError) {
        return 1;
    }
}

package buildup.profiles.curve;

import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/** One stretch of a drawn line, from {@link #from} to {@link #to}; places on it are given by a parameter, 0 to 1. */
public sealed interface DrawnCurve permits Straight, Oval, Bezier, Spline {
    /**
     * A curve that is not straight gets at least so many chords, so that whoever fits arcs to its points finds it again.
     */
    int FEWEST_CHORDS = 16;

    /** Nor does any get more: what needs them is no profile. */
    int MOST_CHORDS = 20_000;

    /** Where it starts. */
    Point from();

    /** Where it ends. */
    Point to();

    /** The place at a parameter; the ends come back exactly as they were given. */
    Point at(double t);

    /** The curve that the map makes of it, of the same parameters. */
    DrawnCurve moved(Affine map);

    /** How many chords of even parameter keep within {@code chordError} of it. */
    int chords(double chordError);

    /** Points on the curve, both ends included, whose chords keep within {@code chordError} of it. */
    default List<Point> points(double chordError) {
        int chords = chords(chordError);
        List<Point> points = new ArrayList<>(chords + 1);
        points.add(from());
        for (int i = 1; i < chords; i++) {
            points.add(at((double) i / chords));
        }
        points.add(to());
        return points;
    }

    /** A wished number of chords, kept between the bounds. */
    static int bounded(double chords) {
        return (int) Math.max(FEWEST_CHORDS, Math.min(MOST_CHORDS, Math.ceil(chords)));
    }
}

package buildup.profiles.curve;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Curves drawn in one go.
 *
 * @param curves at least one; each begins where the one before it ends
 * @param closed whether the end is joined to the start
 */
public record Strand(List<DrawnCurve> curves, boolean closed) {
    private static final int GLANCES = 8;

    public Strand {
        curves = List.copyOf(curves);
    }

    /** The same strand with every curve moved by the map. */
    public Strand moved(Affine map) {
        return new Strand(curves.stream().map(curve -> curve.moved(map)).toList(), closed);
    }

    /** About what it covers: the box of a few places on each curve. */
    public Box reach() {
        List<Box> places = curves.stream()
                .flatMap(curve -> IntStream.range(0, GLANCES)
                        .mapToObj(i -> Box.of(curve.at((double) i / GLANCES), curve.at((i + 1.0) / GLANCES))))
                .toList();
        return Box.around(places);
    }

    /** How many points {@link #points} gives, at most. */
    public long most(double chordError) {
        return 1 + curves.stream().mapToLong(curve -> curve.chords(chordError)).sum();
    }

    /** Points on the curves; where it is closed, the first does not come again at the end. */
    public List<Point> points(double chordError) {
        List<Point> points = new ArrayList<>(List.of(curves.get(0).from()));
        for (DrawnCurve curve : curves) {
            List<Point> next = curve.points(chordError);
            points.addAll(next.subList(1, next.size()));
        }
        Point last = points.get(points.size() - 1);
        if (closed && points.size() > 2 && last.near(points.get(0), chordError / 1000)) {
            points.remove(points.size() - 1);
        }
        return points;
    }
}

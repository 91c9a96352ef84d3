package buildup.profiles.curve;

import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A rational B-spline.
 *
 * @param controls more than {@code degree}
 * @param weights one for each control, positive
 * @param knots as many as controls and degree and one together, none less than the one before
 */
public record Spline(int degree, List<Point> controls, List<Double> weights, List<Double> knots) implements DrawnCurve {
    /** Higher degrees are for ship's hulls. */
    public static final int HIGHEST_DEGREE = 9;

    /** More are no profile, and would cost more than they show. */
    public static final int MOST_CONTROLS = 1_000;

    private static final int CHORDS_PER_SPAN = 4;
    /** From the fewest chords of a span to 256 times as many; the chord error asked for needs far fewer. */
    private static final int MOST_HALVINGS = 8;

    public Spline {
        controls = List.copyOf(controls);
        weights = List.copyOf(weights);
        knots = List.copyOf(knots);
    }

    /** What keeps such numbers from being a spline, in a few words; empty when nothing does. */
    public static List<Phrase> faults(int degree, List<Point> controls, List<Double> weights, List<Double> knots) {
        List<Phrase> faults = new ArrayList<>();
        if (degree < 1 || degree > HIGHEST_DEGREE) {
            faults.add(Phrase.of("its degree is {degree}, and 1 to {highest} can be read")
                    .with("degree", Figure.count(degree))
                    .with("highest", Figure.count(HIGHEST_DEGREE)));
        }
        if (controls.size() <= degree) {
            faults.add(Phrase.of("it has {controls} control points, too few for its degree")
                    .with("controls", Figure.count(controls.size())));
        }
        if (controls.size() > MOST_CONTROLS) {
            faults.add(Phrase.of("it has {controls} control points, and {most} can be read")
                    .with("controls", Figure.count(controls.size()))
                    .with("most", Figure.count(MOST_CONTROLS)));
        }
        if (weights.size() != controls.size() || weights.stream().anyMatch(weight -> !(weight > 0))) {
            faults.add(Phrase.of("its weights are not one above 0 for each control point"));
        }
        if (knots.size() != controls.size() + degree + 1) {
            faults.add(Phrase.of("it has {knots} knots for {controls} control points of degree {degree}")
                    .with("knots", Figure.count(knots.size()))
                    .with("controls", Figure.count(controls.size()))
                    .with("degree", Figure.count(degree)));
        } else if (IntStream.range(1, knots.size()).anyMatch(i -> knots.get(i) < knots.get(i - 1))
                || (faults.isEmpty() && !(knots.get(controls.size()) > knots.get(degree)))) {
            faults.add(Phrase.of("its knots do not rise"));
        }
        return faults;
    }

    @Override
    public Point from() {
        return at(0);
    }

    @Override
    public Point to() {
        return at(1);
    }

    @Override
    public Point at(double t) {
        double first = knots.get(degree);
        double last = knots.get(controls.size());
        return t <= 0 ? place(first) : t >= 1 ? place(last) : place(first + t * (last - first));
    }

    /** De Boor's scheme on (w x, w y, w): C. de Boor, On calculating with B-splines, 1972; from memory. */
    private Point place(double knot) {
        int span = span(knot);
        double[][] d = new double[degree + 1][];
        for (int i = 0; i <= degree; i++) {
            int control = span - degree + i;
            double weight = weights.get(control);
            d[i] = new double[] {
                controls.get(control).x() * weight, controls.get(control).y() * weight, weight
            };
        }
        for (int round = 1; round <= degree; round++) {
            for (int i = degree; i >= round; i--) {
                double low = knots.get(span - degree + i);
                double high = knots.get(span + 1 + i - round);
                double share = high > low ? (knot - low) / (high - low) : 0;
                for (int k = 0; k < 3; k++) {
                    d[i][k] = d[i - 1][k] + share * (d[i][k] - d[i - 1][k]);
                }
            }
        }
        return new Point(d[degree][0] / d[degree][2], d[degree][1] / d[degree][2]);
    }

    /** The last knot that begins a span of some length and is not above {@code knot}, of those within the curve. */
    private int span(double knot) {
        int found = Collections.binarySearch(knots, knot);
        int span = Math.min(controls.size() - 1, found < 0 ? -found - 2 : found);
        while (span < controls.size() - 1 && knots.get(span + 1) <= knot) {
            span++;
        }
        while (span > degree && !(knots.get(span + 1) > knots.get(span))) {
            span--;
        }
        return Math.max(degree, span);
    }

    @Override
    public Spline moved(Affine map) {
        return new Spline(degree, controls.stream().map(map::apply).toList(), weights, knots);
    }

    @Override
    public int chords(double chordError) {
        return points(chordError).size() - 1;
    }

    /** Every knot is a point; between knots the steps are halved until the curve at their quarters is near the chords. */
    @Override
    public List<Point> points(double chordError) {
        List<Point> points = new ArrayList<>(List.of(from()));
        int fewest = Math.max(CHORDS_PER_SPAN, FEWEST_CHORDS / spans() + 1);
        for (int i = degree; i < controls.size(); i++) {
            if (knots.get(i + 1) > knots.get(i)) {
                points.addAll(span(knots.get(i), knots.get(i + 1), fewest, chordError));
            }
        }
        return points;
    }

    /** The points of one span after its first. */
    private List<Point> span(double low, double high, int fewest, double chordError) {
        int chords = fewest;
        for (int halving = 0; halving < MOST_HALVINGS && strays(low, high, chords, chordError); halving++) {
            chords *= 2;
        }
        List<Point> points = new ArrayList<>();
        for (int i = 1; i <= chords; i++) {
            points.add(place(i == chords ? high : low + (high - low) * i / chords));
        }
        return points;
    }

    private int spans() {
        return (int) IntStream.range(degree, controls.size())
                .filter(i -> knots.get(i + 1) > knots.get(i))
                .count();
    }

    /** Whether it leaves its chords by more than half of what it may, at quarters: between them it goes little farther. */
    private boolean strays(double low, double high, int chords, double chordError) {
        double step = (high - low) / chords;
        for (int i = 0; i < chords; i++) {
            Point a = place(low + i * step);
            Point b = place(low + (i + 1) * step);
            for (int quarter = 1; quarter < 4; quarter++) {
                if (distance(place(low + (i + quarter / 4.0) * step), a, b) > chordError / 2) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double distance(Point p, Point a, Point b) {
        Point chord = b.minus(a);
        double square = chord.dot(chord);
        double share = square > 0 ? Math.max(0, Math.min(1, p.minus(a).dot(chord) / square)) : 0;
        return p.distance(a.towards(b, share));
    }
}

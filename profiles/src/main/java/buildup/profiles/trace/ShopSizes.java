package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/** Draws the sizes of a squared ring to shop fractions, the coarsest first, where the tracing allows it. */
final class ShopSizes {
    /**
     * Steps in an inch, and what a size drawn to one may cost in (distance / noise)^2: from three standard deviations
     * for the coarsest, which few sizes hit by chance, down to two.
     */
    private static final Map<Integer, Double> STEPS = new TreeMap<>(Map.of(16, 9.0, 32, 6.0, 64, 4.0));

    /** Sizes are mostly of these steps, also where the points leave it open. */
    private static final int COARSEST = 16;

    /** Half a step: smaller radii would be drawn to nothing, in. */
    private static final double LEAST_RADIUS = 1.0 / 32;

    private final double most;

    /** @param most how far a size may be drawn, in */
    private ShopSizes(double most) {
        this.most = most;
    }

    static Fitting of(Fitting fitting, double most) {
        ShopSizes sizes = new ShopSizes(most);
        Fitting drawn = fitting;
        for (int i : byPoints(fitting)) {
            drawn = sizes.offset(drawn, i);
        }
        for (int i : byPoints(fitting)) {
            drawn = sizes.radius(drawn, i);
        }
        for (int i = 0; i < fitting.curves().size(); i++) {
            drawn = sizes.corner(drawn, i);
        }
        return drawn;
    }

    private static List<Integer> byPoints(Fitting fitting) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            numbers.add(i);
        }
        numbers.sort(
                Comparator.comparingInt((Integer i) -> fitting.points().get(i).size())
                        .reversed());
        return numbers;
    }

    private Fitting offset(Fitting fitting, int i) {
        return fitting.curves().get(i) instanceof Curve.Straight line && squared(fitting, i)
                ? drawn(fitting, line.offset(), size -> new Bond.Offset(i, size))
                : fitting;
    }

    private Fitting radius(Fitting fitting, int i) {
        return fitting.curves().get(i) instanceof Curve.Round round && round.radius() > LEAST_RADIUS
                ? drawn(fitting, round.radius(), size -> new Bond.Radius(i, size))
                : fitting;
    }

    /** Where an arc meets a level or upright line in a corner, the place along that line. */
    private Fitting corner(Fitting fitting, int i) {
        int before = (i + fitting.curves().size() - 1) % fitting.curves().size();
        if (fitting.kinds().get(i) != Corners.Kind.CORNER) {
            return fitting;
        }
        boolean lineFirst = fitting.curves().get(before) instanceof Curve.Straight && squared(fitting, before);
        boolean lineSecond = fitting.curves().get(i) instanceof Curve.Straight && squared(fitting, i);
        int line = lineFirst ? before : i;
        int round = lineFirst ? i : before;
        if (lineFirst == lineSecond || !(fitting.curves().get(round) instanceof Curve.Round)) {
            return fitting;
        }
        Curve.Straight straight = (Curve.Straight) fitting.curves().get(line);
        Optional<Point> at = Corners.of(
                straight,
                fitting.curves().get(round),
                Corners.Kind.CORNER,
                fitting.starts().get(i));
        if (at.isEmpty()) {
            return fitting;
        }
        boolean upright = Math.abs(straight.normal().x()) > 0.5;
        Point p = at.get();
        return drawn(
                fitting,
                upright ? p.y() : p.x(),
                size -> new Bond.Through(round, upright ? new Point(p.x(), size) : new Point(size, p.y())));
    }

    private static boolean squared(Fitting fitting, int i) {
        return fitting.bonds().stream().anyMatch(bond -> bond instanceof Bond.Angle angle && angle.line() == i);
    }

    /** Keeps the bond to the coarsest step that lies near enough and does not cost too much. */
    private Fitting drawn(Fitting fitting, double size, DoubleFunction<Bond> bond) {
        for (Map.Entry<Integer, Double> step : STEPS.entrySet()) {
            double drawn = Math.rint(size * step.getKey()) / step.getKey();
            if (Math.abs(drawn - size) <= most) {
                Fitting next = fitting.tried(bond.apply(drawn), step.getValue());
                if (!next.equals(fitting) && tells(fitting, next, drawn - size, step.getKey())) {
                    return next;
                }
            }
        }
        return fitting;
    }

    /** Whether the points tell one step of the rule from the next: by two standard deviations either way. */
    private static boolean tells(Fitting fitting, Fitting next, double by, int steps) {
        double deviations = Math.sqrt(Math.max(0, next.error() - fitting.error()));
        return steps == COARSEST || deviations / steps >= 4 * Math.abs(by);
    }
}

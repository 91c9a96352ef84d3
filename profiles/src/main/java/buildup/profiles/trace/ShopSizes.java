package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Draws the sizes of a squared ring to those of a shop where the tracing allows it. */
final class ShopSizes {
    /** Sizes are never drawn farther than so many standard deviations. */
    private static final double FARTHEST = 3;

    /** Half a step: smaller radii would be drawn to nothing, in. */
    private static final double LEAST_RADIUS = 1.0 / 32;

    private final double most;
    private final Rows rows;
    private final ShopRule rule;
    /** By how much likelier the sizes are on the rule than on none, so far; logarithm. */
    private double told;

    private ShopSizes(double most, Rows rows, ShopRule rule) {
        this.most = most;
        this.rows = rows;
        this.rule = rule;
    }

    /**
     * Sizes drawn to one rule.
     *
     * @param likelier than of no rule, logarithm of how many times
     */
    record Ruled(Fitting fitting, ShopRule rule, double likelier) {}

    /**
     * By the rule of some on which the sizes are likeliest, the first where they are on none: whoever traces in millimeters may
     * have a molding before him that was drawn in inches.
     *
     * @param most how far a size may be drawn, in
     * @param rows of the dots that its points were put on
     */
    static Ruled of(Fitting fitting, double most, Rows rows, List<ShopRule> rules) {
        Ruled best = by(fitting, most, rows, rules.get(0));
        for (ShopRule rule : rules.subList(1, rules.size())) {
            Ruled other = by(fitting, most, rows, rule);
            best = other.likelier() > best.likelier() ? other : best;
        }
        return best;
    }

    /** A sprung molding has its sizes along its own face: how far it stands out and drops is on no rule. */
    private static Ruled by(Fitting fitting, double most, Rows rows, ShopRule rule) {
        ShopSizes sizes = new ShopSizes(most, rows, rule);
        boolean sprung = Squaring.isSprung(fitting);
        Fitting drawn = fitting;
        for (int i : sprung ? List.<Integer>of() : byPoints(fitting)) {
            drawn = sizes.offset(drawn, i);
        }
        for (int i : byPoints(fitting)) {
            drawn = sizes.radius(drawn, i);
        }
        for (int i = 0; i < fitting.curves().size() && !sprung; i++) {
            drawn = sizes.corner(drawn, i);
        }
        return new Ruled(drawn, rule, sizes.told);
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
        // what lies flush with another line goes with it
        boolean goesWith =
                fitting.bonds().stream().anyMatch(bond -> bond instanceof Bond.Flush flush && flush.second() == i);
        return fitting.curves().get(i) instanceof Curve.Straight line && squared(fitting, i) && !goesWith
                ? drawn(
                        fitting,
                        line.offset(),
                        fitting.unsureOf(curves -> ((Curve.Straight) curves.get(i)).offset()),
                        Math.hypot(rows.unsure(fitting, i), ofHome(fitting, line)),
                        size -> new Bond.Offset(i, size))
                : fitting;
    }

    /** Standard deviation on a row of dots of the edge that sizes count from, in. */
    private double ofHome(Fitting fitting, Curve.Straight line) {
        return byPoints(fitting).stream()
                .filter(k -> fitting.curves().get(k) instanceof Curve.Straight edge
                        && !edge.equals(line)
                        && Math.abs(edge.offset()) < Tolerance.SNAP
                        && Math.abs(edge.normal().dot(line.normal())) > 1 - Tolerance.SAME_DIRECTION)
                .findFirst()
                .map(k -> rows.unsure(fitting, k))
                .orElse(0.0);
    }

    private Fitting radius(Fitting fitting, int i) {
        return fitting.curves().get(i) instanceof Curve.Round round && round.radius() > LEAST_RADIUS
                ? drawn(
                        fitting,
                        round.radius(),
                        fitting.unsureOf(curves -> ((Curve.Round) curves.get(i)).radius()),
                        0,
                        size -> new Bond.Radius(i, size))
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
                fitting.unsureOf(curves -> along(curves.get(line), curves.get(round), p, upright)),
                0,
                size -> new Bond.Through(round, upright ? new Point(p.x(), size) : new Point(size, p.y())));
    }

    private static double along(Curve line, Curve round, Point near, boolean upright) {
        return Corners.of(line, round, Corners.Kind.CORNER, near)
                .map(p -> upright ? p.y() : p.x())
                .orElse(Double.NaN);
    }

    private static boolean squared(Fitting fitting, int i) {
        return fitting.bonds().stream().anyMatch(bond -> bond instanceof Bond.Angle angle && angle.line() == i);
    }

    /**
     * Keeps the bond to that size on the rule which is likelier than any other and than none, if it lies near enough. By
     * Bayes' rule: how common sizes of a step are, times how likely the points are if it is this one.
     *
     * @param own standard deviation of the size by the points, in
     * @param alike standard deviation of what all of them were rounded by alike, in: of that their distances say nothing
     */
    private Fitting drawn(Fitting fitting, double size, double own, double alike, DoubleFunction<Bond> bond) {
        double unsure = Math.hypot(own, alike);
        double share = own * own / (unsure * unsure);
        double none = ShopRule.OF_NONE * Math.sqrt(2 * Math.PI) * unsure;
        double best = none;
        Fitting drawn = fitting;
        for (ShopRule.Step step : rule.steps()) {
            double there = step.nearest(size);
            if (Math.abs(there - size) > most || rule.each(step) <= best) {
                continue;
            }
            Bond bound = bond.apply(there);
            double far = bound instanceof Bond.Radius ? rule.farthestRadius() : FARTHEST;
            Fitting next = fitting.tried(bound, far * far / share);
            double likely = rule.each(step) * Math.exp(-share * Math.max(0, next.error() - fitting.error()) / 2);
            if (!next.equals(fitting) && likely > best) {
                best = likely;
                drawn = next;
            }
        }
        told += best > none ? Math.log(best / none) : 0;
        return drawn;
    }
}

package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import buildup.profiles.trace.fit.Noise;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Doubts about width and height: an outline is ordered by them. */
final class Extents {
    /**
     * Sizes are not drawn to the rule farther than so many standard deviations of a point without a word; of the row of dots
     * too, where an edge stays on one.
     */
    private static final double DRAWN = 1.5;

    /** A size is as good as its points when three of its standard deviations are two of theirs. */
    private static final double SURE = 3;

    private static final double AS_GOOD = 2;

    /**
     * A member that is perhaps missing may move a size by so many standard deviations of a point without a word: it was sought
     * in few places, and may move it by twice as much. A size that comes out on the rule is none of chance.
     */
    private static final double HIDDEN = 1.2;

    /** A size on the rule is sure when its steps are so many standard deviations apart. */
    private static final double APART = 6;

    /** Noise that is known no better than to this share is taken to be greater by as much as it may be. */
    private static final double HARDLY_KNOWN = 0.2;

    /** A size was meant to be on the rule when that is so many times as likely as that it is of no step. */
    private static final double MEANT = 10;

    /**
     * A size beside the rule by more than so many standard deviations of a point may have been meant to be on it: a little
     * less than what a size may be off by, since how far the points stray is not known better.
     */
    private static final double BESIDE = 1.8;

    /** And may be off by so many times as much as its points alone say: what was read wrongly beside it they do not count. */
    private static final double READ_WRONGLY = 1.5;

    /** A habit of moldings was hardly allowed by the points when it costs so much, as (distance / noise)^2. */
    private static final double HARDLY = 3;

    /** And may pull a size by so many standard deviations of a point without a word. */
    private static final double PULLED = 1.3;

    /** A round that leaves a flat in a corner of no more than this, and bulges beyond it, may be tangent to it; radians. */
    private static final double SLIGHT = Math.toRadians(15);

    private final Traced traced;
    private final Fitting home;
    private final Doubts.Otherwise otherwise;
    private final double reach;
    private final ShopRule rule;
    private final Notices notices;
    private final Noise noise;
    private final List<Fitting> freed;

    private Extents(
            Traced traced, Fitting home, Doubts.Otherwise otherwise, double reach, ShopRule rule, Notices notices) {
        this.traced = traced;
        this.home = home;
        this.otherwise = otherwise;
        this.reach = reach;
        this.rule = rule;
        this.notices = notices;
        this.noise = traced.noise();
        this.freed = freed(home);
    }

    /**
     * Width and height that the points do not tell as well as they should, but for those that calipers tell. Where calipers
     * tell one of them alone, the other is enlarged with it, and with what it is off by.
     *
     * @param home the curves before their sizes were drawn to the rule
     * @param reach no corner lies farther from the nearest point than this, in
     */
    static void told(
            Traced traced,
            Fitting home,
            Doubts.Otherwise otherwise,
            double reach,
            TracingOptions options,
            ShopRule rule,
            Notices notices) {
        if (traced.noise().weighed() <= Tolerance.LEAST_SCATTER * (1 + Tolerance.COINCIDENT)) {
            return;
        }
        Extents extents = new Extents(traced, home, otherwise, reach, rule, notices);
        Box box = traced.outline().box();
        Box own = Placing.box(home).orElse(box);
        Extent width = extents.extent(Box::width, true);
        Extent height = extents.extent(Box::height, false);
        boolean widthTold = isTold(box, box.width(), options);
        boolean heightTold = isTold(box, box.height(), options);
        if (!widthTold) {
            Extent with = heightTold ? width.enlargedBy(height, box.width() / box.height()) : width;
            extents.size("width", box.width(), own.width(), with);
        }
        if (!heightTold) {
            Extent with = widthTold ? height.enlargedBy(width, box.height() / box.width()) : height;
            extents.size("height", box.height(), own.height(), with);
        }
    }

    /**
     * How far an extent of the outline may be off.
     *
     * @param unsure its standard deviation by the points, in
     * @param hidden what a member too small to be told may change, in
     * @param pulled what a habit of moldings that the points hardly allow changes, in
     * @param row standard deviation of the less sure of its edges on a row of dots, in
     */
    private record Extent(double unsure, double hidden, double pulled, double row) {
        Extent enlargedBy(Extent other, double ratio) {
            return new Extent(
                    unsure + ratio * other.unsure,
                    hidden + ratio * other.hidden,
                    pulled + ratio * other.pulled,
                    Math.max(row, ratio * other.row));
        }
    }

    /** @param across whether it is the width, and stands between upright edges */
    private Extent extent(ToDoubleFunction<Box> of, boolean across) {
        ToDoubleFunction<List<Segment>> figure = segments -> of.applyAsDouble(around(segments));
        Box box = Placing.box(home).orElse(traced.outline().box());
        Point outward = across ? new Point(1, 0) : new Point(0, 1);
        double first = onRow(outward, across ? box.face() : box.top());
        double second = onRow(outward.times(-1), across ? -box.back() : -box.bottom());
        double hidden = Math.max(
                otherwise.member().hidden(figure, reach),
                Math.max(
                        bulge(outward, across ? box.face() : box.top()),
                        bulge(outward.times(-1), across ? -box.back() : -box.bottom())));
        double unsure = Math.hypot(home.unsure(figure), Math.hypot(first, second));
        return new Extent(unsure, hidden, pulled(figure), Math.max(first, second));
    }

    /** Whether calipers tell a size of the whole outline. */
    private static boolean isTold(Box box, double size, TracingOptions options) {
        return options.calipers().stream()
                .anyMatch(caliper ->
                        caliper.isOverall() && Tolerance.same(caliper.across().of(box), size));
    }

    private static Box around(List<Segment> segments) {
        return Box.around(segments.stream().map(Segment::box).toList());
    }

    /** Standard deviation of an edge whose longest line stays on one row of a scanner's dots, in; 0 for any other. */
    private double onRow(Point outward, double edge) {
        return IntStream.range(0, home.curves().size())
                .filter(i -> home.curves().get(i) instanceof Curve.Straight line
                        && Math.abs(line.normal().dot(outward)) > 1 - Tolerance.SAME_DIRECTION
                        && Math.abs(line.foot(Point.ORIGIN).dot(outward) - edge) < noise.scatter())
                .boxed()
                .max(Comparator.comparingDouble(home::span))
                .map(i -> otherwise.rows().unsure(home, i))
                .orElse(0.0);
    }

    /**
     * How far a round at the edge stands out beyond a flat that it leaves in a slight corner, in: where it is tangent to the
     * flat instead, and there is one member less to be seen, the flat is the edge.
     */
    private double bulge(Point outward, double edge) {
        int n = home.curves().size();
        double most = 0;
        for (int i = 0; i < n; i++) {
            Curve before = home.curves().get((i + n - 1) % n);
            Curve here = home.curves().get(i);
            boolean slight = home.kinds().get(i) == Corners.Kind.CORNER
                    && Corners.turn(before, here, home.starts().get(i)) < SLIGHT;
            if (slight && before instanceof Curve.Straight != here instanceof Curve.Straight) {
                Curve.Straight line = (Curve.Straight) (before instanceof Curve.Straight ? before : here);
                Curve.Round round = (Curve.Round) (before instanceof Curve.Straight ? here : before);
                double out = round.center().dot(outward) + round.radius();
                boolean along = Math.abs(line.normal().dot(outward)) > 1 - Tolerance.SAME_DIRECTION;
                if (along && round.bend() > 0 && Math.abs(out - edge) < noise.scatter()) {
                    most = Math.max(most, out - line.foot(Point.ORIGIN).dot(outward));
                }
            }
        }
        return most;
    }

    /** What the habits of moldings that the points hardly allow change in a figure, the most of them, in. */
    private double pulled(ToDoubleFunction<List<Segment>> figure) {
        double own = figure(home, figure);
        return freed.stream()
                .mapToDouble(free -> Math.abs(figure(free, figure) - own))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
    }

    private static List<Fitting> freed(Fitting home) {
        return home.bonds().stream()
                .filter(bond -> !(bond instanceof Bond.Angle))
                .map(home::without)
                .filter(free -> home.error() - free.error() > HARDLY)
                .toList();
    }

    private static double figure(Fitting of, ToDoubleFunction<List<Segment>> figure) {
        return Corners.segments(of.curves(), of.kinds(), of.starts())
                .map(figure::applyAsDouble)
                .orElse(Double.NaN);
    }

    private void size(String across, double size, double own, Extent extent) {
        boolean onRule = false;
        for (ShopRule.Step step : rule.steps()) {
            boolean there = Math.abs(step.nearest(size) - size) < Tolerance.COINCIDENT;
            onRule |= there && !Squaring.isSprung(home) && APART * extent.unsure() < 1 / step.toInch();
        }
        double drawn = Math.abs(size - own);
        double asGood = AS_GOOD * noise.scatter();
        // a hand that shakes slowly says little of how much it shakes
        double unsure = (noise.unsure() > HARDLY_KNOWN ? 1 + noise.unsure() : 1) * extent.unsure();
        double beside = onRule || Squaring.isSprung(home) ? 0 : beside(size, own, unsure);
        boolean perhapsOfNone = drawn + 2 * unsure > asGood && rule.odds(size, own, unsure) < MEANT;
        if ((SURE * unsure > asGood && !onRule)
                || (onRule && perhapsOfNone)
                || drawn > DRAWN * Math.hypot(noise.scatter(), extent.row())
                || beside > BESIDE * noise.scatter()
                || (extent.hidden() > HIDDEN * noise.scatter() && !onRule)
                || (extent.pulled() > PULLED * noise.scatter() && !onRule)) {
            double off = Math.max(Math.max(2 * unsure, drawn), Math.max(extent.hidden(), extent.pulled()));
            notices.add(TraceNotices.SIZE_UNSURE
                    .with("across", across)
                    .with("size", Figure.fine(size))
                    .amount(Figure.fine(Math.max(off, beside))));
        }
    }

    /** How far a size lies beside one on the rule that may well have been meant, in; 0 without one. */
    private double beside(double size, double own, double unsure) {
        return rule.steps().stream()
                .limit(2)
                .mapToDouble(step -> step.nearest(size))
                .filter(there -> rule.odds(there, own, READ_WRONGLY * unsure) > 1 / MEANT)
                .map(there -> Math.abs(there - size))
                .max()
                .orElse(0);
    }
}

package buildup.profiles.trace;

import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.List;

/** Doubts about radii that the points do not tell: a knife is ground by them. */
final class Radii {
    /** A radius is told when its standard deviation is no more than this share of it. */
    private static final double TOLD = 1.0 / 25;

    /** And when with a neighbor let go it would be off by no more than this share in all. */
    private static final double LET_GO = 1.0 / 16;

    /** In an arc longer than this two may hide, in. */
    private static final double LONG_ARC = 0.3;

    /** Two arcs that go over into each other pass for one when their curvatures differ by less than so many standard deviations. */
    private static final double HIDDEN = 3;

    /** An arc in which two may hide whose radii differ by more than this share is not told. */
    private static final double TWO_ARCS = 0.2;

    /**
     * A neighbor that an arc goes over into at such a cost, as (distance / noise)^2, may as well meet it in a corner: a little
     * under two standard deviations.
     */
    private static final double LOOSE = 3;

    /** A figure is off by no more than so many of its standard deviations, mostly. */
    private static final double MOSTLY = 2;

    /** So many points of a drawing may stray as one. */
    private static final double ALIKE = 16;

    private final Fitting home;
    private final double known;
    private final Notices notices;

    /** @param home the curves before their sizes were drawn to the rule */
    Radii(Fitting home, Notices notices) {
        this.home = home;
        this.known = known(home);
        this.notices = notices;
    }

    /**
     * The points of a drawing are weighed as if they strayed, and do not: what they leave is what its radii are known by, as
     * a share of what was weighed. What a few chords leave is alike for many points.
     */
    private static double known(Fitting home) {
        int points = home.points().stream().mapToInt(List::size).sum();
        boolean strays = home.noise().weighed() > Tolerance.LEAST_SCATTER * (1 + Tolerance.COINCIDENT);
        return strays ? 1 : Math.min(1, Math.sqrt(ALIKE * home.error() / points));
    }

    void told() {
        for (int i = 0; i < home.curves().size(); i++) {
            if (home.curves().get(i) instanceof Curve.Round round) {
                told(i, round);
            }
        }
    }

    private void told(int i, Curve.Round round) {
        double unsure = known * unsure(home, i);
        double loose = loose(i);
        double hidden = home.span(i) > LONG_ARC && isShallow(i, round) && goesOver(i) ? HIDDEN * known * ofHalf(i) : 0;
        if (unsure > TOLD * round.radius() || loose > LET_GO * round.radius() || hidden * round.radius() > TWO_ARCS) {
            List<Point> on = home.points().get(i);
            double off = Math.max(MOSTLY * unsure, loose);
            notices.add(TraceNotices.RADIUS_UNSURE
                    .with("place", OutlineCodes.place(on.get(on.size() / 2)))
                    .with("radius", Figure.fine(round.radius()))
                    .amount(Figure.fine(Math.max(off, hidden * round.radius() * round.radius()))));
        }
    }

    /**
     * How far a radius may be off where a neighbor was hardly allowed to go over into the arc without a corner: such a bond
     * makes a radius look better known than it is. In; 0 where the points allow all neighbors as they are.
     */
    private double loose(int i) {
        double most = 0;
        for (Bond bond : home.bonds()) {
            if (bond instanceof Bond.Tangent tangent && (tangent.first() == i || tangent.second() == i)) {
                Fitting freed = home.without(bond);
                double off = Math.abs(radius(freed.curves(), i) - radius(home.curves(), i));
                boolean hardly = home.error() - freed.error() > LOOSE;
                most = hardly ? Math.max(most, off + MOSTLY * known * unsure(freed, i)) : most;
            }
        }
        return most;
    }

    private static double unsure(Fitting fitting, int i) {
        return fitting.unsureOf(curves -> radius(curves, i));
    }

    private static double radius(List<Curve> curves, int i) {
        return ((Curve.Round) curves.get(i)).radius();
    }

    /** Whether an arc turns less than about 60 degrees; one that turns more is seldom made of two. Common practice, no source. */
    private boolean isShallow(int i, Curve.Round round) {
        return home.span(i) < round.radius();
    }

    /** Whether a curve goes over into a neighbor without a corner, as the parts of a cyma do: where it ends is not seen. */
    private boolean goesOver(int i) {
        int after = (i + 1) % home.curves().size();
        return home.kinds().get(i) == Corners.Kind.SMOOTH || home.kinds().get(after) == Corners.Kind.SMOOTH;
    }

    /** Standard deviation of the curvature of half of an arc: sqrt(720) s / (sqrt(n) length^2), 1/in. */
    private double ofHalf(int i) {
        double half = home.span(i) / 2;
        double points = home.points().get(i).size() / 2.0;
        return Math.sqrt(720) * home.noise().weighed() / Math.sqrt(points) / (half * half);
    }
}

package buildup.profiles.trace;

import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.util.List;

/** Doubts about how curves go over into each other, where a little in that is much in a radius. */
final class Meetings {
    /**
     * Curves that would lie nearer to their points by so much with a corner between them may have one: a little under three
     * standard deviations, as (distance / noise)^2.
     */
    private static final double CORNER = 8;

    /** A slope that is shorter than so many of the least members that can be told may as well be a cyma. */
    private static final double WAVY = 6.5;

    /** No member turns by less from one flat to the next, radians; common practice, no source. */
    private static final double BEND = Math.toRadians(1.5);

    /** Two slopes that bend by less from one to the next are seldom two chamfers: where points stray they may be a curve, radians. */
    private static final double CHAIN = Math.toRadians(20);

    private final Fitting home;
    private final Notices notices;

    /** @param home the curves before their sizes were drawn to the rule */
    Meetings(Fitting home, Notices notices) {
        this.home = home;
        this.notices = notices;
    }

    /** @param least length of the least member that the points tell, in */
    void told(double least) {
        for (Bond bond : home.bonds()) {
            if (bond instanceof Bond.Tangent tangent) {
                corner(tangent);
            }
        }
        for (int i = 0; i < home.curves().size(); i++) {
            unlike((i + home.curves().size() - 1) % home.curves().size(), i);
            slope(i, WAVY * least);
            bend((i + home.curves().size() - 1) % home.curves().size(), i);
        }
    }

    private void corner(Bond.Tangent tangent) {
        if (home.error() - home.without(tangent).error() > CORNER) {
            notices.add(TraceNotices.SLIGHT_CORNER.with("place", place(tangent.second())));
        }
    }

    private void unlike(int before, int i) {
        if (home.curves().get(before) instanceof Curve.Round one
                && home.curves().get(i) instanceof Curve.Round other
                && Shaping.maybeCyma(home, i)
                && !home.bonds().contains(new Bond.Alike(before, i))) {
            notices.add(TraceNotices.UNLIKE_ARCS
                    .with("place", place(i))
                    .with("first", Figure.fine(one.radius()))
                    .with("second", Figure.fine(other.radius())));
        }
    }

    /** A flat that bends by little is mostly straight, and a slow sway of the hand on it. */
    private void bend(int before, int i) {
        if (home.curves().get(before) instanceof Curve.Straight one
                && home.curves().get(i) instanceof Curve.Straight other
                && home.noise().scatter() > Tolerance.SEEN_SCATTER) {
            double turn = Corners.turn(one, other, home.starts().get(i));
            if (turn < BEND) {
                notices.add(TraceNotices.SLIGHT_BEND
                        .with("place", place(i))
                        .with("angle", Figure.angle(Math.toDegrees(turn))));
            }
        }
    }

    private void slope(int i, double shortest) {
        boolean chained = home.noise().scatter() > Tolerance.SEEN_SCATTER
                && (isChained(i, (i + 1) % home.curves().size())
                        || isChained(
                                (i + home.curves().size() - 1) % home.curves().size(), i));
        if (isSlope(i) && (home.span(i) < shortest || chained)) {
            List<Point> on = home.points().get(i);
            notices.add(TraceNotices.SLOPE_UNSURE
                    .with("place", OutlineCodes.place(on.get(on.size() / 2)))
                    .amount(Figure.fine(home.span(i))));
        }
    }

    /** Whether it is a line that no habit of moldings holds at its angle. */
    private boolean isSlope(int i) {
        return home.curves().get(i) instanceof Curve.Straight
                && home.bonds().stream().noneMatch(bond -> bond instanceof Bond.Angle angle && angle.line() == i);
    }

    /** Whether two neighbors are slopes that nearly go on in one line. */
    private boolean isChained(int before, int i) {
        return isSlope(before)
                && isSlope(i)
                && Corners.turn(
                                home.curves().get(before),
                                home.curves().get(i),
                                home.starts().get(i))
                        < CHAIN;
    }

    private Phrase place(int i) {
        return OutlineCodes.place(home.starts().get(i));
    }
}

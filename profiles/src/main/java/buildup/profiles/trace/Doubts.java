package buildup.profiles.trace;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Fitting;
import buildup.profiles.trace.fit.Noise;
import buildup.profiles.trace.fit.OneMember;
import buildup.profiles.trace.ring.CutCorner;
import buildup.profiles.trace.ring.Dot;
import buildup.profiles.trace.ring.Joining;
import buildup.profiles.trace.ring.RingSizes;
import buildup.profiles.trace.ring.Stepping;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** Looks at a traced outline as somebody who does not believe it, and says what the points do not bear out. */
final class Doubts {
    /**
     * A point farther off than so many standard deviations was not followed: of 2,000 that stray by chance, once in four
     * thousand tracings. Five would doubt one of the catalog's profiles traced at 0.005, which comes out right.
     */
    private static final double NOT_FOLLOWED = 5.3;

    /** An outline so many standard deviations off, and so much, in, is no outline of the tracing. */
    private static final double CONTRADICTED = 40;

    private static final double CONTRADICTED_BY = 0.15;

    /** The least member that is milled: a stretch without points that is shorter hides none, in. */
    private static final double LEAST_MEMBER = 1.0 / 16;

    /** A gap in the middle of a line hides none up to this: a bead or a quirk seldom is so narrow, in. */
    private static final double GOES_ON = 1.0 / 8;

    /** In a stretch of so many standard deviations of a point there may be none by chance. */
    private static final double BY_CHANCE = 8;

    /** A member must bring so many (distance / noise)^2 for each logarithm of the number of points to be told. */
    private static final double TOLD = 7.5;

    /** Fillets and quirks of 1/16 are common, and a little under half of one is told by chance: then some may be missing, in. */
    private static final double COMMON_MEMBER = 0.028;

    /** The last point before a corner may lie so many steps of the tracing, and so many standard deviations, short of it. */
    private static final double STEPS_SHORT = 1.5;

    private static final double SCATTER_SHORT = 3;

    /** A chamfer from one point to the next is as long as they are apart, to this share: its ends may be drawn to the rule. */
    private static final double AS_LONG = 0.05;

    /** Fewer points do not tell a member that is shorter than what can be told. */
    private static final int FEW = 3;

    /** So many points in a row that stray as one may step aside as one. */
    private static final double ALIKE = 2;

    /** A cutting that is so much less likely, as twice the logarithm of how many times, may be meant as well. */
    private static final double RIVAL = 10;

    private final Traced traced;
    private final Noise noise;
    private final Notices notices;

    /** From point to point of the tracing, in. */
    private final double spacing;

    private Doubts(Traced traced, double spacing, Notices notices) {
        this.traced = traced;
        this.spacing = spacing;
        this.noise = traced.noise();
        this.notices = notices;
    }

    /** The same outline, every doubt said; nothing when the points contradict it. */
    static Optional<Traced> told(
            Traced traced,
            Fitting home,
            Joining.Ring ring,
            Otherwise otherwise,
            TracingOptions options,
            ShopRule rule,
            Notices notices) {
        double spacing = RingSizes.way(ring.dots()) / ring.dots().size();
        Doubts doubts = new Doubts(traced, spacing, notices);
        if (!doubts.followed()) {
            return Optional.empty();
        }
        doubts.unseen(Math.max(Stepping.longest(ring.dots()), spacing));
        doubts.tips();
        doubts.cutCorners(ring.dots());
        doubts.again(SecondRound.of(ring));
        Extents.told(traced, home, otherwise, doubts.reach(), options, rule, notices);
        new Radii(home, notices).told();
        new Meetings(otherwise.once(), notices).told(doubts.told());
        if (options.deviation().isEmpty()) {
            doubts.otherwise(otherwise);
        }
        doubts.grain(options);
        return Optional.of(traced);
    }

    /**
     * How the points might be read otherwise.
     *
     * @param rival how much less likely another number of members is, as twice the logarithm of how many times
     * @param member what one member more or less would make of it
     * @param once the curves as the first round alone has them, before their sizes were drawn to the rule
     * @param rows of the dots that the points were put on
     */
    record Otherwise(double rival, OneMember member, Fitting once, Rows rows) {
        Phrase place(int point) {
            List<Point> all = once.points().stream().flatMap(List::stream).toList();
            return OutlineCodes.place(all.get(Math.min(point, all.size() - 1)));
        }
    }

    private void otherwise(Otherwise other) {
        Figure finer = Figure.fine(Tracer.DEVIATION / 2 * noise.weighed());
        if (other.rival() < RIVAL) {
            notices.add(TraceNotices.RIVAL_READING
                    .with("members", Figure.count(traced.members().size()))
                    .with("deviation", Figure.fine(1.5 * Tracer.DEVIATION * noise.weighed())));
        }
        for (int point : other.member().missing()) {
            notices.add(TraceNotices.ONE_MORE.with("place", other.place(point)).with("deviation", finer));
        }
        Figure coarser = Figure.fine(1.5 * Tracer.DEVIATION * noise.weighed());
        for (int point : other.member().spare()) {
            notices.add(TraceNotices.ONE_LESS.with("place", other.place(point)).with("deviation", coarser));
        }
    }

    private boolean followed() {
        if (traced.largest() > Math.max(CONTRADICTED * noise.scatter(), CONTRADICTED_BY)) {
            notices.add(TraceNotices.CONTRADICTED
                    .with("place", OutlineCodes.place(traced.farthest()))
                    .amount(Figure.fine(traced.largest())));
            return false;
        }
        if (traced.largest() > NOT_FOLLOWED * noise.scatter()) {
            notices.add(TraceNotices.DEVIATES
                    .with("place", OutlineCodes.place(traced.farthest()))
                    .amount(Figure.fine(traced.largest())));
        }
        return true;
    }

    /** Stretches of the outline that no point bears out. */
    private void unseen(double step) {
        double shown = Math.max(Math.max(LEAST_MEMBER, 1.5 * step), BY_CHANCE * noise.scatter());
        List<Stroke> strokes = traced.outline().strokes();
        for (int i = 0; i < strokes.size(); i++) {
            Traced.Fit fit = traced.members().get(i);
            double length = strokes.get(i).segment().length();
            // a line that goes on beyond a gap most likely goes on within it
            double own = goesOn(strokes.get(i).segment(), fit) ? Math.max(shown, GOES_ON) : shown;
            if (fit.unseen() > own) {
                notices.add((isBack(strokes.get(i), fit) ? TraceNotices.CLOSED_AT_BACK : TraceNotices.UNSEEN)
                        .with("member", fit.member())
                        .with("place", OutlineCodes.place(fit.unseenAt()))
                        .amount(Figure.fine(fit.unseen())));
            } else if (slipped(fit, length)) {
                notices.add(TraceNotices.HARDLY_ANY_ON
                        .with("member", fit.member())
                        .with(
                                "place",
                                OutlineCodes.place(strokes.get(i).segment().at(0.5)))
                        .amount(Figure.fine(length)));
            } else if (fit.points() == 0 && length > 2 * step + 2 * noise.scatter()) {
                notices.add(TraceNotices.NO_POINTS_ON
                        .with("member", fit.member())
                        .with(
                                "place",
                                OutlineCodes.place(strokes.get(i).segment().at(0.5)))
                        .amount(Figure.fine(length)));
            }
        }
    }

    /**
     * Corners that stand out beyond all points: where two curves meet at a narrow angle, a little in a radius moves their
     * corner far.
     */
    private void tips() {
        double reach = reach();
        List<Stroke> strokes = traced.outline().strokes();
        for (int i = 0; i < strokes.size(); i++) {
            Stroke before = strokes.get((i + strokes.size() - 1) % strokes.size());
            Point tip = strokes.get(i).segment().from();
            boolean smooth =
                    before.segment().direction(1).near(strokes.get(i).segment().direction(0), Tolerance.SAME_DIRECTION);
            double off =
                    traced.points().stream().mapToDouble(tip::distance).min().orElse(0);
            if (!smooth && off > reach) {
                notices.add(TraceNotices.BEYOND_POINTS
                        .with("place", OutlineCodes.place(tip))
                        .with("member", strokes.get(i).member())
                        .amount(Figure.fine(off)));
            }
        }
    }

    /** No corner lies farther from the nearest point than this, in. */
    private double reach() {
        return STEPS_SHORT * spacing + SCATTER_SHORT * noise.scatter();
    }

    /** Points that do not stray are taken as they are: where a corner may lie between two of them, a chamfer is drawn. */
    private void cutCorners(List<Dot> dots) {
        if (noise.scatter() > Tolerance.LEAST_SCATTER * (1 + Tolerance.COINCIDENT)) {
            return;
        }
        for (CutCorner cut : CutCorner.of(dots)) {
            boolean drawn = traced.outline().strokes().stream()
                    .map(Stroke::segment)
                    .anyMatch(line -> line instanceof Line && Math.abs(line.length() / cut.length() - 1) < AS_LONG);
            if (drawn) {
                notices.add(TraceNotices.CUT_CORNER
                        .with("first", Figure.count(cut.from()))
                        .with("second", Figure.count(cut.to()))
                        .amount(Figure.fine(cut.length())));
            }
        }
    }

    /** Whether a short member may be a slip: a hand that strays anew at every point makes no step. */
    private boolean slipped(Traced.Fit fit, double length) {
        return noise.alike() > ALIKE && fit.points() < FEW && length < told() && length > noise.scatter();
    }

    private static boolean goesOn(Segment segment, Traced.Fit fit) {
        double half = fit.unseen() / 2 + Tolerance.SNAP;
        return segment instanceof Line
                && fit.unseenAt().distance(segment.from()) > half
                && fit.unseenAt().distance(segment.to()) > half;
    }

    /** Whether a stroke of which nothing was drawn is a back such as tracings of the face leave out: long and square. */
    private boolean isBack(Stroke stroke, Traced.Fit fit) {
        Outline outline = traced.outline();
        Box box = outline.box();
        Point from = stroke.segment().from();
        Point to = stroke.segment().to();
        double length = stroke.segment().length();
        boolean upright = Tolerance.same(from.x(), box.back()) && Tolerance.same(to.x(), box.back());
        boolean whole = fit.unseen() > 0.9 * length;
        boolean longest = outline.strokes().stream()
                .allMatch(other ->
                        other.segment() instanceof Arc || other.segment().length() <= length);
        return upright && whole && longest && squareEnds(stroke);
    }

    private boolean squareEnds(Stroke stroke) {
        List<Stroke> strokes = traced.outline().strokes();
        int i = strokes.indexOf(stroke);
        Point before =
                strokes.get((i + strokes.size() - 1) % strokes.size()).segment().direction(1);
        Point after = strokes.get((i + 1) % strokes.size()).segment().direction(0);
        Point way = stroke.segment().direction(0);
        return Math.abs(before.dot(way)) < Tolerance.SAME_DIRECTION
                && Math.abs(after.dot(way)) < Tolerance.SAME_DIRECTION;
    }

    private void again(SecondRound second) {
        if (second.elsewhere(noise)) {
            notices.add(TraceNotices.AGAIN_ELSEWHERE.notice().amount(Figure.fine(second.most())));
        }
    }

    /** The least member that the points tell, in. */
    private double told() {
        return told(noise, traced.points().size(), spacing);
    }

    private static double told(Noise noise, int points, double spacing) {
        return Math.cbrt(TOLD * Math.log(points) * noise.weighed() * noise.weighed() * spacing);
    }

    /**
     * Whether members that are common may be hidden by the noise.
     *
     * @param spacing from point to point, in
     */
    static boolean hides(Noise noise, int points, double spacing) {
        return told(noise, points, spacing) > COMMON_MEMBER;
    }

    /** What the scatter hides, and the option that changes what was made of it. */
    private void grain(TracingOptions options) {
        double told = told();
        if (options.deviation().isPresent() || noise.scatter() <= Tolerance.SEEN_SCATTER) {
            return;
        }
        notices.add((told > COMMON_MEMBER ? TraceNotices.GRAIN_HIDES : TraceNotices.GRAIN)
                .with("scatter", Figure.fine(noise.scatter()))
                .with("least", Figure.fine(told))
                .with("deviation", Figure.fine(Tracer.DEVIATION * noise.weighed())));
    }
}

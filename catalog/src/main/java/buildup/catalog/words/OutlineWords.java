package buildup.catalog.words;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Says an outline in profile words that {@link WalkReader} reads back to it: words of the trade where they draw the same
 * arcs, else hollows and rounds of their radius.
 */
public final class OutlineWords {
    /** Corners are written to so many decimals of an inch. */
    private static final int PLACES = 7;

    /** Those of a document in millimeters to so many of one, which is finer. */
    private static final int METRIC_PLACES = 6;

    private static final double MILLIMETERS = 25.4;

    /** Sizes on a step this fine are written as fractions. */
    private static final int FINEST = 64;

    /** A longer arc is said as two: the center of a half round hangs on the last digit of its radius. */
    private static final double LONGEST_TURN = Math.toRadians(120);

    private final List<Stroke> strokes;
    private final LengthUnit unit;
    private final Map<String, Integer> used = new HashMap<>();

    private OutlineWords(List<Stroke> strokes, LengthUnit unit) {
        this.strokes = strokes;
        this.unit = unit;
    }

    /**
     * The words in walking order.
     *
     * @param front from the lower end of the back out and up
     * @param back down the back; empty when it is plain
     */
    public record Said(List<String> front, List<String> back) {
        public Said {
            front = List.copyOf(front);
            back = List.copyOf(back);
        }

        /** As a YAML list in one line. */
        public String yaml() {
            List<String> items = new ArrayList<>(front);
            if (!back.isEmpty()) {
                items.add("back: [" + String.join(", ", back) + "]");
            }
            return "[" + String.join(", ", items) + "]";
        }
    }

    /**
     * The words of an outline that has its back at x = 0 and its lowest point at y = 0; every corner within 1e-7 in of
     * where it was, and every arc of its radius to as many places.
     */
    public static Said of(Outline outline) {
        return of(outline, LengthUnit.INCH);
    }

    /** The same for a document that counts in that unit: in a metric one, bare sizes are millimeters. */
    public static Said of(Outline outline, LengthUnit unit) {
        List<Stroke> ring = new ArrayList<>();
        for (Stroke stroke : fromBack(outline)) {
            halves(stroke).forEach(ring::add);
        }
        return new OutlineWords(ring, unit).said();
    }

    /** The strokes from the lower end of the back on: the lowest corner at the least x. */
    private static List<Stroke> fromBack(Outline outline) {
        List<Stroke> all = outline.strokes();
        int start = 0;
        for (int i = 1; i < all.size(); i++) {
            Point best = all.get(start).segment().from();
            Point p = all.get(i).segment().from();
            boolean further = p.x() < best.x() - Tolerance.SNAP;
            boolean lower = Math.abs(p.x() - best.x()) <= Tolerance.SNAP && p.y() < best.y();
            start = further || lower ? i : start;
        }
        List<Stroke> ring = new ArrayList<>(all.subList(start, all.size()));
        ring.addAll(all.subList(0, start));
        return ring;
    }

    /** A long arc that no word of the trade draws, as two. */
    private static List<Stroke> halves(Stroke stroke) {
        boolean half = stroke.segment() instanceof Arc arc
                && Math.abs(arc.sweep()) > LONGEST_TURN
                && halfRound(arc).isEmpty();
        return half
                ? List.of(
                        new Stroke(stroke.segment().part(0, 0.5), stroke.member()),
                        new Stroke(stroke.segment().part(0.5, 1), stroke.member()))
                : List.of(stroke);
    }

    private Said said() {
        List<String> words = new ArrayList<>();
        List<String> back = new ArrayList<>();
        Point home = strokes.get(0).segment().from();
        Point at = home;
        boolean behind = false;
        for (int i = 0; i < strokes.size(); ) {
            Segment segment = strokes.get(i).segment();
            boolean closing = i == strokes.size() - 1 && straightDown(segment, home) && named(i, "back");
            boolean top = i > 0 && !behind && levelTo(segment, home.x()) && named(i, "top");
            if (closing) {
                i++;
            } else if (top) {
                // the reader closes level to the back by itself, and words behind it go down the back
                at = segment.to();
                behind = true;
                i++;
            } else {
                List<String> list = behind ? back : words;
                int count = Math.max(1, cyma(i, at, home, list));
                if (count == 1) {
                    list.add(word(i, at, home));
                }
                i += count;
                at = strokes.get(i - 1).segment().to();
            }
        }
        return new Said(words, back);
    }

    private boolean named(int i, String name) {
        return strokes.get(i).member().equals(name);
    }

    private static boolean straightDown(Segment segment, Point home) {
        return segment instanceof Line
                && rounded(segment.from().x() - home.x()) == 0
                && rounded(segment.to().x() - home.x()) == 0
                && segment.to().y() < segment.from().y();
    }

    private static boolean levelTo(Segment segment, double x) {
        return segment instanceof Line
                && rounded(segment.from().y() - segment.to().y()) == 0
                && rounded(segment.to().x() - x) == 0
                && segment.from().x() > segment.to().x();
    }

    /** Two strokes of one member that a cyma draws; the count of strokes said. */
    private int cyma(int i, Point at, Point home, List<String> words) {
        if (i + 1 >= strokes.size()
                || !(strokes.get(i).segment() instanceof Arc first)
                || !(strokes.get(i + 1).segment() instanceof Arc second)
                || !strokes.get(i).member().equals(strokes.get(i + 1).member())
                || first.counterclockwise() == second.counterclockwise()) {
            return 0;
        }
        Step step = Step.between(at, second.to(), home, unit);
        if (step.height <= 0 || step.width <= 0) {
            return 0;
        }
        for (String spelled : List.of("cyma recta", "cyma reversa")) {
            Walk walk = new Walk();
            if (spelled.equals("cyma recta")) {
                walk.cymaRecta(step.vertical, step.height, step.level, step.width, spelled);
            } else {
                walk.cymaReversa(step.vertical, step.height, step.level, step.width, spelled);
            }
            if (draws(walk, at, List.of(first, second))) {
                words.add(spelled + step.ways() + " " + sizes(step) + as(i, spelled));
                return 2;
            }
        }
        return 0;
    }

    private String word(int i, Point at, Point home) {
        Segment segment = strokes.get(i).segment();
        Step step = Step.between(at, segment.to(), home, unit);
        if (segment instanceof Line) {
            return straight(step, i);
        }
        Arc arc = (Arc) segment;
        Optional<Way> along = halfRound(arc);
        if (along.isPresent()) {
            String way = along.get().name().toLowerCase(Locale.ROOT);
            return "bead " + way + " " + text(Math.max(step.height, step.width)) + as(i, "bead");
        }
        if (step.height > 0 && step.width > 0) {
            Walk walk = new Walk();
            String spelled = arc.counterclockwise() ? "ovolo" : "cove";
            if (arc.counterclockwise()) {
                walk.ovolo(step.vertical, step.height, step.level, step.width, spelled);
            } else {
                walk.cove(step.vertical, step.height, step.level, step.width, spelled);
            }
            if (draws(walk, at, List.of(arc))) {
                return spelled + step.ways() + " " + sizes(step) + as(i, spelled);
            }
        }
        String spelled = arc.counterclockwise() ? "round" : "hollow";
        return spelled + step.ways() + " " + text(step.height) + " x " + text(step.width) + " x " + text(arc.radius())
                + as(i, spelled);
    }

    private String straight(Step step, int i) {
        if (step.width <= 0) {
            String way = step.vertical.name().toLowerCase(Locale.ROOT);
            return way + " " + text(step.height) + as(i, way);
        }
        if (step.height <= 0) {
            String way = step.level.name().toLowerCase(Locale.ROOT);
            return way + " " + text(step.width) + as(i, way);
        }
        return "chamfer" + step.ways() + " " + sizes(step) + as(i, "chamfer");
    }

    /** Whether a walk from here draws these arcs; corners may lie off by their rounding. */
    private static boolean draws(Walk walk, Point at, List<Arc> arcs) {
        List<Stroke> drawn = walk.strokes();
        boolean same = drawn.size() == arcs.size();
        for (int i = 0; same && i < arcs.size(); i++) {
            same = drawn.get(i).segment() instanceof Arc arc
                    && arc.counterclockwise() == arcs.get(i).counterclockwise()
                    && arc.center().plus(at).near(arcs.get(i).center(), Tolerance.SNAP)
                    && arc.to().plus(at).near(arcs.get(i).to(), Tolerance.SNAP);
        }
        return same;
    }

    /** The way along which an arc is a half round standing on that line. */
    private static Optional<Way> halfRound(Arc arc) {
        Point chord = arc.to().minus(arc.from());
        boolean half =
                arc.counterclockwise() && arc.from().towards(arc.to(), 0.5).near(arc.center(), Tolerance.SNAP);
        return half
                ? List.of(Way.values()).stream()
                        .filter(way -> way.unit().near(chord.unit(), Tolerance.SNAP))
                        .findFirst()
                : Optional.empty();
    }

    /** The name, where it is not the one that the reader gives by itself. */
    private String as(int i, String spelled) {
        String plain = spelled.replace(' ', '-');
        String member = strokes.get(i).member();
        int times = used.getOrDefault(plain, 0) + 1;
        String given = times == 1 ? plain : plain + "-" + times;
        if (member.equals(given)) {
            used.put(plain, times);
            return "";
        }
        return " as " + member;
    }

    /** From one corner to the next, both where their rounded coordinates say. */
    private static final class Step {
        private final Way vertical;
        private final double height;
        private final Way level;
        private final double width;

        private Step(Way vertical, double height, Way level, double width) {
            this.vertical = vertical;
            this.height = height;
            this.level = level;
            this.width = width;
        }

        static Step between(Point from, Point to, Point home, LengthUnit unit) {
            double dx = rounded(to.x() - home.x(), unit) - rounded(from.x() - home.x(), unit);
            double dy = rounded(to.y() - home.y(), unit) - rounded(from.y() - home.y(), unit);
            return new Step(
                    dy < 0 ? Way.DOWN : Way.UP,
                    rounded(Math.abs(dy), unit),
                    dx < 0 ? Way.IN : Way.OUT,
                    rounded(Math.abs(dx), unit));
        }

        /** The ways that are not the usual ones. */
        String ways() {
            return (vertical == Way.DOWN ? " down" : "") + (level == Way.IN ? " in" : "");
        }
    }

    private static double rounded(double size) {
        return BigDecimal.valueOf(size).setScale(PLACES, RoundingMode.HALF_UP).doubleValue();
    }

    /** To a decimal of the unit, so that sizes still add up as they are written. */
    private static double rounded(double size, LengthUnit unit) {
        return unit.isMetric() ? millimeters(size).doubleValue() / MILLIMETERS : rounded(size);
    }

    private static BigDecimal millimeters(double size) {
        return BigDecimal.valueOf(size * MILLIMETERS).setScale(METRIC_PLACES, RoundingMode.HALF_UP);
    }

    private String sizes(Step step) {
        return text(step.height) + (step.height == step.width ? "" : " x " + text(step.width));
    }

    private String text(double size) {
        if (unit.isMetric()) {
            return millimeters(size).stripTrailingZeros().toPlainString();
        }
        double steps = size * FINEST;
        return Math.abs(steps - Math.rint(steps)) <= Tolerance.COINCIDENT * FINEST
                ? LengthWriter.inches(Length.inches(Math.rint(steps) / FINEST))
                : BigDecimal.valueOf(size)
                        .setScale(PLACES, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
    }
}

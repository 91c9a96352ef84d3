package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import java.util.List;

/** Finds where a trail has come once round, and goes on over itself. */
final class Laps {
    /** A trail comes back to its beginning as near as this share of its size, or as so many of its steps. */
    private static final double NEAR = 0.02;

    private static final double NEAR_STEPS = 4;

    /** It has been away when it was farther off than this share of its size. */
    private static final double AWAY = 0.3;

    /** It goes the same way again when the two ways point alike. */
    private static final double ALIKE = 0.5;

    /** So many of the points behind the first round are looked at, and this share of them lies along it. */
    private static final int LOOKED_AT = 120;

    private static final double ALONG = 0.9;

    /** A trail that goes on by less than so many times as near has just closed itself. */
    private static final double PAST = 1.5;

    /** Shorter trails are drawn by their corners. */
    private static final int FEWEST = 24;

    private final List<Dot> dots;
    private final double near;
    private final double away;

    private Laps(List<Dot> dots) {
        this.dots = dots;
        double size = RingSizes.size(dots);
        double step = RingSizes.length(dots) / dots.size();
        this.near = Math.max(NEAR * size, Math.min(NEAR_STEPS * step, 2 * NEAR * size));
        this.away = AWAY * size;
    }

    /**
     * A trail taken apart.
     *
     * @param lap the first round, or all of a trail that goes no farther
     * @param again what was drawn after it
     */
    record Rounds(List<Dot> lap, List<Dot> again) {}

    static Rounds of(List<Dot> dots) {
        Rounds whole = new Rounds(dots, List.of());
        if (dots.size() < FEWEST) {
            return whole;
        }
        Laps laps = new Laps(dots);
        int end = laps.end();
        if (end >= dots.size() || laps.reach(end) < PAST * laps.near) {
            return whole;
        }
        Rounds parted = new Rounds(List.copyOf(dots.subList(0, end)), List.copyOf(dots.subList(end, dots.size())));
        return laps.retraced(parted) ? parted : whole;
    }

    /** How far the trail still gets from a point of it. */
    private double reach(int from) {
        Point home = dots.get(from).at();
        return dots.subList(from, dots.size()).stream()
                .mapToDouble(dot -> dot.at().distance(home))
                .max()
                .orElse(0);
    }

    /** The first point of the second round; the number of points when there is none. */
    private int end() {
        Point home = dots.get(0).at();
        boolean left = false;
        int best = dots.size();
        double least = near;
        for (int i = 1; i < dots.size(); i++) {
            double off = dots.get(i).at().distance(home);
            left |= off > away;
            if (left && off < least && heading(i).dot(heading(0)) > ALIKE) {
                least = off;
                best = i;
            } else if (best < i && off > away) {
                break;
            }
        }
        return best;
    }

    /** Direction of the way over about as far as counts as near. */
    private Point heading(int i) {
        Point from = dots.get(i).at();
        int k = i;
        while (k + 1 < dots.size() && dots.get(k).at().distance(from) < near) {
            k++;
        }
        if (k + 1 == dots.size()) {
            // at the very end of the trail: the way that led there
            int back = i;
            while (back > 0 && dots.get(back).at().distance(from) < near) {
                back--;
            }
            return from.minus(dots.get(back).at()).unit();
        }
        return dots.get(k).at().minus(from).unit();
    }

    private boolean retraced(Rounds rounds) {
        int step = Math.max(1, rounds.again().size() / LOOKED_AT);
        int seen = 0;
        int along = 0;
        for (int i = 0; i < rounds.again().size(); i += step) {
            seen++;
            along += distance(rounds.again().get(i).at(), rounds.lap()) < near ? 1 : 0;
        }
        return along >= ALONG * seen;
    }

    private static double distance(Point p, List<Dot> lap) {
        return lap.stream().mapToDouble(dot -> dot.at().distance(p)).min().orElse(Double.POSITIVE_INFINITY);
    }
}

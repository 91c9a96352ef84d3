package buildup.engine.hold.backing;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * The heights at which upright nails, driven up from y = 0, enter and leave one outline. Worked on chords: a nail does
 * not mind a thousandth.
 */
record Shafts(List<Point> ring) {
    static Shafts of(Outline outline) {
        return new Shafts(outline.chords());
    }

    /** Sorted places from 0 to {@code length} between which both outlines' heights run straight. */
    static List<Double> breaks(Shafts a, Shafts b, double length) {
        List<Double> breaks = new ArrayList<>(List.of(0.0, length));
        for (Shafts shafts : List.of(a, b)) {
            shafts.ring.stream().map(Point::x).filter(x -> x > 0 && x < length).forEach(breaks::add);
        }
        return breaks.stream().sorted().toList();
    }

    /** Where a nail at {@code x} first leaves the outline above the face it goes in at, NaN if it never does. */
    double exit(double x) {
        return crossings(x).stream()
                .filter(y -> y > Tolerance.TOUCHING)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** Where a nail at {@code x}, from {@code above} on, is first in the outline; NaN if it never is. */
    double entryAbove(double x, double above) {
        List<Double> crossings = crossings(x);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double in = crossings.get(i);
            double out = crossings.get(i + 1);
            if (out > above + Tolerance.TOUCHING) {
                return Math.max(in, above);
            }
        }
        return Double.NaN;
    }

    /** Heights at which the upright at {@code x} crosses the ring, from below; x must not be that of a vertex. */
    private List<Double> crossings(double x) {
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            if (a.x() > x != b.x() > x) {
                heights.add(a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()));
            }
        }
        return heights.stream().sorted().toList();
    }
}

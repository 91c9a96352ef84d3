package buildup.profiles.outline;

import java.util.ArrayList;
import java.util.List;

/** Says what is wrong with a closed walk before it is taken as an outline. Stroke numbers count from 1. */
public final class Soundness {
    /** A fault of a walk, with the place and the strokes it lies between. */
    public sealed interface Fault permits Crossing, NoArea, Clockwise, Doubled {}

    /** The walk meets itself away from a shared corner. */
    public record Crossing(Point near, int firstStroke, int secondStroke) implements Fault {}

    /** The walk encloses nothing. */
    public record NoArea() implements Fault {}

    /** The walk keeps the wood on its right; {@link Outline#closed} turns it round. */
    public record Clockwise() implements Fault {}

    /** So many strokes have no length; {@link Outline#closed} drops them. */
    public record Doubled(int count) implements Fault {}

    private Soundness() {}

    /** What keeps a closed walk from being an outline, every fault of it; empty when it is sound. */
    public static List<Fault> faults(List<Stroke> walk) {
        List<Fault> faults = new ArrayList<>();
        int doubled = 0;
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < walk.size(); i++) {
            if (walk.get(i).segment().length() > Tolerance.COINCIDENT) {
                numbers.add(i);
            } else {
                doubled++;
            }
        }
        if (doubled > 0) {
            faults.add(new Doubled(doubled));
        }
        double area = walk.stream()
                        .mapToDouble(stroke -> stroke.segment().twiceArea())
                        .sum()
                / 2;
        if (Math.abs(area) <= Tolerance.COINCIDENT) {
            faults.add(new NoArea());
            return faults;
        }
        if (area < 0) {
            faults.add(new Clockwise());
        }
        crossing(walk, numbers, faults);
        return faults;
    }

    /** The first crossing only: one crossing commonly makes many. */
    private static void crossing(List<Stroke> walk, List<Integer> numbers, List<Fault> faults) {
        int n = numbers.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                Segment a = walk.get(numbers.get(i)).segment();
                Segment b = walk.get(numbers.get(j)).segment();
                if (!a.box().near(b.box(), Tolerance.SNAP)) {
                    continue;
                }
                for (Point p : meetings(a, b)) {
                    boolean corner = (j == i + 1 && together(a, b, a.to(), p))
                            || (i == 0 && j == n - 1 && together(b, a, b.to(), p));
                    if (!corner) {
                        faults.add(new Crossing(p, numbers.get(i) + 1, numbers.get(j) + 1));
                        return;
                    }
                }
            }
        }
    }

    /**
     * Whether a meeting is that of a common corner: there, or so near to it that the two have not yet parted, as where
     * two rounds touch.
     */
    private static boolean together(Segment a, Segment b, Point corner, Point p) {
        if (p.near(corner, Tolerance.SNAP)) {
            return true;
        }
        Point between = a.at((a.nearest(corner) + a.nearest(p)) / 2);
        return p.near(corner, Tolerance.TOUCHING) && b.distance(between) <= Tolerance.SNAP;
    }

    /** Crossings, and ends of one segment that lie on the other (which also shows stretches that run on each other). */
    private static List<Point> meetings(Segment a, Segment b) {
        List<Point> met = new ArrayList<>(Crossings.of(a, b, Tolerance.SNAP));
        for (Point end : List.of(a.from(), a.to())) {
            if (b.distance(end) <= Tolerance.SNAP) {
                met.add(end);
            }
        }
        for (Point end : List.of(b.from(), b.to())) {
            if (a.distance(end) <= Tolerance.SNAP) {
                met.add(end);
            }
        }
        return met;
    }
}

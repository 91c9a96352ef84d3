package buildup.profiles.trace.ring;

import java.util.ArrayList;
import java.util.List;

/**
 * A step between two corners of flats that were followed point by point: a small chamfer, or a corner that fell between two
 * points.
 *
 * @param from the number of the point before it
 * @param to the number of the point behind it
 * @param length of the step, in
 */
public record CutCorner(int from, int to, double length) {
    /** A flat of so many steps in one line was followed, and not drawn by its ends; its neighbor may be shorter. */
    private static final int FOLLOWED = 5;

    private static final int SHORTER = 2;

    /** So many steps of a flat tell how it was followed. */
    private static final int LOOKED_AT = 8;

    /** A hand sets its points so many times as far apart as elsewhere. */
    private static final double UNEVEN = 1.6;

    /** All of a ring. */
    public static List<CutCorner> of(List<Dot> ring) {
        List<CutCorner> cut = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            if (!Stepping.turns(ring, i)) {
                continue;
            }
            double length = Stepping.length(ring, i);
            Flat before = Flat.of(ring, i, -1);
            Flat after = Flat.of(ring, i, 1);
            boolean followed = Math.max(before.steps(), after.steps()) >= FOLLOWED
                    && Math.min(before.steps(), after.steps()) >= SHORTER;
            if (followed && Stepping.turns(ring, i) && length < UNEVEN * Math.max(before.longest(), after.longest())) {
                cut.add(new CutCorner(
                        ring.get(i).number(), ring.get((i + 1) % ring.size()).number(), length));
            }
        }
        return cut;
    }

    /**
     * Steps in one line.
     *
     * @param longest of them, in
     */
    private record Flat(int steps, double longest) {
        /** The flat on one side of a step, as far as it is looked at. */
        static Flat of(List<Dot> ring, int step, int way) {
            int from = way > 0 ? step + 1 : step;
            double longest = Stepping.length(ring, step + way);
            int steps = 1;
            while (steps < LOOKED_AT && Stepping.inLine(ring, from, way, steps + 1)) {
                steps++;
                longest = Math.max(longest, Stepping.length(ring, step + way * steps));
            }
            return new Flat(steps, longest);
        }
    }
}

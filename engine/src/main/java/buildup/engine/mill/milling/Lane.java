package buildup.engine.mill.milling;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * The free way over a floor, seen with the cutter coming from above: from the wood that rises on its left to that on its
 * right, or to the side of the blank.
 *
 * @param open whether nothing stands on the floor itself
 * @param closed whether wood rises on both sides
 */
record Lane(double left, double right, double floor, boolean open, boolean closed) {

    static Lane over(Outline wood, Box floor) {
        double level = floor.bottom() + Tolerance.TOUCHING;
        double left = wood.box().back();
        double right = wood.box().face();
        boolean wallLeft = false;
        boolean wallRight = false;
        boolean open = true;
        List<Point> ring = wood.chords();
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            if (Math.max(a.y(), b.y()) <= level) {
                continue;
            }
            double from = at(a, b, level);
            double to = at(b, a, level);
            if (Math.max(from, to) <= floor.back() + Tolerance.TOUCHING) {
                wallLeft = true;
                left = Math.max(left, Math.max(from, to));
            } else if (Math.min(from, to) >= floor.face() - Tolerance.TOUCHING) {
                wallRight = true;
                right = Math.min(right, Math.min(from, to));
            } else {
                open = false;
            }
        }
        return new Lane(left, right, floor.bottom(), open, wallLeft && wallRight);
    }

    /** The x of the end {@code a} of a chord, or of where it comes up through the level. */
    private static double at(Point a, Point b, double level) {
        return a.y() >= level ? a.x() : a.x() + (b.x() - a.x()) * (level - a.y()) / (b.y() - a.y());
    }
}

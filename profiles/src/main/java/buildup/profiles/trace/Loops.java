package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.List;

/** Sizes of rings of points. */
final class Loops {
    private Loops() {}

    /** Enclosed area, positive counterclockwise. */
    static double area(List<Dot> ring) {
        Point home = ring.get(0).at();
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            twice += ring.get(i)
                    .at()
                    .minus(home)
                    .cross(ring.get((i + 1) % ring.size()).at().minus(home));
        }
        return twice / 2;
    }

    static Box box(List<Dot> ring) {
        Point first = ring.get(0).at();
        Box box = Box.of(first, first);
        for (Dot dot : ring) {
            box = box.with(dot.at());
        }
        return box;
    }

    /** The greater of width and height. */
    static double size(List<Dot> ring) {
        Box box = box(ring);
        return Math.max(box.width(), box.height());
    }

    /** Length of the ring from point to point. */
    static double length(List<Dot> ring) {
        double length = 0;
        for (int i = 0; i < ring.size(); i++) {
            length += ring.get(i).at().distance(ring.get((i + 1) % ring.size()).at());
        }
        return length;
    }
}

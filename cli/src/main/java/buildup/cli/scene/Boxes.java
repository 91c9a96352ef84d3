package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What boxes and straight lines have to do with each other. */
public final class Boxes {
    private Boxes() {}

    /** Whether two boxes share more than an edge. */
    public static boolean overlap(Box a, Box b) {
        return a.back() < b.face() && b.back() < a.face() && a.bottom() < b.top() && b.bottom() < a.top();
    }

    /** Whether the straight line between two points passes through the inside of a box. */
    public static boolean crosses(Box box, Point a, Point b) {
        // most lines lie wholly to one side, and this is asked very often
        if (Math.max(a.x(), b.x()) <= box.back()
                || Math.min(a.x(), b.x()) >= box.face()
                || Math.max(a.y(), b.y()) <= box.bottom()
                || Math.min(a.y(), b.y()) >= box.top()) {
            return false;
        }
        double[] stretch = inside(box, a, b);
        return stretch[0] < stretch[1];
    }

    /** The share of the line, from and to, that lies inside the box; from is not less than to when none does. */
    private static double[] inside(Box box, Point a, Point b) {
        double[] stretch = {0, 1};
        clip(stretch, a.x(), b.x() - a.x(), box.back(), box.face());
        clip(stretch, a.y(), b.y() - a.y(), box.bottom(), box.top());
        return stretch;
    }

    private static void clip(double[] stretch, double start, double run, double least, double most) {
        if (Math.abs(run) > 0) {
            double p = (least - start) / run;
            double q = (most - start) / run;
            stretch[0] = Math.max(stretch[0], Math.min(p, q));
            stretch[1] = Math.min(stretch[1], Math.max(p, q));
        } else if (start <= least || start >= most) {
            stretch[1] = -1;
        }
    }

    /** The stretch of a line inside a box. */
    public static Optional<Line> within(Line line, Box box) {
        double[] stretch = inside(box, line.from(), line.to());
        return stretch[0] < stretch[1] ? Optional.of(line.part(stretch[0], stretch[1])) : Optional.empty();
    }

    /** What is left of a line when the stretches inside the boxes are taken out, in the order of the line. */
    public static List<Line> broken(Line line, List<Box> boxes) {
        List<Line> left = List.of(line);
        for (Box box : boxes) {
            List<Line> next = new ArrayList<>();
            for (Line part : left) {
                double[] stretch = inside(box, part.from(), part.to());
                if (stretch[0] >= stretch[1]) {
                    next.add(part);
                    continue;
                }
                if (stretch[0] > 0) {
                    next.add(part.part(0, stretch[0]));
                }
                if (stretch[1] < 1) {
                    next.add(part.part(stretch[1], 1));
                }
            }
            left = next;
        }
        return left;
    }
}

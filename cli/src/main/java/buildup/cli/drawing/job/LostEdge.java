package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/** The edge of a piece that a bushing's template has no place for: teeth into the wood, which hide no line along the edge. */
final class LostEdge {
    private static final double APART = 0.06;
    private static final double LONG = 0.1;

    private LostEdge() {}

    /** Teeth along the stretches of an edge of a piece, in. */
    static List<Segment> teeth(Outline outline, List<Segment> edge) {
        List<Segment> teeth = new ArrayList<>();
        // from the beginning of a stretch to its next tooth: a curve comes as many short stretches
        double next = APART / 2;
        for (Segment stretch : edge) {
            boolean right =
                    outline.holds(stretch.at(0.5).plus(square(stretch, 0.5).times(APART)));
            double length = stretch.length();
            for (; next < length; next += APART) {
                double share = next / length;
                Point root = stretch.at(share);
                teeth.add(new Line(root, root.plus(square(stretch, share).times(right ? LONG : -LONG))));
            }
            next -= length;
        }
        return teeth;
    }

    /** To the right of the way along, 1 long. */
    private static Point square(Segment stretch, double share) {
        return stretch.direction(share).right().unit();
    }

    /** How they look. */
    static SceneItem sample(Point corner) {
        List<Segment> teeth = new ArrayList<>();
        Point left = corner.plus(new Point(0, Drafting.TEXT / 2));
        teeth.add(new Line(left, left.plus(new Point(3 * Drafting.TEXT, 0))));
        for (double along = APART / 2; along < 3 * Drafting.TEXT; along += APART) {
            Point root = left.plus(new Point(along, 0));
            teeth.add(new Line(root, root.minus(new Point(0, LONG))));
        }
        return new Path(teeth, false, LineStyle.BITE);
    }
}

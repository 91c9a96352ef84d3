package buildup.engine.light;

import buildup.engine.compose.Member;
import buildup.engine.stack.Light;
import buildup.engine.view.View;
import buildup.engine.view.View.Stretch;
import buildup.engine.view.View.Surface;
import buildup.engine.view.Viewpoint;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The blur of a shadow's edge under a lamp of some width, taken level: it lies between the edges that the two ends of
 * the lamp alone would draw.
 */
record SoftEdges(View left, View right) {
    static SoftEdges of(Light.Lamp lamp, List<Surface> surfaces) {
        Point half = new Point(lamp.width() / 2, 0);
        return new SoftEdges(
                View.of(new Viewpoint.Near(lamp.at().minus(half)), surfaces),
                View.of(new Viewpoint.Near(lamp.at().plus(half)), surfaces));
    }

    /**
     * Length along the member between the two edges nearest to {@code edge}; an edge that leaves the member counts as
     * at its end.
     *
     * @param lightFirst whether the walk comes from the light into the dark at the edge
     */
    OptionalDouble around(Member member, Point edge, boolean lightFirst) {
        double at = along(member, edge);
        double first = nearest(edges(left, member, lightFirst), at, lightFirst, member);
        double second = nearest(edges(right, member, lightFirst), at, lightFirst, member);
        return OptionalDouble.of(Math.abs(first - second));
    }

    private static double nearest(List<Double> edges, double at, boolean lightFirst, Member member) {
        double best = lightFirst ? 0 : member.length();
        boolean found = false;
        for (double edge : edges) {
            if (!found || Math.abs(edge - at) < Math.abs(best - at)) {
                best = edge;
                found = true;
            }
        }
        return best;
    }

    /** Places along the member where the seen part ends (or begins). */
    private static List<Double> edges(View view, Member member, boolean lightFirst) {
        List<Double> edges = new ArrayList<>();
        double walked = 0;
        for (Segment segment : member.segments()) {
            for (Stretch seen : view.seen(segment)) {
                double t = lightFirst ? seen.end() : seen.start();
                boolean inner = t * segment.length() > Tolerance.SNAP && (1 - t) * segment.length() > Tolerance.SNAP;
                if (inner) {
                    edges.add(walked + t * segment.length());
                }
            }
            walked += segment.length();
        }
        return edges;
    }

    private static double along(Member member, Point p) {
        double walked = 0;
        double best = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (Segment segment : member.segments()) {
            double t = segment.nearest(p);
            if (segment.at(t).distance(p) < nearest) {
                nearest = segment.at(t).distance(p);
                best = walked + t * segment.length();
            }
            walked += segment.length();
        }
        return best;
    }
}

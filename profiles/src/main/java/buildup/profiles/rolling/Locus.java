package buildup.profiles.rolling;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the center of the disc runs while it touches one stroke or one outside corner.
 *
 * @param stroke that it touches, or after which the corner comes
 * @param corner whether it turns round the corner
 * @param path of the center; the share of it that is walked is that of the stroke
 */
record Locus(int stroke, boolean corner, Segment path) {

    /** @param walk closed, the disc on its right */
    static List<Locus> all(List<Segment> walk, double radius) {
        List<Locus> all = new ArrayList<>();
        int count = walk.size();
        for (int i = 0; i < count; i++) {
            Segment segment = walk.get(i);
            Segment next = walk.get((i + 1) % count);
            along(i, segment, radius, all);
            round(i, segment, next, radius, all);
        }
        return all;
    }

    private static void along(int stroke, Segment segment, double radius, List<Locus> all) {
        if (segment instanceof Line line) {
            Point aside = line.direction(0).right().times(radius);
            all.add(new Locus(
                    stroke, false, new Line(line.from().plus(aside), line.to().plus(aside))));
        } else if (segment instanceof Arc arc) {
            double run = arc.counterclockwise() ? arc.radius() + radius : arc.radius() - radius;
            if (run > Tolerance.SNAP) {
                all.add(new Locus(stroke, false, scaled(arc, run / arc.radius())));
            } else if (run > -Tolerance.SNAP) {
                // the disc seats in a hollow of its own radius
                all.add(new Locus(stroke, false, new Line(arc.center(), arc.center())));
            }
        }
    }

    private static Arc scaled(Arc arc, double ratio) {
        return new Arc(
                arc.center().towards(arc.from(), ratio),
                arc.center().towards(arc.to(), ratio),
                arc.center(),
                arc.counterclockwise());
    }

    private static void round(int stroke, Segment before, Segment after, double radius, List<Locus> all) {
        Point in = before.direction(1);
        Point out = after.direction(0);
        double turn = Math.atan2(in.cross(out), in.dot(out));
        // straight back on itself may be either: a way round that the wood bars is found out later
        boolean back = Math.abs(turn) > Math.PI - Tolerance.SAME_DIRECTION;
        if (turn > Tolerance.SAME_DIRECTION || back) {
            Point corner = before.to();
            all.add(new Locus(
                    stroke,
                    true,
                    new Arc(
                            corner.plus(in.right().times(radius)),
                            corner.plus(out.right().times(radius)),
                            corner,
                            true)));
        }
    }
}

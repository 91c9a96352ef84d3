package buildup.engine.hold.statics;

import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** Small gaps between faces that look at each other: where pieces that move a little would meet. */
final class Gaps {
    /** What moves farther than this before it is held does not stand, in: common practice, no source. */
    static final double WIDEST = 1.0 / 8;

    /** Faces that lean more toward each other than this do not meet flat: 10 degrees. */
    private static final double PARALLEL = Math.cos(Math.toRadians(10));

    /** A shared stretch shorter than this is a corner, in. */
    private static final double LEAST = 1.0 / 16;

    private Gaps() {}

    /**
     * Air between two bodies at an end of the stretch over which their faces look at each other.
     *
     * @param from, to numbers of the bodies; the first pushes the second
     * @param way unit direction of that push
     * @param air how wide, in
     */
    record Gap(int from, int to, Point at, Point way, double air) {}

    /** All between a piece of the stack and anything else. */
    static List<Gap> of(Section section) {
        List<Gap> gaps = new ArrayList<>();
        List<List<Line>> faces = new ArrayList<>();
        section.bodies().forEach(body -> faces.add(faces(body.outline())));
        for (int i = 0; i < faces.size(); i++) {
            for (int j = i + 1; j < faces.size(); j++) {
                boolean wanted = section.body(i).inStack() || section.body(j).inStack();
                Box first = section.body(i).outline().box();
                Box second = section.body(j).outline().box();
                if (wanted && first.near(second, WIDEST)) {
                    between(i, faces.get(i), j, faces.get(j), second, gaps);
                }
            }
        }
        return gaps;
    }

    private static void between(int i, List<Line> first, int j, List<Line> second, Box around, List<Gap> out) {
        for (Line a : first) {
            if (a.box().near(around, WIDEST)) {
                for (Line b : second) {
                    // faces that look at each other are walked in opposite ways: seen before a length is worked out
                    if (along(a, b) < 0) {
                        facing(i, a, j, b, out);
                    }
                }
            }
        }
    }

    private static double along(Line a, Line b) {
        return (a.to().x() - a.from().x()) * (b.to().x() - b.from().x())
                + (a.to().y() - a.from().y()) * (b.to().y() - b.from().y());
    }

    private static List<Line> faces(Outline outline) {
        List<Line> faces = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            if (stroke.segment() instanceof Line line) {
                faces.add(line);
            }
        }
        return faces;
    }

    private static void facing(int i, Line a, int j, Line b, List<Gap> out) {
        Point way = a.direction(0);
        Point other = b.direction(0);
        if (way.dot(other) > -PARALLEL) {
            return;
        }
        double start = Math.max(0, b.to().minus(a.from()).dot(way));
        double end = Math.min(a.length(), b.from().minus(a.from()).dot(way));
        if (end - start < LEAST) {
            return;
        }
        for (double along : List.of(start, end)) {
            Point at = a.from().plus(way.times(along));
            double share = at.minus(b.from()).dot(way) / other.dot(way);
            // wood lies on the left of a walk, air on its right
            double air = b.from().plus(other.times(share)).minus(at).dot(way.right());
            if (air > Tolerance.TOUCHING && air <= WIDEST) {
                out.add(new Gap(i, j, at, way.right(), air));
            }
        }
    }
}

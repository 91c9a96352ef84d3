package buildup.engine.room.cope;

import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The sharpest place of a coped edge. Along the joint the wood lies between the stick's own face and that of the other:
 * where the face rises at S from level and the corner's inside angle is C, its angle is acos(cos^2 S - sin^2 S cos C). An
 * upright face leaves 180 less C; the more level the face, the sharper the edge.
 *
 * <p>A curve is taken by its true tangent. Where it runs out level its edge runs out to nothing, and so does that of each
 * quarter round that is coped. What breaks off there leaves a gap no higher than the face rises along it, so the most
 * level part of a curve is set aside until it has risen by {@link #BREAKS}: an arc of radius r that begins at S0 has
 * cos S = cos S0 - BREAKS / r there. A curve that rises by less counts with its steepest place. A flat face has one angle
 * all along and counts with that.
 *
 * @param angle of the wood, degrees
 * @param at the member that it lies on, or {@link #UPRIGHT}
 */
record CopeEdge(double angle, String at) {
    /** What breaks off the end of a curve harmlessly: 1/16 of height, common practice, no source. In. */
    static final double BREAKS = 1.0 / 16;

    /** Where no face leans. */
    static final String UPRIGHT = "upright faces";

    /** A face within this of level is flush with the other stick's, and faces that meet within it are one curve. */
    private static final double FLUSH = Math.toRadians(5);

    /** The sharpest along the faces of a body that show. */
    static CopeEdge of(Section section, int body, double corner) {
        CopeEdge least = new CopeEdge(180 - corner, UPRIGHT);
        for (Member member : section.members()) {
            for (List<Part> curve : member.body() == body ? curves(member) : List.<List<Part>>of()) {
                double wood = wood(slope(curve), corner);
                if (!flush(curve) && wood < least.angle() - Tolerance.SAME_SHARE) {
                    least = new CopeEdge(wood, member.member());
                }
            }
        }
        return least;
    }

    private static double wood(double slope, double corner) {
        double level = Math.pow(Math.cos(slope), 2);
        double cos = level - (1 - level) * Math.cos(Math.toRadians(corner));
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cos))));
    }

    private static boolean flush(List<Part> curve) {
        return curve.stream().mapToDouble(Part::steepest).max().orElseThrow() <= FLUSH;
    }

    /** The slope of a curve once what breaks off is set aside, radians from level; not within {@link #FLUSH} of it. */
    private static double slope(List<Part> curve) {
        double left = BREAKS;
        double steepest = FLUSH;
        for (Part part : curve.stream()
                .sorted(Comparator.comparingDouble(Part::flattest))
                .toList()) {
            if (part.rise() > left) {
                return Math.max(FLUSH, part.after(left));
            }
            left -= part.rise();
            steepest = Math.max(steepest, part.steepest());
        }
        return steepest;
    }

    /** The curves of a member: each goes on smoothly, turns one way, and is nowhere level or upright but at its ends. */
    private static List<List<Part>> curves(Member member) {
        List<List<Part>> curves = new ArrayList<>();
        List<Part> curve = List.of();
        for (Segment segment : member.segments()) {
            for (Part part : Part.of(segment)) {
                if (curve.isEmpty() || !part.goesOn(curve)) {
                    curve = new ArrayList<>();
                    curves.add(curve);
                }
                curve.add(part);
            }
        }
        return curves;
    }

    /** A line, or an arc within one quarter of its circle. */
    private record Part(Segment segment) {
        static List<Part> of(Segment segment) {
            if (segment.length() <= Tolerance.COINCIDENT) {
                return List.of();
            }
            if (!(segment instanceof Arc arc)) {
                return List.of(new Part(segment));
            }
            double[] cuts = DoubleStream.concat(
                            DoubleStream.of(0, 1),
                            DoubleStream.of(0, 1, 2, 3)
                                    .map(quarter -> arc.atAngle(quarter * Math.PI / 2))
                                    .filter(t -> t > Tolerance.SAME_SHARE && t < 1 - Tolerance.SAME_SHARE))
                    .sorted()
                    .toArray();
            List<Part> parts = new ArrayList<>();
            for (int i = 1; i < cuts.length; i++) {
                parts.add(new Part(arc.part(cuts[i - 1], cuts[i])));
            }
            return parts;
        }

        private double slopeAt(double t) {
            return Math.atan2(
                    Math.abs(segment.direction(t).y()),
                    Math.abs(segment.direction(t).x()));
        }

        double flattest() {
            return Math.min(slopeAt(0), slopeAt(1));
        }

        double steepest() {
            return Math.max(slopeAt(0), slopeAt(1));
        }

        double rise() {
            return Math.abs(segment.to().y() - segment.from().y());
        }

        /** Its slope where it has risen by so much from its flattest end. */
        double after(double risen) {
            return segment instanceof Arc arc
                    ? Math.acos(Math.max(0, Math.cos(flattest()) - risen / arc.radius()))
                    : flattest();
        }

        /** 1 where it grows steeper as it is walked, -1 where more level, 0 for a line. */
        private int trend() {
            return segment instanceof Arc ? (int) Math.signum(slopeAt(1) - slopeAt(0)) : 0;
        }

        boolean goesOn(List<Part> curve) {
            Segment before = curve.get(curve.size() - 1).segment();
            int trend = curve.stream()
                    .mapToInt(Part::trend)
                    .filter(way -> way != 0)
                    .findFirst()
                    .orElse(trend());
            var was = before.to().minus(before.from());
            var is = segment.to().minus(segment.from());
            return Math.abs(before.direction(1).cross(segment.direction(0))) <= Math.sin(FLUSH)
                    && before.direction(1).dot(segment.direction(0)) > 0
                    && was.x() * is.x() > -Tolerance.COINCIDENT
                    && was.y() * is.y() > -Tolerance.COINCIDENT
                    && (trend() == 0 || trend() == trend);
        }
    }
}

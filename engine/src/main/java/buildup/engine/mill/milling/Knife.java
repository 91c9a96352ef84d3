package buildup.engine.mill.milling;

import buildup.catalog.mill.Head;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Access;
import buildup.shared.length.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A ground knife for all that the head in front reaches.
 *
 * <p>A knife that leans by the hook angle h passes the shaft at c = R sin h, R the cutting radius at its longest point. A
 * point that cuts e less deep runs on a radius R - e and so lies sqrt(R^2 - c^2) - sqrt((R - e)^2 - c^2) back along the
 * knife (two right triangles over c).
 *
 * @param width of the knife, in: the stick's and a margin at either edge
 * @param stock width of steel to cut it from; none when the shop lists none so wide
 * @param woodDepth deepest cut less shallowest, in
 * @param depth the same along the knife, in
 * @param edge of the knife at full size, across and back from its longest point, which lies at y = 0
 * @param marks knife marks to the inch
 * @param scallop height of the wave between two marks, in
 */
public record Knife(
        Head head,
        double width,
        Optional<Length> stock,
        double woodDepth,
        double depth,
        List<Point> edge,
        double marks,
        double scallop) {
    /** Knife beyond each edge of the stick, in; common practice, no source. */
    public static final double MARGIN = 0.125;

    /** Chords of a straight slope, which on the knife is nearly straight. */
    private static final int SLOPE = 24;

    public Knife {
        edge = List.copyOf(edge);
    }

    /** Length along the knife that stands for a depth in the wood; NaN past the shaft's reach. */
    public static double depth(double radius, double hookDegrees, double woodDepth) {
        double c = radius * Math.sin(Math.toRadians(hookDegrees));
        double r = radius - woodDepth;
        return r < c ? Double.NaN : Math.sqrt(radius * radius - c * c) - Math.sqrt(r * r - c * c);
    }

    /** Knife marks to the inch: rpm times knives over inches of feed a minute. */
    public static double marks(double speed, int knives, double feedPerMinute) {
        return speed * knives / (12 * feedPerMinute);
    }

    /** Height of the wave that a cutting circle leaves: pitch^2 / (4 D), the sagitta of the pitch in the circle. */
    public static double scallop(double pitch, double circle) {
        return pitch * pitch / (4 * circle);
    }

    /** From the shallowest to the deepest place that the front head reaches. */
    static double woodDepth(MillStick stick) {
        double[] depths = face(stick).stream().mapToDouble(Point::x).sorted().toArray();
        return depths.length == 0 ? 0 : depths[depths.length - 1] - depths[0];
    }

    static double width(MillStick stick) {
        return stick.box().height() + 2 * MARGIN;
    }

    /** Empty when the head is too small for so deep a profile. */
    static Optional<Knife> of(MillStick stick, Head head) {
        List<Point> face = face(stick);
        double deepest = face.stream().mapToDouble(Point::x).min().orElse(0);
        double shallowest = face.stream().mapToDouble(Point::x).max().orElse(0);
        double radius = head.circle().toInches() / 2;
        double hook = head.hook().toDegrees();
        double depth = depth(radius, hook, shallowest - deepest);
        if (!(depth >= 0)) {
            return Optional.empty();
        }
        List<Point> edge = face.stream()
                .map(p -> new Point(p.y(), -depth(radius, hook, p.x() - deepest)))
                .toList();
        double width = width(stick);
        double marks = marks(head.speed(), head.knives(), head.feed().toInches() / 12);
        return Optional.of(new Knife(
                head,
                width,
                head.stock().stream()
                        .filter(stock -> stock.toInches() >= width - Tolerance.COINCIDENT)
                        .findFirst(),
                shallowest - deepest,
                depth,
                edge,
                marks,
                scallop(1 / marks, head.circle().toInches())));
    }

    /** What the front head reaches, from the bottom edge up, on vertices within a chord error; jumps are square. */
    private static List<Point> face(MillStick stick) {
        List<Point> face = new ArrayList<>();
        Access.of(stick.outline(), Side.FRONT.degrees()).reached().stream()
                .map(stretch -> stick.segment(stretch.stroke()).part(stretch.from(), stretch.to()))
                .filter(part -> Math.abs(part.to().y() - part.from().y()) > Tolerance.COINCIDENT)
                .sorted((a, b) -> Double.compare(a.at(0.5).y(), b.at(0.5).y()))
                .forEach(part -> face.addAll(upward(part)));
        return face;
    }

    private static List<Point> upward(Segment part) {
        Segment up = part.from().y() < part.to().y() ? part : part.reversed();
        if (up instanceof Line && Math.abs(up.to().x() - up.from().x()) > Tolerance.COINCIDENT) {
            // a slope in the wood is a curve on the knife
            return IntStream.rangeClosed(0, SLOPE)
                    .mapToObj(k -> up.at((double) k / SLOPE))
                    .toList();
        }
        return up.flattened(Tolerance.STEEL);
    }
}

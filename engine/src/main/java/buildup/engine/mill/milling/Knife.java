package buildup.engine.mill.milling;

import buildup.catalog.mill.Head;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Access;
import buildup.shared.length.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A ground knife for all that one head reaches.
 *
 * <p>A knife that leans by the hook angle h passes the shaft at c = R sin h, R the cutting radius at its longest point. A
 * point that cuts e less deep runs on a radius R - e and so lies sqrt(R^2 - c^2) - sqrt((R - e)^2 - c^2) back along the
 * knife (two right triangles over c).
 *
 * @param side where its head stands
 * @param head that holds it
 * @param width of the knife, in: that of its side of the stick and a margin at either edge
 * @param stock width of steel to cut it from; none when the shop lists none so wide
 * @param woodDepth deepest cut less shallowest, in
 * @param depth the same along the knife, in; infinite when the shaft stands in the way
 * @param edge of the knife at full size, across and back from its longest point, which lies at y = 0; across is counted
 *     from the bottom of the stick for the outside head, and from what a quarter turn brings there for the others: from
 *     the front for the top head, from the top for the inside head, from the back for the bottom head
 * @param marks knife marks to the inch
 * @param scallop height of the wave between two marks, in
 * @param rim speed of its longest point, feet a minute
 */
public record Knife(
        Side side,
        Head head,
        double width,
        Optional<Length> stock,
        double woodDepth,
        double depth,
        List<Point> edge,
        double marks,
        double scallop,
        double rim) {
    /** Knife beyond each edge of the stick, in; common practice, no source. */
    public static final double MARGIN = 0.125;

    private static final double INCHES_PER_FOOT = 12;

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
        return speed * knives / (INCHES_PER_FOOT * feedPerMinute);
    }

    /** The same of a head as it runs. */
    public static double marks(Head head) {
        return marks(head.speed(), head.knives(), feed(head));
    }

    /** Feed of the stick past a head, feet a minute. */
    public static double feed(Head head) {
        return head.feed().toInches() / INCHES_PER_FOOT;
    }

    /** Feed of the stick past its head, feet a minute. */
    public double feed() {
        return feed(head);
    }

    /** Height of the wave that a cutting circle leaves: pitch^2 / (4 D), the sagitta of the pitch in the circle. */
    public static double scallop(double pitch, double circle) {
        return pitch * pitch / (4 * circle);
    }

    /** Width of the steel to cut it from, in; none when the shop lists none so wide. */
    public OptionalDouble steel() {
        return stock.map(width -> OptionalDouble.of(width.toInches())).orElse(OptionalDouble.empty());
    }

    /** Whether the machine takes so wide a knife. */
    boolean isNarrowEnough() {
        return width <= head.widest().toInches() + Tolerance.SNAP;
    }

    /** Whether the head takes so deep a profile. */
    boolean isShallowEnough() {
        return Double.isFinite(depth) && woodDepth <= head.deepest().toInches() + Tolerance.SNAP;
    }

    /** Whether the head takes it. */
    boolean fits() {
        return isNarrowEnough() && isShallowEnough();
    }

    static Knife of(MillStick stick, Head head, Side side) {
        Outline turned = stick.outline().moved(Motion.turn(-side.degrees()));
        Outline toHead = turned.moved(Motion.shift(0, -turned.box().bottom()));
        List<Point> face = face(toHead);
        double deepest = face.stream().mapToDouble(Point::x).min().orElse(0);
        double shallowest = face.stream().mapToDouble(Point::x).max().orElse(0);
        double circle = head.circle().toInches();
        double hook = head.hook().toDegrees();
        double depth = depth(circle / 2, hook, shallowest - deepest);
        boolean clear = depth >= 0;
        List<Point> edge = clear
                ? face.stream()
                        .map(p -> new Point(p.y(), -depth(circle / 2, hook, p.x() - deepest)))
                        .toList()
                : List.of();
        double width = toHead.box().height() + 2 * MARGIN;
        double marks = marks(head);
        return new Knife(
                side,
                head,
                width,
                head.stock().stream()
                        .filter(stock -> stock.toInches() >= width - Tolerance.COINCIDENT)
                        .findFirst(),
                shallowest - deepest,
                clear ? depth : Double.POSITIVE_INFINITY,
                edge,
                marks,
                scallop(1 / marks, circle),
                RimSpeed.of(circle, head.speed()));
    }

    /** What a head on the right reaches, from the bottom edge up, on vertices within a chord error; jumps are square. */
    private static List<Point> face(Outline outline) {
        List<Point> face = new ArrayList<>();
        Access.of(outline, Side.FRONT.degrees()).reached().stream()
                .map(stretch ->
                        outline.strokes().get(stretch.stroke()).segment().part(stretch.from(), stretch.to()))
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

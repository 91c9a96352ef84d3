package buildup.profiles.member;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Soundness.Crossing;
import buildup.profiles.outline.Soundness.NoArea;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sprung molding: a flat stick that stands across the corner of wall and ceiling, its flats cut to bear on both.
 *
 * <p>With S = {@code spring}, w = {@code width} across the face, t = {@code thickness}, a = {@code wallEdge} and
 * b = {@code ceilingEdge} (the square edges left at the wall and at the ceiling, measured square to the face):
 * drop = w cos S + b sin S and projection = w sin S + a cos S (plane trigonometry of the stick's corners; with
 * a = b = 0 the drop and projection that the trade tabulates by spring and face width).
 *
 * @param spring angle between back and wall, degrees, between 0 and 90
 * @param width across the face, in
 * @param thickness of the stick, in
 * @param wallEdge square edge at the wall, 0 to thickness, in
 * @param ceilingEdge square edge at the ceiling, 0 to thickness, in
 */
public record Sprung(double spring, double width, double thickness, double wallEdge, double ceilingEdge) {
    private static final Phrase NO_SPRING = Phrase.of("a spring of {spring} is not between 0 and 90 degrees");
    private static final Phrase NO_SIZE = Phrase.of("its sizes are not above 0");
    private static final Phrase WIDE_EDGES =
            Phrase.of("square edges of {wall} and {ceiling} do not fit a thickness of {thickness}");
    private static final Phrase NO_BACK = Phrase.of("a thickness of {thickness} leaves no back on a face of {width}");

    /**
     * A stick.
     *
     * @throws IllegalArgumentException when there is a {@link #fault}
     */
    public Sprung {
        Optional<Phrase> fault = fault(spring, width, thickness, wallEdge, ceilingEdge);
        if (fault.isPresent()) {
            throw new IllegalArgumentException(
                    "stick of " + thickness + " x " + width + ": " + fault.get().template());
        }
    }

    /** What keeps such sizes from being a stick, in a few words. */
    public static Optional<Phrase> fault(
            double spring, double width, double thickness, double wallEdge, double ceilingEdge) {
        if (!(spring > 0 && spring < 90)) {
            return Optional.of(NO_SPRING.with("spring", Figure.angle(spring)));
        }
        if (!(width > 0 && thickness > 0)) {
            return Optional.of(NO_SIZE);
        }
        if (!(wallEdge >= 0 && wallEdge <= thickness && ceilingEdge >= 0 && ceilingEdge <= thickness)) {
            return Optional.of(WIDE_EDGES
                    .with("wall", Figure.length(wallEdge))
                    .with("ceiling", Figure.length(ceilingEdge))
                    .with("thickness", Figure.length(thickness)));
        }
        return wallFlatTop(spring, thickness, wallEdge) >= drop(spring, width, ceilingEdge)
                ? Optional.of(
                        NO_BACK.with("thickness", Figure.length(thickness)).with("width", Figure.length(width)))
                : Optional.empty();
    }

    /** How far it comes down the wall from the ceiling, in. */
    public double drop() {
        return drop(spring, width, ceilingEdge);
    }

    /** How far it comes out along the ceiling from the wall, in. */
    public double projection() {
        return width * sin() + wallEdge * cos();
    }

    /** The outline with a plain face. */
    public Outline plain() {
        return withFace(List.of());
    }

    /**
     * The outline with a worked face. {@code face} is walked on the flat stick: y along the face from the wall edge (0)
     * to the ceiling edge (the width), x square to it, 0 at full thickness and negative into the wood. A face that
     * ends short of the ceiling edge's corner is closed straight to it.
     */
    public Outline withFace(List<Stroke> face) {
        return Outline.closed(strokes(face));
    }

    /** The same, or nothing where the face leaves the stick or crosses itself or it. */
    public Optional<Outline> sound(List<Stroke> face) {
        return Optional.of(face)
                .filter(this::holds)
                .map(this::strokes)
                .filter(strokes -> Soundness.faults(strokes).stream()
                        .noneMatch(fault -> fault instanceof NoArea || fault instanceof Crossing))
                .map(Outline::closed);
    }

    private List<Stroke> strokes(List<Stroke> face) {
        Motion held = new Motion(cos(), sin(), -sin(), cos(), wallEdge * cos(), 0);
        List<Stroke> strokes = new ArrayList<>();
        face.forEach(stroke -> strokes.add(stroke.moved(held)));
        Point lower = held.apply(Point.ORIGIN);
        Point upper = held.apply(new Point(0, width));
        Point end = strokes.isEmpty()
                ? lower
                : strokes.get(strokes.size() - 1).segment().to();
        strokes.add(new Stroke(new Line(end, upper), "face"));
        Point inward = new Point(-cos(), sin());
        Point ceilingStart = new Point(upper.x() - ceilingEdge * cos(), drop());
        Point ceilingEnd = new Point(wallEdge * cos() + (drop() * sin() - thickness) / cos(), drop());
        Point wallTop = new Point(0, wallFlatTop(spring, thickness, wallEdge));
        Point wallBottom = new Point(0, lower.plus(inward.times(wallEdge)).y());
        strokes.add(new Stroke(new Line(upper, ceilingStart), "ceiling-edge"));
        strokes.add(new Stroke(new Line(ceilingStart, ceilingEnd), "ceiling-flat"));
        strokes.add(new Stroke(new Line(ceilingEnd, wallTop), "back"));
        strokes.add(new Stroke(new Line(wallTop, wallBottom), "wall-flat"));
        strokes.add(new Stroke(new Line(wallBottom, lower), "wall-edge"));
        return strokes;
    }

    /**
     * The same stick end for end: what was its wall flat lies against the ceiling, and it springs 90 - S from the
     * wall. The names of edges and flats go with the place, not with the wood.
     */
    public static Outline endForEnd(Outline held) {
        double corner = held.box().top();
        Motion exchange = Motion.shift(0, -corner)
                .then(new Motion(0, -1, -1, 0, 0, 0))
                .then(Motion.shift(0, held.box().face()));
        List<Stroke> strokes = held.moved(exchange).strokes().stream()
                .map(stroke -> stroke.named(exchanged(stroke.member())))
                .toList();
        return Outline.closed(strokes);
    }

    private static String exchanged(String member) {
        return switch (member) {
            case "ceiling-edge" -> "wall-edge";
            case "wall-edge" -> "ceiling-edge";
            case "ceiling-flat" -> "wall-flat";
            case "wall-flat" -> "ceiling-flat";
            default -> member;
        };
    }

    /** Whether a worked face stays on its stick: within the width and the thickness. */
    public boolean holds(List<Stroke> face) {
        double slack = Tolerance.COINCIDENT;
        return face.stream().map(Stroke::segment).allMatch(segment -> {
            Box box = segment.box();
            return box.bottom() >= -slack
                    && box.top() <= width + slack
                    && box.face() <= slack
                    && box.back() >= -thickness - slack;
        });
    }

    private double sin() {
        return Math.sin(Math.toRadians(spring));
    }

    private double cos() {
        return Math.cos(Math.toRadians(spring));
    }

    private static double drop(double spring, double width, double ceilingEdge) {
        double s = Math.toRadians(spring);
        return width * Math.cos(s) + ceilingEdge * Math.sin(s);
    }

    /** Where the back meets the wall: (t - a cos^2 S) / sin S above the lowest corner. */
    private static double wallFlatTop(double spring, double thickness, double wallEdge) {
        double s = Math.toRadians(spring);
        return (thickness - wallEdge * Math.cos(s) * Math.cos(s)) / Math.sin(s);
    }
}

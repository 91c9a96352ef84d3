package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.label.Leaders;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The radii of an outline, each beside its curve in the air; one that stands off is led to. */
final class RadiusPlaces {
    /** How far a radius may stand from its curve, the nearest first, in. */
    private static final List<Double> ASIDE = List.of(0.1, 0.16, 0.22, 0.3, 0.4, 0.5, 0.65, 0.8, 1.0, 1.25);

    /** From here on a leader says which curve is meant, in. */
    private static final double LED = 0.25;

    /** Where along the curve, the middle first. */
    private static final List<Double> ALONG = List.of(0.5, 0.35, 0.65, 0.2, 0.8);

    private final Outline outline;
    private final TextMeasure measure;
    private final FigurePrinter printer;
    private final List<Point> points;
    private final List<SceneItem> set = new ArrayList<>();

    RadiusPlaces(Outline outline, TextMeasure measure, FigurePrinter printer) {
        this.outline = outline;
        this.measure = measure;
        this.printer = printer;
        this.points = outline.flattened(Tolerance.CHORD);
    }

    /**
     * The radii, where there is a free place for each.
     *
     * @param sizes what stands beside the outline already
     */
    List<SceneItem> items(List<SceneItem> sizes) {
        List<Arc> told = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            if (stroke.segment() instanceof Arc arc && told.stream().noneMatch(other -> isOfOneCircle(arc, other))) {
                told.add(arc);
                String text = "R " + printer.bare(Figure.length(arc.radius()));
                List<SceneItem> taken = new ArrayList<>(set);
                taken.addAll(sizes);
                place(arc, text, taken).ifPresent(set::addAll);
            }
        }
        return List.copyOf(set);
    }

    /** A half round is two arcs, and has one radius. */
    private static boolean isOfOneCircle(Arc arc, Arc other) {
        return arc.center().near(other.center(), Tolerance.SNAP) && Tolerance.same(arc.radius(), other.radius());
    }

    private Optional<List<SceneItem>> place(Arc arc, String text, List<SceneItem> taken) {
        for (double aside : ASIDE) {
            for (double along : ALONG) {
                Optional<List<SceneItem>> found = place(arc, text, aside, arc.at(along), taken);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<List<SceneItem>> place(Arc arc, String text, double aside, Point on, List<SceneItem> taken) {
        Point toAir = arc.center().minus(on).times((arc.counterclockwise() ? -1 : 1) / arc.radius());
        double half = measure.width(text, Drafting.TEXT) / 2;
        Point at = on.plus(toAir.times(aside)).plus(new Point(Math.signum(toAir.x()) * half * Math.abs(toAir.x()), 0));
        Label label = Label.centered(measure, text, at, Drafting.TEXT, false);
        Box place = wide(label.box());
        boolean free = taken.stream().noneMatch(one -> covers(one, place))
                && outline.strokes().stream().noneMatch(stroke -> meets(stroke.segment(), place))
                && !Outline.isInside(points, at);
        if (!free) {
            return Optional.empty();
        }
        if (aside <= LED) {
            return Optional.of(List.of(label));
        }
        Line leader = Leaders.to(label.box(), on);
        return isClear(leader, taken)
                ? Optional.of(List.of(label, new Path(List.of(leader), false, LineStyle.LEADER)))
                : Optional.empty();
    }

    /** A text with its air, and as much more to the sides as another font may take. */
    static Box wide(Box text) {
        double more = PictureSheet.WIDER * text.width() / 2;
        Box box = text.grown(2 * Drafting.AIR);
        return new Box(box.back() - more, box.bottom(), box.face() + more, box.top());
    }

    /** Whether something drawn comes into a place: of lines, their course and not their box. */
    static boolean covers(SceneItem item, Box place) {
        return item instanceof Path path
                ? path.segments().stream().anyMatch(segment -> meets(segment, place))
                : Boxes.overlap(item.box(), place);
    }

    /** Whether a leader reaches its curve through air, off every text. */
    private boolean isClear(Line leader, List<SceneItem> taken) {
        boolean throughWood = false;
        for (int i = 0; i < 20; i++) {
            throughWood |= Outline.isInside(points, leader.at(i / 20.0));
        }
        return !throughWood
                && taken.stream()
                        .noneMatch(item -> item instanceof Path path
                                ? path.segments().stream()
                                        .anyMatch(line -> !Crossings.of(leader, line, Tolerance.SNAP)
                                                .isEmpty())
                                : Boxes.crosses(item.box(), leader.from(), leader.to()));
    }

    /** Whether a segment comes into a place, looked at as finely as a text is high. */
    static boolean meets(Segment segment, Box place) {
        int steps = Math.max(2, (int) Math.ceil(segment.length() / (Drafting.TEXT / 4)));
        for (int i = 0; i <= steps; i++) {
            Point p = segment.at((double) i / steps);
            if (p.x() > place.back() && p.x() < place.face() && p.y() > place.bottom() && p.y() < place.top()) {
                return true;
            }
        }
        return false;
    }
}

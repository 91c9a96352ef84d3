package buildup.cli.drawing.room;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Gray;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Paint;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.room.plan.Station;
import buildup.engine.room.surface.GapAlong;
import buildup.engine.room.surface.Surface;
import buildup.engine.room.surface.Surfaced;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Each stick along the ceiling, floor or wall that was measured, with the gap between them: ceiling and floor from the
 * front, the wall from above. Gaps are drawn many times as large as lengths, or nobody would see them.
 */
public final class WallsDrawing {
    /** The longest stick on the sheet, in. */
    private static final double LONGEST = 9;

    /** The widest gap, or deepest clash, on the sheet, in. */
    private static final double WIDEST = 0.8;

    /** How much is shown of the piece and of the surface, beyond what clashes, in. */
    private static final double THICK = 0.28;

    private static final double GAP = 0.4;
    private static final double MARGIN = 0.3;

    private static final Pattern ROOM = new Pattern(45, 0.07, false, 0.005, List.of());
    private static final Gray CLASH = new Gray(0.35);

    private final Stack stack;
    private final List<GapAlong> gaps;
    private final TextMeasure measure;
    private final double along;
    private final double across;

    private WallsDrawing(Stack stack, List<GapAlong> gaps, TextMeasure measure) {
        this.stack = stack;
        this.gaps = gaps;
        this.measure = measure;
        this.along =
                LONGEST / gaps.stream().mapToDouble(WallsDrawing::length).max().orElse(LONGEST);
        double most = gaps.stream()
                .mapToDouble(gap -> Math.max(
                        Math.abs(gap.least().amount()), Math.abs(gap.most().amount())))
                .max()
                .orElse(WIDEST);
        this.across = WIDEST / Math.max(most, Tolerance.TOUCHING);
    }

    /** The gaps that are near enough to be closed or left as a reveal; absent when nothing such was measured. */
    public static Optional<Scene> of(Stack stack, Surfaced surfaced, TextMeasure measure) {
        List<GapAlong> near = surfaced.gaps().stream().filter(GapAlong::near).toList();
        return near.isEmpty() ? Optional.empty() : Optional.of(new WallsDrawing(stack, near, measure).scene());
    }

    private static double length(GapAlong gap) {
        List<Station> stations = gap.gap().stations();
        return stations.get(stations.size() - 1).along() - stations.get(0).along();
    }

    private Scene scene() {
        List<SceneItem> items = new ArrayList<>();
        Group legend = legend();
        items.add(legend);
        double top = legend.box().bottom() - GAP;
        for (GapAlong gap : gaps) {
            Block block = Block.of(new Group("gap-" + items.size(), strip(gap)));
            items.add(block.at(0, top));
            top -= block.height() + GAP;
        }
        return PictureSheet.around(
                stack.title() + ", along the walls",
                "The gaps along " + gaps.size() + " sticks to ceiling, floor and wall as measured.",
                items,
                MARGIN);
    }

    private Group legend() {
        double larger = across / along;
        return new Legend(measure, Drafting.TEXT)
                .title(stack.title())
                .text("Along the walls, from left to right as seen from the room: lengths 1 : "
                        + Math.max(1, Math.round(1 / along)) + ", gaps "
                        + Math.max(1, Math.round(larger)) + " times as large as lengths. At each place: beyond the"
                        + " surface the gap, beyond the piece how far along; sizes in " + Drafting.units(stack) + ".")
                .sample("the piece that comes nearest", at -> box(at, Tone.TRIM))
                .sample("ceiling, floor or wall as measured", at -> hatched(swatch(at)))
                .sample("clash: both want this place", at -> box(at, CLASH))
                .group();
    }

    private static List<Segment> swatch(Point at) {
        return Outline.rectangle(new Box(at.x(), at.y(), at.x() + 3 * Drafting.TEXT, at.y() + Drafting.TEXT))
                .segments();
    }

    private static List<SceneItem> box(Point at, Paint paint) {
        return List.of(
                new Area(Optional.empty(), Optional.empty(), swatch(at), paint),
                new Path(swatch(at), true, LineStyle.ARRIS));
    }

    private static List<SceneItem> hatched(List<Segment> ring) {
        return List.of(new Hatch(ring, ROOM, Point.ORIGIN), new Path(ring, true, LineStyle.EXTENSION));
    }

    /** One stick: its edge is the level 0 and the surface lies over it, under it for a floor. */
    private List<SceneItem> strip(GapAlong gap) {
        double up = gap.surface() == Surface.FLOOR ? -1 : 1;
        List<Station> stations = gap.gap().stations();
        double left = stations.get(0).along();
        double right = (stations.get(stations.size() - 1).along() - left) * along;
        double far = Math.max(0, gap.most().amount()) * across + THICK;
        double thick = Math.max(0, -gap.least().amount()) * across + THICK;
        List<Point> edge = stations.stream()
                .map(one -> new Point((one.along() - left) * along, up * one.amount() * across))
                .toList();
        List<SceneItem> items = new ArrayList<>();
        List<Segment> piece = List.copyOf(Line.ring(List.of(
                new Point(0, 0), new Point(right, 0), new Point(right, -up * thick), new Point(0, -up * thick))));
        items.add(new Area(Optional.empty(), Optional.empty(), piece, Tone.TRIM));
        List<Point> room = new ArrayList<>(edge);
        room.add(new Point(right, up * far));
        room.add(new Point(0, up * far));
        items.add(new Hatch(List.copyOf(Line.ring(room)), ROOM, Point.ORIGIN));
        items.addAll(clashes(gap, up, left));
        items.add(new Path(piece, true, LineStyle.ARRIS));
        items.addAll(About.of(Subject.WALL, List.of(new Path(lines(edge), false, LineStyle.OUTLINE))));
        items.addAll(About.of(Subject.DIMENSIONS, figures(gap, up * far, -up * thick, left)));
        String title = gap.stretch() + ": " + gap.surface().word() + " " + side(gap.surface()) + " "
                + gap.fit().course().name() + ", gap " + size(gap.least().amount()) + " to "
                + size(gap.most().amount());
        Box drawn = Box.around(items.stream().map(SceneItem::box).toList());
        items.add(Label.of(
                measure,
                title,
                new Point(0, drawn.top() + 0.9 * Drafting.TEXT),
                1.2 * Drafting.TEXT,
                Label.Anchor.START));
        return items;
    }

    private static String side(Surface surface) {
        return switch (surface) {
            case CEILING -> "over";
            case FLOOR -> "under";
            case WALL -> "behind";
        };
    }

    private String size(double inches) {
        return Drafting.size(stack, inches);
    }

    /** Where the surface reaches into the piece, filled between its line and the level 0. */
    private List<SceneItem> clashes(GapAlong gap, double up, double left) {
        List<SceneItem> items = new ArrayList<>();
        List<Point> open = new ArrayList<>();
        for (Station corner : gap.gap().corners()) {
            Point at = new Point((corner.along() - left) * along, up * corner.amount() * across);
            if (corner.amount() <= 0) {
                open.add(at);
            }
            if (corner.amount() >= 0) {
                clash(open).ifPresent(items::add);
                open = new ArrayList<>(corner.amount() > 0 ? List.of() : List.of(at));
            }
        }
        clash(open).ifPresent(items::add);
        return items;
    }

    private static Optional<SceneItem> clash(List<Point> open) {
        if (open.size() < 2 || open.stream().allMatch(p -> Math.abs(p.y()) <= Tolerance.COINCIDENT)) {
            return Optional.empty();
        }
        List<Point> points = new ArrayList<>(open);
        points.add(new Point(open.get(open.size() - 1).x(), 0));
        points.add(new Point(open.get(0).x(), 0));
        return Optional.of(new Area(Optional.empty(), Optional.empty(), List.copyOf(Line.ring(points)), CLASH));
    }

    /** The gap beyond the surface and the place beyond the piece: least, widest and ends first, others where they fit. */
    private List<SceneItem> figures(GapAlong gap, double far, double near, double left) {
        List<Station> stations = gap.gap().stations();
        Set<Station> wanted = new LinkedHashSet<>(
                List.of(gap.least(), gap.most(), stations.get(0), stations.get(stations.size() - 1)));
        wanted.addAll(stations);
        List<SceneItem> items = new ArrayList<>();
        List<Box> taken = new ArrayList<>();
        for (Station one : wanted) {
            double x = (one.along() - left) * along;
            double up = Math.signum(far);
            Point edge = new Point(x, up * one.amount() * across);
            Label size = label(size(one.amount()), new Point(x, far + up * 0.9 * Drafting.TEXT));
            Label place = label(size(one.along()), new Point(x, near - up * 0.9 * Drafting.TEXT));
            if (taken.stream()
                    .anyMatch(box -> box.near(size.box(), Drafting.AIR) || box.near(place.box(), Drafting.AIR))) {
                continue;
            }
            taken.add(size.box());
            taken.add(place.box());
            items.add(new Path(
                    List.of(
                            new Line(edge, new Point(x, far + up * Drafting.EXTENSION_PAST)),
                            new Line(new Point(x, near), new Point(x, near - up * Drafting.EXTENSION_PAST))),
                    false,
                    LineStyle.EXTENSION));
            items.add(size);
            items.add(place);
        }
        return items;
    }

    private Label label(String text, Point center) {
        return Label.centered(measure, text, center, Drafting.FIGURES, false);
    }

    private static List<Segment> lines(List<Point> points) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            lines.add(new Line(points.get(i - 1), points.get(i)));
        }
        return lines;
    }
}

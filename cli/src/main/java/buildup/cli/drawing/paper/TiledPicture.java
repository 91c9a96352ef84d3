package buildup.cli.drawing.paper;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.PageFlow;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** A picture at full size on several pages, and before them a page that tells how they are put together. */
final class TiledPicture {
    /** The key plan. */
    private static final double PLAN_WIDE = 6.8;

    private static final double PLAN_HIGH = 3;

    private static final double PLAN_HIGHEST = 7;

    private static final double PLAN_LEAST = 1.2;

    /** A row of parts and its number are read if so high. */
    private static final double PLAN_ROW = 0.5;

    private static final double SMALL_ROW = 0.27;

    /** The words above the plan, and the gap. */
    private static final double WORDS = 0.9;

    /** The radius of the ring of a cross. */
    private static final double RING = 0.07;

    /** A cross is well seen among these. */
    private static final Set<LineStyle> LIGHT =
            EnumSet.of(LineStyle.GRID, LineStyle.GRID_INCH, LineStyle.CASING, LineStyle.EXTENSION);

    private static final String MEASURE =
            "Print at 100 %, not fitted to the page, and measure the lines on every page. ";

    private static final String LAY =
            "Lay each part over its neighbor so that cross lies on cross, and tape them; or cut through the crosses and butt"
                    + " the parts. A text that an edge would cut stands on the one part that holds it whole.";

    private final PageFrame frame;
    private final PaperSet set;
    private final List<SceneItem> leaves;
    private final Tiling tiling;
    private final Crosses crosses;
    /** By column and row: the number of a part that holds something. */
    private final Map<List<Integer>, Integer> parts = new LinkedHashMap<>();

    private TiledPicture(PageFrame frame, PaperSet set, List<SceneItem> leaves, Tiling tiling) {
        this.frame = frame;
        this.set = set;
        this.leaves = leaves;
        this.tiling = tiling;
        this.crosses = tiling.crosses();
        for (int row = 0; row < tiling.rows().count(); row++) {
            for (int column = 0; column < tiling.columns().count(); column++) {
                if (holds(tiling.window(column, row))) {
                    parts.put(List.of(column, row), parts.size() + 1);
                }
            }
        }
    }

    /** The parts of a picture, none of which cuts a text that no other holds whole. */
    static Tiling tiling(PageFrame frame, PageFrame.Use part, Box whole, Tiling.Drawn drawn) {
        Box window = frame.window(part);
        return Tiling.of(whole, window.width(), window.height(), drawn);
    }

    /** What a cross had better not lie on. */
    static Tiling.Drawn drawn(List<SceneItem> leaves) {
        return new Tiling.Drawn(
                leaves.stream()
                        .filter(Label.class::isInstance)
                        .map(SceneItem::box)
                        .toList(),
                leaves.stream()
                        .filter(item -> item instanceof Path path && !LIGHT.contains(path.style()))
                        .flatMap(item -> ((Path) item).segments().stream())
                        .map(Segment.class::cast)
                        .toList());
    }

    /**
     * The pages.
     *
     * @param front what else stands on the first page, before the plan of the parts
     */
    static List<PaperPage> pages(PageFrame upright, PaperSet set, List<SceneItem> items, Consumer<PageFlow> front) {
        List<SceneItem> leaves = Unnamed.leaves(items);
        Box whole = Box.around(leaves.stream().map(SceneItem::box).toList());
        Tiling.Drawn drawn = drawn(leaves);
        Tiling standing = tiling(upright, set.part(), whole, drawn);
        Tiling lying = tiling(upright.turned(), set.part(), whole, drawn);
        TiledPicture picture = standing.count() <= lying.count()
                ? new TiledPicture(upright, set, leaves, standing)
                : new TiledPicture(upright.turned(), set, leaves, lying);
        int count = picture.parts.size();
        List<PaperPage> pages = new ArrayList<>(
                Paper.flowing(upright, set.view() + ", in " + count + " parts", PaperPage.AS_TOLD, flow -> {
                    front.accept(flow);
                    flow.gap(0.15);
                    picture.told(flow);
                }));
        picture.parts.forEach((place, number) -> pages.add(picture.page(place.get(0), place.get(1), number)));
        return pages;
    }

    /** How the parts are put together, with their plan on the page of what is before it, or else with it on the next. */
    private void told(PageFlow flow) {
        String told = parts.size() + " parts" + (set.checked() ? " at full size" : "") + ", numbered as on this plan. "
                + (set.checked() ? MEASURE : "") + LAY;
        double rows = tiling.rows().count();
        double wanted = Math.max(PLAN_HIGH, Math.min(PLAN_HIGHEST, PLAN_ROW * rows));
        double least = Math.max(PLAN_LEAST, SMALL_ROW * rows);
        Block plan = keyPlan(Math.min(wanted, Math.max(least, flow.left() - WORDS)));
        if (!flow.roomFor(WORDS + plan.height())) {
            if (beside(flow, wanted, least)) {
                flow.lines(told, Drafting.TEXT);
                return;
            }
            plan = keyPlan(wanted);
        }
        flow.room(WORDS + plan.height());
        flow.lines(told, Drafting.TEXT);
        flow.gap(0.15);
        flow.blocks(List.of(plan), 0.2);
    }

    /** The plan at the head of the page, as large as the room to the right of what stands there takes it. */
    private boolean beside(PageFlow flow, double most, double least) {
        return DoubleStream.iterate(most, high -> high >= least, high -> 0.8 * high)
                .anyMatch(high -> flow.beside(keyPlan(high)));
    }

    private boolean holds(Box window) {
        return within(window).anyMatch(item -> shows(item, window));
    }

    /** What is seen in a window. */
    private Stream<SceneItem> within(Box window) {
        return leaves.stream()
                .filter(item -> item.box().near(window, 0))
                .flatMap(item -> (item instanceof Label label
                                ? tiling.shown(label.box(), window).map(by -> label.moved(by.x(), by.y()))
                                : Optional.of(item))
                        .stream());
    }

    /** Lines are in a window only where one of their stretches is. */
    private static boolean shows(SceneItem item, Box window) {
        if (item instanceof Path path) {
            return path.segments().stream().anyMatch(segment -> passes(segment, window));
        }
        return !(item instanceof Hatch);
    }

    private static boolean passes(Segment segment, Box window) {
        return segment.box().near(window, 0)
                && (segment instanceof Arc
                        || Boxes.crosses(window.grown(Tolerance.TOUCHING), segment.from(), segment.to()));
    }

    /** What no other window shows of a window; about its middle where its neighbors together show all of it. */
    private Box own(int column, int row) {
        Seams.Span across = tiling.columns().own(column);
        Seams.Span up = tiling.rows().own(tiling.rows().count() - 1 - row);
        return new Box(across.from(), up.from(), across.to(), up.to());
    }

    private PaperPage page(int column, int row, int number) {
        Box window = tiling.window(column, row);
        Box place = frame.window(set.part());
        double right = place.back() - window.back();
        double up = place.bottom() - window.bottom();
        List<SceneItem> content = new ArrayList<>();
        content.add(new Clip(
                place, within(window).map(item -> item.moved(right, up)).toList()));
        for (Point shared : crosses.of(column, row)) {
            Point cross = shared.plus(new Point(right, up));
            if (isDense(shared)) {
                content.add(new Area(Optional.empty(), Optional.empty(), Caption.circle(cross, 2 * RING), Tone.PAPER));
            }
            content.add(cross(cross, LineStyle.CASING));
            content.add(cross(cross, LineStyle.DIMENSION));
        }
        neighbor(column - 1, row)
                .ifPresent(other -> content.add(beside(
                        other,
                        new Point(
                                place.back() - PageFrame.beside(),
                                place.middle().y()),
                        true)));
        neighbor(column + 1, row)
                .ifPresent(other -> content.add(beside(
                        other,
                        new Point(
                                place.face() + PageFrame.beside(),
                                place.middle().y()),
                        true)));
        neighbor(column, row - 1)
                .ifPresent(other -> content.add(
                        beside(other, new Point(place.middle().x(), place.top() + PageFrame.beside()), false)));
        neighbor(column, row + 1)
                .ifPresent(other -> content.add(
                        beside(other, new Point(place.middle().x(), place.bottom() - PageFrame.beside()), false)));
        return new PaperPage(
                frame,
                set.part(),
                set.view(),
                Optional.of("part " + number + " of " + parts.size()),
                set.scale(),
                content);
    }

    /** Whether a cross there would be lost among the lines of a shadow. */
    private boolean isDense(Point cross) {
        Box ring = Box.of(cross, cross).grown(2 * RING);
        return leaves.stream()
                .anyMatch(item -> item instanceof Hatch hatch
                        && hatch.pattern().spacing() < 2 * RING
                        && hatch.box().near(ring, 0));
    }

    private Optional<Integer> neighbor(int column, int row) {
        return Optional.ofNullable(parts.get(List.of(column, row)));
    }

    private Label beside(int number, Point middle, boolean upright) {
        return Label.centered(frame.measure(), "part " + number + " joins here", middle, Drafting.TEXT, upright);
    }

    private static SceneItem cross(Point at, LineStyle style) {
        List<Segment> lines = new ArrayList<>();
        for (DimensionAxis axis : DimensionAxis.values()) {
            double along = axis == DimensionAxis.LEVEL ? at.x() : at.y();
            double across = axis == DimensionAxis.LEVEL ? at.y() : at.x();
            lines.add(axis.line(along - Tiling.ARM, along + Tiling.ARM, across));
        }
        lines.addAll(Caption.circle(at, RING));
        return new Path(lines, false, style);
    }

    /** The picture small, with the parts on it. */
    private Block keyPlan(double high) {
        List<Box> windows = parts.keySet().stream()
                .map(place -> tiling.window(place.get(0), place.get(1)))
                .toList();
        Box whole = Box.around(windows);
        double by = Math.min(1, Math.min(PLAN_WIDE / whole.width(), high / whole.height()));
        List<SceneItem> items = new ArrayList<>(Shrunk.edges(leaves, whole, by));
        windows.forEach(window ->
                items.add(new Path(Outline.rectangle(Scale.of(window, by)).segments(), true, LineStyle.DIMENSION)));
        int number = 0;
        for (List<Integer> place : parts.keySet()) {
            number++;
            Box box = Scale.of(own(place.get(0), place.get(1)), by);
            double size =
                    Math.max(Drafting.SMALLEST, Math.min(Drafting.TITLE, 0.5 * Math.min(box.width(), box.height())));
            Label label = Label.centered(frame.measure(), String.valueOf(number), box.middle(), size, false);
            items.add(new Area(
                    Optional.empty(),
                    Optional.empty(),
                    Outline.rectangle(label.box().grown(Drafting.AIR)).segments(),
                    Tone.PAPER));
            items.add(label);
        }
        return Block.of(new Group("key-plan", items));
    }
}

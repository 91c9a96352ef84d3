package buildup.cli.drawing.section;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Clearances;
import buildup.cli.drawing.label.Dimension;
import buildup.cli.drawing.label.Dimensioner;
import buildup.cli.drawing.label.Tags;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.section.compose.ClosedVoid;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The section for a screen: on a sheet of one size whatever the stack's, so that its letters are read on a telephone.
 * Everything that belongs to one piece lies in groups with the piece's number, and the dimensions are there in inches
 * and in millimeters, to be shown one at a time.
 *
 * @param scene with the groups {@code hatch-N}, {@code edge-N}, {@code piece-N} (the areas) and {@code letter-N} of the
 *     body number N, {@code voids} and {@code void-words}, {@code dimensions-in} and {@code dimensions-mm}
 * @param origin of the section on the sheet, in from the lower left corner
 * @param scale inches of the sheet to an inch of wood
 */
public record ScreenDrawing(Scene scene, Point origin, double scale) {
    /** The sheet's share for the stack itself, in: with letters as on every sheet, a telephone shows them legibly. */
    private static final double WIDEST = 3.1;

    private static final double HIGHEST = 3.9;
    private static final double MARGIN = 0.08;

    /** Grid lines nearer than this to each other only gray the paper, in. */
    private static final double LEAST_GRID = 0.25;

    private static final List<Integer> GRIDS = List.of(1, 2, 6, 12, 24, 48, 96);

    /** One set of letters and dimensions over the same wood. */
    private record Lettering(List<SceneItem> letters, List<SceneItem> dimensions, List<Box> texts) {}

    /** The section of the whole stack. */
    public static ScreenDrawing of(Section section, TextMeasure measure) {
        return of(section, scale(section), measure);
    }

    /** The largest scale at which a section has room on the sheet. */
    public static double scale(Section section) {
        Box stack = PictureView.of(section).stack();
        return Math.min(1, Math.min(WIDEST / stack.width(), HIGHEST / stack.height()));
    }

    /** The section at a scale, as one of several that are seen beside each other. */
    public static ScreenDrawing of(Section section, double scale, TextMeasure measure) {
        PictureView whole = PictureView.of(section);
        PictureView view = whole.scaled(scale);
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<ChordRing> voids = voids(section, view);
        Lettering inches = lettering(section, whole, view, wood, voids, measure, FigurePrinter.INCHES);
        Lettering metric = lettering(section, whole, view, wood, voids, measure, FigurePrinter.MILLIMETERS);
        List<SceneItem> items = new ArrayList<>();
        grid(view, scale).ifPresent(items::add);
        List<SceneItem> air = voids.stream()
                .<SceneItem>map(
                        ring -> new Area(Optional.empty(), Optional.of("void"), List.copyOf(ring.chords()), Tone.PAPER))
                .toList();
        group("voids", air).ifPresent(items::add);
        wood.layers()
                .forEach(
                        layer -> group("piece-" + layer.number(), layer.areas()).ifPresent(items::add));
        wood.layers()
                .forEach(layer ->
                        group("hatch-" + layer.number(), layer.hatches()).ifPresent(items::add));
        items.addAll(wood.covering());
        wood.layers()
                .forEach(layer -> group("edge-" + layer.number(), layer.edges()).ifPresent(items::add));
        items.addAll(wood.breakLines());
        plane(view, inches.texts()).ifPresent(items::add);
        items.addAll(inches.letters());
        group("dimensions-in", inches.dimensions()).ifPresent(items::add);
        group("dimensions-mm", metric.dimensions()).ifPresent(items::add);
        return sheet(section, items, scale);
    }

    private static Optional<SceneItem> group(String id, List<SceneItem> items) {
        return items.isEmpty() ? Optional.empty() : Optional.of(new Group(id, items));
    }

    private static ScreenDrawing sheet(Section section, List<SceneItem> items, double scale) {
        Box box = Box.around(items.stream().map(SceneItem::box).toList());
        Scene scene = PictureSheet.around(
                section.stack().title() + ", section",
                "Section of " + section.pieces().size()
                        + " pieces from the end of the run: the wall side on the left, the"
                        + " room on the right. Every piece can be chosen.",
                items,
                MARGIN);
        return new ScreenDrawing(scene, new Point(MARGIN - box.back(), MARGIN - box.bottom()), scale);
    }

    private static Lettering lettering(
            Section section,
            PictureView whole,
            PictureView view,
            WoodDrawing wood,
            List<ChordRing> voids,
            TextMeasure measure,
            FigurePrinter printer) {
        Clearances clearances = Clearances.of(view);
        wood.breaks().forEach(clearances::addBreak);
        Map<String, Tags> tags = new LinkedHashMap<>();
        for (PictureView.Shown shown : view.shown()) {
            if (shown.body().piece() && !shown.parts().isEmpty()) {
                Tags own = new Tags(clearances, measure, view.window());
                own.letter(Section.letter(shown.number()), shown.parts().get(0).chords());
                tags.put("letter-" + shown.number(), own);
            }
        }
        Tags words = new Tags(clearances, measure, view.window());
        voids.forEach(ring -> words.word("void", ring));
        tags.put("void-words", words);
        // those that found no room in their piece go outside when all others have theirs
        List<SceneItem> letters = new ArrayList<>();
        tags.forEach((id, own) -> group(id, own.items()).ifPresent(letters::add));
        Dimensioner dimensioner = new Dimensioner(view, clearances, measure);
        // the heights of single pieces stand in the tables: their lanes would take the width that letters need
        dimensioner.lay(SectionDimensions.of(section, whole, printer).list().stream()
                .filter(one -> one.where() != Dimension.Where.LANE)
                .map(one -> one.scaled(view.scale()))
                .toList());
        return new Lettering(letters, dimensioner.items(), clearances.texts());
    }

    /** Those that lie on the picture whole. */
    private static List<ChordRing> voids(Section section, PictureView view) {
        return section.voids().stream()
                .map(ClosedVoid::ring)
                .map(ring -> ChordRing.of(
                        Scale.of(ring.bounds().stream().map(Bound::segment).toList(), view.scale()),
                        Tolerance.DRAWN_CHORD))
                .filter(ring ->
                        ring.points().stream().allMatch(p -> view.window().holds(p, 0)))
                .toList();
    }

    /** Whole inches from the plane x = 0 and from the datum, or as many inches as leave the paper light. */
    private static Optional<SceneItem> grid(PictureView view, double scale) {
        double step = GRIDS.stream()
                .mapToDouble(inches -> inches * scale)
                .filter(wide -> wide >= LEAST_GRID)
                .findFirst()
                .orElse(LEAST_GRID);
        List<Segment> lines = new ArrayList<>();
        for (DimensionAxis run : DimensionAxis.values()) {
            Box window = view.window();
            long last = (long) Math.floor(run.other().most(window) / step);
            for (long k = (long) Math.ceil(run.other().least(window) / step); k <= last; k++) {
                lines.add(run.line(run.least(window), run.most(window), k * step));
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Path(lines, false, LineStyle.GRID_INCH));
    }

    /** x = 0, where no wall shows it. */
    private static Optional<SceneItem> plane(PictureView view, List<Box> texts) {
        Box window = view.window();
        if (window.back() > 0 || window.face() < 0) {
            return Optional.empty();
        }
        Line line = new Line(new Point(0, window.bottom()), new Point(0, window.top()));
        List<Line> left = Boxes.broken(line, texts);
        return left.isEmpty() ? Optional.empty() : Optional.of(new Path(List.copyOf(left), false, LineStyle.PLANE));
    }

    /** A place of the section on the sheet, up from its lower edge. */
    public Point on(Point inSection) {
        return Motion.shift(origin.x(), origin.y()).apply(inSection.times(scale));
    }
}

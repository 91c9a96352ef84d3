package buildup.cli.drawing.room;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.room.cope.Cope;
import buildup.engine.room.cope.CopeLine;
import buildup.engine.room.run.Saw;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The templates of the copes at full size, one for each piece and corner, one under the other. */
public final class CopeDrawing {
    /** How much of the stick is drawn behind the line, in. */
    private static final double STICK = 1.5;

    /** A wall farther from the line than this is not drawn, and a line that stands for it keeps so far away, in. */
    private static final double FAR = 3;

    private static final double NEAR = 0.5;

    private static final Phrase HOW = Phrase.of(
            "Cope at an inside corner of {corner}, full size: the end of the stick as it stands on its wall, seen from the"
                    + " room, {wall}. Cut along the heavy line and undercut it {back}. For a right"
                    + " end turn the sheet over.");
    private static final Phrase WHERE =
            Phrase.of("Coped: {where}. Edge at its sharpest {edge}, before it is undercut.");
    private static final Phrase AT_LINE = Phrase.of("the other wall at the broken line");
    private static final Phrase BEHIND_LINE = Phrase.of("the other wall {far} behind the broken line");
    private static final Phrase BACK = Phrase.of("Thin line: where the cut comes out at the back, on the wall.");

    private final Section section;
    private final List<Cope> copes;
    private final TextMeasure measure;
    private final FigurePrinter printer;

    private CopeDrawing(Section section, List<Cope> copes, TextMeasure measure) {
        this.section = section;
        this.copes = copes;
        this.measure = measure;
        this.printer = Drafting.printer(section.stack());
    }

    /** The templates; absent when nothing is coped. */
    public static Optional<Scene> of(Section section, List<Cope> copes, TextMeasure measure) {
        return copes.isEmpty() ? Optional.empty() : Optional.of(new CopeDrawing(section, copes, measure).scene());
    }

    /** The same for paper, each a picture of its own. */
    public static List<Scene> each(Section section, List<Cope> copes, TextMeasure measure) {
        CopeDrawing drawing = new CopeDrawing(section, copes, measure);
        List<Scene> scenes = new ArrayList<>();
        for (List<Cope> kind : drawing.kinds()) {
            scenes.add(PictureSheet.around(
                    section.stack().title() + ", copes",
                    "Template of a cope, full size.",
                    drawing.template(kind, scenes.size() + 1),
                    2 * Drafting.TEXT));
        }
        return scenes;
    }

    /** The copes of one piece at one kind of corner together. */
    private List<List<Cope>> kinds() {
        Map<String, List<Cope>> kinds = new LinkedHashMap<>();
        copes.forEach(cope -> kinds.computeIfAbsent(
                        cope.fit().course().name() + " " + cope.corner(), unseen -> new ArrayList<>())
                .add(cope));
        return List.copyOf(kinds.values());
    }

    private Scene scene() {
        List<List<Cope>> kinds = kinds();
        List<SceneItem> items = new ArrayList<>();
        for (List<Cope> kind : kinds) {
            Group one = new Group("cope-" + (items.size() + 1), template(kind, items.size() + 1));
            items.add(items.isEmpty() ? one : PictureSheet.below(items, one, 4 * Drafting.TEXT));
        }
        return PictureSheet.around(
                section.stack().title() + ", copes",
                "Templates of " + kinds.size() + " copes, full size.",
                items,
                2 * Drafting.TEXT);
    }

    private List<SceneItem> template(List<Cope> kind, int number) {
        Cope first = kind.get(0);
        Outline outline = section.body(first.fit().course().body()).outline();
        List<Segment> face = CopeLine.onFace(outline, first.corner());
        List<Segment> back = CopeLine.onBack(outline, first.corner());
        Box line = Box.around(face.stream().map(Segment::box).toList());
        double end = line.face() + STICK;
        Point low = face.get(0).from();
        Point high = face.get(face.size() - 1).to();
        List<Segment> ring = new ArrayList<>();
        ring.add(new Line(high, new Point(end, high.y())));
        ring.add(new Line(new Point(end, high.y()), new Point(end, low.y())));
        ring.add(new Line(new Point(end, low.y()), low));
        ring.addAll(face);
        List<SceneItem> wood = new ArrayList<>(WoodDrawing.Look.TRIM.fill(
                Optional.of("stick"), Optional.of(first.fit().course().name()), ring, Point.ORIGIN));
        wood.add(new Path(ring, true, LineStyle.NAILER));
        wood.add(new Path(face, false, LineStyle.OUTLINE));
        if (Math.abs(first.corner() - 90) > Tolerance.SAME_DIRECTION) {
            wood.add(new Path(back, false, LineStyle.ARRIS));
        }
        List<SceneItem> items = new ArrayList<>(
                List.of(new PiecePart("cope-" + number, Subject.TRIM, new Point(0, low.y()), Point.ORIGIN, wood)));
        double plane = plane(line.back());
        items.add(new Path(
                List.of(new Line(new Point(plane, low.y() - 0.3), new Point(plane, high.y() + 0.3))),
                false,
                LineStyle.PLANE));
        items.add(PictureSheet.below(items, legend(kind, plane), 2 * Drafting.TEXT));
        return items;
    }

    /** Where the broken line stands: at the other wall, or where that is far off, a whole size before it; in. */
    private double plane(double back) {
        double step = printer.metric() ? 10 / 25.4 : 1;
        return back < FAR ? 0 : step * Math.floor((back - NEAR) / step);
    }

    private Group legend(List<Cope> kind, double plane) {
        Cope first = kind.get(0);
        String where = kind.stream()
                .map(cope -> (cope.right() ? "right" : "left") + " end on " + cope.stretch())
                .distinct()
                .collect(Collectors.joining("; "));
        Legend legend = new Legend(measure, Drafting.TEXT)
                .title(first.fit().course().name())
                .text(printer.print(HOW.with("corner", Figure.angle(first.corner()))
                        .with("back", Figure.angle(Saw.BACK_CUT))
                        .with("wall", plane > 0 ? BEHIND_LINE.with("far", Figure.length(plane)) : AT_LINE)))
                .text(printer.print(WHERE.with("where", where).with("edge", Figure.angle(first.edge()))));
        return (Math.abs(first.corner() - 90) > Tolerance.SAME_DIRECTION ? legend.text(printer.print(BACK)) : legend)
                .group();
    }
}

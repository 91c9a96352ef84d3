package buildup.cli.drawing.look;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.LineNames;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.look.light.Band;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.engine.look.sight.SeenMember;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The section, full size, with its room side drawn by how light meets it, the rays that bound the shadows, and from each
 * eye the sight lines past what hides.
 */
public final class RaysDrawing {
    /** How far the picture reaches out into the room, so that rays and sight lines are seen to come from somewhere. */
    private static final double ROOM = 3;

    private final Section section;
    private final Lighting lighting;
    private final List<Sighting> sights;
    private final TextMeasure measure;
    private final PictureView view;
    private final Box frame;
    private final double size;
    private final int smaller;

    private RaysDrawing(Section section, Lighting lighting, List<Sighting> sights, int smaller, TextMeasure measure) {
        this.smaller = smaller;
        this.section = section;
        this.lighting = lighting;
        this.sights = sights;
        this.measure = measure;
        this.view = PictureView.of(section);
        Box window = view.window();
        double room = Math.max(1, Math.min(ROOM, section.totals().height() / 3));
        this.frame = new Box(window.back(), window.bottom(), window.face() + room, window.top());
        this.size = smaller == 1 ? view.letters() : smaller * Drafting.TEXT;
    }

    /** The section with the rays of its lights and the sight lines of its eyes, full size. */
    public static Scene of(Section section, Lighting lighting, List<Sighting> sights, TextMeasure measure) {
        return new RaysDrawing(section, lighting, sights, 1, measure).scene();
    }

    /** The same with letters that are read when it is made so many times smaller. */
    public static Scene forScale(
            Section section, Lighting lighting, List<Sighting> sights, int smaller, TextMeasure measure) {
        return new RaysDrawing(section, lighting, sights, smaller, measure).scene();
    }

    private Scene scene() {
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("pieces", wood.areas()));
        items.add(new Group("edges", thin(wood.edges())));
        List<SceneItem> walk = walk();
        if (!walk.isEmpty()) {
            items.add(new Group("light", walk));
        }
        LineNames names = new LineNames(measure, frame, size);
        wood.breaks().forEach(line -> names.keepClear(line.box()));
        List<Line> rays = rays();
        names.add(lighting.light().name(), Subject.LIGHTS, rays);
        addLines(items, "rays", rays, LineStyle.RAY);
        List<Line> sight = new ArrayList<>();
        for (Sighting sighting : sights) {
            List<Line> own = sightLines(sighting);
            names.add(sighting.eye().name(), Subject.EYES, own);
            sight.addAll(own);
        }
        addLines(items, "sight", sight, LineStyle.SIGHT);
        items.addAll(names.items());
        items.add(PictureSheet.below(items, legend(), size));
        return PictureSheet.around(
                section.stack().title() + ", light and sight",
                "Section with rays of light and sight lines. "
                        + Lamps.words(lighting, Drafting.printer(section.stack())),
                items,
                2 * size);
    }

    private static void addLines(List<SceneItem> items, String id, List<Line> lines, LineStyle style) {
        List<SceneItem> drawn = lines.stream()
                .map(line -> (SceneItem) new Path(List.of(line), false, style))
                .toList();
        if (!drawn.isEmpty()) {
            items.add(new Group(id, drawn));
        }
    }

    /** What does not face the room is only hinted at here. */
    private static List<SceneItem> thin(List<SceneItem> edges) {
        return edges.stream().map(RaysDrawing::thin).toList();
    }

    private static SceneItem thin(SceneItem item) {
        if (item instanceof PiecePart part) {
            return new PiecePart(part.name(), part.subject(), part.home(), part.origin(), thin(part.items()));
        }
        if (item instanceof About about) {
            return new About(about.subject(), thin(about.items()));
        }
        return item instanceof Path path && path.style() != LineStyle.BREAK
                ? new Path(path.segments(), path.closed(), LineStyle.EXTENSION)
                : item;
    }

    private List<SceneItem> walk() {
        List<SceneItem> walk = new ArrayList<>();
        for (Band band : lighting.bands()) {
            LineStyle style = switch (band.lit()) {
                case LIT -> LineStyle.LIT;
                case SHADE -> LineStyle.SHADE;
                case CAST -> LineStyle.CAST;
            };
            walk.add(new Path(List.of(band.segment()), false, style));
        }
        return walk;
    }

    /** Through each edge that casts a shadow to where that shadow ends, from as far off as the picture reaches. */
    private List<Line> rays() {
        List<Line> rays = new ArrayList<>();
        for (Shadow shadow : lighting.shadows()) {
            if (shadow.arris().isPresent() && shadow.edge().isPresent()) {
                Point edge = shadow.edge().get();
                Point arris = shadow.arris().get();
                within(edge, edge.plus(arris.minus(edge).unit().times(100))).ifPresent(rays::add);
            }
        }
        return rays;
    }

    private Optional<Line> within(Point from, Point to) {
        return Boxes.within(new Line(from, to), frame);
    }

    /** To every place on the room side where a member goes out of sight behind another. */
    private List<Line> sightLines(Sighting sighting) {
        Point eye = new Point(sighting.eye().distance(), sighting.eye().height());
        return apart(grazed(sighting).stream()
                .flatMap(target -> within(target, eye).stream())
                .toList());
    }

    /** Without the lines that lie on a longer one: dashes on dashes look like another kind of line. */
    private static List<Line> apart(List<Line> lines) {
        List<Line> longestFirst = lines.stream()
                .sorted(Comparator.comparingDouble(Line::length).reversed())
                .toList();
        List<Line> apart = new ArrayList<>();
        for (Line line : longestFirst) {
            if (apart.stream().noneMatch(longer -> liesOn(line, longer))) {
                apart.add(line);
            }
        }
        return apart;
    }

    private static boolean liesOn(Line line, Line longer) {
        double wide = LineStyle.SIGHT.width();
        return longer.distance(line.from()) < wide && longer.distance(line.to()) < wide;
    }

    private List<Point> grazed(Sighting sighting) {
        List<Point> points = new ArrayList<>();
        for (SeenMember seen : sighting.members()) {
            Point from = section.members().get(seen.member()).from();
            Point to = section.members().get(seen.member()).to();
            for (Segment part : seen.visible()) {
                for (Point end : List.of(part.from(), part.to())) {
                    boolean inner = !end.near(from, Tolerance.TOUCHING) && !end.near(to, Tolerance.TOUCHING);
                    boolean joint = seen.visible().stream()
                            .filter(other -> other != part)
                            .anyMatch(other -> other.from().near(end, Tolerance.SNAP)
                                    || other.to().near(end, Tolerance.SNAP));
                    if (inner && !joint) {
                        points.add(end);
                    }
                }
            }
        }
        return points;
    }

    private Group legend() {
        return new Legend(measure, size)
                .title(section.stack().title())
                .text("Section with light and sight, " + Drafting.scale(smaller) + ".")
                .text(Lamps.words(lighting, Drafting.printer(section.stack())))
                .line("lit", LineStyle.LIT)
                .line("turned away from the light (shade)", LineStyle.SHADE)
                .line("in cast shadow", LineStyle.CAST)
                .line("ray past the casting edge to the end of its shadow", LineStyle.RAY)
                .line("sight line past what hides", LineStyle.SIGHT)
                .group();
    }
}

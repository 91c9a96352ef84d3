package buildup.cli.drawing.look;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.label.Spread;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Gray;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.look.light.Band.Lit;
import buildup.engine.look.light.FrontView;
import buildup.engine.look.light.FrontView.Strip;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The front of a length of the stack, shaded by one light, its ends returned round square outside corners so that their
 * silhouettes are the section's own.
 */
public final class ElevationDrawing {
    /** Letters, as a share of the picture's height: read on a screen that shows the sheet whole. */
    private static final double LETTERS = 0.03;

    /** A longer name is shortened, in letters: else the names leave the front no room on its page. */
    private static final double LONGEST_NAME = 13;

    /** Length of run shown, as a share of the height. */
    private static final double RUN = 1.05;

    /** The same of a front that is made smaller: a tall one shows more at a larger scale than a longer run. */
    private static final double SMALLER_RUN = 0.4;

    private static final double LEAST_SMALLER_RUN = 16;

    /** How far a strip runs on under the next of its kind, in, so that no seam shows between them. */
    private static final double LAP = 0.02;

    /**
     * The darkest and the lightest face, as shares of the paper's white. Both are nearer to white than to black, so that
     * a photocopy leaves them white and only hatch tells the dark faces.
     */
    private static final double DARKEST = 0.62;

    private static final double LIGHTEST = 0.98;

    private final Section section;
    private final Lighting lighting;
    private final TextMeasure measure;
    private final List<Strip> strips;
    private final double size;
    private final int smaller;
    private final double run;
    private final Pattern cast;
    private final Pattern shade;

    /** @param letters their size, as a share of the picture's height; never less than on a drawing for the bench */
    private ElevationDrawing(Section section, Lighting lighting, TextMeasure measure, double letters, int smaller) {
        this.smaller = smaller;
        this.section = section;
        this.lighting = lighting;
        this.measure = measure;
        this.strips = FrontView.of(section, lighting);
        double height = section.totals().height();
        this.size = Math.max(smaller * Drafting.TEXT, letters * height);
        double most = smaller == 1 ? RUN * height : Math.max(LEAST_SMALLER_RUN, SMALLER_RUN * height);
        this.run = Math.max(4, Math.min(RUN * height, most));
        // as large as the letters, so that hatch and letters are read from the same distance
        this.cast = new Pattern(45, 0.5 * size, false, 0.08 * size, List.of());
        this.shade = new Pattern(0, 0.4 * size, false, 0.08 * size, List.of(0.1 * size, 0.3 * size));
    }

    /** The front of the trim with its shadows, full size. */
    public static Scene of(Section section, Lighting lighting, TextMeasure measure) {
        return new ElevationDrawing(section, lighting, measure, LETTERS, 1).scene();
    }

    /** The same with letters as they are read on paper, however high the stack. */
    public static Scene onPaper(Section section, Lighting lighting, TextMeasure measure) {
        return new ElevationDrawing(section, lighting, measure, 0, 1).scene();
    }

    /**
     * A stretch of the front without its ends, from 0 to so far to the right, at the heights of the section.
     *
     * @param wide of the stretch, in
     */
    public static List<SceneItem> stretch(Section section, Lighting lighting, TextMeasure measure, double wide) {
        ElevationDrawing drawing = new ElevationDrawing(section, lighting, measure, 0, 1);
        return drawing.strips.isEmpty() ? List.of() : new ElevationDrawing(drawing, wide).painted();
    }

    /** The same front, square at both ends. */
    private ElevationDrawing(ElevationDrawing other, double wide) {
        this.section = other.section;
        this.lighting = other.lighting;
        this.measure = other.measure;
        this.strips = other.strips.stream()
                .map(strip -> new Strip(
                        strip.member(),
                        new Point(0, strip.low().y()),
                        new Point(0, strip.high().y()),
                        strip.lit(),
                        strip.tone()))
                .toList();
        this.size = other.size;
        this.smaller = 1;
        this.run = wide;
        this.cast = other.cast;
        this.shade = other.shade;
    }

    /** The same with letters that are read when it is made so many times smaller. */
    public static Scene forScale(Section section, Lighting lighting, int smaller, TextMeasure measure) {
        return new ElevationDrawing(section, lighting, measure, 0, smaller).scene();
    }

    private Scene scene() {
        List<SceneItem> items = strips.isEmpty() ? new ArrayList<>() : front();
        Group legend = legend();
        items.add(items.isEmpty() ? legend : PictureSheet.below(items, legend, 2 * size));
        return PictureSheet.around(
                section.stack().title() + ", front",
                "Front view of " + Drafting.spelled(section.stack(), run) + " of run, "
                        + Lamps.words(lighting, Drafting.printer(section.stack())),
                items,
                2 * size);
    }

    private List<SceneItem> front() {
        List<SceneItem> items = painted();
        items.addAll(About.of(Subject.TRIM, names()));
        items.addAll(About.of(Subject.LIGHTS, shadowNames()));
        return items;
    }

    /** Faces, shadows and edges without a word. */
    private List<SceneItem> painted() {
        List<SceneItem> items = new ArrayList<>();
        List<SceneItem> faces = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            boolean runsOn = i + 1 < strips.size() && alike(strip, strips.get(i + 1));
            List<Segment> ring = ring(List.of(runsOn ? lapped(strip) : strip));
            faces.add(new Area(Optional.empty(), Optional.empty(), ring, gray(strip.tone())));
        }
        items.add(new Group("faces", faces));
        List<SceneItem> bands = new ArrayList<>();
        for (List<Strip> band : bands()) {
            Pattern pattern = band.get(0).lit() == Lit.CAST ? cast : shade;
            bands.add(new Hatch(ring(band), pattern, Point.ORIGIN));
        }
        if (!bands.isEmpty()) {
            items.add(new Group("shadows", About.of(Subject.LIGHTS, bands)));
        }
        items.add(new Group(
                "edges",
                List.of(new PiecePart("front", Subject.TRIM, strips.get(0).low(), Point.ORIGIN, edges()))));
        return items;
    }

    /** @param tone of a face under the light, 0 to 1 */
    private static Gray gray(double tone) {
        return new Gray(DARKEST + (LIGHTEST - DARKEST) * tone);
    }

    private static Strip lapped(Strip strip) {
        Line edge = new Line(strip.low(), strip.high());
        Point beyond = strip.high().plus(edge.direction(0).times(LAP));
        return new Strip(strip.member(), strip.low(), beyond, strip.lit(), strip.tone());
    }

    /** The outline of some strips that lie on one another, right side up and left side down. */
    private List<Segment> ring(List<Strip> own) {
        List<Point> points = new ArrayList<>();
        own.forEach(strip -> {
            points.add(right(strip.low()));
            points.add(right(strip.high()));
        });
        for (int i = own.size() - 1; i >= 0; i--) {
            points.add(left(own.get(i).high()));
            points.add(left(own.get(i).low()));
        }
        return List.copyOf(Line.ring(points));
    }

    private Point right(Point onOutline) {
        return new Point(run + onOutline.x(), onOutline.y());
    }

    private Point left(Point onOutline) {
        return new Point(-onOutline.x(), onOutline.y());
    }

    /** Runs of strips of one member that are dark in one way. */
    private List<List<Strip>> bands() {
        List<List<Strip>> bands = new ArrayList<>();
        List<Strip> band = new ArrayList<>();
        for (Strip strip : strips) {
            if (!band.isEmpty() && !alike(band.get(band.size() - 1), strip)) {
                bands.add(List.copyOf(band));
                band.clear();
            }
            if (strip.lit() != Lit.LIT) {
                band.add(strip);
            }
        }
        if (!band.isEmpty()) {
            bands.add(List.copyOf(band));
        }
        return bands;
    }

    private static boolean alike(Strip a, Strip b) {
        return a.member() == b.member() && a.lit() == b.lit() && a.high().near(b.low(), Tolerance.TOUCHING);
    }

    /** Silhouettes of both ends, and a line along the run wherever a member ends. */
    private List<SceneItem> edges() {
        List<Segment> silhouettes = new ArrayList<>();
        List<SceneItem> arrises = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            silhouettes.add(new Line(left(strip.low()), left(strip.high())));
            silhouettes.add(new Line(right(strip.low()), right(strip.high())));
            boolean first = i == 0;
            if (first || strips.get(i - 1).member() != strip.member()) {
                Point low = strip.low();
                Point below = first ? low : strips.get(i - 1).high();
                Point out = below.x() > low.x() ? below : low;
                arrises.add(new Path(List.of(new Line(left(out), right(out))), false, LineStyle.ARRIS));
            }
        }
        Point top = strips.get(strips.size() - 1).high();
        arrises.add(new Path(List.of(new Line(left(top), right(top))), false, LineStyle.OUTLINE));
        List<SceneItem> edges = new ArrayList<>(arrises);
        edges.add(new Path(silhouettes, false, LineStyle.OUTLINE));
        return edges;
    }

    /** The pieces' names on the left, where each shows. */
    private List<SceneItem> names() {
        List<Spread.Wish> wishes = new ArrayList<>();
        for (int body : new TreeSet<>(strips.stream()
                .map(strip -> section.members().get(strip.member()).body())
                .toList())) {
            List<Strip> own = strips.stream()
                    .filter(strip -> section.members().get(strip.member()).body() == body)
                    .toList();
            double low = own.get(0).low().y();
            double high = own.get(own.size() - 1).high().y();
            wishes.add(new Spread.Wish(name(body), low, high));
        }
        wishes.sort(Comparator.comparingDouble(Spread.Wish::middle));
        double x = -strips.stream().mapToDouble(strip -> strip.high().x()).max().orElse(0) - size;
        return Spread.labels(measure, wishes, x, -1, size);
    }

    /** The shadows that show from the front, on the right, with their sizes. */
    private List<SceneItem> shadowNames() {
        List<Spread.Wish> wishes = new ArrayList<>();
        for (Shadow shadow : lighting.shadows()) {
            List<Strip> own = strips.stream()
                    .filter(strip -> strip.member() == shadow.member() && strip.lit() == shadow.kind())
                    .filter(strip -> shadow.box().holds(strip.low(), Tolerance.TOUCHING)
                            && shadow.box().holds(strip.high(), Tolerance.TOUCHING))
                    .toList();
            if (shadow.kind() == Lit.CAST && !own.isEmpty()) {
                wishes.add(new Spread.Wish(
                        words(shadow),
                        own.get(0).low().y(),
                        own.get(own.size() - 1).high().y()));
            }
        }
        wishes.sort(Comparator.comparingDouble(Spread.Wish::middle));
        double x = run
                + strips.stream().mapToDouble(strip -> strip.high().x()).max().orElse(0)
                + size;
        return Spread.labels(measure, wishes, x, 1, size);
    }

    private String words(Shadow shadow) {
        Member member = section.members().get(shadow.member());
        return DarkWords.of(
                lighting,
                shadow,
                name(member.body()) + " " + member.member(),
                shadow.caster().map(this::name),
                length -> Drafting.size(section.stack(), length));
    }

    private String name(int body) {
        return Words.lines(measure, section.name(body), size, LONGEST_NAME * size, 1)
                .get(0);
    }

    private Group legend() {
        if (strips.isEmpty()) {
            return new Legend(measure, size)
                    .title(section.stack().title())
                    .text("Nothing of this stack faces the room.")
                    .group();
        }
        return new Legend(measure, size)
                .title(section.stack().title())
                .text("Front of " + Drafting.spelled(section.stack(), run) + " of run, both ends returned; "
                        + Drafting.scale(smaller) + ". Sizes in " + Drafting.units(section.stack()) + ".")
                .text(Lamps.words(lighting, Drafting.printer(section.stack())))
                .sample("in cast shadow", at -> swatch(at, cast))
                .sample("turned away from the light", at -> swatch(at, shade))
                .group();
    }

    private List<SceneItem> swatch(Point at, Pattern pattern) {
        Box box = new Box(at.x(), at.y(), at.x() + 3 * size, at.y() + size);
        List<Segment> ring = Outline.rectangle(box).segments();
        return List.of(
                new Area(Optional.empty(), Optional.empty(), ring, gray(0)),
                new Hatch(ring, pattern, at),
                new Path(ring, true, LineStyle.ARRIS));
    }
}

package buildup.cli.drawing.draft;

import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.Tone;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Draws the bodies of a section: an area without an edge for each, hatch over it, and the edges on top. */
public final class WoodDrawing {
    /** What a cut body is, as its hatch tells; what is drawn on top of the others comes first. */
    public enum Look {
        TRIM("trim", new Pattern(45, 0.11, false, 0.005, List.of()), Tone.TRIM, LineStyle.OUTLINE),
        NAILER("nailer", new Pattern(45, 0.16, true, 0.007, List.of()), Tone.NAILER, LineStyle.NAILER),
        FRAMING("framing", new Pattern(-45, 0.26, false, 0.01, List.of(0.22, 0.1)), Tone.STANDING, LineStyle.STANDING),
        ROOM("wall", new Pattern(22, 0.09, false, 0.008, List.of(0.05, 0.11)), Tone.STANDING, LineStyle.STANDING),
        COVERING(
                "plaster or wallboard",
                new Pattern(60, 0.055, false, 0.01, List.of(0.01, 0.055)),
                Tone.PAPER,
                LineStyle.STANDING);

        private final String word;
        private final Pattern pattern;
        private final Tone tone;
        private final LineStyle edge;

        Look(String word, Pattern pattern, Tone tone, LineStyle edge) {
            this.word = word;
            this.pattern = pattern;
            this.tone = tone;
            this.edge = edge;
        }

        /** The word for it in the legend. */
        public String word() {
            return word;
        }

        /** How a body is drawn, by what it is. */
        public static Look of(Body body) {
            return body.trim() ? TRIM : body.nailer() ? NAILER : body.framing() ? FRAMING : ROOM;
        }

        /** Area and hatch of a ring, without its edge; the lines of the hatch are counted from {@code home}. */
        public List<SceneItem> fill(Optional<String> id, Optional<String> title, List<Segment> ring, Point home) {
            return List.of(new Area(id, title, ring, tone), new Hatch(ring, pattern, home));
        }

        /**
         * Area of a ring with a light hatch that leaves what is drawn over it readable; trim has none. So a photocopy tells
         * what each body is.
         *
         * @param smaller so many times smaller the picture will be made; its hatch is as much larger
         */
        public List<SceneItem> light(
                Optional<String> id, Optional<String> title, List<Segment> ring, Point home, int smaller) {
            Area area = new Area(id, title, ring, tone);
            return this == TRIM ? List.of(area) : List.of(area, new Hatch(ring, light(smaller), home));
        }

        private Pattern light(int smaller) {
            return new Pattern(
                    pattern.angle(),
                    pattern.spacing() * LIGHTER * smaller,
                    pattern.crossed(),
                    LIGHT_LINE * smaller,
                    pattern.dash().stream().map(length -> length * smaller).toList());
        }

        /** Segments drawn as the outline of such a body. */
        public Path edge(List<Segment> segments, boolean closed) {
            return new Path(segments, closed, edge);
        }
    }

    /** A light hatch is so many times as wide apart, and its lines are so wide, in. */
    private static final double LIGHTER = 2;

    private static final double LIGHT_LINE = 0.008;

    /** How far the zigzag of a break line reaches to either side. */
    private static final double ZIGZAG = 0.09;

    private static final double OFFSET = 0.061;

    private final List<Layer> layers = new ArrayList<>();
    private final List<SceneItem> plaster = new ArrayList<>();
    private final List<SceneItem> plasterEdges = new ArrayList<>();
    private final List<Line> breaks = new ArrayList<>();

    /**
     * What is drawn of one body.
     *
     * @param number of the body in the section
     * @param name its letter and its name, in letters that any file format takes
     * @param home its lower back corner, in of the picture
     */
    public record Layer(
            int number,
            String name,
            Subject subject,
            Point home,
            List<SceneItem> areas,
            List<SceneItem> hatches,
            List<SceneItem> edges) {
        public Layer {
            areas = List.copyOf(areas);
            hatches = List.copyOf(hatches);
            edges = List.copyOf(edges);
        }

        /** What it is. */
        Look look() {
            return switch (subject) {
                case NAILER -> Look.NAILER;
                case FRAMING -> Look.FRAMING;
                case WALL -> Look.ROOM;
                default -> Look.TRIM;
            };
        }

        /** The fills with the light hatch of what it is. */
        public List<SceneItem> lightly(int smaller) {
            return areas.stream()
                    .map(Area.class::cast)
                    .flatMap(
                            area -> look()
                                    .light(area.id(), area.title(), area.ring(), new Point(OFFSET * number, 0), smaller)
                                    .stream())
                    .toList();
        }

        /** Items that belong to the body, as such; nothing of nothing. */
        public List<SceneItem> part(List<SceneItem> items) {
            return items.isEmpty() ? List.of() : List.of(new PiecePart(name, subject, home, Point.ORIGIN, items));
        }
    }

    /** What stood there first lies lowest, then blocking, then trim. */
    public static WoodDrawing of(Section section, PictureView view) {
        WoodDrawing wood = new WoodDrawing();
        Slugs slugs = new Slugs();
        List<String> ids =
                section.bodies().stream().map(body -> slugs.next(body.name())).toList();
        view.shown().stream()
                .sorted(Comparator.comparing((PictureView.Shown shown) -> Look.of(shown.body()))
                        .reversed())
                .forEach(shown -> wood.add(shown, ids.get(shown.number()), view.scale()));
        double covering = section.stack().space().wall().covering() * view.scale();
        if (covering > 0) {
            view.shown().stream()
                    .filter(shown -> Look.of(shown.body()) == Look.ROOM
                            && shown.body().name().equals("wall"))
                    .forEach(shown -> wood.cover(shown, covering));
        }
        return wood;
    }

    private void add(PictureView.Shown shown, String slug, double scale) {
        Body body = shown.body();
        Look look = Look.of(body);
        // neighbors' hatches do not run on in one another
        Point home = new Point(OFFSET * shown.number(), 0);
        List<SceneItem> areas = new ArrayList<>();
        List<SceneItem> hatches = new ArrayList<>();
        List<SceneItem> edges = new ArrayList<>();
        int count = 0;
        for (PictureView.Part part : shown.parts()) {
            count++;
            String id = (body.piece() ? "piece-" : "room-") + slug + (count > 1 ? "-part-" + count : "");
            List<SceneItem> fill = look.fill(Optional.of(id), Optional.of(title(shown)), part.ring(), home);
            areas.add(fill.get(0));
            hatches.add(fill.get(1));
            // an unbroken ring closes on itself, so that its last corner is joined like the others
            if (!part.edges().isEmpty()) {
                edges.add(look.edge(part.edges(), part.breaks().isEmpty()));
            }
            part.breaks().forEach(line -> breaks.addAll(broken(line)));
        }
        Box box = body.outline().box();
        layers.add(new Layer(
                shown.number(),
                body.piece() ? Section.letter(shown.number()) + "-" + slug : slug,
                subject(look),
                new Point(box.back(), box.bottom()).times(scale),
                areas,
                hatches,
                edges));
    }

    private static Subject subject(Look look) {
        return switch (look) {
            case TRIM -> Subject.TRIM;
            case NAILER -> Subject.NAILER;
            case FRAMING -> Subject.FRAMING;
            case ROOM, COVERING -> Subject.WALL;
        };
    }

    private static String title(PictureView.Shown shown) {
        Body body = shown.body();
        return body.piece() ? Section.letter(shown.number()) + " " + body.name() : body.name();
    }

    /** The strip of the wall next to the plane x = 0. */
    private void cover(PictureView.Shown wall, double covering) {
        for (PictureView.Part part : wall.parts()) {
            Outline outline = Outline.closed(part.ring().stream()
                    .map(segment -> new Stroke(segment, "wall"))
                    .toList());
            double rest = outline.box().width() - covering;
            for (Outline strip : Rip.off(outline, Rip.Side.BACK, rest)) {
                List<Segment> ring = strip.segments();
                List<SceneItem> fill = Look.COVERING.fill(Optional.empty(), Optional.empty(), ring, Point.ORIGIN);
                plasterEdges.add(
                        0,
                        new About(
                                Subject.WALL,
                                List.of(Look.COVERING.edge(
                                        List.of(new Line(
                                                new Point(
                                                        strip.box().back(),
                                                        strip.box().bottom()),
                                                new Point(
                                                        strip.box().back(),
                                                        strip.box().top()))),
                                        false))));
                plaster.addAll(fill);
            }
        }
    }

    /** A line with a zigzag in its middle: here the picture ends and the body does not. */
    private static List<Line> broken(Line line) {
        Point along = line.direction(0);
        Point aside = along.left();
        Point middle = line.at(0.5);
        List<Point> points = List.of(
                line.from(),
                middle.minus(along.times(ZIGZAG)),
                middle.minus(along.times(ZIGZAG / 3)).plus(aside.times(ZIGZAG)),
                middle.plus(along.times(ZIGZAG / 3)).minus(aside.times(ZIGZAG)),
                middle.plus(along.times(ZIGZAG)),
                line.to());
        List<Line> zigzag = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            zigzag.add(new Line(points.get(i), points.get(i + 1)));
        }
        return zigzag;
    }

    /** What is drawn of each body, the lowest first. */
    public List<Layer> layers() {
        return List.copyOf(layers);
    }

    /** The fills, to be drawn first. */
    public List<SceneItem> areas() {
        return layers.stream()
                .flatMap(layer -> layer.part(layer.areas()).stream())
                .toList();
    }

    /**
     * The fills with a light hatch on all but trim, for pictures that draw something else over the wood.
     *
     * @param smaller so many times smaller the picture will be made
     */
    public List<SceneItem> lightly(int smaller) {
        return layers.stream()
                .flatMap(layer -> layer.part(layer.lightly(smaller)).stream())
                .toList();
    }

    /** What is drawn, trim first. */
    public Set<Look> looks() {
        Set<Look> looks = EnumSet.noneOf(Look.class);
        layers.forEach(layer -> looks.add(layer.look()));
        return looks;
    }

    /** The hatches, to be drawn on the fills. */
    public List<SceneItem> hatches() {
        return Stream.concat(layers.stream().flatMap(layer -> layer.part(layer.hatches()).stream()), plaster.stream())
                .toList();
    }

    /** The outlines and break lines, to be drawn last. */
    public List<SceneItem> edges() {
        List<SceneItem> edges = new ArrayList<>(plasterEdges);
        layers.forEach(layer -> edges.addAll(layer.part(layer.edges())));
        edges.addAll(breakLines());
        return List.copyOf(edges);
    }

    /** Area, hatch and edge of plaster or wallboard. */
    public List<SceneItem> covering() {
        return Stream.concat(plaster.stream(), plasterEdges.stream()).toList();
    }

    /** The lines that say where a body runs on beyond the picture. */
    public List<SceneItem> breakLines() {
        return breaks.isEmpty() ? List.of() : List.of(new Path(List.copyOf(breaks), false, LineStyle.BREAK));
    }

    /** Where bodies are broken off, in of the picture. */
    public List<Line> breaks() {
        return List.copyOf(breaks);
    }
}

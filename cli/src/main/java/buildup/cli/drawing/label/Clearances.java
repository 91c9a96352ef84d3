package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Nearby;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.stream.Stream;

/**
 * What lies on the picture so far. Texts and drawn lines keep clear of each other; extension lines are thin and may be
 * crossed, and are broken where they meet a text.
 */
public final class Clearances {
    /** A line this near to an edge runs along it and not through the wood. */
    private static final double EDGE = 0.012;

    /** About the length of a figure, in: what lies on the picture is kept by squares so large. */
    private static final double CELL = 0.5;

    /** A picture has no more squares each way than this. */
    private static final int MOST_CELLS = 64;

    private final Nearby<ChordRing> stack;
    private final Nearby<ChordRing> standing;
    private final Nearby<ChordRing> hollows;
    private final Nearby<Box> texts;
    private final Nearby<Line> lines;
    private final Nearby<Line> extensions;
    private final Nearby<Line> breaks;

    private Clearances(List<ChordRing> stack, List<ChordRing> standing) {
        double longest = Stream.concat(stack.stream(), standing.stream())
                .mapToDouble(ring -> Math.max(ring.box().width(), ring.box().height()))
                .max()
                .orElse(0);
        double cell = Math.max(CELL, longest / MOST_CELLS);
        this.stack = nearby(stack, cell);
        this.standing = nearby(standing, cell);
        this.hollows = new Nearby<>(cell);
        this.texts = new Nearby<>(cell);
        this.lines = new Nearby<>(cell);
        this.extensions = new Nearby<>(cell);
        this.breaks = new Nearby<>(cell);
    }

    private static Nearby<ChordRing> nearby(List<ChordRing> rings, double cell) {
        Nearby<ChordRing> nearby = new Nearby<>(cell);
        rings.forEach(ring -> nearby.add(ring.box(), ring));
        return nearby;
    }

    /** The wood and the room of a section, and nothing else yet. */
    public static Clearances of(PictureView view) {
        return new Clearances(rings(view, false), rings(view, true));
    }

    /** The areas among some items, as wood; and nothing else yet. */
    public static Clearances of(List<SceneItem> drawn) {
        List<ChordRing> rings = drawn.stream()
                .filter(Area.class::isInstance)
                .map(item -> ChordRing.of(((Area) item).ring(), Tolerance.DRAWN_CHORD))
                .toList();
        return new Clearances(rings, List.of());
    }

    private static List<ChordRing> rings(PictureView view, boolean standing) {
        return view.shown().stream()
                .filter(shown -> shown.body().standing() == standing)
                .flatMap(shown -> shown.parts().stream())
                .map(PictureView.Part::chords)
                .toList();
    }

    /** Takes a place for a text; air round it is added. */
    public void addText(Box box) {
        Box wide = box.grown(Drafting.AIR);
        texts.add(wide, wide);
    }

    /** Takes a place for a drawn line. */
    public void addLine(Line line) {
        lines.add(line.box(), line);
    }

    void addExtension(Line line) {
        extensions.add(line.box(), line);
    }

    /** Marks a closed void: its word and letters may stand there, and nothing that belongs to the sheet. */
    public void addHollow(ChordRing ring) {
        hollows.add(ring.box(), ring);
    }

    /** Break lines belong to what they cut off: texts keep away from them, dimension lines need not. */
    public void addBreak(Line line) {
        breaks.add(line.box(), line);
    }

    /** The places of all texts, air included. */
    public List<Box> texts() {
        return texts.all();
    }

    List<Line> lines() {
        return lines.all();
    }

    /** How many inches of a level or upright line lie in wood, edges not counted. */
    double throughWood(Line line) {
        return through(line, stack) + through(line, standing);
    }

    private static double through(Line line, Nearby<ChordRing> rings) {
        DimensionAxis run = DimensionAxis.of(line);
        double across = run.across(line.from());
        double from = Math.min(run.along(line.from()), run.along(line.to()));
        double to = Math.max(run.along(line.from()), run.along(line.to()));
        double sum = 0;
        for (ChordRing ring : rings.near(line.box())) {
            for (ChordRing.Span a : run.spans(ring, across - EDGE)) {
                for (ChordRing.Span b : run.spans(ring, across + EDGE)) {
                    double start = Math.max(from, Math.max(a.from(), b.from()) + EDGE);
                    double end = Math.min(to, Math.min(a.to(), b.to()) - EDGE);
                    sum += Math.max(0, end - start);
                }
            }
        }
        return sum;
    }

    /** The stretch of a straight edge of that run on which a place lies; the place alone when it lies on none. */
    ChordRing.Span edge(DimensionAxis run, Point place) {
        double from = run.along(place);
        double to = from;
        for (ChordRing ring : stack.near(Box.of(place, place).grown(EDGE))) {
            for (Line chord : ring.chords()) {
                boolean same = Math.abs(run.across(chord.from()) - run.across(place)) < EDGE
                        && Math.abs(run.across(chord.to()) - run.across(place)) < EDGE;
                double least = run.least(chord.box());
                double most = run.most(chord.box());
                if (same && least - EDGE <= run.along(place) && run.along(place) <= most + EDGE) {
                    from = Math.min(from, least);
                    to = Math.max(to, most);
                }
            }
        }
        return new ChordRing.Span(from, to);
    }

    private Stream<ChordRing> rings() {
        return Stream.concat(stack.all().stream(), standing.all().stream());
    }

    /** Where something is last met going up or out on the line across {@code run}; {@code least} when nothing is. */
    double silhouette(DimensionAxis run, double along, double least) {
        return rings().flatMap(ring -> Stream.concat(
                        run.other().spans(ring, along - EDGE).stream(), run.other().spans(ring, along + EDGE).stream()))
                .mapToDouble(ChordRing.Span::to)
                .reduce(least, Math::max);
    }

    /** The same going down or in: the least of all, at most {@code most}. */
    double underside(DimensionAxis run, double along, double most) {
        return rings().flatMap(ring -> Stream.concat(
                        run.other().spans(ring, along - EDGE).stream(), run.other().spans(ring, along + EDGE).stream()))
                .mapToDouble(ChordRing.Span::from)
                .reduce(most, Math::min);
    }

    /** Whether a text fits there without meeting wood, a text or a drawn line. */
    public boolean takesText(Box box) {
        Box wide = box.grown(Drafting.AIR);
        return takesTag(box)
                && !stack.any(wide, ring -> ring.meets(wide))
                && !standing.any(wide, ring -> ring.meets(wide));
    }

    /** Whether nothing but the grid lies there, in the open. */
    public boolean isFree(Box box) {
        return takesText(box) && crossedExtensions(box) == 0 && !hollows.any(box, ring -> ring.meets(box));
    }

    /** Whether a tag on wood or in a void fits there without meeting a text or a drawn line. */
    boolean takesTag(Box box) {
        Box wide = box.grown(Drafting.AIR);
        return !texts.any(wide, text -> Boxes.overlap(text, wide))
                && !lines.any(wide, line -> Boxes.crosses(wide, line.from(), line.to()))
                && !breaks.any(wide, line -> Boxes.crosses(wide, line.from(), line.to()));
    }

    /** Whether an edge of any body passes through a box. */
    boolean holdsEdge(Box box) {
        return stack.any(box, ring -> ring.crosses(box)) || standing.any(box, ring -> ring.crosses(box));
    }

    /** Whether a line can be drawn without meeting a text. */
    public boolean takesLine(Line line) {
        return !texts.any(line.box(), text -> Boxes.crosses(text, line.from(), line.to()));
    }

    /** Whether a line of the same run lies within {@code apart} beside this one; one that goes on from it does not. */
    boolean isBeside(Line line, double apart) {
        DimensionAxis run = DimensionAxis.of(line);
        Point middle = line.at(0.5);
        Box wide = run.box(run.along(middle), run.across(middle), line.length() - 2 * EDGE, 2 * apart);
        return lines.any(
                wide,
                other -> Math.abs(run.across(other.from()) - run.across(other.to())) < EDGE
                        && Boxes.crosses(wide, other.from(), other.to()));
    }

    /** How many drawn lines a line crosses. */
    public long crossedLines(Line line) {
        return lines.near(line.box()).stream()
                .filter(other -> crosses(line, other))
                .count();
    }

    long crossedExtensions(Box text) {
        Box wide = text.grown(Drafting.AIR);
        return extensions.near(wide).stream()
                .filter(line -> Boxes.crosses(wide, line.from(), line.to()))
                .count();
    }

    /**
     * Whether a text is seen from where it belongs: on the other side of the wood it would be taken for something else's.
     * What the place itself lies in hides nothing.
     */
    public boolean isSeen(Point from, Box box) {
        Line sight = new Line(from, box.middle());
        return sight.length() <= 0
                || !stack.any(
                        sight.box(),
                        ring -> !ring.holds(from) && ring.anyNear(sight.box(), chord -> crosses(sight, chord)));
    }

    private static boolean crosses(Line a, Line b) {
        return apart(a, b.from(), b.to()) && apart(b, a.from(), a.to());
    }

    private static boolean apart(Line line, Point p, Point q) {
        Point step = line.to().minus(line.from());
        return step.cross(p.minus(line.from())) * step.cross(q.minus(line.from())) < 0;
    }
}

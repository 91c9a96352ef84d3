package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What lies on the picture so far. Texts and drawn lines keep clear of each other; extension lines are thin and may be
 * crossed, and are broken where they meet a text.
 */
public final class Clearances {
    /** A line this near to an edge runs along it and not through the wood. */
    private static final double EDGE = 0.012;

    private final List<ChordRing> stack;
    private final List<ChordRing> standing;
    private final List<Box> texts = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Line> extensions = new ArrayList<>();
    private final List<Line> breaks = new ArrayList<>();

    public Clearances(PictureView view) {
        this.stack = rings(view, false);
        this.standing = rings(view, true);
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
        texts.add(box.grown(Drafting.AIR));
    }

    void addLine(Line line) {
        lines.add(line);
    }

    void addExtension(Line line) {
        extensions.add(line);
    }

    /** Break lines belong to what they cut off: texts keep away from them, dimension lines need not. */
    public void addBreak(Line line) {
        breaks.add(line);
    }

    /** The places of all texts, air included. */
    public List<Box> texts() {
        return List.copyOf(texts);
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    /** How many inches of a level or upright line lie in wood, edges not counted. */
    double throughWood(Line line) {
        return through(line, stack) + through(line, standing);
    }

    private static double through(Line line, List<ChordRing> rings) {
        DimensionAxis run = DimensionAxis.of(line);
        double across = run.across(line.from());
        double from = Math.min(run.along(line.from()), run.along(line.to()));
        double to = Math.max(run.along(line.from()), run.along(line.to()));
        double sum = 0;
        for (ChordRing ring : rings) {
            if (!ring.box().near(line.box(), 0)) {
                continue;
            }
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
        for (ChordRing ring : stack) {
            for (Line chord : ring.box().holds(place, EDGE) ? ring.chords() : List.<Line>of()) {
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

    /** Where something is last met going up or out on the line across {@code run}; {@code least} when nothing is. */
    double silhouette(DimensionAxis run, double along, double least) {
        return Stream.concat(stack.stream(), standing.stream())
                .flatMap(ring -> Stream.concat(
                        run.other().spans(ring, along - EDGE).stream(), run.other().spans(ring, along + EDGE).stream()))
                .mapToDouble(ChordRing.Span::to)
                .reduce(least, Math::max);
    }

    /** The same going down or in: the least of all, at most {@code most}. */
    double underside(DimensionAxis run, double along, double most) {
        return Stream.concat(stack.stream(), standing.stream())
                .flatMap(ring -> Stream.concat(
                        run.other().spans(ring, along - EDGE).stream(), run.other().spans(ring, along + EDGE).stream()))
                .mapToDouble(ChordRing.Span::from)
                .reduce(most, Math::min);
    }

    /** Whether a text fits there without meeting wood, a text or a drawn line. */
    boolean takesText(Box box) {
        Box wide = box.grown(Drafting.AIR);
        return takesTag(box)
                && stack.stream().noneMatch(ring -> ring.meets(wide))
                && standing.stream().noneMatch(ring -> ring.meets(wide));
    }

    /** Whether nothing but the grid lies there. */
    public boolean isFree(Box box) {
        return takesText(box) && crossedExtensions(box) == 0;
    }

    /** Whether a tag on wood or in a void fits there without meeting a text or a drawn line. */
    boolean takesTag(Box box) {
        Box wide = box.grown(Drafting.AIR);
        // plain loops: this is asked of every place that is tried
        for (Box text : texts) {
            if (Boxes.overlap(text, wide)) {
                return false;
            }
        }
        return !crossesAny(lines, wide) && !crossesAny(breaks, wide);
    }

    private static boolean crossesAny(List<Line> lines, Box box) {
        for (Line line : lines) {
            if (Boxes.crosses(box, line.from(), line.to())) {
                return true;
            }
        }
        return false;
    }

    /** Whether an edge of any body passes through a box. */
    boolean holdsEdge(Box box) {
        return Stream.concat(stack.stream(), standing.stream())
                .filter(ring -> ring.box().near(box, 0))
                .anyMatch(ring -> ring.crosses(box));
    }

    /** Whether a line can be drawn without meeting a text. */
    boolean takesLine(Line line) {
        return texts.stream().noneMatch(text -> Boxes.crosses(text, line.from(), line.to()));
    }

    /** Whether a line of the same run lies within {@code apart} beside this one; one that goes on from it does not. */
    boolean isBeside(Line line, double apart) {
        DimensionAxis run = DimensionAxis.of(line);
        Point middle = line.at(0.5);
        Box wide = run.box(run.along(middle), run.across(middle), line.length() - 2 * EDGE, 2 * apart);
        return lines.stream()
                .filter(other -> Math.abs(run.across(other.from()) - run.across(other.to())) < EDGE)
                .anyMatch(other -> Boxes.crosses(wide, other.from(), other.to()));
    }

    long crossedLines(Line line) {
        return lines.stream().filter(other -> crosses(line, other)).count();
    }

    long crossedExtensions(Box text) {
        Box wide = text.grown(Drafting.AIR);
        return extensions.stream()
                .filter(line -> Boxes.crosses(wide, line.from(), line.to()))
                .count();
    }

    private static boolean crosses(Line a, Line b) {
        return apart(a, b.from(), b.to()) && apart(b, a.from(), a.to());
    }

    private static boolean apart(Line line, Point p, Point q) {
        Point step = line.to().minus(line.from());
        return step.cross(p.minus(line.from())) * step.cross(q.minus(line.from())) < 0;
    }
}

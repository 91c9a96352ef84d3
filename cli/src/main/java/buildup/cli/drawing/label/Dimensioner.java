package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Lays dimensions on the picture, each on the best free place; what finds none is left for the notes. */
public final class Dimensioner {
    /** From what is measured to the nearest dimension line, and from there to the next place tried. */
    private static final double FIRST = 0.17;

    private static final double STEP = 0.05;
    private static final int STEPS = 18;

    /** A dimension this far from what it measures is better put elsewhere. */
    private static final double TOO_FAR = 1.1;

    /** What an extension line costs that first runs along an edge. */
    private static final double ALONG_EDGE = 0.1;

    private static final int MOST_LANES = 200;

    private final PictureView view;
    private final Clearances clearances;
    private final TextMeasure text;
    private final DimensionPlaces places;
    private final List<Dimension> leftOut = new ArrayList<>();

    public Dimensioner(PictureView view, Clearances clearances, TextMeasure text) {
        this.view = view;
        this.clearances = clearances;
        this.text = text;
        this.places = new DimensionPlaces(view, clearances, text);
    }

    /** Those near what they measure first, then the lanes from the inside out, then the whole. */
    public void lay(List<Dimension> measures) {
        measures.stream()
                .filter(measure -> measure.run() == DimensionAxis.UPRIGHT)
                .flatMap(measure -> Stream.of(measure.start(), measure.end()))
                .forEach(places::expectExtension);
        List<Dimension> lanes = new ArrayList<>();
        // level ones first: an upright one finds a place in the lanes if need be
        for (Dimension measure :
                measures.stream().sorted(Comparator.comparing(Dimension::run)).toList()) {
            if (measure.where() != Dimension.Where.NEAR) {
                lanes.add(measure);
                continue;
            }
            Optional<Laid> best = near(measure);
            if (best.isPresent()) {
                places.keep(best.get());
            } else if (measure.run() == DimensionAxis.UPRIGHT) {
                lanes.add(measure.in(Dimension.Where.LANE));
            } else {
                leftOut.add(measure);
            }
        }
        lanes.sort(Comparator.comparing(Dimension::where)
                .thenComparingDouble(Dimension::start)
                .thenComparingDouble(Dimension::end));
        double first = clearFace();
        lanes.stream().filter(m -> m.where() == Dimension.Where.LANE).forEach(m -> lane(m, first));
        lanes.stream().filter(m -> m.where() == Dimension.Where.OUTSIDE).forEach(this::outside);
    }

    /** The dimensions for which there was no room. */
    public List<Dimension> leftOut() {
        return List.copyOf(leftOut);
    }

    private Optional<Laid> near(Dimension measure) {
        DimensionAxis run = measure.run();
        double low = Math.min(run.across(measure.from()), run.across(measure.to()));
        double high = Math.max(run.across(measure.from()), run.across(measure.to()));
        // an edge that runs on from the place measured carries its extension line farther at no cost
        double lowest = Math.min(
                edge(measure.from(), run).from(), edge(measure.to(), run).from());
        double highest =
                Math.max(edge(measure.from(), run).to(), edge(measure.to(), run).to());
        Stream<Double> steps = IntStream.range(0, STEPS)
                .mapToObj(k -> FIRST + k * STEP)
                .flatMap(off -> Stream.of(low - off, high + off, lowest - off, highest + off));
        Stream<Double> used = places.kept().stream().filter(l -> l.run() == run).map(Laid::level);
        List<Double> levels = Stream.concat(used, steps)
                .filter(level -> level < low - FIRST + STEP || level > high + FIRST - STEP)
                .toList();
        return places.best(
                measure,
                levels,
                level -> level < low ? away(low - level, lowest - level) : away(level - high, level - highest),
                TOO_FAR);
    }

    private static double away(double fromPlace, double fromEdge) {
        return fromEdge > FIRST - STEP ? Math.min(fromPlace, fromEdge + ALONG_EDGE) : fromPlace;
    }

    private ChordRing.Span edge(Point place, DimensionAxis run) {
        return clearances.edge(run.other(), place);
    }

    /** Clear of everything that lies beside the stack on the room side. */
    private double clearFace() {
        double face = view.stack().face();
        for (Box box : clearances.texts()) {
            face = Math.max(face, box.face());
        }
        for (Line line : clearances.lines()) {
            face = Math.max(face, line.box().face());
        }
        return face + Drafting.LANE;
    }

    private void lane(Dimension measure, double first) {
        IntStream.range(0, MOST_LANES)
                .mapToObj(lane -> places.best(
                        measure, List.of(first + lane * Drafting.LANE), level -> 0, Double.POSITIVE_INFINITY))
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresentOrElse(places::keep, () -> leftOut.add(measure));
    }

    /** The whole stack: farther out than all the rest. */
    private void outside(Dimension measure) {
        Box all = Stream.concat(
                        Stream.of(view.stack()),
                        Stream.concat(
                                clearances.texts().stream(),
                                clearances.lines().stream().map(Line::box)))
                .reduce(Box::with)
                .orElse(view.stack());
        DimensionAxis run = measure.run();
        double high = run.other().most(run == DimensionAxis.UPRIGHT ? all : view.stack());
        double low = run.other().least(view.stack());
        List<Double> levels = IntStream.range(0, MOST_LANES)
                .boxed()
                .flatMap(k -> run == DimensionAxis.UPRIGHT
                        ? Stream.of(high + Drafting.LANE + k * STEP)
                        : Stream.of(high + Drafting.LANE + k * STEP, low - Drafting.LANE - k * STEP))
                .toList();
        places.best(measure, levels, level -> level > high ? level - high : low - level, Double.POSITIVE_INFINITY)
                .ifPresentOrElse(places::keep, () -> leftOut.add(measure));
    }

    /** Everything laid, extension lines broken at all texts on the picture. */
    public List<SceneItem> items() {
        List<Laid> laid = places.kept();
        List<Line> extensions = Extensions.merged(
                laid.stream().flatMap(l -> l.extensions().stream()).toList());
        List<SceneItem> items = new ArrayList<>();
        path(extensions.stream().flatMap(line -> Boxes.broken(line, clearances.texts()).stream()), LineStyle.EXTENSION)
                .ifPresent(items::add);
        path(laid.stream().flatMap(l -> l.drawn().stream()), LineStyle.DIMENSION)
                .ifPresent(items::add);
        path(laid.stream().flatMap(Laid::ticks), LineStyle.TICK).ifPresent(items::add);
        for (Laid l : laid) {
            items.addAll(l.caption().at(text, l.run(), l.run().point(l.textAt(), l.level())));
        }
        return items;
    }

    private static Optional<Path> path(Stream<Line> lines, LineStyle style) {
        List<Segment> segments = List.copyOf(lines.toList());
        return segments.isEmpty() ? Optional.empty() : Optional.of(new Path(segments, false, style));
    }
}

package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Tries dimensions on places of the picture: which are free, and how well they read there. */
final class DimensionPlaces {
    /** Wood under a line that is too little to see. */
    private static final double SLIGHT = 0.02;

    /** How much wood the extension lines of a level dimension may cross, which has no lane to go to. */
    private static final double MOST_WOOD = 0.35;

    /** Lines of one run lie no closer than this beside each other. */
    private static final double APART = 0.11;

    /** A level dimension closer than this to an extension line is mistaken for it. */
    private static final double MISTAKEN = 0.07;

    /** From the end of a short dimension to the text beside it. */
    private static final double ASIDE = 0.12;

    /** What an inch of extension line costs at a dimension of the whole. */
    private static final double LONG = 0.05;

    /** What a place in a row with others saves. */
    private static final double IN_ROW = 0.12;

    /** Where a caption may stand along its line, as shares of what is left beside it, from the middle. */
    private static final List<Double> SHIFTS = List.of(0.0, -0.5, 0.5, -0.25, 0.25);

    private final PictureView view;
    private final Clearances clearances;
    private final TextMeasure text;
    private final List<Laid> kept = new ArrayList<>();
    private final List<Double> levels = new ArrayList<>();

    DimensionPlaces(PictureView view, Clearances clearances, TextMeasure text) {
        this.view = view;
        this.clearances = clearances;
        this.text = text;
    }

    /** Level dimensions should not run close beside this height: extension lines will. */
    void expectExtension(double height) {
        levels.add(height);
    }

    /** Takes a place. */
    void keep(Laid laid) {
        kept.add(laid);
        clearances.addText(laid.textBox());
        laid.drawn().forEach(clearances::addLine);
        laid.ticks().forEach(clearances::addLine);
        laid.extensions().forEach(clearances::addExtension);
    }

    /** Those that have their place, in the order in which they took it. */
    List<Laid> kept() {
        return List.copyOf(kept);
    }

    /**
     * The best way to set a dimension at any of some levels without meeting anything; of equally good ones that at the
     * level given first.
     *
     * @param far what a level costs for its distance from what is measured
     * @param most what a way may cost at most
     */
    Optional<Laid> best(Dimension measure, List<Double> levels, ToDoubleFunction<Double> far, double most) {
        List<Caption> captions = measure.wordings().stream()
                .map(wording -> Caption.of(text, measure.letter(), wording))
                .toList();
        return BestPlace.<Double, Laid>among(
                        levels,
                        most,
                        level -> far.applyAsDouble(level) - IN_ROW,
                        (level, known) -> BestPlace.among(
                                ways(measure, captions, far.applyAsDouble(level)),
                                known,
                                way -> way.cost() - IN_ROW,
                                (way, cost) -> laid(measure, way, level)))
                .map(BestPlace::place);
    }

    /** A wording somewhere along the line of a dimension, with what it costs before anything is looked at there. */
    private record Way(Caption caption, double textAt, boolean inside, double cost) {}

    private static List<Way> ways(Dimension measure, List<Caption> captions, double far) {
        List<Way> ways = new ArrayList<>();
        double middle = (measure.start() + measure.end()) / 2;
        for (int wording = 0; wording < captions.size(); wording++) {
            Caption caption = captions.get(wording);
            double cost = far + 0.3 * wording;
            double spare = measure.length() - caption.width() - 2 * Drafting.AIR - 0.16;
            if (spare > 0) {
                for (double shift : SHIFTS) {
                    ways.add(new Way(caption, middle + shift * spare, true, cost + Math.abs(shift) * 0.3));
                }
            } else if (wording == captions.size() - 1) {
                double reach = ASIDE + caption.width() / 2;
                ways.add(new Way(caption, measure.end() + reach, false, cost + 0.25));
                ways.add(new Way(caption, measure.start() - reach, false, cost + 0.27));
            }
        }
        return ways;
    }

    private Optional<BestPlace<Laid>> laid(Dimension measure, Way way, double level) {
        return (way.inside() ? inside(measure, way, level) : beside(measure, way, level))
                .map(laid -> new BestPlace<>(laid, laid.cost()));
    }

    private Optional<Laid> inside(Dimension measure, Way way, double level) {
        DimensionAxis run = measure.run();
        double textAt = way.textAt();
        double half = way.caption().width() / 2 + Drafting.AIR;
        Line whole = run.line(measure.start(), measure.end(), level);
        List<Line> drawn =
                List.of(run.line(measure.start(), textAt - half, level), run.line(textAt + half, measure.end(), level));
        return judged(measure, way, whole, drawn);
    }

    private Optional<Laid> beside(Dimension measure, Way way, double level) {
        DimensionAxis run = measure.run();
        boolean after = way.textAt() > measure.end();
        double tail = ASIDE - Drafting.AIR;
        Line whole = run.line(measure.start() - (after ? 0 : tail), measure.end() + (after ? tail : 0), level);
        return judged(measure, way, whole, List.of(whole));
    }

    private Optional<Laid> judged(Dimension measure, Way way, Line whole, List<Line> drawn) {
        double level = measure.run().across(whole.from());
        Laid bare = new Laid(measure, way.caption(), way.textAt(), whole, drawn, List.of(), 0);
        Box box = bare.textBox();
        if (!clearances.takesText(box)
                || !clearances.takesLine(whole)
                || !bare.ticks().allMatch(clearances::takesLine)
                || clearances.isBeside(whole, APART)
                || clearances.throughWood(whole) > SLIGHT) {
            return Optional.empty();
        }
        List<Line> extensions = extensions(measure, level);
        Laid laid = new Laid(measure, way.caption(), way.textAt(), whole, drawn, extensions, 0);
        double wood = extensions.stream().mapToDouble(clearances::throughWood).sum();
        if (measure.where() == Dimension.Where.NEAR
                && wood > (measure.run() == DimensionAxis.LEVEL ? MOST_WOOD : SLIGHT)) {
            return Optional.empty();
        }
        long covered =
                extensions.stream().filter(line -> !clearances.takesLine(line)).count();
        double sum = way.cost()
                + 0.4 * clearances.crossedLines(whole)
                + 0.15 * clearances.crossedExtensions(box)
                + 0.05 * extensions.stream().mapToLong(clearances::crossedLines).sum()
                + 0.15 * covered
                + 3 * wood
                + (measure.where() == Dimension.Where.OUTSIDE ? LONG * length(extensions) : 0)
                + Math.max(0, box.face() - view.stack().face()) * (measure.where() == Dimension.Where.NEAR ? 0.5 : 0)
                + (isOnExtension(measure, level) ? 0.3 : 0)
                - (isInRow(measure, level) ? IN_ROW : 0);
        return Optional.of(laid.costing(sum));
    }

    /** Whether a level dimension would run close beside the extension lines of upright ones. */
    private boolean isOnExtension(Dimension measure, double level) {
        return measure.run() == DimensionAxis.LEVEL
                && levels.stream().anyMatch(other -> Math.abs(other - level) < MISTAKEN);
    }

    private static double length(List<Line> lines) {
        return lines.stream().mapToDouble(Line::length).sum();
    }

    private boolean isInRow(Dimension measure, double level) {
        return kept.stream()
                .anyMatch(other ->
                        other.run() == measure.run() && Math.abs(other.level() - level) < Tolerance.COINCIDENT);
    }

    private List<Line> extensions(Dimension measure, double level) {
        return Stream.of(measure.from(), measure.to())
                .flatMap(place -> extension(measure, place, level).stream())
                .toList();
    }

    private Optional<Line> extension(Dimension measure, Point place, double level) {
        DimensionAxis run = measure.run();
        double along = run.along(place);
        double start = run.across(place);
        double way = level > start ? 1 : -1;
        if (measure.where() != Dimension.Where.NEAR) {
            start = way > 0 ? clearances.silhouette(run, along, start) : clearances.underside(run, along, start);
        }
        double from = start + way * Drafting.EXTENSION_GAP;
        double to = level + way * Drafting.EXTENSION_PAST;
        return (to - from) * way > 0
                ? Optional.of(new Line(run.point(along, from), run.point(along, to)))
                : Optional.empty();
    }
}

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
     * The better of what is known and the best way to set the dimension at a level without meeting anything; of equally
     * good ones the one known.
     *
     * @param distance of the level from what is measured
     * @param most what a way may cost at most
     */
    Optional<Laid> better(Optional<Laid> known, Dimension measure, double level, double distance, double most) {
        Optional<Laid> best = known;
        for (int wording = 0; wording < measure.wordings().size(); wording++) {
            double cost = distance + 0.3 * wording;
            if (hopeless(cost, best, most)) {
                continue;
            }
            Caption caption =
                    Caption.of(text, measure.letter(), measure.wordings().get(wording));
            double spare = measure.length() - caption.width() - 2 * Drafting.AIR - 0.16;
            double middle = (measure.start() + measure.end()) / 2;
            if (spare > 0) {
                for (double shift : List.of(0.0, -0.5, 0.5, -0.25, 0.25)) {
                    double shifted = cost + Math.abs(shift) * 0.3;
                    if (!hopeless(shifted, best, most)) {
                        best = cheaper(best, inside(measure, caption, level, middle + shift * spare, shifted), most);
                    }
                }
            } else if (wording == measure.wordings().size() - 1) {
                double reach = ASIDE + caption.width() / 2;
                best = cheaper(best, beside(measure, caption, level, measure.end() + reach, cost + 0.25), most);
                best = cheaper(best, beside(measure, caption, level, measure.start() - reach, cost + 0.27), most);
            }
        }
        return best;
    }

    /** Whether something with that cost before it is tried cannot come out best; trying is what takes the time. */
    private static boolean hopeless(double cost, Optional<Laid> best, double most) {
        return cost - IN_ROW - Tolerance.COINCIDENT > best.map(Laid::cost).orElse(most);
    }

    private static Optional<Laid> cheaper(Optional<Laid> known, Optional<Laid> found, double most) {
        return found.filter(laid -> laid.cost() < most)
                .filter(laid -> known.isEmpty() || laid.cost() < known.get().cost())
                .or(() -> known);
    }

    private Optional<Laid> inside(Dimension measure, Caption caption, double level, double textAt, double cost) {
        DimensionAxis run = measure.run();
        double half = caption.width() / 2 + Drafting.AIR;
        Line whole = run.line(measure.start(), measure.end(), level);
        List<Line> drawn =
                List.of(run.line(measure.start(), textAt - half, level), run.line(textAt + half, measure.end(), level));
        return judged(measure, caption, textAt, whole, drawn, cost);
    }

    private Optional<Laid> beside(Dimension measure, Caption caption, double level, double textAt, double cost) {
        DimensionAxis run = measure.run();
        boolean after = textAt > measure.end();
        double tail = ASIDE - Drafting.AIR;
        Line whole = run.line(measure.start() - (after ? 0 : tail), measure.end() + (after ? tail : 0), level);
        return judged(measure, caption, textAt, whole, List.of(whole), cost);
    }

    private Optional<Laid> judged(
            Dimension measure, Caption caption, double textAt, Line whole, List<Line> drawn, double cost) {
        double level = measure.run().across(whole.from());
        Laid bare = new Laid(measure, caption, textAt, whole, drawn, List.of(), 0);
        Box box = bare.textBox();
        if (!clearances.takesText(box)
                || !clearances.takesLine(whole)
                || !bare.ticks().allMatch(clearances::takesLine)
                || clearances.isBeside(whole, APART)
                || clearances.throughWood(whole) > SLIGHT) {
            return Optional.empty();
        }
        List<Line> extensions = extensions(measure, level);
        Laid laid = new Laid(measure, caption, textAt, whole, drawn, extensions, 0);
        double wood = extensions.stream().mapToDouble(clearances::throughWood).sum();
        if (measure.where() == Dimension.Where.NEAR
                && wood > (measure.run() == DimensionAxis.LEVEL ? MOST_WOOD : SLIGHT)) {
            return Optional.empty();
        }
        long covered =
                extensions.stream().filter(line -> !clearances.takesLine(line)).count();
        double sum = cost
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

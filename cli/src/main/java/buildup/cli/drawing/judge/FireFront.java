package buildup.cli.drawing.judge;

import buildup.catalog.fire.FireBand;
import buildup.catalog.fire.FireRule;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.label.Spread;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.judge.clearance.Clearance;
import buildup.engine.judge.clearance.FireRow;
import buildup.engine.judge.clearance.Firebox;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The front of a fireplace to scale: the opening, the trim over and beside it, and how near each rule lets trim come. */
final class FireFront {
    /** How wide it is drawn, in letters' sizes. */
    private static final double WIDE = 40;

    /** How much of the opening is drawn where no floor is given, in widths of it. */
    private static final double DEEP = 0.8;

    private final Section section;
    private final Clearance clearance;
    private final Firebox firebox;
    private final TextMeasure measure;
    private final double size;
    private final double left;
    private final double right;
    private final Box run;
    private final double scale;

    private FireFront(Section section, Clearance clearance, Firebox firebox, TextMeasure measure, double size) {
        this.section = section;
        this.clearance = clearance;
        this.firebox = firebox;
        this.measure = measure;
        this.size = size;
        this.left = firebox.left().orElseThrow();
        this.right = firebox.right().orElseThrow();
        double deep = section.stack().space().floor().orElse(firebox.top() - DEEP * (right - left));
        // a mantel is taken to reach as far to the right of the opening as to the left
        Box opening =
                new Box(Math.min(0, left), Math.min(deep, firebox.top()), right + Math.max(0, left), firebox.top());
        Box legs = firebox.beside().stream()
                .map(leg -> new Box(leg.from(), opening.bottom(), leg.to(), firebox.top()))
                .reduce(opening, Box::with);
        this.run = legs.with(new Point(legs.back(), section.totals().top()))
                .with(new Point(legs.back(), section.totals().bottom()));
        this.scale = WIDE * size / run.width();
    }

    /** The front, its lower left corner anywhere; nothing while the sides of the opening are not given. */
    static Optional<Group> of(Section section, Clearance clearance, Firebox firebox, TextMeasure measure, double size) {
        return firebox.left().isEmpty() || firebox.right().isEmpty()
                ? Optional.empty()
                : Optional.of(new FireFront(section, clearance, firebox, measure, size).group());
    }

    private Group group() {
        List<SceneItem> items = new ArrayList<>();
        List<Segment> trim = new ArrayList<>(trim());
        firebox.beside().forEach(leg -> trim.addAll(rectangle(leg.from(), run.bottom(), leg.to(), legTop())));
        drawn(trim, LineStyle.ARRIS).ifPresent(items::add);
        drawn(rectangle(left, run.bottom(), right, firebox.top()), LineStyle.OUTLINE)
                .ifPresent(items::add);
        items.addAll(contours());
        double low =
                items.stream().mapToDouble(item -> item.box().bottom()).min().orElse(0);
        double middle = scale * (run.back() + run.face()) / 2;
        double y = low - 2 * size;
        items.add(Label.of(
                measure,
                "front, about 1 : " + Math.max(1, Math.round(1 / scale)),
                new Point(middle, y),
                size,
                Label.Anchor.MIDDLE));
        for (String words : beside()) {
            y -= 1.5 * size;
            items.add(Label.of(measure, words, new Point(middle, y), size, Label.Anchor.MIDDLE));
        }
        return new Group("front", items);
    }

    private Optional<SceneItem> drawn(List<Segment> lines, LineStyle style) {
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Path(scaled(lines), false, style));
    }

    private double legTop() {
        return Math.max(firebox.top(), section.totals().bottom());
    }

    /** A line along the run wherever a member that is seen ends. */
    private List<Segment> trim() {
        List<Double> levels = new ArrayList<>();
        for (Member member : section.members()) {
            if (member.to().y() > member.from().y() + Tolerance.TOUCHING) {
                levels.add(member.from().y());
                levels.add(member.to().y());
            }
        }
        List<Segment> lines = new ArrayList<>();
        List<Double> apart = levels.stream().distinct().sorted().toList();
        apart.forEach(level -> lines.add(new Line(new Point(run.back(), level), new Point(run.face(), level))));
        if (!apart.isEmpty()) {
            double low = apart.get(0);
            double high = apart.get(apart.size() - 1);
            lines.add(new Line(new Point(run.back(), low), new Point(run.back(), high)));
            lines.add(new Line(new Point(run.face(), low), new Point(run.face(), high)));
        }
        return lines;
    }

    /** How near anything may come, and from where on it may project as it likes, by the rules that say so. */
    private List<SceneItem> contours() {
        Map<List<Double>, List<String>> nearest = new TreeMap<>(byNumbers());
        Map<List<Double>, List<String>> free = new TreeMap<>(byNumbers());
        for (FireRule rule : firebox.rules()) {
            nearest.computeIfAbsent(List.of(first(rule.above()), first(rule.sides())), unseen -> new ArrayList<>())
                    .add(rule.name());
            if (isFree(rule.above()) && isFree(rule.sides())) {
                free.computeIfAbsent(List.of(last(rule.above()), last(rule.sides())), unseen -> new ArrayList<>())
                        .add(rule.name());
            }
        }
        List<SceneItem> items = new ArrayList<>();
        List<Spread.Wish> wishes = new ArrayList<>();
        nearest.forEach((at, rules) -> {
            items.add(contour(at, LineStyle.SHADE));
            wishes.add(wish("nothing nearer: ", at, rules));
        });
        free.forEach((at, rules) -> {
            items.add(contour(at, LineStyle.CAST));
            wishes.add(wish("any projection past: ", at, rules));
        });
        wishes.sort(Comparator.comparingDouble(Spread.Wish::middle));
        double x = Math.max(
                scale * run.face(),
                items.stream().mapToDouble(item -> item.box().face()).max().orElse(0));
        items.addAll(Spread.labels(measure, wishes, x + size, 1, size));
        return items;
    }

    private static Comparator<List<Double>> byNumbers() {
        return Comparator.<List<Double>>comparingDouble(at -> at.get(0)).thenComparingDouble(at -> at.get(1));
    }

    private static double first(List<FireBand> bands) {
        return bands.get(0).from().toInches();
    }

    private static double last(List<FireBand> bands) {
        return bands.get(bands.size() - 1).from().toInches();
    }

    private static boolean isFree(List<FireBand> bands) {
        return bands.get(bands.size() - 1).any();
    }

    private SceneItem contour(List<Double> at, LineStyle style) {
        double above = firebox.top() + at.get(0);
        double from = left - at.get(1);
        double to = right + at.get(1);
        return new Path(
                scaled(List.of(
                        new Line(new Point(from, run.bottom()), new Point(from, above)),
                        new Line(new Point(from, above), new Point(to, above)),
                        new Line(new Point(to, above), new Point(to, run.bottom())))),
                false,
                style);
    }

    private Spread.Wish wish(String words, List<Double> at, List<String> rules) {
        FigurePrinter printer = Drafting.printer(section.stack());
        String above = printer.bare(Figure.length(at.get(0)));
        String sides = printer.bare(Figure.length(at.get(1)));
        double y = scale * (firebox.top() + at.get(0));
        return new Spread.Wish(
                words + (above.equals(sides) ? above : above + " above, " + sides + " beside") + ", "
                        + String.join(", ", rules),
                y,
                y);
    }

    /** What decides on each piece of trim beside the opening. */
    private List<String> beside() {
        return firebox.beside().stream()
                .flatMap(leg -> clearance.fire().stream()
                        .filter(row -> !row.ofStack() && row.piece().equals(leg.name()))
                        .min(Comparator.comparingDouble(
                                (FireRow row) -> row.spare().orElse(Double.NEGATIVE_INFINITY)))
                        .stream())
                .map(row -> ClearanceDrawing.words(section, row))
                .toList();
    }

    private static List<Segment> rectangle(double from, double bottom, double to, double top) {
        return top > bottom ? Outline.rectangle(new Box(from, bottom, to, top)).segments() : List.of();
    }

    private List<Segment> scaled(List<Segment> segments) {
        return segments.stream().map(segment -> segment.scaled(scale)).toList();
    }
}

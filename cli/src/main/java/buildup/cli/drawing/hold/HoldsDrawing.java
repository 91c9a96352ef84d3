package buildup.cli.drawing.hold;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.label.MarkNumbers;
import buildup.cli.drawing.label.Spread;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.Looked;
import buildup.cli.drawing.sheet.NumberedList;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.hold.nail.Strength;
import buildup.engine.hold.support.Balance;
import buildup.engine.hold.support.BalanceWords;
import buildup.engine.hold.support.Fall;
import buildup.engine.hold.support.FallWords;
import buildup.engine.hold.support.Perch;
import buildup.engine.hold.support.Support;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The section, full size, with what holds it: the bearings, where the weight above each falls, and the nails with their
 * bites; while no nails are given, one place for each piece where a nail could go.
 */
public final class HoldsDrawing {
    /** How wide the list of what the numbers mean may grow, in sizes of its letters, so that the picture is not drawn small. */
    private static final double LISTED_WIDTH = 54;

    private static final int MOST_LINES = 4;

    /** From one stroke across the bite of a nail to the next, and half a stroke, in. */
    private static final double THREAD = 0.09;

    private static final double STROKE = 0.04;

    /** How far above its bearing the line of a weight begins, in. */
    private static final double FALL = 1.4;

    private static final double UNDER = 0.05;

    private static final double BARB = 0.08;
    private static final double HEAD = 0.06;

    private final Section section;
    private final Support support;
    private final List<Fixed> nails;
    private final boolean given;
    private final TextMeasure measure;
    private final PictureView view;
    private final double size;
    private final int smaller;
    private final Looked looked;

    private HoldsDrawing(
            Section section,
            Support support,
            List<Fixed> fixed,
            List<Proposal> proposals,
            int smaller,
            Looked looked,
            TextMeasure measure) {
        this.smaller = smaller;
        this.looked = looked;
        this.section = section;
        this.support = support;
        this.given = !fixed.isEmpty();
        this.nails = given ? fixed : firstOfEach(proposals);
        this.measure = measure;
        this.view = PictureView.of(section);
        this.size = looked == Looked.SCREEN ? view.letters() : smaller * Drafting.TEXT;
    }

    private static List<Fixed> firstOfEach(List<Proposal> proposals) {
        Set<Integer> seen = new HashSet<>();
        return proposals.stream()
                .map(Proposal::fixed)
                .filter(fixed -> seen.add(fixed.piece()))
                .toList();
    }

    /** The picture of what supports and backs each piece, with its fastenings, full size. */
    public static Scene of(
            Section section, Support support, List<Fixed> fixed, List<Proposal> proposals, TextMeasure measure) {
        return new HoldsDrawing(section, support, fixed, proposals, 1, Looked.SCREEN, measure).scene();
    }

    /** The same with letters that are read when it is made so many times smaller. */
    public static Scene forScale(
            Section section,
            Support support,
            List<Fixed> fixed,
            List<Proposal> proposals,
            int smaller,
            TextMeasure measure) {
        return new HoldsDrawing(section, support, fixed, proposals, smaller, Looked.PAGE, measure).scene();
    }

    /** The same at full size on several pages, what its numbers mean told before them. */
    public static Scene inParts(
            Section section, Support support, List<Fixed> fixed, List<Proposal> proposals, TextMeasure measure) {
        return new HoldsDrawing(section, support, fixed, proposals, 1, Looked.PARTS, measure).scene();
    }

    private Scene scene() {
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("pieces", wood.lightly(smaller)));
        List<SceneItem> falling = falling();
        if (!falling.isEmpty()) {
            items.add(new Group("falling", falling));
        }
        items.add(new Group("edges", wood.edges()));
        List<Mark> marks = new ArrayList<>();
        List<SceneItem> drawn = drawn(marks);
        items.addAll(drawn);
        marks.sort(Comparator.comparingDouble(mark -> -mark.at().y()));
        MarkNumbers numbers = numbers(marks, drawn);
        items.addAll(numbers.items());
        if (looked != Looked.PARTS) {
            items.addAll(beside(marks, drawn, numbers));
        }
        items.add(PictureSheet.below(items, legend(wood), size));
        if (looked == Looked.PARTS) {
            for (Group list : list(marks, numbers)) {
                items.add(PictureSheet.below(items, list, size));
            }
        }
        return PictureSheet.around(
                section.stack().title() + ", what holds it",
                "Section with bearings, weights and nails. " + Strength.CAUTION,
                items,
                2 * size);
    }

    /**
     * A weight and the level stretch that carries it, on whatever it lies.
     *
     * @param x where the weight falls
     */
    private record Weight(double back, double face, double level, double x, String words) {
        Line line(double from, double to) {
            return new Line(new Point(from, level), new Point(to, level));
        }
    }

    /** What bears on something that stands, and what lies on something that hangs itself. */
    private List<Weight> weights() {
        List<Weight> weights = new ArrayList<>();
        support.balances()
                .forEach(balance -> weights.add(new Weight(
                        balance.bearingBack(),
                        balance.bearingFace(),
                        balance.level(),
                        foot(balance.loaded()),
                        words(balance))));
        Perch.all(section, support.path(), support.loads())
                .forEach(perch -> weights.add(
                        new Weight(perch.back(), perch.face(), perch.level(), foot(perch.resultant()), words(perch))));
        return weights;
    }

    /** As it falls while nothing keeps it; nothing of a stack that stands. */
    private List<Fall> falls() {
        return support.whole().falls();
    }

    /** Dashes straight down, as no wood is hatched. */
    private Pattern fallsHatch() {
        return new Pattern(90, 0.1 * smaller, false, 0.012 * smaller, List.of(0.06 * smaller, 0.05 * smaller));
    }

    /** Hatch over the pieces that fall. */
    private List<SceneItem> falling() {
        List<Integer> pieces = falls().stream()
                .flatMap(fall -> fall.parts().stream())
                .flatMap(part -> part.pieces().stream())
                .distinct()
                .toList();
        return view.shown().stream()
                .filter(shown -> pieces.contains(shown.number()))
                .flatMap(shown -> shown.parts().stream())
                .map(part -> (SceneItem) new Hatch(part.ring(), fallsHatch(), Point.ORIGIN))
                .toList();
    }

    /** Where a number is led to that speaks of some pieces: the upper front corner of the first of them. */
    private Point handle(List<Integer> pieces) {
        Box box = section.body(pieces.get(0)).outline().box();
        return new Point(Math.min(box.face(), view.window().face()), box.top());
    }

    /** A mark on the picture, with its number in a ring at a place of it and its words in the list to the right. */
    private record Mark(Point at, Subject subject, String words) {}

    /**
     * Bearings, falls and nails.
     *
     * @param marks told what they are
     */
    private List<SceneItem> drawn(List<Mark> marks) {
        List<SceneItem> items = new ArrayList<>();
        weights().forEach(weight -> {
            items.add(new Path(List.of(weight.line(weight.back, weight.face)), false, LineStyle.BEARING));
            items.add(new Path(fall(weight), false, LineStyle.FALL));
            past(weight).ifPresent(line -> items.add(new Path(List.of(line), false, LineStyle.PAST)));
            marks.add(new Mark(top(weight), Subject.WEIGHTS, weight.words));
        });
        for (Fixed nail : nails) {
            items.add(new Path(SectionMarks.nail(nail, HEAD, 1), false, nailStyle()));
            List<Segment> bites = bites(nail);
            if (!bites.isEmpty()) {
                items.add(new Path(bites, false, LineStyle.BITE));
            }
            marks.add(new Mark(nail.head(), Subject.FASTENINGS, words(nail)));
        }
        falls().forEach(fall -> marks.add(new Mark(
                handle(fall.first().pieces()),
                Subject.WEIGHTS,
                Drafting.printer(section.stack()).print(FallWords.of(section, fall)))));
        return items;
    }

    /** The marks numbered in their order. */
    private MarkNumbers numbers(List<Mark> marks, List<SceneItem> drawn) {
        MarkNumbers numbers = new MarkNumbers(view, measure, size);
        drawn.forEach(item -> numbers.keepClear((Path) item));
        marks.forEach(mark -> numbers.keepClear(mark.at()));
        for (int i = 0; i < marks.size(); i++) {
            numbers.set(i + 1, marks.get(i).subject(), marks.get(i).at());
        }
        return numbers;
    }

    /** What the numbers mean, one under the other. */
    private List<Group> list(List<Mark> marks, MarkNumbers numbers) {
        NumberedList list = new NumberedList(measure, size, 2 * numbers.radius());
        for (int i = 0; i < marks.size(); i++) {
            int number = i + 1;
            list.add(
                    marks.get(i).subject(),
                    marks.get(i).words(),
                    at -> numbers.ringed(number, at.plus(new Point(numbers.radius(), 0))));
        }
        return list.groups();
    }

    /** The same to the right of the picture, each as near to the height of its mark as can be. */
    private List<SceneItem> beside(List<Mark> ordered, List<SceneItem> drawn, MarkNumbers numbers) {
        List<SceneItem> items = new ArrayList<>();
        double beside = Stream.concat(drawn.stream(), numbers.items().stream())
                .mapToDouble(item -> item.box().face())
                .reduce(view.window().face(), Math::max);
        // the list reads from the top down; its lines are set from the bottom up
        List<Spread.Wish> wishes = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        for (int i = ordered.size() - 1; i >= 0; i--) {
            double y = ordered.get(i).at().y();
            List<String> said = Words.lines(measure, ordered.get(i).words(), size, LISTED_WIDTH * size, MOST_LINES);
            for (int line = said.size() - 1; line >= 0; line--) {
                wishes.add(new Spread.Wish(said.get(line), y, y));
                owners.add(i);
            }
        }
        List<Label> lines = Spread.besides(measure, wishes, beside + 3.5 * size, size);
        List<SceneItem> words = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Label line = lines.get(i);
            int owner = owners.get(i);
            Subject subject = ordered.get(owner).subject();
            boolean head = i == lines.size() - 1 || owners.get(i + 1) != owner;
            if (head) {
                Point ring = new Point(beside + 2.5 * size, line.at().y() + size * Label.CAPITALS / 2);
                items.add(new About(subject, numbers.ringed(owner + 1, ring)));
            }
            words.add(new About(subject, List.of(line)));
        }
        items.addAll(words);
        return items;
    }

    /** From the end of a bearing to where a weight falls past it, under the edge of what lies there. */
    private Optional<Line> past(Weight weight) {
        double end = Math.max(weight.back, Math.min(weight.face, weight.x));
        Line line = weight.line(end, weight.x);
        return line.length() > Tolerance.TOUCHING ? Optional.of(line.moved(Motion.shift(0, -UNDER))) : Optional.empty();
    }

    private double foot(double x) {
        return Math.min(x, view.window().face());
    }

    private static Point top(Weight weight) {
        return new Point(weight.x, weight.level + FALL);
    }

    /** Strokes across a nail where wood beyond its piece holds it. */
    private static List<Segment> bites(Fixed nail) {
        Point across = nail.way().left().times(STROKE);
        List<Segment> strokes = new ArrayList<>();
        for (Crossing crossing : nail.drive().crossings()) {
            if (crossing.holds() && crossing.body().orElse(nail.piece()) != nail.piece()) {
                for (double at = crossing.from() + THREAD / 2; at < crossing.to(); at += THREAD) {
                    Point middle = nail.head().plus(nail.way().times(at));
                    strokes.add(new Line(middle.minus(across), middle.plus(across)));
                }
            }
        }
        return strokes;
    }

    private static List<Segment> fall(Weight weight) {
        Point foot = new Point(weight.x, weight.level);
        List<Segment> fall = new ArrayList<>(List.of(new Line(top(weight), foot)));
        fall.addAll(SectionMarks.barbs(foot, new Point(0, -1), BARB));
        return fall;
    }

    private String words(Balance balance) {
        return what(balance.piece(), balance.group(), balance.weight() + balance.load(), balance.loaded())
                + printer().print(BalanceWords.so(balance));
    }

    private String words(Perch perch) {
        String on = listed(perch.carriers().stream().map(section::name).toList());
        String held = perch.carriers().size() == 1 ? " is held" : " are held";
        String where = perch.past() > Tolerance.TOUCHING
                ? printer().print(Figure.length(perch.past())) + " past " + on
                : "inside " + on;
        return what(perch.piece(), perch.group(), perch.weight(), perch.resultant()) + where + "; " + on + held
                + " by nails only";
    }

    private String listed(List<String> names) {
        return printer().print(Phrase.of("{names}").with("names", Listing.names(names)));
    }

    private FigurePrinter printer() {
        return new FigurePrinter(section.stack().unit());
    }

    /** Which pieces, how heavy, and where they weigh. */
    private String what(int piece, List<Integer> group, double weight, double x) {
        return section.name(piece)
                + (group.size() > 1 ? " and " + (group.size() - 1) + " more, " : ", ")
                + printer().print(Figure.lineForce(weight)) + " at "
                + printer().print(Figure.length(x)) + ": ";
    }

    private String words(Fixed nail) {
        String name = given ? nail.fastening().name() : section.name(nail.piece());
        return name + ": "
                + Drafting.printer(section.stack()).bare(nail.fastening().use().phrase()) + ", bite "
                + Drafting.size(section.stack(), nail.bite()) + in(nail);
    }

    /** What a nail bites, in words. */
    private String in(Fixed nail) {
        List<String> bitten = nail.drive().held().stream()
                .filter(body -> body != nail.piece())
                .map(section::name)
                .toList();
        return bitten.isEmpty() ? "" : " into " + listed(bitten);
    }

    private Group legend(WoodDrawing wood) {
        Legend legend = common().kinds(wood.looks(), smaller);
        if (!falls().isEmpty()) {
            legend.sample("falls: nothing keeps it", this::fallsSample);
        }
        return legend.group();
    }

    private List<SceneItem> fallsSample(Point at) {
        List<Segment> ring = Outline.rectangle(new Box(at.x(), at.y(), at.x() + 3 * size, at.y() + size))
                .segments();
        return List.of(new Hatch(ring, fallsHatch(), at), new Path(ring, true, LineStyle.EXTENSION));
    }

    private Legend common() {
        return new Legend(measure, size)
                .title(section.stack().title())
                .text("What holds it, " + Drafting.scale(smaller)
                        + ". Bearings, and weights along the run; loads counted.")
                .text(Strength.CAUTION)
                .line("bearing", LineStyle.BEARING)
                .line("resultant of the weight above it", LineStyle.FALL)
                .line("how far it falls past its bearing", LineStyle.PAST)
                .line(given ? "nail or screw" : "where a nail could go", nailStyle())
                .sample("its bite", this::bite);
    }

    private List<SceneItem> bite(Point at) {
        double y = at.y() + size / 2;
        List<Segment> strokes = new ArrayList<>();
        for (double x = at.x() + THREAD / 2; x < at.x() + 3 * size; x += THREAD) {
            strokes.add(new Line(new Point(x, y - STROKE), new Point(x, y + STROKE)));
        }
        return List.of(Legend.stroke(at, nailStyle(), size), new Path(strokes, false, LineStyle.BITE));
    }

    private LineStyle nailStyle() {
        return given ? LineStyle.NAIL : LineStyle.COULD;
    }
}

package buildup.cli.drawing.hold;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Spread;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.fixing.Proposal;
import buildup.engine.hold.fixing.Strength;
import buildup.engine.hold.support.Balance;
import buildup.engine.hold.support.BalanceWords;
import buildup.engine.hold.support.Support;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The section, full size, with what holds it: the bearings, where the weight above each falls, and the nails with their
 * bites; while no nails are given, one place for each piece where a nail could go.
 */
public final class HoldsDrawing {
    /** How far above and below its bearing the line of a weight is drawn, in. */
    private static final double FALL = 1.4;

    private final Section section;
    private final Support support;
    private final List<Fixed> nails;
    private final boolean given;
    private final TextMeasure measure;
    private final PictureView view;
    private final double size;

    private HoldsDrawing(
            Section section, Support support, List<Fixed> fixed, List<Proposal> proposals, TextMeasure measure) {
        this.section = section;
        this.support = support;
        this.given = !fixed.isEmpty();
        this.nails = given ? fixed : firstOfEach(proposals);
        this.measure = measure;
        this.view = PictureView.of(section);
        this.size = Math.max(Drafting.TEXT, 0.016 * view.window().height());
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
        return new HoldsDrawing(section, support, fixed, proposals, measure).scene();
    }

    private Scene scene() {
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("pieces", wood.areas()));
        items.add(new Group("edges", wood.edges()));
        items.addAll(marks());
        Box picture = Box.around(items.stream().map(SceneItem::box).toList());
        Group legend = new Group("legend", legend());
        items.add(legend.moved(
                picture.back() - legend.box().back(),
                picture.bottom() - size - legend.box().top()));
        return PictureSheet.around(
                section.stack().title() + ", what holds it",
                "Section with bearings, weights and nails. " + Strength.CAUTION,
                items,
                2 * size);
    }

    /** Bearings, falls and nails, each with its words to the right of the section. */
    private List<SceneItem> marks() {
        List<SceneItem> items = new ArrayList<>();
        List<Spread.Wish> wishes = new ArrayList<>();
        for (Balance balance : support.balances()) {
            items.add(new Path(
                    List.of(new Line(
                            new Point(balance.bearingBack(), balance.level()),
                            new Point(balance.bearingFace(), balance.level()))),
                    false,
                    LineStyle.BEARING));
            items.add(new Path(fall(balance), false, LineStyle.FALL));
            wishes.add(new Spread.Wish(words(balance), balance.level(), balance.level()));
        }
        for (Fixed nail : nails) {
            items.add(new Path(drawn(nail), false, given ? LineStyle.NAIL : LineStyle.COULD));
            wishes.add(new Spread.Wish(words(nail), nail.head().y(), nail.head().y()));
        }
        wishes.sort(Comparator.comparingDouble(Spread.Wish::middle));
        if (!wishes.isEmpty()) {
            items.addAll(Spread.besides(measure, wishes, view.window().face() + size, size));
        }
        return items;
    }

    private List<Segment> fall(Balance balance) {
        double x = Math.min(balance.loaded(), view.window().face());
        Point foot = new Point(x, balance.level());
        double barb = 0.08;
        return List.of(
                new Line(new Point(x, balance.level() + FALL), foot),
                new Line(new Point(x - barb, balance.level() + 2 * barb), foot),
                new Line(foot, new Point(x + barb, balance.level() + 2 * barb)));
    }

    private List<Segment> drawn(Fixed nail) {
        Point across = nail.way().left().times(0.06);
        return List.of(
                new Line(nail.head().minus(across), nail.head().plus(across)), new Line(nail.head(), nail.point()));
    }

    private String words(Balance balance) {
        FigurePrinter printer = new FigurePrinter(section.stack().unit());
        return section.name(balance.piece())
                + (balance.group().size() > 1 ? " and " + (balance.group().size() - 1) + " more, " : ", ")
                + printer.print(Figure.lineForce(balance.weight() + balance.load())) + " at "
                + printer.print(Figure.length(balance.loaded())) + ": " + printer.print(BalanceWords.so(balance));
    }

    private String words(Fixed nail) {
        String name = given ? nail.fastening().name() : section.name(nail.piece());
        return name + ": "
                + Drafting.printer(section.stack()).bare(nail.fastening().use().phrase()) + ", bite "
                + Drafting.size(section.stack(), nail.bite());
    }

    private List<SceneItem> legend() {
        return new Legend(measure, size)
                .title(section.stack().title())
                .text("What holds it, full size. Bearings, and weights along the run; loads counted.")
                .text(Strength.CAUTION)
                .sample("bearing", at -> sample(at, LineStyle.BEARING))
                .sample("resultant of the weight above it", at -> sample(at, LineStyle.FALL))
                .sample(
                        given ? "nail or screw" : "where a nail could go",
                        at -> sample(at, given ? LineStyle.NAIL : LineStyle.COULD))
                .items();
    }

    private List<SceneItem> sample(Point at, LineStyle style) {
        double y = at.y() + size / 2;
        return List.of(new Path(
                List.of(new Line(new Point(at.x(), y), new Point(at.x() + 3 * size, y))), false, style));
    }
}

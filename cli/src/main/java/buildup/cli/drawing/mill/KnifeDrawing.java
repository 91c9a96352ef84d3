package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.profiles.Profile;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ground knives at full size, one under the other, their edges corrected for the hook, to be scribed on the steel. */
public final class KnifeDrawing {
    /** Steel drawn behind the edge, in. */
    private static final double BODY = 1;

    private static final Phrase EDGE = Phrase.of("Knife template, full size, seen on the flat of the steel, {left}"
            + " to the left; corrected for a hook of {hook} in a cutting circle of {circle}.");
    private static final Phrase SIZES = Phrase.of(
            "Knife {width} wide; {wood} deep in the wood, {deep} on the knife, between the two broken lines.");
    private static final Phrase SIZES_OF_STEEL =
            Phrase.of("Knife {width} wide, of {steel} steel; {wood} deep in the wood,"
                    + " {deep} on the knife, between the two broken lines.");
    private static final Phrase MARKS =
            Phrase.of("Knife marks: {marks}, each {scallop} deep, at {speed} and a feed of {feed};"
                    + " knives cutting: {knives}.");

    private final Profile profile;
    private final Knife knife;
    private final TextMeasure measure;
    private final FigurePrinter printer;
    private final double size = Drafting.TEXT;

    private KnifeDrawing(Profile profile, Knife knife, TextMeasure measure, FigurePrinter printer) {
        this.profile = profile;
        this.knife = knife;
        this.measure = measure;
        this.printer = printer;
    }

    /**
     * The templates of the knives that a profile takes.
     *
     * @param knives one at least
     */
    public static Scene of(Profile profile, List<Knife> knives, TextMeasure measure, FigurePrinter printer) {
        List<SceneItem> items = new ArrayList<>();
        for (int i = 0; i < knives.size(); i++) {
            Group one =
                    new Group("knife-" + (i + 1), new KnifeDrawing(profile, knives.get(i), measure, printer).items());
            items.add(i == 0 ? one : PictureSheet.below(items, one, 2 * Drafting.TEXT));
        }
        items.add(PictureSheet.below(
                items,
                new Group("check", FullSize.of(printer.metric()).level(measure, Point.ORIGIN)),
                2 * Drafting.TEXT));
        return PictureSheet.around(
                profile.name() + ", knives",
                "Templates of the ground knives, full size. " + Milled.CAUTION,
                items,
                2 * Drafting.TEXT);
    }

    private List<SceneItem> items() {
        List<Segment> ring = ring();
        double deep = -knife.depth();
        List<SceneItem> items = new ArrayList<>(List.of(
                new Group(
                        "steel",
                        WoodDrawing.Look.TRIM.fill(
                                Optional.of("steel"), Optional.of("knife for " + profile.name()), ring, Point.ORIGIN)),
                new Group("edge", List.of(WoodDrawing.Look.TRIM.edge(ring, true))),
                new Group(
                        "depth",
                        List.of(new Path(
                                List.of(
                                        new Line(new Point(left(), 0), new Point(left() + knife.width(), 0)),
                                        new Line(new Point(left(), deep), new Point(left() + knife.width(), deep))),
                                false,
                                LineStyle.PLANE)))));
        items.add(PictureSheet.below(items, legend(), 2 * size));
        return items;
    }

    private static double left() {
        return -Knife.MARGIN;
    }

    /** The edge from the bottom of the stick to its top, run out level past both, and the steel behind it. */
    private List<Segment> ring() {
        List<Point> edge = knife.edge();
        double right = left() + knife.width();
        double heel = -knife.depth() - BODY;
        List<Point> corners = new ArrayList<>();
        corners.add(new Point(right, heel));
        corners.add(new Point(right, edge.get(edge.size() - 1).y()));
        for (int i = edge.size() - 1; i >= 0; i--) {
            corners.add(edge.get(i));
        }
        corners.add(new Point(left(), edge.get(0).y()));
        corners.add(new Point(left(), heel));
        List<Segment> ring = new ArrayList<>();
        Point at = corners.get(corners.size() - 1);
        for (Point next : corners) {
            if (!at.near(next, Tolerance.COINCIDENT)) {
                ring.add(new Line(at, next));
                at = next;
            }
        }
        return ring;
    }

    /** What lies on the left when one looks out of the stick toward the head turned upright. */
    private String leftEnd() {
        return switch ((int) knife.side().degrees()) {
            case 90 -> "the front of the stick";
            case 180 -> "the top of the stick";
            case 270 -> "the back of the stick";
            default -> "the bottom of the stick";
        };
    }

    private Group legend() {
        return new Legend(measure, size)
                .title(profile.name() + ", " + printer.print(knife.side().words()))
                .text(printer.print(EDGE.with("left", leftEnd())
                        .with(
                                "hook",
                                Figure.angle(knife.head().hook().toDegrees()).rounded(Rounding.decimals(1)))
                        .with("circle", Figure.length(knife.head().circle().toInches()))))
                .text(printer.print((knife.stock().isPresent() ? SIZES_OF_STEEL : SIZES)
                        .with("width", Figure.length(knife.width()))
                        .with(
                                "steel",
                                Figure.length(knife.stock().orElse(Length.ZERO).toInches()))
                        .with("wood", Figure.fine(knife.woodDepth()))
                        .with("deep", Figure.fine(knife.depth()))))
                .text(printer.print(MARKS.with("marks", Figure.of(Quantity.MARKS, knife.marks()))
                        .with("scallop", Figure.length(knife.scallop()).rounded(Rounding.decimals(5)))
                        .with("speed", Figure.of(Quantity.RPM, knife.head().speed()))
                        .with("feed", Figure.of(Quantity.FEED, knife.feed()))
                        .with("knives", Figure.count(knife.head().knives()))))
                .text(Milled.CAUTION)
                .group();
    }
}

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
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ground knife at full size, its edge corrected for the hook, to be scribed on the steel. */
public final class KnifeDrawing {
    /** Steel drawn behind the edge, in. */
    private static final double BODY = 1;

    private final Profile profile;
    private final Knife knife;
    private final TextMeasure measure;
    private final double size = Drafting.TEXT;

    private KnifeDrawing(Profile profile, Knife knife, TextMeasure measure) {
        this.profile = profile;
        this.knife = knife;
        this.measure = measure;
    }

    /** The template of a molder's knife, full size. */
    public static Scene of(Profile profile, Knife knife, TextMeasure measure) {
        return new KnifeDrawing(profile, knife, measure).scene();
    }

    private Scene scene() {
        List<Segment> ring = ring();
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group(
                "knife",
                WoodDrawing.Look.TRIM.fill(
                        Optional.of("steel"), Optional.of("knife for " + profile.name()), ring, Point.ORIGIN)));
        items.add(new Group("edge", List.of(WoodDrawing.Look.TRIM.edge(ring, true))));
        double deep = -knife.depth();
        items.add(new Group(
                "depth",
                List.of(new Path(
                        List.of(
                                new Line(new Point(left(), 0), new Point(left() + knife.width(), 0)),
                                new Line(new Point(left(), deep), new Point(left() + knife.width(), deep))),
                        false,
                        LineStyle.PLANE))));
        Box picture = Box.around(items.stream().map(SceneItem::box).toList());
        Group check = new Group("check", FullSize.INCHES.level(measure, Point.ORIGIN));
        items.add(check.moved(
                picture.back() - check.box().back(),
                picture.bottom() - 2 * size - check.box().top()));
        double low = picture.bottom() - 2 * size - check.box().height();
        Group legend = new Group("legend", legend());
        items.add(legend.moved(
                picture.back() - legend.box().back(), low - size - legend.box().top()));
        return PictureSheet.around(
                profile.name() + ", knife",
                "Template of the ground knife, full size. " + Milled.CAUTION,
                items,
                2 * size);
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

    private List<SceneItem> legend() {
        return new Legend(measure, size)
                .title(profile.name())
                .text("Knife template, full size, seen on the flat of the steel, the bottom of the stick to the left;"
                        + " corrected for a hook of "
                        + decimals(knife.head().hook().toDegrees(), 1)
                        + " degrees in a cutting circle of "
                        + Drafting.shop(knife.head().circle().toInches()) + ".")
                .text("Knife " + Drafting.shop(knife.width()) + " wide"
                        + knife.stock()
                                .map(stock -> ", of " + Drafting.shop(stock.toInches()) + " steel")
                                .orElse("")
                        + "; " + decimals(knife.woodDepth(), 3) + " deep in the wood, " + decimals(knife.depth(), 3)
                        + " on the knife, between the two broken lines.")
                .text(decimals(knife.marks(), 1) + " knife marks to the inch, knife-mark depth "
                        + decimals(knife.scallop(), 5) + ", at " + knife.head().speed() + " rpm and a feed of "
                        + decimals(knife.head().feed().toInches() / 12, 0) + " ft a minute; knives cutting: "
                        + knife.head().knives() + ".")
                .text(Milled.CAUTION)
                .items();
    }

    private static String decimals(double figure, int places) {
        return FigurePrinter.INCHES.bare(new Figure(Quantity.COUNT, figure, Rounding.decimals(places)));
    }
}

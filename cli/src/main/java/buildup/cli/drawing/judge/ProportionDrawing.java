package buildup.cli.drawing.judge;

import buildup.catalog.book.BookMember.Zone;
import buildup.catalog.book.EntablaturePart;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Spread;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Gray;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.judge.proportion.Corona;
import buildup.engine.judge.proportion.LaidOrder;
import buildup.engine.judge.proportion.PartShare;
import buildup.engine.judge.proportion.Proportion;
import buildup.engine.section.compose.Member;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The masses of a stack blocked out, the stack itself, and an order of the books at the same height beside it; lines join
 * what is the same in both.
 */
public final class ProportionDrawing {
    /** How high the stack is drawn, in of paper, and how high where that is too large. */
    private static final List<Double> HEIGHTS = List.of(6.0, 5.0, 4.0, 3.0, 2.0, 1.6);

    /** From one column to the next, in of paper. */
    private static final double GAP = 0.9;

    private static final double SIZE = Drafting.TEXT;

    /** A mass as a share of the paper's white; lighter than half, so that a photocopy leaves its letters readable. */
    private static final Gray MASS = new Gray(0.72);

    private final Section section;
    private final Proportion proportion;
    private final TextMeasure measure;
    private final FigurePrinter printer;
    private final double scale;
    private final double low;
    private final Box own;

    private ProportionDrawing(Section section, Proportion proportion, double high, TextMeasure measure) {
        this.section = section;
        this.proportion = proportion;
        this.measure = measure;
        this.printer = Drafting.printer(section.stack());
        this.scale = high / proportion.height();
        this.low = proportion.parts().get(0).bottom();
        this.own = Scale.of(
                section.pieces().stream()
                        .filter(body -> body.inStack())
                        .map(body -> body.outline().box())
                        .reduce(Box::with)
                        .orElseThrow(),
                scale);
    }

    /** The picture; nothing when no parts are known. */
    public static Optional<Scene> of(Section section, Proportion proportion, TextMeasure measure) {
        return everySize(section, proportion, measure).findFirst();
    }

    /** The picture in several sizes with letters of one size, the largest first; nothing when no parts are known. */
    public static Stream<Scene> everySize(Section section, Proportion proportion, TextMeasure measure) {
        return proportion.parts().isEmpty()
                ? Stream.empty()
                : HEIGHTS.stream().map(high -> new ProportionDrawing(section, proportion, high, measure).scene());
    }

    private Scene scene() {
        double masses = -(own.width() + GAP);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("masses", About.of(Subject.PROPORTION, masses(masses))));
        items.add(new Group("stack", stack()));
        double right = own.face();
        Optional<Group> order = proportion.laid().map(laid -> order(laid, own.face() + GAP));
        items.addAll(About.of(Subject.PROPORTION, order.stream().toList()));
        proportion
                .laid()
                .ifPresent(laid -> items.addAll(About.of(Subject.PROPORTION, joins(laid, right, right + GAP))));
        items.addAll(About.of(Subject.PROPORTION, names(own.back() + masses - 2 * SIZE)));
        if (order.isPresent()) {
            items.addAll(About.of(
                    Subject.PROPORTION,
                    orderNames(
                            proportion.laid().orElseThrow(), order.get().box().face() + 2 * SIZE)));
        }
        double under =
                items.stream().mapToDouble(item -> item.box().bottom()).min().orElse(0) - 2 * SIZE;
        items.addAll(titles(masses, order, under));
        items.add(PictureSheet.below(items, legend(), 2 * SIZE));
        return PictureSheet.around(
                section.stack().title() + ", beside the books",
                "Masses blocked out, the section, and an order at the same height with lines between them.",
                items,
                2 * SIZE);
    }

    /** Each piece that is seen as a plain block, from the back of the stack to its face. */
    private List<SceneItem> masses(double shift) {
        Map<Integer, Box> blocks = new TreeMap<>();
        for (Member member : section.members()) {
            boolean part =
                    proportion.parts().stream().anyMatch(one -> one.bodies().contains(member.body()));
            if (part && member.to().y() > member.from().y() + Tolerance.TOUCHING) {
                blocks.merge(member.body(), member.box(), Box::with);
            }
        }
        List<SceneItem> items = new ArrayList<>();
        blocks.values().stream()
                .sorted(Comparator.comparingDouble(Box::bottom))
                .map(box -> new Box(own.back() / scale, box.bottom(), box.face(), box.top()))
                .forEach(box -> {
                    List<Segment> ring = moved(Scale.of(Outline.rectangle(box).segments(), scale), shift, 0);
                    items.add(new Area(Optional.empty(), Optional.empty(), ring, MASS));
                    items.add(new Path(ring, true, LineStyle.OUTLINE));
                });
        return items;
    }

    private List<SceneItem> stack() {
        WoodDrawing wood = WoodDrawing.of(section, PictureView.of(section).scaled(scale));
        List<SceneItem> items = new ArrayList<>();
        for (WoodDrawing.Layer layer : wood.layers()) {
            if (section.body(layer.number()).inStack()) {
                items.addAll(layer.areas());
                items.addAll(layer.part(layer.hatches()));
                items.addAll(layer.part(layer.edges()));
            }
        }
        return items;
    }

    private Group order(LaidOrder laid, double from) {
        double depth = depth();
        List<Segment> ring = moved(Scale.of(OrderProfile.of(laid, depth), scale), from + depth * scale, low * scale);
        List<SceneItem> items = new ArrayList<>(WoodDrawing.Look.TRIM.fill(
                Optional.empty(), Optional.of(laid.order().name()), ring, Point.ORIGIN));
        items.add(WoodDrawing.Look.TRIM.edge(ring, true));
        return new Group("order", items);
    }

    /** As much wood behind the face of the frieze as the stack has there, so that both stand alike. */
    private double depth() {
        double face =
                proportion.part(EntablaturePart.FRIEZE).map(PartShare::face).orElse(0.0);
        return Math.max(face - own.back() / scale, 0.1 * proportion.height());
    }

    private static List<Segment> moved(List<Segment> segments, double right, double up) {
        return segments.stream()
                .map(segment -> segment.moved(Motion.shift(right, up)))
                .toList();
    }

    /** What is the same in both: the ends of the parts, and of bed, corona and crown. */
    private List<SceneItem> joins(LaidOrder laid, double left, double right) {
        List<Line> lines = new ArrayList<>(joined(low, low, left, right));
        double y = low;
        for (PartShare part : proportion.parts()) {
            y += laid.height(part.part());
            lines.addAll(joined(part.top(), y, left, right));
        }
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("parts-joined", joined(lines, LineStyle.RAY)));
        proportion
                .corona()
                .map(corona -> zones(laid, corona, left, right))
                .filter(found -> !found.isEmpty())
                .ifPresent(found -> items.add(new Group("members-joined", joined(found, LineStyle.DAMP))));
        return items;
    }

    /** Level from where the stack ends at that height, then over to the order. */
    private List<Line> joined(double own, double other, double left, double right) {
        double edge = section.members().stream()
                .filter(member -> member.box().bottom() < own + Tolerance.TOUCHING
                        && member.box().top() > own - Tolerance.TOUCHING)
                .filter(member -> proportion.parts().stream()
                        .anyMatch(part -> part.bodies().contains(member.body())))
                .flatMap(member -> member.segments().stream())
                .flatMap(segment -> Stream.of(segment.from(), segment.to()))
                .filter(end -> Math.abs(end.y() - own) < Tolerance.TOUCHING)
                .mapToDouble(end -> end.x() * scale)
                .max()
                .orElse(left);
        Line over = new Line(new Point(left, own * scale), new Point(right, other * scale));
        return edge < left - Tolerance.TOUCHING
                ? List.of(new Line(new Point(edge, own * scale), over.from()), over)
                : List.of(over);
    }

    private static List<SceneItem> joined(List<Line> lines, LineStyle style) {
        return lines.stream()
                .<SceneItem>map(line -> new Path(List.of(line), false, style))
                .toList();
    }

    private List<Line> zones(LaidOrder laid, Corona corona, double left, double right) {
        List<Line> lines = new ArrayList<>();
        double cornice = corniceOf(laid);
        double bed = zone(laid, Zone.BED);
        double top = bed + zone(laid, Zone.CORONA);
        if (laid.members().isEmpty()) {
            return lines;
        }
        if (bed > 0) {
            lines.addAll(joined(corona.bottom(), cornice + bed, left, right));
        }
        if (zone(laid, Zone.CROWN) > 0) {
            lines.addAll(joined(corona.top(), cornice + top, left, right));
        }
        return lines;
    }

    /** The underside of the order's cornice as it stands beside the stack, in. */
    private double corniceOf(LaidOrder laid) {
        return low
                + laid.parts().stream()
                        .filter(part -> part != EntablaturePart.CORNICE)
                        .mapToDouble(laid::height)
                        .sum();
    }

    private static double zone(LaidOrder laid, Zone zone) {
        return laid.members().stream()
                .filter(row -> row.member().zone() == zone)
                .mapToDouble(LaidOrder.Row::height)
                .sum();
    }

    /** The parts of the stack with their shares, on the left. */
    private List<SceneItem> names(double x) {
        List<Spread.Wish> wishes = proportion.parts().stream()
                .map(part -> new Spread.Wish(
                        part.part().word() + " " + size(part.height()) + ", "
                                + printer.print(Figure.share(part.share())),
                        part.bottom() * scale,
                        part.top() * scale))
                .toList();
        return Spread.labels(measure, wishes, x, -1, SIZE);
    }

    /** The parts of the order, and the members of its cornice, on the right. */
    private List<SceneItem> orderNames(LaidOrder laid, double x) {
        List<Spread.Wish> wishes = new ArrayList<>();
        double y = low;
        for (EntablaturePart part : laid.parts()) {
            double height = laid.height(part);
            if (part != EntablaturePart.CORNICE || laid.members().isEmpty()) {
                wishes.add(new Spread.Wish(words(part.word(), height), y * scale, (y + height) * scale));
            } else {
                for (LaidOrder.Row row : laid.members()) {
                    wishes.add(new Spread.Wish(
                            row.member().name() + " " + size(row.height()),
                            (y + row.running() - row.height()) * scale,
                            (y + row.running()) * scale));
                }
            }
            y += height;
        }
        return Spread.labels(measure, wishes, x, 1, SIZE);
    }

    private String words(String name, double height) {
        return name + " " + size(height) + ", " + printer.print(Figure.share(height / proportion.height()));
    }

    private String size(double inches) {
        return Drafting.size(section.stack(), inches);
    }

    private List<SceneItem> titles(double masses, Optional<Group> order, double y) {
        List<SceneItem> items = new ArrayList<>();
        items.add(title("masses", masses + (own.back() + own.face()) / 2, y));
        items.add(title("this stack", (own.back() + own.face()) / 2, y));
        order.ifPresent(group -> items.add(title(
                proportion.laid().orElseThrow().order().name(),
                (group.box().back() + group.box().face()) / 2,
                y)));
        return items;
    }

    private Label title(String text, double x, double y) {
        return Label.of(measure, text, new Point(x, y), SIZE, Label.Anchor.MIDDLE);
    }

    private Group legend() {
        Legend legend = new Legend(measure, SIZE)
                .title(section.stack().title())
                .text(
                        "Masses, section, and an order of the books at the same height. A reading, no judgment of taste. Sizes in "
                                + Drafting.units(section.stack()) + ".");
        proportion.laid().ifPresent(laid -> {
            String cornice = laid.parts().contains(EntablaturePart.CORNICE)
                    ? " Its cornice: "
                            + words("", laid.height(EntablaturePart.CORNICE)).strip() + "."
                    : "";
            legend.text(laid.order().name() + ": " + laid.order().book() + ", "
                    + laid.order().place() + "." + cornice);
            if (!laid.order().memory().isEmpty()) {
                legend.text("From memory: " + laid.order().memory() + ".");
            }
            if (!laid.order().assumed().isEmpty()) {
                legend.text("Assumed: " + laid.order().assumed() + ".");
            }
            legend.line("ends of parts", LineStyle.RAY);
            legend.line("ends of bed, corona and crown", LineStyle.DAMP);
        });
        return legend.group();
    }
}

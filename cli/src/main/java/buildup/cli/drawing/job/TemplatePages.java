package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Grid;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.room.CopeDrawing;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.engine.Answers;
import buildup.engine.mill.template.EndShape;
import buildup.engine.mill.template.LostWood;
import buildup.engine.mill.template.Templates;
import buildup.engine.room.cope.Cope;
import buildup.engine.room.cope.CopeLine;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.rolling.Inset;
import buildup.profiles.rolling.Pocket;
import buildup.profiles.rolling.Rolling;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Every shaped piece and every end as a template at full size, and its mirror image on the next page. */
record TemplatePages(Answers known, Optional<Job> job, FigurePrinter printer, Notices notices) {
    /** Half of a stroke of the cross that marks a center. */
    private static final double CROSS = 0.06;

    private static final Pattern LEFT = new Pattern(45, 0.05, true, 0.007, List.of());

    /**
     * A template.
     *
     * @param sits how it is seen
     * @param cope the line to cope along; none where the piece is not coped
     */
    private record Shape(String name, String sits, Outline outline, List<Segment> cope) {
        private static final String ON_THE_LEFT = "as it sits, the wall on the left";

        /** As it sits, on a wall to its left. */
        static Shape sitting(String name, Outline outline, List<Segment> cope) {
            return new Shape(name, ON_THE_LEFT, outline, cope);
        }

        Shape mirrored() {
            return new Shape(
                    name + ", other hand",
                    "as it sits, the wall on the right",
                    outline.moved(Motion.ENDS),
                    cope.stream().map(segment -> segment.moved(Motion.ENDS)).toList());
        }
    }

    List<PaperPage> pages(PageFrame frame) {
        List<PaperPage> pages = new ArrayList<>();
        for (Shape shape : shapes()) {
            if (Paper.tooMany(frame, shape.outline().box(), notices)) {
                continue;
            }
            lost(shape).map(LostWood::said).ifPresent(notices::add);
            for (Shape hand : List.of(shape, shape.mirrored())) {
                pages.addAll(Paper.fullSize(frame, ShopSheet.TEMPLATES.title(), scene(frame, hand)));
            }
        }
        job.ifPresent(one ->
                pages.addAll(new ReturnTemplates(one, known.section().stack().title(), printer, notices).pages(frame)));
        for (Scene cope : CopeDrawing.each(known.section(), known.copes(), frame.measure())) {
            if (!Paper.tooMany(frame, cope.box(), notices)) {
                pages.addAll(Paper.fullSize(frame, "Copes", cope));
            }
        }
        return pages;
    }

    private List<Shape> shapes() {
        Section section = known.section();
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            Outline outline = section.body(i).outline();
            if (section.body(i).trim() && !outline.isRectangle()) {
                List<Segment> face = isCoped(i) ? CopeLine.onFace(outline, 90) : List.of();
                shapes.add(Shape.sitting(section.name(i), outline, face));
            }
        }
        for (EndShape end : known.templates().ends()) {
            shapes.add(Shape.sitting(end.name(), end.outline(), List.of()));
        }
        return shapes;
    }

    /** Whether it is coped square to the stick that it meets, so that its own face is the line. */
    private boolean isCoped(int body) {
        List<Cope> copes = known.copes().stream()
                .filter(cope -> cope.fit().course().body() == body)
                .toList();
        return !copes.isEmpty()
                && copes.stream().allMatch(cope -> Math.abs(cope.corner() - 90) <= Tolerance.SAME_DIRECTION);
    }

    private Scene scene(PageFrame frame, Shape shape) {
        Legend legend = new Legend(frame.measure(), Drafting.TEXT)
                .title(shape.name())
                .text("Template, full size, " + shape.sits() + "; "
                        + Drafting.units(known.section().stack())
                        + ". Glue it to the stock of the template, saw outside the line and file to it.");
        legend.line("edge of the piece", LineStyle.OUTLINE);
        List<SceneItem> items = new ArrayList<>();
        items.addAll(Grid.of(printer.metric()).over(shape.outline().box().grown(0.25), List.of()));
        items.add(new Path(shape.outline().segments(), true, LineStyle.OUTLINE));
        if (!shape.cope().isEmpty()) {
            items.add(new Path(shape.cope(), false, LineStyle.LIT));
            legend.line("cope line: saw along it, leaning back behind it", LineStyle.LIT);
        }
        guide(shape, items, legend);
        items.add(PictureSheet.below(items, legend.group(), 0.3));
        return PictureSheet.around(shape.name(), "A template at full size.", items, 0.1);
    }

    /** Where the center of the bearing, or of the bit in its bushing, runs; what it leaves; how a bushing's template differs. */
    private void guide(Shape shape, List<SceneItem> items, Legend legend) {
        Outline outline = shape.outline();
        Templates templates = known.templates();
        templates.bearing().ifPresent(bearing -> {
            Rolling rolling = rolled(outline, "bearing", bearing, items, legend);
            tightest(outline, rolling, "bearing", bearing / 2, bearing / 2, items, legend);
        });
        templates.inset().ifPresent(inset -> {
            double bit = templates.bit().orElseThrow();
            double bushing = templates.bushing().orElseThrow();
            Rolling rolling = templates.bearing().isEmpty()
                    ? rolled(outline, "bit", bit, items, legend)
                    : Rolling.of(outline, bit / 2);
            List<Segment> edge = Inset.of(outline, inset);
            if (!edge.isEmpty()) {
                items.add(new Path(edge, false, LineStyle.DAMP));
                legend.line("edge of the template for the bushing", LineStyle.DAMP);
            }
            tightest(outline, rolling, "bushing", bushing / 2, bit / 2, items, legend);
            legend.text("For a bushing of " + fine(bushing) + " and a bit of " + fine(bit)
                    + ", run round the outside: make the template " + fine(inset)
                    + " smaller all round than the edge of the piece."
                    + " Sharp outside corners come out round, radius " + fine(inset) + ".");
            lost(shape).ifPresent(lost -> {
                items.add(new Path(LostEdge.teeth(outline, lost.edge()), false, LineStyle.BITE));
                legend.sample("toothed: edge that would be cut off", at -> List.of(LostEdge.sample(at)));
                legend.text(printer.print(lost.said().sentence()) + " "
                        + printer.print(lost.said().cure().orElseThrow()));
            });
        });
    }

    /** What a bushing's template has no place for. */
    private Optional<LostWood> lost(Shape shape) {
        OptionalDouble inset = known.templates().inset();
        return inset.isEmpty() ? Optional.empty() : LostWood.of(shape.name(), shape.outline(), inset.getAsDouble());
    }

    private Rolling rolled(Outline outline, String what, double diameter, List<SceneItem> items, Legend legend) {
        Rolling rolling = Rolling.of(outline, diameter / 2);
        items.add(new Path(rolling.centers(), false, LineStyle.COULD));
        legend.line("center of the " + what + ", " + fine(diameter) + " in diameter", LineStyle.COULD);
        List<Pocket> left = rolling.pockets();
        for (Pocket pocket : left) {
            items.add(new Hatch(pocket.ring(), LEFT, Point.ORIGIN));
        }
        if (!left.isEmpty()) {
            legend.text("Tighter inside than the " + what + ", radius " + fine(diameter / 2) + ", at " + left.size()
                    + (left.size() == 1 ? " place" : " places")
                    + ", hatched: finish it by hand, or take a smaller one.");
        }
        return rolling;
    }

    /**
     * The circle of what guides, with its center marked, where the inside is tightest.
     *
     * @param rolling of what cuts
     * @param radius of what guides, and {@code cutting} of what cuts, in
     */
    private void tightest(
            Outline outline,
            Rolling rolling,
            String what,
            double radius,
            double cutting,
            List<SceneItem> items,
            Legend legend) {
        center(outline, rolling, cutting).ifPresent(center -> {
            List<Segment> lines = new ArrayList<>(Caption.circle(center, radius));
            lines.add(new Line(center.minus(new Point(CROSS, 0)), center.plus(new Point(CROSS, 0))));
            lines.add(new Line(center.minus(new Point(0, CROSS)), center.plus(new Point(0, CROSS))));
            items.add(new Path(lines, false, LineStyle.OTHER));
            legend.line("the " + what + " where the inside is tightest, radius " + fine(radius), LineStyle.OTHER);
        });
    }

    /** Where the center of what cuts then is: over the most air that it leaves, else in the tightest hollow. */
    private static Optional<Point> center(Outline outline, Rolling rolling, double cutting) {
        Optional<Point> over = rolling.pockets().stream()
                .max(Comparator.comparingDouble(Pocket::area))
                .flatMap(pocket -> pocket.ring().stream()
                        .filter(one -> one instanceof Arc arc && Math.abs(arc.radius() - cutting) <= Tolerance.TOUCHING)
                        .map(one -> ((Arc) one).center())
                        .filter(middle -> !outline.holds(middle))
                        .findFirst());
        return over.or(() -> outline.segments().stream()
                .filter(one -> one instanceof Arc arc && !arc.counterclockwise())
                .map(Arc.class::cast)
                .min(Comparator.comparingDouble(Arc::radius))
                .map(arc -> arc.at(0.5).towards(arc.center(), Math.min(1, cutting / arc.radius()))));
    }

    private String fine(double inches) {
        return printer.print(Figure.fine(inches));
    }
}

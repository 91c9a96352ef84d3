package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Grid;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
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
import buildup.engine.mill.template.Templates;
import buildup.engine.room.run.Cut;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.rolling.Pocket;
import buildup.profiles.rolling.Rolling;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every shaped piece and every end as a template at full size, and its mirror image on the next page. */
record TemplatePages(Answers known, Optional<Job> job, FigurePrinter printer) {
    private static final Pattern LEFT = new Pattern(45, 0.05, true, 0.007, List.of());

    /**
     * A template.
     *
     * @param cope the line to cope along; none where the piece is not coped
     */
    private record Shape(String name, Outline outline, List<Segment> cope) {
        Shape mirrored() {
            return new Shape(
                    name + ", other hand",
                    outline.moved(Motion.ENDS),
                    cope.stream().map(segment -> segment.moved(Motion.ENDS)).toList());
        }
    }

    List<PaperPage> pages(PageFrame frame) {
        List<PaperPage> pages = new ArrayList<>();
        for (Shape shape : shapes()) {
            for (Shape hand : List.of(shape, shape.mirrored())) {
                pages.addAll(Paper.fullSize(frame, ShopSheet.TEMPLATES.title(), scene(frame, hand)));
            }
        }
        return pages;
    }

    private List<Shape> shapes() {
        Section section = known.section();
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            int number = i;
            Outline outline = section.body(i).outline();
            if (section.body(i).trim() && !outline.isRectangle()) {
                List<Segment> face = isCoped(i)
                        ? section.members().stream()
                                .filter(member -> member.body() == number)
                                .flatMap(member -> member.segments().stream())
                                .toList()
                        : List.of();
                shapes.add(new Shape(section.name(i), outline, face));
            }
        }
        for (EndShape end : known.templates().ends()) {
            shapes.add(new Shape(end.name(), end.outline(), List.of()));
        }
        return shapes;
    }

    private boolean isCoped(int body) {
        return job.stream()
                .flatMap(found -> found.cuts().stream())
                .filter(cut -> cut.body() == body)
                .anyMatch(TemplatePages::isCoped);
    }

    private static boolean isCoped(Cut cut) {
        return cut.left().kind() == EndCut.Kind.COPE || cut.right().kind() == EndCut.Kind.COPE;
    }

    private Scene scene(PageFrame frame, Shape shape) {
        Legend legend = new Legend(frame.measure(), Drafting.TEXT)
                .title(shape.name())
                .text("Template, full size, as it sits, the wall on the "
                        + (shape.name().endsWith("other hand") ? "right" : "left") + "; "
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
        guide(shape.outline(), items, legend);
        items.add(PictureSheet.below(items, legend.group(), 0.3));
        return PictureSheet.around(shape.name(), "A template at full size.", items, 0.1);
    }

    /** Where the center of the bearing, or of the bit in its bushing, runs; what it leaves; how a bushing's template differs. */
    private void guide(Outline outline, List<SceneItem> items, Legend legend) {
        Templates templates = known.templates();
        templates.bearing().ifPresent(bearing -> rolled(outline, "bearing", bearing, items, legend));
        templates.inset().ifPresent(inset -> {
            double bit = templates.bit().orElseThrow();
            if (templates.bearing().isEmpty()) {
                rolled(outline, "bit", bit, items, legend);
            }
            legend.text("For a bushing of " + fine(templates.bushing().orElseThrow()) + " and a bit of " + fine(bit)
                    + ", run round the outside: make the template " + fine(inset)
                    + " smaller all round than the edge of the piece.");
        });
    }

    private void rolled(Outline outline, String what, double diameter, List<SceneItem> items, Legend legend) {
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
    }

    private String fine(double inches) {
        return printer.print(Figure.fine(inches));
    }
}

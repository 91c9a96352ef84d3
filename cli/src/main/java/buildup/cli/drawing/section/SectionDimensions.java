package buildup.cli.drawing.section;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.label.Dimension;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is dimensioned: each reveal, each step from piece to piece, the height of each piece that shows, the whole. */
final class SectionDimensions {
    private final Section section;
    private final PictureView view;
    private final FigurePrinter printer;
    private final List<Dimension> measures = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private SectionDimensions(Section section, PictureView view, FigurePrinter printer) {
        this.section = section;
        this.view = view;
        this.printer = printer;
    }

    static SectionDimensions of(Section section, PictureView view) {
        return of(section, view, Drafting.printer(section.stack()));
    }

    /** @param printer of the sizes */
    static SectionDimensions of(Section section, PictureView view, FigurePrinter printer) {
        SectionDimensions measures = new SectionDimensions(section, view, printer);
        section.reveals().forEach(measures::reveal);
        measures.steps();
        measures.heights();
        measures.whole();
        return measures;
    }

    private String size(double inches) {
        return printer.bare(Figure.length(inches));
    }

    List<Dimension> list() {
        return List.copyOf(measures);
    }

    /** Sizes that have no place on the picture, in words. */
    List<String> notes() {
        return List.copyOf(notes);
    }

    private void add(Dimension measure) {
        Dimension ordered = measure.ordered();
        if (ordered.length() > Tolerance.TOUCHING && measures.stream().noneMatch(ordered::spans)) {
            measures.add(ordered);
        }
    }

    private void near(DimensionAxis run, Point p, Point q, String words) {
        String between = size(Math.abs(run.along(p) - run.along(q)));
        add(new Dimension(run, Dimension.Where.NEAR, p, q, Optional.empty(), List.of(between), words));
    }

    private void reveal(Reveal reveal) {
        String words =
                Section.letter(reveal.piece()) + " shows " + size(reveal.amount()) + " past " + letter(reveal.over());
        switch (reveal.along()) {
            case LEVEL -> near(DimensionAxis.LEVEL, reveal.at(), reveal.to(), words);
            case UPRIGHT -> near(DimensionAxis.UPRIGHT, reveal.at(), reveal.to(), words);
            case SLOPED -> {
                if (reveal.amount() > Tolerance.TOUCHING) {
                    notes.add(words + ", sloped");
                }
            }
        }
    }

    private String letter(int number) {
        return section.body(number).piece() ? Section.letter(number) : section.name(number);
    }

    private void steps() {
        List<Member> rows = section.members();
        for (int i = 1; i < rows.size(); i++) {
            Member row = rows.get(i);
            Member before = rows.get(i - 1);
            if (row.step().isPresent() && row.part() == before.part()) {
                double step = row.step().getAsDouble();
                near(
                        DimensionAxis.LEVEL,
                        outermost(before.body(), row.from()),
                        outermost(row.body(), row.from()),
                        letter(row.body()) + " stands " + size(Math.abs(step))
                                + (step > 0 ? " out from " : " back from ") + letter(before.body()));
            }
        }
    }

    /** Where a piece that shows stands out farthest, as near to a joint as can be. */
    private Point outermost(int body, Point joint) {
        Point best = joint;
        double face = Double.NEGATIVE_INFINITY;
        double far = Double.MAX_VALUE;
        for (Member row : section.members()) {
            for (Segment segment : row.body() == body ? row.segments() : List.<Segment>of()) {
                for (Point p : places(segment, joint)) {
                    boolean same = Math.abs(p.x() - face) <= Tolerance.SNAP;
                    if (same ? p.distance(joint) < far : p.x() > face) {
                        best = p;
                        face = p.x();
                        far = p.distance(joint);
                    }
                }
            }
        }
        return best;
    }

    private static List<Point> places(Segment segment, Point joint) {
        if (segment instanceof Line line) {
            return List.of(line.from(), line.to(), line.at(line.nearest(joint)));
        }
        return segment.flattened(Tolerance.CHORD);
    }

    private void heights() {
        List<Integer> showing =
                section.members().stream().map(Member::body).distinct().toList();
        for (int i = 0; i < section.bodies().size(); i++) {
            Body body = section.body(i);
            Box box = body.outline().box();
            boolean whole = box.height() > view.stack().height() - Tolerance.TOUCHING;
            if (!whole && (body.trim() || (body.nailer() && showing.contains(i)))) {
                String high = size(box.height());
                add(new Dimension(
                        DimensionAxis.UPRIGHT,
                        Dimension.Where.LANE,
                        new Point(box.face(), box.bottom()),
                        new Point(box.face(), box.top()),
                        Optional.of(Section.letter(i)),
                        List.of(high),
                        Section.letter(i) + " is " + high + " high"));
            }
        }
    }

    private void whole() {
        Box stack = view.stack();
        whole(
                DimensionAxis.LEVEL,
                new Point(0, stack.top()),
                new Point(section.totals().projection(), stack.top()),
                "projection");
        whole(
                DimensionAxis.UPRIGHT,
                new Point(stack.face(), stack.bottom()),
                new Point(stack.face(), stack.top()),
                "height");
    }

    private void whole(DimensionAxis run, Point from, Point to, String what) {
        String between = size(run.along(to) - run.along(from));
        String words = what + " " + between;
        add(new Dimension(run, Dimension.Where.OUTSIDE, from, to, Optional.empty(), List.of(words, between), words));
    }
}

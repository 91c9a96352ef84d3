package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Totals;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The head of a report: what a carpenter wants to know at the saw; as text, narrow enough for a telephone. */
public final class Summary {
    /** Columns that a telephone shows of a message in a fixed-width letter. */
    static final int WIDTH = 48;

    private static final int LABEL = 17;

    private final Section section;
    private final FigurePrinter printer;
    private final List<Row> rows = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    /** A figure and what it is called. */
    public record Row(String label, String value) {}

    private Summary(Answers known, FigurePrinter printer) {
        this.section = known.section();
        this.printer = printer;
        totals();
    }

    /** The figures of the whole; the same labels in every unit. */
    public static List<Row> rows(Answers known, FigurePrinter printer) {
        return List.copyOf(new Summary(known, printer).rows);
    }

    static String write(Answer answer, Answers known) {
        Summary summary = new Summary(known, new FigurePrinter(answer.unit()));
        summary.rows.forEach(summary::line);
        summary.text.append('\n');
        summary.lines(summary.printer.legend(), "");
        return summary.text.toString();
    }

    private void totals() {
        Totals totals = section.totals();
        row("Height", size(totals.height()) + trim(totals.height(), totals.trimHeight()));
        row("Projection", size(totals.projection()) + trim(totals.projection(), totals.trimProjection()));
        row("Bottom to top", printer.bare(Figure.length(totals.bottom())) + " to " + size(totals.top()));
        left("Under ceiling", section.ceilingLeft());
        left("Projection left", section.projectionLeft());
        row("Weight", printer.print(Figure.of(Quantity.LINE_WEIGHT, totals.weightPerFoot())));
        row("Area", printer.print(Figure.area(totals.area())));
        row("Wood", String.join(", ", woods()));
    }

    /** What is said of the trim alone where nailers make a difference that shows. */
    private String trim(double all, double trim) {
        return size(all).equals(size(trim)) ? "" : ", trim alone " + size(trim);
    }

    private void left(String label, OptionalDouble left) {
        left.ifPresent(
                room -> row(label, room < -Tolerance.COINCIDENT ? size(-room) + " too much" : size(room) + " left"));
    }

    private String size(double inches) {
        return printer.print(Figure.length(inches));
    }

    private Set<String> woods() {
        Set<String> woods = new LinkedHashSet<>();
        section.bodies().stream()
                .filter(body -> body.inStack())
                .forEach(body ->
                        woods.add(body.placed().orElseThrow().piece().wood().name()));
        return woods;
    }

    private void row(String label, String value) {
        rows.add(new Row(label, value));
    }

    private void line(Row row) {
        List<String> lines = Display.wrap(row.value(), WIDTH - LABEL);
        for (int i = 0; i < lines.size(); i++) {
            String head = i == 0 ? row.label() : "";
            text.append((head + " ".repeat(LABEL - head.length()) + lines.get(i)).stripTrailing())
                    .append('\n');
        }
    }

    private void lines(String words, String indent) {
        Display.wrap(words, WIDTH - indent.length())
                .forEach(line -> text.append(indent).append(line).append('\n'));
    }
}

package buildup.cli.compare;

import buildup.cli.report.JsonReport;
import buildup.cli.tell.BesideJson;
import buildup.cli.tell.Json;
import buildup.engine.Answer;
import buildup.shared.figure.FigurePrinter;

/**
 * Two stacks for other programs: each as its own report, and sheet by sheet the figures in which they differ, b less a.
 * {@link ComparisonSchema} says what each key means.
 */
public final class ComparisonJson {
    private ComparisonJson() {}

    /** The object; without differences when one of the two was refused. */
    public static String write(Answer a, Answer b) {
        Json json = new Json().put("a", JsonReport.object(a)).put("b", JsonReport.object(b));
        Comparison.of(a, b)
                .ifPresent(comparison -> BesideJson.put(json, comparison.figures(), new FigurePrinter(a.unit())));
        return json.written() + "\n";
    }
}

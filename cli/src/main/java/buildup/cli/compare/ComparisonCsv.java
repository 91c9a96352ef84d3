package buildup.cli.compare;

import buildup.cli.tell.BesideCsv;
import buildup.shared.figure.FigurePrinter;

/** A comparison for a spreadsheet, in the unit of A. */
public final class ComparisonCsv {
    private ComparisonCsv() {}

    /** Every figure of both. */
    public static String write(Comparison comparison) {
        return new BesideCsv(new FigurePrinter(comparison.a().unit())).write(comparison.figures());
    }
}

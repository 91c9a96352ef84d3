package buildup.cli.compare;

import buildup.cli.report.TextReport;
import buildup.cli.table.Display;
import buildup.cli.table.TextTable;
import buildup.cli.tell.BesideTables;
import buildup.engine.Answer;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import java.util.List;

/** A comparison as text: which is which, what changes in words, then every figure side by side. */
public final class ComparisonText {
    /** Columns of the head, which is to be read on a telephone too. */
    private static final int HEAD_WIDTH = 48;

    private ComparisonText() {}

    /** The text, no line of it wider than a text report; sizes in the unit of A. */
    public static String write(Comparison comparison) {
        StringBuilder text = new StringBuilder();
        stack(text, "A", comparison.a());
        stack(text, "B", comparison.b());
        text.append('\n');
        VerdictsBeside.of(comparison, new FigurePrinter(comparison.a().unit()))
                .forEach(
                        table -> text.append(TextTable.write(table, HEAD_WIDTH)).append('\n'));
        lines(text, differing(comparison), HEAD_WIDTH, "");
        FigurePrinter printer = new FigurePrinter(comparison.a().unit());
        List<String> words = ChangeWords.of(comparison, printer);
        if (!words.isEmpty()) {
            text.append("\nFrom A to B:\n");
            words.forEach(said -> lines(text, said, HEAD_WIDTH, "  "));
        }
        text.append('\n');
        lines(text, printer.legend(), HEAD_WIDTH, "");
        new BesideTables(printer)
                .of(comparison.sheets())
                .forEach(table -> text.append('\n').append(TextTable.write(table, TextReport.WIDTH)));
        text.append('\n');
        lines(text, TextReport.CAUTION, TextReport.WIDTH, "");
        return text.toString();
    }

    /** How many figures there are and how many of them differ. */
    static String differing(Comparison comparison) {
        return comparison.count() + " figures, of which " + comparison.differing() + " differ.";
    }

    private static void stack(StringBuilder text, String letter, Answer answer) {
        lines(text, letter + ": " + answer.title() + " (" + answer.file() + ")", HEAD_WIDTH, "");
        lines(
                text,
                counted(answer, Level.PROBLEM, "problem") + ", " + counted(answer, Level.NOTE, "note"),
                HEAD_WIDTH,
                "   ");
    }

    private static String counted(Answer answer, Level level, String word) {
        long count = answer.notices().stream()
                .filter(notice -> notice.level() == level)
                .count();
        return (count == 0 ? "no" : count) + " " + word + (count == 1 ? "" : "s");
    }

    private static void lines(StringBuilder text, String words, int width, String indent) {
        Display.wrap(words, width - indent.length())
                .forEach(line -> text.append(indent).append(line).append('\n'));
    }
}

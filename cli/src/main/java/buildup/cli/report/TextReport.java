package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.shared.figure.FigurePrinter;
import java.util.List;

/** Everything known of one stack as text: the verdict, then table by table, then a word of caution. */
public final class TextReport {
    /** Columns that a text report never exceeds. */
    public static final int WIDTH = 80;

    public static final String CAUTION =
            "A bench check for trim, not engineering: where strength, fire or work overhead is"
                    + " touched, local code, makers' labels and a licensed person decide.";

    /** Blanks before the lines in which a notice goes on. */
    private static final int HANGING = 2;

    private TextReport() {}

    /** The report; nothing when no figures are known. Notices come behind it, see {@link #notices}. */
    public static String write(Answer answer) {
        return answer.known().map(known -> write(answer, known)).orElse("");
    }

    private static String write(Answer answer, Answers known) {
        StringBuilder text = new StringBuilder(VerdictText.write(answer, known));
        text.append('\n');
        Display.wrap(new FigurePrinter(answer.unit()).legend(), WIDTH)
                .forEach(line -> text.append(line).append('\n'));
        List<Table> tables = new SectionTables(known, new FigurePrinter(answer.unit())).all();
        tables.stream()
                .filter(table -> !table.rows().isEmpty())
                .forEach(table -> text.append('\n').append(TextTable.write(table, WIDTH)));
        text.append('\n');
        Display.wrap(CAUTION, WIDTH).forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    /**
     * What was said, as it stands at the end of a text that is kept in a file; nothing when nothing was said.
     *
     * @param lines as {@link NoticeText} writes them
     */
    public static String notices(String lines) {
        StringBuilder text = new StringBuilder();
        lines.lines().forEach(line -> {
            List<String> wrapped = Display.wrap(line, WIDTH - HANGING);
            text.append(wrapped.get(0)).append('\n');
            wrapped.stream()
                    .skip(1)
                    .forEach(more ->
                            text.append(" ".repeat(HANGING)).append(more).append('\n'));
        });
        return text.isEmpty() ? "" : "\nNOTICES\n" + text;
    }
}

package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Verdict;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Totals;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The verdict as text: at most 80 columns, the decision first. */
public final class VerdictText {
    private static final int WIDTH = 80;
    private static final int INDENT = 16;

    private final FigurePrinter printer;
    private final StringBuilder text = new StringBuilder();

    private VerdictText(FigurePrinter printer) {
        this.printer = printer;
    }

    /** The whole block, its lines ended by a line break. */
    public static String write(Answer answer, Answers known) {
        VerdictText writer = new VerdictText(new FigurePrinter(answer.unit()));
        writer.line("", writer.heading(answer, known), 0);
        writer.text.append('\n');
        writer.block(known.verdict());
        return writer.text.toString();
    }

    /** The rows alone that are not plainly right, as {@code check} prints them. */
    public static String doubts(Answer answer, Answers known) {
        VerdictText writer = new VerdictText(new FigurePrinter(answer.unit()));
        known.verdict().rulings().stream()
                .filter(ruling -> ruling.answer() == Reply.NO || ruling.answer() == Reply.LOOK)
                .forEach(writer::row);
        return writer.text.toString();
    }

    /** The answer in a few words. */
    public static String answer(Verdict verdict) {
        long no = verdict.count(Reply.NO);
        long look = verdict.count(Reply.LOOK);
        if (no > 0) {
            return "NO, " + no + " of " + verdict.rulings().size();
        }
        return look > 0 ? "yes; " + look + " to look at" : "yes";
    }

    private String heading(Answer answer, Answers known) {
        Totals totals = known.section().totals();
        String woods = known.section().bodies().stream()
                .filter(Body::inStack)
                .map(body -> body.placed().orElseThrow().piece().wood().name())
                .distinct()
                .collect(Collectors.joining(", "));
        return answer.title()
                + ": "
                + printer.print(Phrase.of("{height} high, {out} out, {weight}")
                        .with("height", Figure.length(totals.height()))
                        .with("out", Figure.length(totals.projection()))
                        .with("weight", Figure.of(Quantity.LINE_WEIGHT, totals.weightPerFoot())))
                + (woods.isEmpty() ? "" : ", " + woods);
    }

    private void block(Verdict verdict) {
        text.append("WILL IT BE RIGHT?  ").append(answer(verdict)).append('\n');
        verdict.rulings().forEach(this::row);
        if (!verdict.trusted().isEmpty()) {
            line(
                    " on trust       ",
                    verdict.trusted().stream().map(printer::print).collect(Collectors.joining("; ")),
                    INDENT);
        }
        if (!verdict.notAsked().isEmpty()) {
            line(
                    " not asked      ",
                    verdict.notAsked().stream()
                            .map(one -> one.key() + " (" + one.question() + ")")
                            .collect(Collectors.joining(", ")),
                    INDENT);
        }
    }

    private void row(Ruling ruling) {
        String answer =
                ruling.answer() == Reply.NO ? "NO" : ruling.answer().name().toLowerCase(Locale.ROOT);
        String head = " " + padded(answer, 6) + padded(ruling.topic().word(), INDENT - 7);
        line(head, printer.print(ruling.because()), INDENT);
        ruling.cure().ifPresent(cure -> line(" ".repeat(INDENT) + "> ", printer.print(cure), INDENT + 2));
    }

    private static String padded(String word, int width) {
        return word + " ".repeat(Math.max(1, width - word.length()));
    }

    private void line(String head, String words, int indent) {
        List<String> lines = Display.wrap(words, WIDTH - indent);
        for (int i = 0; i < lines.size(); i++) {
            text.append(((i == 0 ? head : " ".repeat(indent)) + lines.get(i)).stripTrailing())
                    .append('\n');
        }
    }
}

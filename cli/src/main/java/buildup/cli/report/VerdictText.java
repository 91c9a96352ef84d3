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
import java.util.stream.Stream;

/** The verdict as text: at most 80 columns, the decision first. */
public final class VerdictText {
    private static final int WIDTH = 80;
    private static final int INDENT = 16;

    /** No verdict is longer, in lines; the figures that it leaves out stand in the tables below it. */
    private static final int MOST_LINES = 25;

    private static final int NO_LIMIT = 1_000;
    private static final String DOTS = " ...";

    /**
     * How many lines a row may take.
     *
     * @param no one that says no
     * @param other one that does not
     * @param cure below it
     */
    private record Limits(int no, int other, int cure) {}

    /** Tried in turn until the block fits. */
    private static final List<Limits> LIMITS = List.of(
            new Limits(NO_LIMIT, NO_LIMIT, NO_LIMIT),
            new Limits(NO_LIMIT, 1, NO_LIMIT),
            new Limits(2, 1, 1),
            new Limits(1, 1, 1));

    private final FigurePrinter printer;
    private final StringBuilder text = new StringBuilder();
    private Limits limits = LIMITS.get(0);

    private VerdictText(FigurePrinter printer) {
        this.printer = printer;
    }

    /** The whole block, its lines ended by a line break. */
    public static String write(Answer answer, Answers known) {
        VerdictText writer = new VerdictText(new FigurePrinter(answer.unit()));
        writer.line("", writer.heading(answer, known), 0, NO_LIMIT);
        writer.text.append('\n');
        int heading = writer.text.length();
        for (Limits limits : LIMITS) {
            writer.limits = limits;
            writer.text.setLength(heading);
            writer.block(known.verdict());
            if (writer.text.chars().filter(letter -> letter == '\n').count() <= MOST_LINES) {
                break;
            }
        }
        return writer.text.toString();
    }

    /** The rows alone that are not plainly right, as {@code check} prints them. */
    public static String doubts(Answer answer, Answers known) {
        VerdictText writer = new VerdictText(new FigurePrinter(answer.unit()));
        known.verdict().rulings().stream()
                .filter(ruling -> ruling.answer() != Reply.YES)
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
        String told = Stream.of(counted(look, "to look at"), counted(verdict.count(Reply.TRUST), "on trust"))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return told.isEmpty() ? "yes" : "yes; " + told;
    }

    private static String counted(long rows, String words) {
        return rows > 0 ? rows + " " + words : "";
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
                    INDENT,
                    limits.other());
        }
        if (!verdict.notAsked().isEmpty()) {
            line(
                    " not asked      ",
                    verdict.notAsked().stream().map(Verdict.NotAsked::words).collect(Collectors.joining(", ")),
                    INDENT,
                    limits.other() + 1);
        }
    }

    private void row(Ruling ruling) {
        String answer =
                ruling.answer() == Reply.NO ? "NO" : ruling.answer().name().toLowerCase(Locale.ROOT);
        String word = ruling.topic().word();
        // a long word begins farther left, so that all sentences begin in one column
        int before = Math.min(6, INDENT - 2 - word.length());
        String head = " " + padded(answer, before) + padded(word, INDENT - 1 - before);
        line(head, printer.print(ruling.because()), INDENT, ruling.answer() == Reply.NO ? limits.no() : limits.other());
        ruling.cure()
                .ifPresent(cure -> line(" ".repeat(INDENT) + "> ", printer.print(cure), INDENT + 2, limits.cure()));
    }

    private static String padded(String word, int width) {
        return word + " ".repeat(Math.max(1, width - word.length()));
    }

    /** @param most lines; what is longer ends in three dots */
    private void line(String head, String words, int indent, int most) {
        List<String> lines = Display.wrap(words, WIDTH - indent);
        for (int i = 0; i < Math.min(lines.size(), most); i++) {
            String line = i == most - 1 && i < lines.size() - 1
                    ? Display.wrap(lines.get(i), WIDTH - indent - DOTS.length()).get(0) + DOTS
                    : lines.get(i);
            text.append(((i == 0 ? head : " ".repeat(indent)) + line).stripTrailing())
                    .append('\n');
        }
    }
}

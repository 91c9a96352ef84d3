package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.judge.verdict.Verdict;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Totals;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The verdict as text: at most 80 columns, the decision first. */
public final class VerdictText {
    private static final int WIDTH = 80;
    private static final int INDENT = 16;

    /** No verdict is longer, in lines; the figures that it leaves out stand in the tables below it. */
    private static final int MOST_LINES = 25;

    /** Where a sentence may end before its end, the better places first. */
    private static final List<Pattern> PARTED = List.of(Pattern.compile("[;,.] "), Pattern.compile(": "));

    private static final int NO_LIMIT = 1_000;

    /** Behind what is shorter than it is told below. */
    private static final String MORE = " (more below)";

    /**
     * How short the block is: in how many lines a row is said.
     *
     * @param no one that says no
     * @param look one that leaves something to a person; of none, all of them stand in one row
     * @param yes one that says yes; of none, all of them stand in one row
     * @param cures how many are told; the others stand below alone
     * @param why whether what is not asked is told with its question
     */
    private record Limits(int no, int look, int yes, int cures, boolean why) {
        Limits telling(int fewer) {
            return new Limits(no, look, yes, fewer, why);
        }
    }

    private static final Limits SHORT = new Limits(NO_LIMIT, 0, 0, NO_LIMIT, false);

    /** Tried in turn until the block fits: what is right is said shorter first, what is wrong last. */
    private static final List<Limits> LIMITS = Stream.of(
                    Stream.of(
                            new Limits(NO_LIMIT, NO_LIMIT, NO_LIMIT, NO_LIMIT, true),
                            new Limits(NO_LIMIT, NO_LIMIT, NO_LIMIT, NO_LIMIT, false),
                            new Limits(NO_LIMIT, NO_LIMIT, 1, NO_LIMIT, false),
                            new Limits(NO_LIMIT, 2, 1, NO_LIMIT, false),
                            new Limits(NO_LIMIT, 2, 0, NO_LIMIT, false),
                            new Limits(NO_LIMIT, 1, 0, NO_LIMIT, false),
                            SHORT),
                    IntStream.iterate(Topic.values().length, told -> told >= 0, told -> told - 1)
                            .mapToObj(SHORT::telling),
                    Stream.of(new Limits(2, 0, 0, 0, false), new Limits(1, 0, 0, 0, false)))
            .flatMap(Function.identity())
            .toList();

    private final FigurePrinter printer;
    private final StringBuilder text = new StringBuilder();
    private Limits limits = LIMITS.get(0);

    /** So many were told, or left out. */
    private int cures;

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
        cures = 0;
        text.append("WILL IT BE RIGHT?  ").append(answer(verdict)).append('\n');
        List<Ruling> told = verdict.rulings().stream()
                .filter(ruling -> most(ruling.answer()) > 0)
                .toList();
        told.forEach(this::row);
        for (Reply reply : List.of(Reply.LOOK, Reply.TRUST, Reply.YES)) {
            String topics = verdict.rulings().stream()
                    .filter(ruling -> ruling.answer() == reply && !told.contains(ruling))
                    .map(ruling -> ruling.topic().word())
                    .collect(Collectors.joining(", "));
            if (!topics.isEmpty()) {
                line(" " + padded(word(reply), INDENT - 1), topics, INDENT, NO_LIMIT);
            }
        }
        if (told.stream().filter(ruling -> ruling.cure().isPresent()).count() > limits.cures()) {
            line(" cures          ", "the others with each problem below", INDENT, NO_LIMIT);
        }
        if (!verdict.trusted().isEmpty()) {
            line(
                    " on trust       ",
                    verdict.trusted().stream().map(printer::print).collect(Collectors.joining("; ")),
                    INDENT,
                    Math.max(1, limits.look()));
        }
        if (!verdict.notAsked().isEmpty()) {
            line(
                    " not asked      ",
                    verdict.notAsked().stream()
                            .map(one -> limits.why() ? one.words() : one.key())
                            .collect(Collectors.joining(", ")),
                    INDENT,
                    NO_LIMIT);
        }
    }

    private static String word(Reply answer) {
        return answer == Reply.NO ? "NO" : answer.name().toLowerCase(Locale.ROOT);
    }

    private int most(Reply answer) {
        return switch (answer) {
            case NO -> limits.no();
            case LOOK, TRUST -> limits.look();
            case YES -> limits.yes();
        };
    }

    private void row(Ruling ruling) {
        String word = ruling.topic().word();
        // a long word begins farther left, so that all sentences begin in one column
        int before = Math.min(6, INDENT - 2 - word.length());
        String head = " " + padded(word(ruling.answer()), before) + padded(word, INDENT - 1 - before);
        line(head, printer.print(ruling.because()), INDENT, most(ruling.answer()));
        if (ruling.cure().isPresent() && cures++ < limits.cures()) {
            line(" ".repeat(INDENT) + "> ", printer.print(ruling.cure().get()), INDENT + 2, NO_LIMIT);
        }
    }

    private static String padded(String word, int width) {
        return word + " ".repeat(Math.max(1, width - word.length()));
    }

    /** @param most lines; what is longer ends at the end of a part, and says that more is below */
    private void line(String head, String words, int indent, int most) {
        List<String> lines = shortened(words, WIDTH - indent, most);
        for (int i = 0; i < lines.size(); i++) {
            text.append(((i == 0 ? head : " ".repeat(indent)) + lines.get(i)).stripTrailing())
                    .append('\n');
        }
    }

    private static List<String> shortened(String words, int width, int most) {
        List<String> lines = Display.wrap(words, width);
        if (lines.size() <= most) {
            return lines;
        }
        for (Pattern parted : PARTED) {
            for (int end = words.length() - 1; end > 0; end--) {
                String part = words.substring(0, end);
                if (parted.matcher(words).region(end, words.length()).lookingAt() && closed(part)) {
                    List<String> shorter = Display.wrap(part + MORE, width);
                    if (shorter.size() <= most) {
                        return shorter;
                    }
                }
            }
        }
        // one part alone is longer than that
        List<String> first = new ArrayList<>(lines.subList(0, most));
        String last = Display.wrap(first.get(most - 1), width - MORE.length()).get(0);
        first.set(most - 1, last + MORE);
        return first;
    }

    /** Whether no bracket is left open. */
    private static boolean closed(String part) {
        return part.chars().filter(letter -> letter == '(' || letter == '[').count()
                == part.chars().filter(letter -> letter == ')' || letter == ']').count();
    }
}

package buildup.cli.compare;

import buildup.cli.report.VerdictText;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.engine.Answer;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Two verdicts beside each other: each answer of both, then what the rows say that differ. */
final class VerdictsBeside {
    private final FigurePrinter printer;
    private final Map<Topic, Ruling> a;
    private final Map<Topic, Ruling> b;

    private VerdictsBeside(Comparison comparison, FigurePrinter printer) {
        this.printer = printer;
        this.a = rulings(comparison.a());
        this.b = rulings(comparison.b());
    }

    /** The two tables, sizes in the unit of the printer. */
    static List<Table> of(Comparison comparison, FigurePrinter printer) {
        VerdictsBeside beside = new VerdictsBeside(comparison, printer);
        return List.of(beside.answers(comparison), beside.differing());
    }

    private static Map<Topic, Ruling> rulings(Answer answer) {
        Map<Topic, Ruling> rulings = new EnumMap<>(Topic.class);
        answer.known()
                .ifPresent(known -> known.verdict().rulings().forEach(ruling -> rulings.put(ruling.topic(), ruling)));
        return rulings;
    }

    private Set<Topic> questions() {
        Set<Topic> questions = new TreeSet<>(a.keySet());
        questions.addAll(b.keySet());
        return questions;
    }

    private Table answers(Comparison comparison) {
        List<List<TableCell>> rows = new ArrayList<>();
        rows.add(row("all", whole(comparison.a()), whole(comparison.b()), ""));
        for (Topic question : questions()) {
            rows.add(row(
                    question.word(),
                    reply(ruling(a, question)),
                    reply(ruling(b, question)),
                    differs(question) ? "differs" : ""));
        }
        return new Table("WILL IT BE RIGHT?", Table.columns("", "A", "B", ""), rows);
    }

    private Table differing() {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Topic question : questions()) {
            if (differs(question)) {
                rows.add(row(question.word(), "A", because(ruling(a, question))));
                rows.add(row("", "B", because(ruling(b, question))));
            }
        }
        return new Table(
                rows.isEmpty() ? "NO ROW OF THE VERDICT DIFFERS" : "WHERE THE VERDICTS DIFFER",
                Table.columns("", "in", "says"),
                rows);
    }

    private boolean differs(Topic question) {
        return !reply(ruling(a, question)).equals(reply(ruling(b, question)))
                || !because(ruling(a, question)).equals(because(ruling(b, question)));
    }

    private static Optional<Ruling> ruling(Map<Topic, Ruling> rulings, Topic question) {
        return Optional.ofNullable(rulings.get(question));
    }

    private static String reply(Optional<Ruling> ruling) {
        return ruling.map(one -> one.answer().name().toLowerCase(Locale.ROOT)).orElse("not asked");
    }

    private String because(Optional<Ruling> ruling) {
        return ruling.map(one -> printer.print(one.because())).orElse("not asked");
    }

    private static String whole(Answer answer) {
        return answer.known().map(known -> VerdictText.answer(known.verdict())).orElse("refused");
    }

    private static List<TableCell> row(String... words) {
        return List.of(words).stream().map(TableCell::of).toList();
    }
}

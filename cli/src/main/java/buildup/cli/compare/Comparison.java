package buildup.cli.compare;

import buildup.cli.tell.Beside;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Sheets;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two answers, and every sheet of them beside each other.
 *
 * @param sheets in the order of a report, notices last
 * @param figures the same laid flat, figure by figure
 */
public record Comparison(Answer a, Answer b, List<Beside> sheets, List<Beside> figures) {
    static final String NOTICES = "notices";

    /** Copies the lists. */
    public Comparison {
        sheets = List.copyOf(sheets);
        figures = List.copyOf(figures);
    }

    /** Pairs what is known of both; nothing when one of them was refused. */
    public static Optional<Comparison> of(Answer a, Answer b) {
        if (a.known().isEmpty() || b.known().isEmpty()) {
            return Optional.empty();
        }
        List<Sheet> first = sheets(a, a.known().get());
        List<Sheet> second = sheets(b, b.known().get());
        return Optional.of(new Comparison(a, b, Beside.of(first, second), Beside.flat(first, second)));
    }

    private static List<Sheet> sheets(Answer answer, Answers known) {
        List<Sheet> sheets = new ArrayList<>(Sheets.of(known));
        sheets.add(NoticeSheet.of(answer.notices(), Optional.of(answer.file())));
        return sheets;
    }

    /** The pairs of a sheet laid flat; none when neither was asked for it. */
    List<Beside.Pair> pairs(String key) {
        return figures.stream()
                .filter(one -> one.sheet().key().equals(key))
                .flatMap(one -> one.pairs().stream())
                .toList();
    }

    /** How many figures were set beside each other. */
    long count() {
        return figures.stream().mapToLong(Beside::figures).sum();
    }

    /** How many of them differ or stand in one answer alone. */
    public long differing() {
        return figures.stream().mapToLong(Beside::differing).sum();
    }

    /** Whether the two agree in every figure. */
    public boolean alike() {
        return differing() == 0;
    }
}

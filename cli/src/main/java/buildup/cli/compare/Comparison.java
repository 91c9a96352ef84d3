package buildup.cli.compare;

import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Head;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Row;
import buildup.cli.report.NoticeText;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.profiles.outline.Tolerance;
import buildup.shared.notice.Notice;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Every figure of two answers, paired by the names of its row.
 *
 * @param blocks in the order of a report
 */
public record Comparison(Answer a, Answer b, List<Block> blocks) {
    static final String NOTICES = "notices";

    /** Figures nearer than this are alike: as near as two runs of sums come, and finer than six decimals show. */
    static final double ALIKE = Tolerance.SNAP;

    /** One block: its heads, and its rows in pairs. */
    record Block(Sheet heads, List<Pair> pairs) {
        Block {
            pairs = List.copyOf(pairs);
        }
    }

    /**
     * What two answers say of one thing.
     *
     * @param number from 1, of rows with the same names, in the order of the answer
     * @param a, b the row; absent where the answer has none
     */
    record Pair(List<String> names, int number, Optional<Row> a, Optional<Row> b) {
        /** Whether both have it, with the same figures. */
        boolean alike() {
            return a.isPresent()
                    && b.isPresent()
                    && IntStream.range(0, a.get().figures().size()).allMatch(this::alike);
        }

        /** Whether both have that figure and agree on it. */
        boolean alike(int quantity) {
            return figure(a, quantity)
                    .flatMap(first -> figure(b, quantity).map(second -> Comparison.alike(first, second)))
                    .orElse(false);
        }

        /** How much more b has of that quantity than a; absent where one has no number. */
        OptionalDouble more(int quantity) {
            OptionalDouble first = figure(a, quantity).map(Figure::number).orElse(OptionalDouble.empty());
            OptionalDouble second = figure(b, quantity).map(Figure::number).orElse(OptionalDouble.empty());
            return first.isPresent() && second.isPresent()
                    ? OptionalDouble.of(second.getAsDouble() - first.getAsDouble())
                    : OptionalDouble.empty();
        }

        private static Optional<Figure> figure(Optional<Row> row, int quantity) {
            return row.map(found -> found.figures().get(quantity));
        }
    }

    public Comparison {
        blocks = List.copyOf(blocks);
    }

    /** Pairs what is known of both; nothing when one of them was refused. */
    public static Optional<Comparison> of(Answer a, Answer b) {
        if (a.known().isEmpty() || b.known().isEmpty()) {
            return Optional.empty();
        }
        List<Sheet> first = sheets(a, a.known().get());
        List<Sheet> second = sheets(b, b.known().get());
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            blocks.add(new Block(
                    first.get(i), paired(first.get(i).rows(), second.get(i).rows())));
        }
        return Optional.of(new Comparison(a, b, blocks));
    }

    private static List<Sheet> sheets(Answer answer, Answers known) {
        List<Sheet> sheets = new ArrayList<>(new SectionSheets(known, known.section()).all());
        sheets.addAll(new JointSheets(known.section()).all());
        sheets.addAll(new SupportSheets(known, known.section()).all());
        sheets.addAll(new RoomSheets(known, known.section()).all());
        sheets.add(notices(answer));
        return sheets;
    }

    private static Sheet notices(Answer answer) {
        return new Sheet(
                NOTICES,
                "WHAT WAS SAID",
                List.of(new Head("level", "level"), new Head("code", "code"), new Head("piece", "piece")),
                List.of(Sheet.of("amount", "amount", Kind.LENGTH)),
                answer.notices().stream()
                        .map(notice -> new Row(
                                List.of(
                                        NoticeText.word(notice.level()),
                                        notice.code(),
                                        notice.piece().orElse("")),
                                List.of(Figure.of(amount(notice)))))
                        .toList());
    }

    private static OptionalDouble amount(Notice notice) {
        return notice.amount()
                .map(buildup.shared.figure.Figure::amount)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** The rows of a in their order, with those of b that go with them; then those that b alone has. */
    private static List<Pair> paired(List<Row> a, List<Row> b) {
        Map<List<String>, Deque<Row>> waiting = new HashMap<>();
        b.forEach(row -> waiting.computeIfAbsent(row.names(), names -> new ArrayDeque<>())
                .add(row));
        Map<List<String>, Integer> count = new HashMap<>();
        List<Pair> pairs = new ArrayList<>();
        for (Row row : a) {
            Optional<Row> other = Optional.ofNullable(waiting.get(row.names())).map(Deque::poll);
            pairs.add(new Pair(row.names(), count.merge(row.names(), 1, Integer::sum), Optional.of(row), other));
        }
        Set<List<String>> order = new LinkedHashSet<>(b.stream().map(Row::names).toList());
        for (List<String> names : order) {
            for (Row row : waiting.getOrDefault(names, new ArrayDeque<>())) {
                pairs.add(new Pair(names, count.merge(names, 1, Integer::sum), Optional.empty(), Optional.of(row)));
            }
        }
        return pairs;
    }

    private static boolean alike(Figure a, Figure b) {
        return a.words().equals(b.words())
                && a.number().isPresent() == b.number().isPresent()
                && (a.number().isEmpty()
                        || Math.abs(a.number().getAsDouble() - b.number().getAsDouble()) <= ALIKE);
    }

    /** The block of that key. */
    Block block(String key) {
        return blocks.stream()
                .filter(block -> block.heads().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** How many figures were set beside each other. */
    long figures() {
        return blocks.stream()
                .mapToLong(block -> (long) block.pairs().size()
                        * Math.max(1, block.heads().quantities().size()))
                .sum();
    }

    /** Whether the two agree in every figure. */
    public boolean alike() {
        return differing() == 0;
    }

    /** How many of them differ or stand in one answer alone. */
    long differing() {
        return blocks.stream()
                .flatMap(block -> block.pairs().stream())
                .mapToLong(pair -> IntStream.range(0, width(pair))
                        .filter(i -> !pair.alike(i))
                        .count())
                .sum();
    }

    private static int width(Pair pair) {
        return pair.a().or(pair::b).orElseThrow().figures().size();
    }
}

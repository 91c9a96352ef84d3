package buildup.cli.tell;

import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One sheet of two answers, its rows paired by what they are known by.
 *
 * @param sheet of the first answer; of the second where the first has none: key, title, columns
 * @param pairs the rows of the first in their order, with those of the second that go with them; then those that the
 *     second alone has
 */
public record Beside(Sheet sheet, List<Pair> pairs) {
    /**
     * What two answers say of one thing.
     *
     * @param columns of its row
     * @param names what it is known by
     * @param number from 1, of rows with the same names, in the order of the answer
     * @param a the row of the first; absent where it has none
     * @param b the row of the second
     */
    public record Pair(List<Column> columns, List<String> names, int number, Optional<Row> a, Optional<Row> b) {
        /** Copies the lists. */
        public Pair {
            columns = List.copyOf(columns);
            names = List.copyOf(names);
        }

        /** The place of the column with that key. */
        public int at(String key) {
            return IntStream.range(0, columns.size())
                    .filter(i -> columns.get(i).key().equals(key))
                    .findFirst()
                    .orElseThrow();
        }

        /** Whether both have it and say the same of it. */
        public boolean alike() {
            return both() && figures().allMatch(this::alike);
        }

        /** Whether both have it. */
        public boolean both() {
            return a.isPresent() && b.isPresent();
        }

        /** Whether both have the row and say the same in a column. */
        public boolean alike(int column) {
            return both() && Alike.cells(columns.get(column).type(), cellOfA(column), cellOfB(column));
        }

        /** What the first says in a column. */
        public Cell cellOfA(int column) {
            return a.map(row -> row.cells().get(column)).orElse(Cell.NONE);
        }

        /** What the second says in a column. */
        public Cell cellOfB(int column) {
            return b.map(row -> row.cells().get(column)).orElse(Cell.NONE);
        }

        /** How much more the second has in a column; absent where one of them has no number, or of another quantity. */
        public OptionalDouble more(int column) {
            if (cellOfA(column) instanceof Cell.Decimal one && cellOfB(column) instanceof Cell.Decimal other) {
                return OptionalDouble.of(other.amount() - one.amount());
            }
            return cellOfA(column) instanceof Cell.Amount one
                            && cellOfB(column) instanceof Cell.Amount other
                            && one.figure().quantity() == other.figure().quantity()
                    ? OptionalDouble.of(other.figure().amount() - one.figure().amount())
                    : OptionalDouble.empty();
        }

        /** The places of the columns that are set beside each other and are no names. */
        IntStream figures() {
            return IntStream.range(0, columns.size())
                    .filter(i -> !columns.get(i).name() && columns.get(i).compared());
        }
    }

    /** Copies the list. */
    public Beside {
        pairs = List.copyOf(pairs);
    }

    /** The sheets of two answers that either of them was asked for, paired by their keys. */
    public static List<Beside> of(List<Sheet> a, List<Sheet> b) {
        Map<String, Sheet> first = byKey(a);
        Map<String, Sheet> second = byKey(b);
        Set<String> keys = new LinkedHashSet<>(first.keySet());
        keys.addAll(second.keySet());
        return keys.stream()
                .map(key -> {
                    Optional<Sheet> one = Optional.ofNullable(first.get(key));
                    Optional<Sheet> other = Optional.ofNullable(second.get(key));
                    return new Beside(
                            one.or(() -> other).orElseThrow(),
                            paired(one.or(() -> other).orElseThrow(), rows(one), rows(other)));
                })
                .toList();
    }

    private static Map<String, Sheet> byKey(List<Sheet> sheets) {
        Map<String, Sheet> byKey = new LinkedHashMap<>();
        sheets.stream().filter(Sheet::asked).forEach(sheet -> byKey.put(sheet.key(), sheet));
        return byKey;
    }

    private static List<Row> rows(Optional<Sheet> sheet) {
        return sheet.map(Sheet::rows).orElse(List.of());
    }

    private static List<Pair> paired(Sheet sheet, List<Row> a, List<Row> b) {
        Map<List<String>, Deque<Row>> waiting = new HashMap<>();
        b.forEach(row -> waiting.computeIfAbsent(sheet.names(row), names -> new ArrayDeque<>())
                .add(row));
        Map<List<String>, Integer> count = new HashMap<>();
        List<Pair> pairs = new ArrayList<>();
        for (Row row : a) {
            List<String> names = sheet.names(row);
            Optional<Row> other = Optional.ofNullable(waiting.get(names)).map(Deque::poll);
            pairs.add(new Pair(sheet.columns(), names, count.merge(names, 1, Integer::sum), Optional.of(row), other));
        }
        Set<List<String>> order =
                new LinkedHashSet<>(b.stream().map(sheet::names).toList());
        for (List<String> names : order) {
            for (Row row : waiting.getOrDefault(names, new ArrayDeque<>())) {
                int number = count.merge(names, 1, Integer::sum);
                pairs.add(new Pair(sheet.columns(), names, number, Optional.empty(), Optional.of(row)));
            }
        }
        return pairs;
    }

    /** The same laid flat, every figure by itself: rows below a row are a sheet of their own, {@code pieces.bearing}. */
    public static List<Beside> flat(List<Sheet> a, List<Sheet> b) {
        return of(flat(a), flat(b));
    }

    private static List<Sheet> flat(List<Sheet> sheets) {
        return sheets.stream()
                .flatMap(sheet -> FlatSheet.of(sheet, Beside::isFigure).stream())
                .toList();
    }

    /** A sentence for people only repeats the figures of other columns. */
    private static boolean isFigure(Column column) {
        boolean repeats = column.type() instanceof Type.Saying && column.shown() == Column.Shown.TEXT;
        return column.compared() && !repeats;
    }

    /** How many figures are set beside each other; a row of names alone counts as one. */
    public long figures() {
        return pairs.stream()
                .mapToLong(pair -> Math.max(1, pair.figures().count()))
                .sum();
    }

    /** How many of them differ or stand in one answer alone. */
    public long differing() {
        return pairs.stream()
                .filter(pair -> !pair.alike())
                .mapToLong(pair ->
                        Math.max(1, pair.figures().filter(i -> !pair.alike(i)).count()))
                .sum();
    }
}

package buildup.cli.compare;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * One block of the figures of an answer.
 *
 * @param key of the block, as in the JSON report
 * @param title one line over its table
 * @param names what a row is known by
 * @param quantities what a row holds
 * @param rows in the order of the report
 */
record Sheet(String key, String title, List<Head> names, List<Quantity> quantities, List<Row> rows) {
    /** What a quantity counts; inches, square inches, pounds, degrees, a share of 1, how many times, words. */
    enum Kind {
        LENGTH,
        AREA,
        WEIGHT,
        DEGREES,
        SHARE,
        TIMES,
        WORDS
    }

    /** A column: its key in JSON and the words over it. */
    record Head(String key, String heading) {}

    /** A column of figures. */
    record Quantity(Head head, Kind kind) {}

    /** A figure: a number, words, or neither where it is not known. */
    record Figure(OptionalDouble number, Optional<String> words) {
        static Figure of(double number) {
            return of(OptionalDouble.of(number));
        }

        static Figure of(OptionalDouble number) {
            return new Figure(number, Optional.empty());
        }

        static Figure of(String words) {
            return new Figure(OptionalDouble.empty(), Optional.of(words).filter(said -> !said.isEmpty()));
        }

        boolean isEmpty() {
            return number.isEmpty() && words.isEmpty();
        }
    }

    /** One row; as many names and figures as the sheet has heads. */
    record Row(List<String> names, List<Figure> figures) {
        Row {
            names = List.copyOf(names);
            figures = List.copyOf(figures);
        }
    }

    Sheet {
        names = List.copyOf(names);
        quantities = List.copyOf(quantities);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            if (row.names().size() != names.size() || row.figures().size() != quantities.size()) {
                throw new IllegalArgumentException("a row of " + key + " does not fit its heads");
            }
        }
    }

    /** The place of the quantity with that key. */
    int at(String quantity) {
        return IntStream.range(0, quantities.size())
                .filter(i -> quantities.get(i).head().key().equals(quantity))
                .findFirst()
                .orElseThrow();
    }

    /** Names whose key is their heading. */
    static List<Head> names(String... words) {
        return Arrays.stream(words).map(word -> new Head(word, word)).toList();
    }

    /** A length whose key is its heading. */
    static Quantity length(String word) {
        return length(word, word);
    }

    static Quantity length(String key, String heading) {
        return new Quantity(new Head(key, heading), Kind.LENGTH);
    }

    static Quantity words(String key, String heading) {
        return new Quantity(new Head(key, heading), Kind.WORDS);
    }

    static Quantity of(String key, String heading, Kind kind) {
        return new Quantity(new Head(key, heading), kind);
    }
}

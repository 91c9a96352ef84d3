package buildup.shared.sheet;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.OptionalDouble;

/** What stands in one row under one column; it fits the {@link Type} of the column. */
public sealed interface Cell {
    /** Nothing: not known, or not asked for. */
    Cell NONE = new None(OptionalDouble.empty());

    /**
     * Nothing that is written.
     *
     * @param means the number that it stands for where a rule asks for one: 0 where there is none, infinite where nothing
     *     bounds it; absent where that is not known, or not asked for
     */
    record None(OptionalDouble means) implements Cell {}

    /** Whether nothing is written of a cell. */
    static boolean isNone(Cell cell) {
        return cell instanceof None;
    }

    /** A number in the unit of its quantity; finite. */
    record Decimal(double amount) implements Cell {}

    /** A number with its quantity; finite. */
    record Amount(Figure figure) implements Cell {}

    /** Words. */
    record Words(String words) implements Cell {}

    /** Yes or no. */
    record Flag(boolean yes) implements Cell {}

    /** Projection and height, inches. */
    record Place(double x, double y) implements Cell {}

    /** Names in order. */
    record Names(List<String> names) implements Cell {
        /** Copies the list. */
        public Names {
            names = List.copyOf(names);
        }
    }

    /** Numbers in order. */
    record Numbers(List<Double> amounts) implements Cell {
        /** Copies the list. */
        public Numbers {
            amounts = List.copyOf(amounts);
        }
    }

    /** A sentence with figures. */
    record Saying(Phrase phrase) implements Cell {}

    /** Sentences with figures. */
    record Sayings(List<Phrase> phrases) implements Cell {
        /** Copies the list. */
        public Sayings {
            phrases = List.copyOf(phrases);
        }
    }

    /**
     * Rows of figures, each as long as the names.
     *
     * @param names what the figures are called
     */
    record Called(List<String> names, List<List<Double>> rows) implements Cell {
        /** Copies the lists. */
        public Called {
            names = List.copyOf(names);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Rows of the nested columns. */
    record Rows(List<Row> rows) implements Cell {
        /** Copies the list. */
        public Rows {
            rows = List.copyOf(rows);
        }
    }
}

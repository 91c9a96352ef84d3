package buildup.shared.figure;

import java.util.List;

/**
 * Several values in one place of a sentence.
 *
 * @param values in order
 * @param last the word before the last of them, as {@code and}; empty for commas alone
 */
public record Listing(List<Value> values, String last) implements Value {
    /** Copies the list. */
    public Listing {
        values = List.copyOf(values);
    }

    /** {@code a, b and c}. */
    public static Listing and(List<? extends Value> values) {
        return new Listing(List.copyOf(values), "and");
    }

    /** {@code a, b, c}. */
    public static Listing commas(List<? extends Value> values) {
        return new Listing(List.copyOf(values), "");
    }

    /** Names, each as it stands, {@code a, b and c}. */
    public static Listing names(List<String> names) {
        return and(names.stream().map(Text::new).toList());
    }
}

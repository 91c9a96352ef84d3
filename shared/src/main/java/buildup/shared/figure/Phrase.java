package buildup.shared.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Words with named places, and what stands in them: {@code "Move it down {air}."} with a length called {@code air}. It
 * becomes a sentence in {@link FigurePrinter#print(Phrase)}, in the unit of the document. A place is a name in braces;
 * two opening braces stand for one.
 *
 * @param template the words
 * @param values what stands in the places
 */
public record Phrase(String template, List<Named> values) implements Value {
    /** Copies the list. */
    public Phrase {
        values = List.copyOf(values);
    }

    /** Words, so far with nothing in their places. */
    public static Phrase of(String template) {
        return new Phrase(template, List.of());
    }

    /** Words that stay as they are, braces too. */
    public static Phrase plain(String words) {
        return of(words.replace("{", "{{"));
    }

    /** The same with a value in a place. */
    public Phrase with(String name, Value value) {
        List<Named> more = new ArrayList<>(values);
        more.add(new Named(name, value));
        return new Phrase(template, more);
    }

    /** The same with words in a place. */
    public Phrase with(String name, String words) {
        return with(name, new Text(words));
    }

    // spelled out: what a record does of itself when it is compared is slow to start
    @Override
    public boolean equals(Object other) {
        return other instanceof Phrase phrase && phrase.template.equals(template) && phrase.values.equals(values);
    }

    @Override
    public int hashCode() {
        return 31 * template.hashCode() + values.hashCode();
    }
}

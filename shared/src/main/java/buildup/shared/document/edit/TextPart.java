package buildup.shared.document.edit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part of a text and where it stands, from the first character to the one after the last, counted from 0. A mark
 * before it ({@code &name}, {@code !!tag}) does not belong to the stretch.
 */
sealed interface TextPart {

    /** The first character of it, counted from the start of the text, from 0. */
    int start();

    /** The character after its last one, counted from the start of the text. */
    int end();

    /** The name by which other places repeat it. */
    Optional<String> anchor();

    /** This part and all below it. */
    default Stream<TextPart> all() {
        return Stream.of(this);
    }

    /** How a single value is written. */
    enum Style {
        PLAIN,
        SINGLE,
        DOUBLE,
        /** Lines under {@code |} or {@code >}. */
        LINES,
        /** The same with a plus sign: blank lines below belong to it. */
        KEPT_LINES
    }

    /** A single value; one that was left out is empty and stands where it would begin. */
    record Word(String text, Style style, int start, int end, Optional<String> anchor) implements TextPart {

        /** Whether nothing is written there at all. */
        boolean isAbsent() {
            return start == end;
        }
    }

    /** A place that repeats what is marked elsewhere: {@code *name}. */
    record Repeat(String name, int start, int end) implements TextPart {
        @Override
        public Optional<String> anchor() {
            return Optional.empty();
        }
    }

    /** How a list or a mapping is written. */
    enum Form {
        /** Line by line, indented. */
        BLOCK,
        /** In braces or brackets. */
        FLOW,
        /** One key and its value in a list in brackets, without braces of their own. */
        BARE
    }

    /** A list or a mapping. */
    record Group(boolean mapping, Form form, List<Item> items, int start, int end, Optional<String> anchor)
            implements TextPart {
        public Group {
            items = List.copyOf(items);
        }

        @Override
        public Stream<TextPart> all() {
            return Stream.concat(Stream.of(this), items.stream().flatMap(Item::all));
        }

        boolean isFlow() {
            return form != Form.BLOCK;
        }
    }

    /**
     * An entry of a list, or a key and what it holds.
     *
     * @param start of its dash, its key or its value, marks before them included
     */
    record Item(Optional<Word> key, TextPart value, int start) {

        /** The one after its last character; what is left out of it counts to where it would stand. */
        int end() {
            return Math.max(value.end(), key.map(Word::end).orElse(start));
        }

        Stream<TextPart> all() {
            return Stream.concat(key.stream(), value.all());
        }
    }
}

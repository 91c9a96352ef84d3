package buildup.shared.document;

import buildup.shared.figure.Figure;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** A list or mapping that is still being read. */
sealed interface Unfinished {

    /**
     * Takes the next node in the order of the text.
     *
     * @throws DocumentRefused when the node cannot stand here
     */
    void add(Node node) throws DocumentRefused;

    /** What was taken so far, as one node. */
    Node node();

    /** A list. A number torn apart in it ({@code out 3,5}) shows only behind a word, and without a blank. */
    final class OfSequence implements Unfinished {

        private static final Pattern WORD_AND_NUMBER = Pattern.compile(".*[A-Za-z].*\\d", Pattern.DOTALL);

        private final List<Node> items = new ArrayList<>();
        private final Mark mark;
        private final Notices notices;

        OfSequence(Mark mark, Notices notices) {
            this.mark = mark;
            this.notices = notices;
        }

        @Override
        public void add(Node node) {
            Optional<Scalar> whole = items.isEmpty() ? Optional.empty() : joined(items.get(items.size() - 1), node);
            whole.ifPresentOrElse(
                    scalar -> {
                        items.set(items.size() - 1, scalar);
                        notices.add(TornNumber.notice(scalar));
                    },
                    () -> items.add(node));
        }

        private static Optional<Scalar> joined(Node left, Node right) {
            return left instanceof Scalar before
                            && right instanceof Scalar after
                            && WORD_AND_NUMBER.matcher(before.text()).matches()
                            && TornNumber.isCloseBehind(before, after)
                    ? TornNumber.joined(before, after)
                    : Optional.empty();
        }

        @Override
        public Node node() {
            return new Sequence(items, mark);
        }
    }

    /** A mapping. A number torn apart in it ({@code lip: 1,5}) leaves a key that is a number and has no value. */
    final class OfMapping implements Unfinished {

        private final Map<String, Entry> entries = new LinkedHashMap<>();
        private final Mark mark;
        private final Notices notices;
        private Optional<Scalar> key = Optional.empty();
        private Optional<Entry> last = Optional.empty();

        OfMapping(Mark mark, Notices notices) {
            this.mark = mark;
            this.notices = notices;
        }

        @Override
        public void add(Node node) throws DocumentRefused {
            if (key.isPresent()) {
                add(new Entry(key.get(), node));
                key = Optional.empty();
            } else if (node instanceof Scalar scalar) {
                key = Optional.of(scalar);
            } else {
                throw new DocumentRefused(DocumentNotices.KEY_OF_PARTS.notice().at(node.mark()));
            }
        }

        private void add(Entry entry) {
            Optional<Entry> whole = last.flatMap(before -> joined(before, entry));
            Entry known = entries.get(entry.key().text());
            if (whole.isPresent()) {
                Entry joined = whole.get();
                last = whole;
                entries.replace(joined.key().text(), joined);
                notices.add(TornNumber.notice((Scalar) joined.value()));
            } else if (known != null) {
                last = Optional.of(entry);
                notices.add(twice(known.key(), entry.key()));
            } else {
                last = Optional.of(entry);
                entries.put(entry.key().text(), entry);
            }
        }

        private static Optional<Entry> joined(Entry before, Entry after) {
            boolean bareKey =
                    after.value() instanceof Scalar nothing && nothing.text().isEmpty();
            return bareKey && before.value() instanceof Scalar value
                    ? TornNumber.joined(value, after.key()).map(scalar -> new Entry(before.key(), scalar))
                    : Optional.empty();
        }

        private static Notice twice(Scalar first, Scalar second) {
            return DocumentNotices.TWICE
                    .with("key", first.text())
                    .with("first", Figure.count(first.mark().line()))
                    .with("second", Figure.count(second.mark().line()))
                    .at(second.mark());
        }

        @Override
        public Node node() {
            return new Mapping(List.copyOf(entries.values()), mark);
        }
    }
}

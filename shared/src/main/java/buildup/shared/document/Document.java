package buildup.shared.document;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * A file that was read.
 *
 * @param file its name, as messages call it
 */
public record Document(String file, Mapping root) {

    /** Whether it says what another document does, wherever the words stand in the two files. */
    public boolean says(Document other) {
        return same(root, other.root);
    }

    /**
     * The same with another text at one place; the keys are put in that are not there yet.
     *
     * @param place keys, and names of the items of lists or their numbers from 1, from the top down with dots
     *     between them
     * @return nothing when no item of a list has that name or number, or when something with parts stands there
     */
    public Optional<Document> with(String place, String text) {
        return with(root, List.of(place.split("\\.")), text).map(changed -> new Document(file, (Mapping) changed));
    }

    /**
     * The same with one entry more in a list at the top, which is made if it is not there yet; the entry has its name alone.
     *
     * @param position that it has then, counted from 1; beyond the end it comes last
     * @return nothing when something else than a list stands there, or when an entry has that name
     */
    public Optional<Document> withEntry(String list, int position, String name) {
        Node found = root.get(list).orElseGet(() -> new Sequence(List.of(), root.mark()));
        if (!(found instanceof Sequence old) || old.items().stream().anyMatch(item -> isCalled(item, name))) {
            return Optional.empty();
        }
        Scalar key = new Scalar("name", old.mark());
        Mapping entry = new Mapping(List.of(new Entry(key, new Scalar(name, old.mark()))), old.mark());
        List<Node> items = new ArrayList<>(old.items());
        items.add(Math.min(position - 1, items.size()), entry);
        List<Entry> entries = new ArrayList<>(root.entries());
        entries.removeIf(one -> one.key().text().equals(list));
        entries.add(new Entry(new Scalar(list, root.mark()), new Sequence(items, old.mark())));
        return Optional.of(new Document(file, new Mapping(entries, root.mark())));
    }

    private static boolean isCalled(Node item, String name) {
        return item instanceof Mapping keys
                && keys.get("name").filter(Scalar.class::isInstance).isPresent()
                && ((Scalar) keys.get("name").orElseThrow()).text().equals(name);
    }

    private static Optional<Node> with(Node node, List<String> way, String text) {
        if (way.isEmpty()) {
            return node instanceof Scalar ? Optional.of(new Scalar(text, node.mark())) : Optional.empty();
        }
        String next = way.get(0);
        List<String> rest = way.subList(1, way.size());
        if (node instanceof Sequence list) {
            return inList(list, next, rest, text);
        }
        return node instanceof Mapping keys ? inKeys(keys, next, rest, text) : Optional.empty();
    }

    private static Optional<Node> inList(Sequence list, String name, List<String> rest, String text) {
        List<Node> items = new ArrayList<>(list.items());
        int at = IntStream.range(0, items.size())
                .filter(i -> isCalled(items.get(i), name))
                .findFirst()
                .orElseGet(() -> number(name) - 1);
        if (at < 0 || at >= items.size()) {
            return Optional.empty();
        }
        return with(items.get(at), rest, text).map(changed -> {
            items.set(at, changed);
            return new Sequence(items, list.mark());
        });
    }

    /** The number that a name is, 0 for none. */
    private static int number(String name) {
        return name.matches("[1-9]\\d{0,5}") ? Integer.parseInt(name) : 0;
    }

    private static Optional<Node> inKeys(Mapping keys, String key, List<String> rest, String text) {
        List<Entry> entries = new ArrayList<>(keys.entries());
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            if (entry.key().text().equals(key)) {
                int at = i;
                return with(entry.value(), rest, text).map(changed -> {
                    entries.set(at, new Entry(entry.key(), changed));
                    return new Mapping(entries, keys.mark());
                });
            }
        }
        Node empty = rest.isEmpty() ? new Scalar("", keys.mark()) : new Mapping(List.of(), keys.mark());
        return with(empty, rest, text).map(made -> {
            entries.add(new Entry(new Scalar(key, keys.mark()), made));
            return new Mapping(entries, keys.mark());
        });
    }

    private static boolean same(Node one, Node other) {
        if (one instanceof Mapping left && other instanceof Mapping right) {
            return alike(
                    left.entries(),
                    right.entries(),
                    (mine, its) -> mine.key().text().equals(its.key().text()) && same(mine.value(), its.value()));
        }
        if (one instanceof Sequence left && other instanceof Sequence right) {
            return alike(left.items(), right.items(), Document::same);
        }
        return one instanceof Scalar left
                && other instanceof Scalar right
                && left.text().equals(right.text());
    }

    private static <T> boolean alike(List<T> left, List<T> right, BiPredicate<T, T> same) {
        Iterator<T> rest = right.iterator();
        return left.size() == right.size() && left.stream().allMatch(item -> same.test(item, rest.next()));
    }
}

package buildup.shared.document;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

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
     * @param place keys, and names of the items of lists, from the top down with dots between them
     * @return nothing when no item of a list has that name, or when something with parts stands there
     */
    public Optional<Document> with(String place, String text) {
        return with(root, List.of(place.split("\\.")), text).map(changed -> new Document(file, (Mapping) changed));
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
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof Mapping item
                    && item.get("name").orElse(list) instanceof Scalar own
                    && own.text().equals(name)) {
                int at = i;
                return with(item, rest, text).map(changed -> {
                    items.set(at, changed);
                    return new Sequence(items, list.mark());
                });
            }
        }
        return Optional.empty();
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

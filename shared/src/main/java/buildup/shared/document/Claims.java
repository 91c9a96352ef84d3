package buildup.shared.document;

import buildup.shared.notice.Notice;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the readers of one run asked of its documents: a key present that nobody asked for is a mistake of the file.
 * Only grows. Mappings are told apart by identity, since two pieces may be written alike.
 */
public final class Claims {

    /** @param renamed what keys of old are called now */
    record Opened(String path, SortedSet<String> asked, Map<String, String> renamed) {}

    private final IdentityHashMap<Mapping, Opened> opened = new IdentityHashMap<>();
    private final SortedSet<String> asked = new TreeSet<>();

    Opened open(Mapping mapping, String path) {
        return opened.computeIfAbsent(mapping, unopened -> new Opened(path, new TreeSet<>(), new TreeMap<>()));
    }

    void ask(Mapping mapping, String path, String key) {
        open(mapping, path).asked().add(key);
        asked.add(below(path, key));
    }

    void rename(Mapping mapping, String path, String was, String now) {
        open(mapping, path).renamed().put(was, now);
    }

    /**
     * What was asked of a document so far, asked of another as well that has the same keys at its root: the same with
     * other values, say.
     */
    public void carry(Document from, Document to) {
        Opened before = opened.get(from.root());
        if (before != null) {
            opened.putIfAbsent(to.root(), before);
        }
    }

    static String below(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** Every key asked so far, with those above it: {@code pieces.name}, {@code space.wall.from}. */
    public SortedSet<String> asked() {
        return Collections.unmodifiableSortedSet(new TreeSet<>(asked));
    }

    /**
     * A refusal for each key that nobody asked for, in every mapping that was opened as {@link Fields}, in the order of
     * the file. What lies under such a key is not looked at. Call it when all readers are done.
     */
    public List<Notice> unclaimed(Document document) {
        List<Notice> found = new ArrayList<>();
        search(document.root(), found, Collections.newSetFromMap(new IdentityHashMap<>()));
        return List.copyOf(found);
    }

    private void search(Node node, List<Notice> found, Set<Node> seen) {
        if (!seen.add(node)) {
            return; // an alias shows the same node again
        }
        if (node instanceof Sequence sequence) {
            sequence.items().forEach(item -> search(item, found, seen));
        } else if (node instanceof Mapping mapping) {
            Opened by = opened.get(mapping);
            for (Entry entry : mapping.entries()) {
                if (by == null || by.asked().contains(entry.key().text())) {
                    search(entry.value(), found, seen);
                } else {
                    found.add(unknown(entry.key(), by));
                }
            }
        }
    }

    private static Notice unknown(Scalar key, Opened by) {
        Optional<String> now = Optional.ofNullable(by.renamed().get(key.text()));
        if (now.isPresent()) {
            return DocumentNotices.RENAMED_KEY
                    .with("key", key.text())
                    .with("now", now.get())
                    .at(key.mark());
        }
        Notice unknown = by.path().isEmpty()
                ? DocumentNotices.NO_SUCH_KEY.notice()
                : DocumentNotices.NO_SUCH_KEY_BELOW.with("path", by.path());
        return unknown.with("key", key.text()).at(key.mark()).cure(Suggestion.phrase(key.text(), by.asked()));
    }
}

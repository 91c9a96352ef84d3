package buildup.shared.document;

import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;

/** Keys and values, in the order of the file; each key once. */
public record Mapping(List<Entry> entries, Mark mark) implements Node {

    public Mapping {
        entries = List.copyOf(entries);
    }

    /** The value of a key, if it is there. */
    public Optional<Node> get(String key) {
        return entries.stream()
                .filter(entry -> entry.key().text().equals(key))
                .findFirst()
                .map(Entry::value);
    }
}

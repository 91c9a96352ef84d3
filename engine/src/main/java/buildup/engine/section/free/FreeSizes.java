package buildup.engine.section.free;

import buildup.shared.document.Document;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The free sizes of a document, and the document with any choice of them. */
public final class FreeSizes {
    /** The key of a piece that is not to be put up. */
    public static final String LEAVE_OUT = "leave-out";

    /** Texts for people, which may begin with any word. */
    private static final Set<String> WORDS =
            Set.of("title", "name", "note", "job", "revisions", "must", "wish", "sheet", "change");

    private final Document document;
    private final List<FreeSize> sizes = new ArrayList<>();
    private final IdentityHashMap<Scalar, Integer> at = new IdentityHashMap<>();

    private FreeSizes(Document document) {
        this.document = document;
    }

    /**
     * The free sizes of a document; what cannot be read as one is refused and stays as it is written.
     *
     * @param families the calls of a shape of the catalog in its usual sizes; none where there is no such shape
     */
    public static FreeSizes read(
            Document document, BiFunction<String, LengthUnit, List<String>> families, Notices notices) {
        FreeSizes free = new FreeSizes(document);
        LengthUnit unit = document.root()
                .get("units")
                .filter(Scalar.class::isInstance)
                .flatMap(word -> LengthUnit.named(((Scalar) word).text()))
                .orElse(LengthUnit.INCH);
        free.find(document.root(), "", new FreeSizeReader(unit, families, notices));
        return free;
    }

    private void find(Node node, String place, FreeSizeReader reader) {
        if (node instanceof Mapping keys) {
            for (Entry entry : keys.entries()) {
                String key = entry.key().text();
                if (!WORDS.contains(key)) {
                    find(entry.value(), place.isEmpty() ? key : place + "." + key, reader);
                }
            }
        } else if (node instanceof Sequence list) {
            for (int i = 0; i < list.items().size(); i++) {
                Node item = list.items().get(i);
                find(item, place + "." + name(item).orElse(String.valueOf(i + 1)), reader);
            }
        } else if (node instanceof Scalar scalar && FreeSizeReader.isMeant(scalar.text()) && !at.containsKey(scalar)) {
            reader.read(place, scalar).or(() -> reader.asItIs(place, scalar)).ifPresent(size -> {
                at.put(scalar, sizes.size());
                sizes.add(size);
            });
        }
    }

    private static Optional<String> name(Node item) {
        return item instanceof Mapping keys && keys.get("name").orElse(item) instanceof Scalar name
                ? Optional.of(name.text())
                : Optional.empty();
    }

    /** In the order of the document. */
    public List<FreeSize> sizes() {
        return List.copyOf(sizes);
    }

    /** The document as it is now. */
    public Document now() {
        return with(sizes.stream().map(size -> size.choices().get(size.now())).toList());
    }

    /**
     * The document with a choice of each.
     *
     * @param choices the number of the choice for each free size
     */
    public Document with(int[] choices) {
        return with(IntStream.range(0, choices.length)
                .mapToObj(i -> sizes.get(i).choices().get(choices[i]))
                .toList());
    }

    /**
     * The document with a text in the place of each free size, and without the pieces that are then left out; keys and
     * marks stay as they are.
     */
    public Document with(List<String> texts) {
        Node root = sizes.isEmpty() ? document.root() : put(document.root(), texts);
        return new Document(document.file(), withoutLeftOut((Mapping) root));
    }

    /**
     * The free sizes on which part of the document hangs, by their numbers: those that stand in it, and those by which a
     * named size that it speaks of is given.
     */
    public Set<Integer> behind(Node node) {
        Set<Integer> sizesIn = new TreeSet<>();
        behind(node, sizesIn, new HashSet<>());
        return sizesIn;
    }

    private void behind(Node node, Set<Integer> found, Set<String> named) {
        if (node instanceof Mapping keys) {
            keys.entries().forEach(entry -> behind(entry.value(), found, named));
        } else if (node instanceof Sequence list) {
            list.items().forEach(item -> behind(item, found, named));
        } else if (node instanceof Scalar scalar) {
            Integer size = at.get(scalar);
            if (size != null) {
                found.add(size);
            }
            // choices speak of named sizes too
            if (document.root().get("sizes").orElse(scalar) instanceof Mapping names) {
                for (Entry entry : names.entries()) {
                    String name = entry.key().text();
                    if (speaksOf(scalar.text(), name) && named.add(name)) {
                        behind(entry.value(), found, named);
                    }
                }
            }
        }
    }

    /** Whether a text has a name in it that is no part of a longer word; one more than are meant does no harm. */
    private static boolean speaksOf(String text, String name) {
        for (int at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
            int end = at + name.length();
            boolean begins = at == 0 || !Character.isLetter(text.codePointBefore(at));
            boolean ends = end == text.length() || !Character.isLetterOrDigit(text.codePointAt(end));
            if (begins && ends) {
                return true;
            }
        }
        return false;
    }

    private Node put(Node node, List<String> texts) {
        if (node instanceof Scalar scalar) {
            Integer size = at.get(scalar);
            return size == null ? scalar : new Scalar(texts.get(size), scalar.mark());
        }
        if (node instanceof Sequence list) {
            List<Node> items =
                    list.items().stream().map(item -> put(item, texts)).toList();
            return same(items, list.items()) ? list : new Sequence(items, list.mark());
        }
        Mapping keys = (Mapping) node;
        List<Node> values =
                keys.entries().stream().map(entry -> put(entry.value(), texts)).toList();
        if (same(values, keys.entries().stream().map(Entry::value).toList())) {
            return keys;
        }
        return new Mapping(
                IntStream.range(0, values.size())
                        .mapToObj(i -> new Entry(keys.entries().get(i).key(), values.get(i)))
                        .toList(),
                keys.mark());
    }

    private static boolean same(List<Node> some, List<Node> others) {
        return IntStream.range(0, some.size()).allMatch(i -> some.get(i) == others.get(i));
    }

    /** Without the pieces that say so, and without what fastens or loads them. */
    private static Mapping withoutLeftOut(Mapping root) {
        Set<String> out = new HashSet<>();
        if (root.get("pieces").orElse(root) instanceof Sequence pieces) {
            pieces.items().stream()
                    .filter(FreeSizes::isLeftOut)
                    .forEach(piece -> name(piece).ifPresent(out::add));
        }
        if (out.isEmpty()) {
            return root;
        }
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : root.entries()) {
            boolean list =
                    Set.of("pieces", "fastenings", "loads").contains(entry.key().text());
            entries.add(
                    list && entry.value() instanceof Sequence items
                            ? new Entry(entry.key(), without(items, out))
                            : entry);
        }
        return new Mapping(entries, root.mark());
    }

    private static Sequence without(Sequence items, Set<String> out) {
        return new Sequence(
                items.items().stream()
                        .filter(item -> !isLeftOut(item) && !isOf(item, "piece", out) && !isOf(item, "on", out))
                        .toList(),
                items.mark());
    }

    private static boolean isLeftOut(Node piece) {
        return isOf(piece, LEAVE_OUT, Set.of("yes"));
    }

    private static boolean isOf(Node item, String key, Set<String> texts) {
        return item instanceof Mapping keys
                && keys.get(key).orElse(item) instanceof Scalar text
                && texts.contains(text.text().strip());
    }
}

package buildup.engine.judge.bound.form;

import buildup.catalog.Catalog;
import buildup.engine.section.free.FreeSize;
import buildup.engine.section.free.FreeSizes;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads each piece of a document by itself, for every choice of the free sizes on which its entry hangs: its shape and each
 * rule that places it apart, so that sizes that do not meet in one of these are not tried with each other.
 */
final class PieceReading {
    /** A part of an entry that hangs on more choices is not read for all of them: nothing is known of the piece then. */
    private static final int MOST = 4000;

    /** Keys of the document whose values any piece may be read by. */
    private static final List<String> COMMON = List.of("space", "units", "wood", "boards");

    /** Keys of a piece that place it. */
    private static final Set<String> PLACING = Set.of("back", "face", "bottom", "top", "at");

    private final Document document;
    private final FreeSizes free;
    private final Catalog catalog;

    PieceReading(Document document, FreeSizes free, Catalog catalog) {
        this.document = document;
        this.free = free;
        this.catalog = catalog;
    }

    /** All pieces; absent where one of them cannot be told by its name, or hangs on too many choices. */
    Optional<List<PieceForms>> all() {
        if (!(document.root().get("pieces").orElse(document.root()) instanceof Sequence list)) {
            return Optional.empty();
        }
        List<PieceForms> all = new ArrayList<>();
        for (Node item : list.items()) {
            Optional<PieceForms> piece =
                    item instanceof Mapping keys ? name(keys).flatMap(name -> piece(name, keys)) : Optional.empty();
            if (piece.isEmpty()) {
                return Optional.empty();
            }
            all.add(piece.get());
        }
        return Optional.of(all);
    }

    private static Optional<String> name(Mapping item) {
        return item.get("name").filter(Scalar.class::isInstance).map(name -> ((Scalar) name).text());
    }

    private Optional<PieceForms> piece(String name, Mapping item) {
        Set<Integer> common = new TreeSet<>();
        COMMON.forEach(key -> document.root().get(key).ifPresent(node -> common.addAll(free.behind(node))));
        Set<Integer> ofShape = new TreeSet<>(common);
        Map<String, Set<Integer>> ofRules = new HashMap<>();
        for (Entry entry : item.entries()) {
            String key = entry.key().text();
            if (PLACING.contains(key)) {
                Set<Integer> behind = new TreeSet<>(common);
                behind.addAll(free.behind(entry.value()));
                ofRules.put(key, behind);
            } else if (!key.equals(FreeSizes.LEAVE_OUT)) {
                ofShape.addAll(free.behind(entry.value()));
            }
        }
        Optional<Staying> staying = staying(name);
        Map<String, Readings> rules = new HashMap<>();
        Optional<Readings> shape = staying.flatMap(stays -> readings(name, ofShape, stays));
        for (Map.Entry<String, Set<Integer>> rule : ofRules.entrySet()) {
            staying.flatMap(stays -> readings(name, rule.getValue(), stays))
                    .ifPresent(read -> rules.put(rule.getKey(), read));
        }
        return shape.filter(any -> rules.size() == ofRules.size())
                .map(read -> new PieceForms(name, staying.get().size, staying.get().choice, read, Map.copyOf(rules)));
    }

    /** The size that says whether a piece is left out, -1 where none does, and the choice with which it stays. */
    private record Staying(int size, int choice) {}

    private Optional<Staying> staying(String name) {
        String place = "pieces." + name + "." + FreeSizes.LEAVE_OUT;
        for (int i = 0; i < free.sizes().size(); i++) {
            FreeSize size = free.sizes().get(i);
            if (size.place().equals(place)) {
                int out = size.choices().indexOf("yes");
                return size.choices().size() == 2 && out >= 0 ? Optional.of(new Staying(i, 1 - out)) : Optional.empty();
            }
        }
        return Optional.of(new Staying(-1, 0));
    }

    private Optional<Readings> readings(String name, Set<Integer> behind, Staying stays) {
        List<Integer> own = List.copyOf(behind);
        List<Integer> counts = own.stream()
                .map(size -> free.sizes().get(size).choices().size())
                .toList();
        int all = 1;
        for (int count : counts) {
            all *= count;
            if (all > MOST) {
                return Optional.empty();
            }
        }
        List<Optional<Piece>> pieces = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            pieces.add(read(name, own, counts, i, stays));
        }
        return Optional.of(new Readings(free.sizes().size(), own, counts, pieces));
    }

    private Optional<Piece> read(String name, List<Integer> own, List<Integer> counts, int combination, Staying stays) {
        List<String> texts = new ArrayList<>(free.sizes().stream()
                .map(size -> size.choices().get(size.now()))
                .toList());
        if (stays.size >= 0) {
            texts.set(stays.size, free.sizes().get(stays.size).choices().get(stays.choice));
        }
        int left = combination;
        for (int i = own.size() - 1; i >= 0; i--) {
            texts.set(own.get(i), free.sizes().get(own.get(i)).choices().get(left % counts.get(i)));
            left /= counts.get(i);
        }
        Document alone = alone(free.with(texts), name);
        return StackReader.read(alone, catalog, new Claims(), new Notices()).pieces().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst();
    }

    /** The document with that piece and no other. */
    private static Document alone(Document document, String name) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : document.root().entries()) {
            boolean pieces = entry.key().text().equals("pieces");
            entries.add(
                    pieces && entry.value() instanceof Sequence list
                            ? new Entry(entry.key(), new Sequence(only(list, name), list.mark()))
                            : entry);
        }
        return new Document(
                document.file(), new Mapping(entries, document.root().mark()));
    }

    private static List<Node> only(Sequence list, String name) {
        return list.items().stream()
                .filter(item -> item instanceof Mapping keys
                        && name(keys).filter(name::equals).isPresent())
                .toList();
    }
}

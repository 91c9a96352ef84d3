package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.section.free.FreeSize;
import buildup.engine.section.free.FreeSizes;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The stacks of one document with other sizes, read a piece at a time: a piece is read once for all stacks that give it the
 * same sizes. Many threads may ask.
 */
final class StackVariants {
    /** So many readings of one part are remembered before they are forgotten. */
    private static final int MOST = 20_000;

    /** Keys whose values any piece may be read by. */
    private static final Set<String> COMMON = Set.of("space", "units", "wood", "boards");

    /** A part of the document: the numbers of the free sizes on which it hangs, and what was read for their texts. */
    private record Part<T>(List<Integer> sizes, Map<List<String>, T> known) {
        Part(Set<Integer> sizes) {
            this(List.copyOf(sizes), new ConcurrentHashMap<>());
        }

        List<String> key(List<String> texts) {
            List<String> key = new ArrayList<>(sizes.size());
            for (int size : sizes) {
                key.add(texts.get(size));
            }
            return key;
        }

        Optional<T> of(List<String> texts) {
            return Optional.ofNullable(known.get(key(texts)));
        }

        void put(List<String> texts, T read) {
            if (known.size() >= MOST) {
                known.clear();
            }
            known.put(key(texts), read);
        }
    }

    private final FreeSizes free;
    private final Catalog catalog;
    private final List<String> names = new ArrayList<>();
    /** What was read of each piece; nothing where it is left out. */
    private final List<Part<Optional<Piece>>> pieces = new ArrayList<>();

    /** A piece that other sizes do not change is one piece to all who know it again as the same. */
    private final Map<Piece, Piece> alike = new ConcurrentHashMap<>();

    private final Part<Stack> rest;

    /** The numbers of the free sizes on which something hangs that is no piece. */
    private final Set<Integer> behindOthers = new TreeSet<>();

    /** For each piece the numbers of the free sizes on which its entry hangs. */
    private final List<Set<Integer>> behindPieces = new ArrayList<>();

    StackVariants(Document document, FreeSizes free, Catalog catalog) {
        this.free = free;
        this.catalog = catalog;
        Mapping root = document.root();
        Set<Integer> common = new TreeSet<>();
        Set<Integer> behindRest = new TreeSet<>();
        for (int i = 0; i < free.sizes().size(); i++) {
            FreeSize size = free.sizes().get(i);
            if (size.place().endsWith("." + FreeSizes.LEAVE_OUT)) {
                common.add(i);
            }
            // what a fastening is measured from may be a member that another profile does not have
            if (!size.scaled() && root.get("fastenings").isPresent()) {
                behindRest.add(i);
            }
        }
        for (Entry entry : root.entries()) {
            String key = entry.key().text();
            if (COMMON.contains(key)) {
                common.addAll(free.behind(entry.value()));
            }
            if (!key.equals("pieces") && !key.equals("sizes")) {
                behindOthers.addAll(free.behind(entry.value()));
            }
        }
        behindRest.addAll(behindOthers);
        behindRest.addAll(common);
        this.rest = new Part<>(behindRest);
        if (root.get("pieces").orElse(root) instanceof Sequence list) {
            for (Node item : list.items()) {
                Set<Integer> behind = new TreeSet<>(common);
                behindPieces.add(free.behind(item));
                behind.addAll(free.behind(item));
                names.add(
                        item instanceof Mapping keys && keys.get("name").orElse(item) instanceof Scalar name
                                ? name.text()
                                : "");
                pieces.add(new Part<>(behind));
            }
        }
    }

    /** The stack with these texts in the place of the free sizes; absent where the document is refused with them. */
    Optional<Stack> of(List<String> texts) {
        Optional<Stack> common = rest.of(texts);
        List<Piece> found = new ArrayList<>(pieces.size());
        boolean all = common.isPresent();
        for (int i = 0; all && i < pieces.size(); i++) {
            Optional<Optional<Piece>> piece = pieces.get(i).of(texts);
            piece.ifPresent(known -> known.ifPresent(found::add));
            all = piece.isPresent();
        }
        return all ? common.map(stack -> stack.with(found)) : read(texts);
    }

    /** Whether anything of a stack hangs on a free size: a piece that it has, or whatever else is no piece. */
    boolean matters(int size, List<String> texts) {
        if (behindOthers.contains(size)) {
            return true;
        }
        for (int i = 0; i < names.size(); i++) {
            String place = "pieces." + names.get(i) + "." + FreeSizes.LEAVE_OUT;
            boolean out = false;
            for (int other = 0; other < free.sizes().size() && !out; other++) {
                out = other != size
                        && free.sizes().get(other).place().equals(place)
                        && texts.get(other).equals("yes");
            }
            if (!out && behindPieces.get(i).contains(size)) {
                return true;
            }
        }
        return false;
    }

    private Optional<Stack> read(List<String> texts) {
        Optional<Stack> stack = Answer.untried(free.with(texts), catalog, new Claims(), new Notices(), Optional.empty())
                .known()
                .map(known -> known.blocks().stack());
        stack.ifPresent(read -> {
            if (alike.size() >= MOST) {
                alike.clear();
            }
            rest.put(texts, read);
            for (int i = 0; i < names.size(); i++) {
                String name = names.get(i);
                pieces.get(i)
                        .put(
                                texts,
                                read.pieces().stream()
                                        .filter(piece -> piece.name().equals(name))
                                        .map(piece -> alike.computeIfAbsent(piece, any -> piece))
                                        .findFirst());
            }
        });
        return stack;
    }
}

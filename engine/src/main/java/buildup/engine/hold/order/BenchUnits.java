package buildup.engine.hold.order;

import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code bench:}, the pieces that are joined before they go up. What is wrong with a unit is refused. */
public final class BenchUnits {
    /**
     * Pieces that go up as one.
     *
     * @param pieces their names
     */
    public record Joined(String name, List<String> pieces, Mark mark) {
        /** Copies the list. */
        public Joined {
            pieces = List.copyOf(pieces);
        }
    }

    private final Stack stack;
    private final Notices notices;
    private final Map<String, String> unitOf = new HashMap<>();

    private BenchUnits(Stack stack, Notices notices) {
        this.stack = stack;
        this.notices = notices;
    }

    /**
     * The units under {@code bench:}, in the order of the document.
     *
     * @param root the document
     */
    public static List<Joined> read(Stack stack, Fields root, Notices notices) {
        BenchUnits bench = new BenchUnits(stack, notices);
        List<Joined> all = new ArrayList<>();
        for (Entry entry : root.mapping("bench").map(Mapping::entries).orElse(List.of())) {
            bench.unit(entry).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    private Optional<Joined> unit(Entry entry) {
        String name = entry.key().text();
        if (!(entry.value() instanceof Sequence list)
                || !list.items().stream().allMatch(item -> item instanceof Scalar)) {
            notices.add(
                    OrderNotices.NOT_A_LIST.with("unit", name).at(entry.key().mark()));
            return Optional.empty();
        }
        List<String> pieces = new ArrayList<>();
        for (Node item : list.items()) {
            if (item instanceof Scalar scalar && isUsable(name, scalar) && !pieces.contains(scalar.text())) {
                pieces.add(scalar.text());
            }
        }
        if (pieces.size() < 2 && list.items().size() < 2) {
            notices.add(OrderNotices.ALONE.with("unit", name).at(entry.key().mark()));
        }
        return pieces.size() < 2
                ? Optional.empty()
                : Optional.of(new Joined(name, pieces, entry.key().mark()));
    }

    private boolean isUsable(String unit, Scalar named) {
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        Optional<Piece> piece = stack.pieces().stream()
                .filter(one -> one.name().equals(named.text()))
                .findFirst();
        if (piece.isEmpty()) {
            notices.add(OrderNotices.NO_SUCH_PIECE
                    .with("unit", unit)
                    .with("word", named.text())
                    .with("nearest", Suggestion.cure(named.text(), known))
                    .at(named.mark()));
            return false;
        }
        if (piece.get().kind() == PieceKind.FRAMING) {
            notices.add(OrderNotices.FRAMING
                    .with("unit", unit)
                    .with("word", named.text())
                    .at(named.mark()));
            return false;
        }
        String first = unitOf.putIfAbsent(named.text(), unit);
        if (first != null && !first.equals(unit)) {
            notices.add(OrderNotices.TWICE
                    .with("word", named.text())
                    .with("first", first)
                    .with("unit", unit)
                    .at(named.mark()));
            return false;
        }
        return true;
    }
}

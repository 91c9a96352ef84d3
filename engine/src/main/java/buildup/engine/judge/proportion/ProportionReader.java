package buildup.engine.judge.proportion;

import buildup.catalog.Catalog;
import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Listing;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code parts:} and {@code proportion:}. */
final class ProportionReader {
    private final Stack stack;
    private final Catalog catalog;
    private final Notices notices;

    ProportionReader(Stack stack, Catalog catalog, Notices notices) {
        this.stack = stack;
        this.catalog = catalog;
        this.notices = notices;
    }

    ProportionWish read(Fields root) {
        boolean asked = root.has("proportion") || root.has("parts");
        Optional<Fields> parts = root.fields("parts");
        Map<EntablaturePart, List<String>> named = new EnumMap<>(EntablaturePart.class);
        parts.ifPresent(found -> named.putAll(parts(found)));
        Optional<Fields> fields = root.fields("proportion");
        Optional<Fields> opening = fields.flatMap(found -> found.fields("opening"));
        return new ProportionWish(
                asked,
                named,
                fields.flatMap(found -> found.scalar("beside")).flatMap(this::order),
                fields.map(found -> size(found, "room")).orElse(OptionalDouble.empty()),
                opening.map(found -> size(found, "width")).orElse(OptionalDouble.empty()),
                opening.map(found -> size(found, "height")).orElse(OptionalDouble.empty()),
                root.mark(root.has("parts") ? "parts" : "proportion"));
    }

    private OptionalDouble size(Fields fields, String key) {
        Optional<Length> size = fields.length(key);
        if (size.filter(length -> !length.isPositive()).isPresent()) {
            notices.add(ProportionNotices.NO_SIZE.with("key", key).at(fields.mark(key)));
            return OptionalDouble.empty();
        }
        return size.map(length -> OptionalDouble.of(length.toInches())).orElse(OptionalDouble.empty());
    }

    private Optional<BookOrder> order(Scalar name) {
        List<BookOrder> orders = catalog.orders();
        Optional<BookOrder> found = orders.stream()
                .filter(order -> order.name().equals(name.text().strip()))
                .findFirst();
        if (found.isEmpty()) {
            notices.add(ProportionNotices.NO_SUCH_ORDER
                    .with("name", name.text())
                    .at(name.mark())
                    .cure(Suggestion.phrase(
                            name.text(), orders.stream().map(BookOrder::name).toList())));
        }
        return found;
    }

    private Map<EntablaturePart, List<String>> parts(Fields fields) {
        Map<EntablaturePart, List<String>> parts = new EnumMap<>(EntablaturePart.class);
        Map<String, EntablaturePart> partOf = new HashMap<>();
        for (EntablaturePart part : EntablaturePart.values()) {
            List<String> names = new ArrayList<>();
            for (Scalar name : fields.scalars(part.word())) {
                if (isUsable(name, part, partOf)) {
                    names.add(name.text());
                }
            }
            if (!names.isEmpty()) {
                parts.put(part, List.copyOf(names));
            }
        }
        leftOut(fields, partOf);
        return parts;
    }

    private boolean isUsable(Scalar name, EntablaturePart part, Map<String, EntablaturePart> partOf) {
        Optional<Piece> piece = stack.pieces().stream()
                .filter(one -> one.name().equals(name.text()))
                .findFirst();
        if (piece.isEmpty()) {
            notices.add(ProportionNotices.NO_SUCH_PIECE
                    .with("name", name.text())
                    .with("part", part.word())
                    .at(name.mark())
                    .cure(Suggestion.phrase(
                            name.text(),
                            stack.pieces().stream().map(Piece::name).toList())));
            return false;
        }
        if (piece.get().kind() == PieceKind.FRAMING) {
            notices.add(ProportionNotices.FRAMING
                    .with("name", name.text())
                    .with("part", part.word())
                    .at(name.mark()));
            return false;
        }
        EntablaturePart first = partOf.putIfAbsent(name.text(), part);
        if (first != null) {
            notices.add(ProportionNotices.IN_TWO_PARTS
                    .with("name", name.text())
                    .with("first", first.word())
                    .with("part", part.word())
                    .at(name.mark()));
            return false;
        }
        return true;
    }

    /** Blocking may be left out, it is not seen; a part of the trim would be missing from every share. */
    private void leftOut(Fields fields, Map<String, EntablaturePart> partOf) {
        List<String> missing = stack.pieces().stream()
                .filter(piece -> piece.kind() == PieceKind.TRIM)
                .map(Piece::name)
                .filter(name -> !partOf.containsKey(name))
                .toList();
        if (!missing.isEmpty() && !partOf.isEmpty()) {
            notices.add(ProportionNotices.LEFT_OUT
                    .with("pieces", Listing.names(missing))
                    .at(fields.mark()));
        } else if (partOf.isEmpty()) {
            notices.add(ProportionNotices.NO_PARTS.notice().at(fields.mark()));
        }
    }
}

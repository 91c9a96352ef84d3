package buildup.engine.judge.bound.form;

import buildup.catalog.Catalog;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.section.free.FreeSizes;
import buildup.engine.section.placing.Edges;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Document;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Places pieces by their rules for all choices at once, as the placing of one stack does. */
public final class StackForms {
    private final Map<String, PieceForms> byName = new HashMap<>();
    private final Map<String, Optional<Extent>> found = new HashMap<>();

    private StackForms(List<PieceForms> pieces) {
        pieces.forEach(piece -> byName.put(piece.name(), piece));
    }

    /**
     * Where each piece of a document sits. A piece that touches, or whose rules are other ones for other choices, has no place
     * that is known, nor has what hangs on it.
     *
     * @return absent where one of them has no place that is known, or cannot be told by its name
     */
    public static Optional<List<PlacedForms>> of(Document document, FreeSizes free, Catalog catalog) {
        return new PieceReading(document, free, catalog).all().flatMap(StackForms::placed);
    }

    private static Optional<List<PlacedForms>> placed(List<PieceForms> pieces) {
        StackForms forms = new StackForms(pieces);
        List<PlacedForms> placed = new ArrayList<>();
        for (PieceForms piece : pieces) {
            Optional<PlacedForms> one = forms.placed(piece);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            placed.add(one.get());
        }
        return Optional.of(List.copyOf(placed));
    }

    private Optional<PlacedForms> placed(PieceForms piece) {
        Optional<Extent> out = extent(piece, Axis.OUT);
        Optional<Extent> up = extent(piece, Axis.UP);
        boolean box =
                piece.shape().same(reading -> reading.shape().isRectangle()).orElse(false);
        return out.flatMap(x ->
                up.flatMap(y -> piece.shape().same(Piece::kind).map(kind -> new PlacedForms(piece, kind, x, y, box))));
    }

    private Optional<Extent> extent(PieceForms piece, Axis axis) {
        String key = axis + " " + piece.name();
        Optional<Extent> known = found.get(key);
        if (known != null) {
            return known;
        }
        // whoever asks while this is being found is in a circle, of which there is no stack
        found.put(key, Optional.empty());
        Optional<Extent> extent = resolved(piece, axis);
        found.put(key, extent);
        return extent;
    }

    /** The one member by which a piece is set on an axis; empty where it is set by none, absent where that is not known. */
    private static Optional<String> member(PieceForms piece, Axis axis) {
        if (piece.rule("at").isEmpty()) {
            return Optional.of("");
        }
        List<String> named = piece.rule("at")
                .get()
                .same(reading -> reading.rules().members())
                .orElse(List.of());
        return piece.shape()
                .same(reading -> named.stream()
                        .filter(member -> Edges.straight(reading.shape(), member)
                                .filter(edge -> edge.axis() == axis)
                                .isPresent())
                        .toList())
                .filter(members -> !named.isEmpty() && members.size() < 2)
                .map(members -> members.isEmpty() ? "" : members.get(0));
    }

    private static String words(Rule rule) {
        if (rule instanceof Rule.ByEdge edge) {
            return "edge " + edge.piece() + "." + edge.edge();
        }
        return rule instanceof Rule.Level ? "level" : "other";
    }

    private Optional<Extent> resolved(PieceForms piece, Axis axis) {
        Optional<String> member = member(piece, axis);
        if (member.isEmpty()) {
            return Optional.empty();
        }
        boolean low = piece.rule(axis.low()).isPresent();
        boolean high = piece.rule(axis.high()).isPresent();
        boolean byMember = !member.get().isEmpty();
        SizeSum size = piece.shape()
                .sum(reading -> axis.high(reading.shape().box())
                        - axis.low(reading.shape().box()));
        if (byMember) {
            return low || high ? Optional.empty() : byMember(piece, member.get(), axis, size);
        }
        Optional<SizeSum> from =
                low ? at(piece, axis.low(), reading -> reading.rules().low(axis), axis) : Optional.empty();
        Optional<SizeSum> to =
                high ? at(piece, axis.high(), reading -> reading.rules().high(axis), axis) : Optional.empty();
        if (low && high) {
            return from.flatMap(lower -> to.map(upper -> new Extent(lower, upper)));
        }
        return from.map(lower -> new Extent(lower, lower.plus(size)))
                .or(() -> to.map(upper -> new Extent(upper.minus(size), upper)));
    }

    private Optional<Extent> byMember(PieceForms piece, String member, Axis axis, SizeSum size) {
        SizeSum inside = piece.shape()
                .sum(reading ->
                        Edges.straight(reading.shape(), member).orElseThrow().coordinate()
                                - axis.low(reading.shape().box()));
        return at(
                        piece,
                        "at",
                        reading ->
                                Optional.ofNullable(reading.rules().byMember().get(member)),
                        axis)
                .map(at -> new Extent(at.minus(inside), at.minus(inside).plus(size)));
    }

    /** The coordinate that a rule names; absent where it is not of one kind for all choices, or where it is no place. */
    private Optional<SizeSum> at(PieceForms piece, String key, Function<Piece, Optional<Rule>> rule, Axis axis) {
        Readings readings = piece.rule(key).orElseThrow();
        Optional<String> words = readings.same(
                reading -> rule.apply(reading).map(StackForms::words).orElse(""));
        Optional<Rule> first = readings.pieces().stream()
                .flatMap(Optional::stream)
                .map(rule)
                .flatMap(Optional::stream)
                .findFirst();
        if (words.isEmpty() || first.isEmpty()) {
            return Optional.empty();
        }
        if (first.get() instanceof Rule.Level) {
            return Optional.of(
                    readings.sum(reading -> ((Rule.Level) rule.apply(reading).orElseThrow()).at()));
        }
        if (!(first.get() instanceof Rule.ByEdge edge) || !byName.containsKey(edge.piece())) {
            return Optional.empty();
        }
        SizeSum offset =
                readings.sum(reading -> ((Rule.ByEdge) rule.apply(reading).orElseThrow()).offset());
        return edge(byName.get(edge.piece()), edge.edge(), axis).map(at -> at.plus(offset));
    }

    /** The coordinate of an edge of a piece; a far edge moves with what it is ripped to. */
    private Optional<SizeSum> edge(PieceForms piece, String edge, Axis axis) {
        ToDoubleFunction<Piece> inside = reading -> Edges.straight(reading.shape(), edge)
                .filter(straight -> straight.axis() == axis)
                .map(straight ->
                        straight.coordinate() - axis.low(reading.shape().box()))
                .orElse(Double.NaN);
        Optional<Boolean> atHigh = piece.shape()
                .same(reading -> Tolerance.same(
                        inside.applyAsDouble(reading) + axis.low(reading.shape().box()),
                        axis.high(reading.shape().box())));
        Optional<Extent> extent = extent(piece, axis);
        return atHigh.flatMap(high -> extent.map(
                known -> high ? known.high() : known.low().plus(piece.shape().sum(inside))));
    }
}

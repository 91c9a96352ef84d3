package buildup.engine.judge.bound;

import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Space;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Bounds of the parts of the trim that a document names: each begins at the lowest place that is seen of its pieces and ends
 * where the next begins, the last at the highest place that is seen of its own. What is seen of a piece begins no lower than
 * the piece, and no higher than any row of it that is surely there ({@link UprightFace}, {@link WholeMembers}).
 */
final class PartBounds {
    /** What welding may move an end of a part by. */
    private static final double SLACK = UprightFace.SLACK;

    /** A piece of a part, and what may surely be seen of it. */
    private record Shown(PlacedForms piece, Optional<UprightFace> face, Optional<WholeMembers> members) {
        static Shown of(PlacedForms piece, List<PlacedForms> pieces, Space space) {
            return new Shown(
                    piece,
                    UprightFace.of(piece, Optional.empty(), pieces, space),
                    WholeMembers.of(piece, Optional.empty(), pieces, space));
        }

        /** Heights that are surely seen of it: those of its ends that are highest, or lowest. */
        List<SizeSum> surely(boolean upper, ChoiceBox box) {
            List<SizeSum> surely = new ArrayList<>();
            face.flatMap(one -> one.open(box))
                    .ifPresent(open -> open.stretches()
                            .forEach(stretch ->
                                    surely.add(face.get().foot().plus(upper ? stretch.to() : stretch.from()))));
            FigureBound own = members.map(one -> one.over(box, (row, around, any) -> rising(row)))
                    .orElse(FigureBound.UNKNOWN);
            double over = upper ? own.greatest() : own.least();
            if (Double.isFinite(over)) {
                surely.add(piece.up().low().plus(over));
            }
            return surely;
        }

        /** From its lowest place to its highest, over the foot of the piece, where it faces the room. */
        private static FigureBound rising(OwnMember row) {
            double from = row.segments().get(0).from().y();
            double to = row.segments().get(row.segments().size() - 1).to().y();
            return to > from + SLACK
                    ? new FigureBound(row.box().top(), row.box().bottom())
                    : FigureBound.UNKNOWN;
        }
    }

    /**
     * Where a part begins, the least of some heights, or where the last one ends, the greatest.
     *
     * @param outermost it is one of these or lies within them
     * @param surely it lies no farther within than any of these
     */
    private record Edge(List<SizeSum> outermost, List<SizeSum> surely) {
        /** How far the place where a part begins lies over the one where a lower part does. */
        Range overBegin(Edge lower, ChoiceBox box) {
            double most = Double.POSITIVE_INFINITY;
            for (SizeSum mine : surely) {
                most = Math.min(most, most(mine, lower.outermost, box));
            }
            double least = Double.NEGATIVE_INFINITY;
            for (SizeSum its : lower.surely) {
                double nearest = Double.POSITIVE_INFINITY;
                for (SizeSum mine : outermost) {
                    nearest = Math.min(nearest, mine.minus(its).over(box).least());
                }
                least = Math.max(least, nearest);
            }
            return new Range(least - 2 * SLACK, most + 2 * SLACK);
        }

        /** How far the place where the last part ends lies over the one where a part begins. */
        Range endOver(Edge lower, ChoiceBox box) {
            double most = Double.NEGATIVE_INFINITY;
            for (SizeSum mine : outermost) {
                most = Math.max(most, most(mine, lower.outermost, box));
            }
            double least = Double.NEGATIVE_INFINITY;
            for (SizeSum mine : surely) {
                for (SizeSum its : lower.surely) {
                    least = Math.max(least, mine.minus(its).over(box).least());
                }
            }
            return new Range(least - 2 * SLACK, most + 2 * SLACK);
        }

        private static double most(SizeSum of, List<SizeSum> over, ChoiceBox box) {
            double most = Double.NEGATIVE_INFINITY;
            for (SizeSum one : over) {
                most = Math.max(most, of.minus(one).over(box).most());
            }
            return most;
        }
    }

    /** The places where the parts of a stack begin, from below, and where the last one ends. */
    private record Edges(List<Edge> begins, Edge end) {
        /** How far one of the places lies over a lower one, by their numbers; the end comes last. */
        Range between(int lower, int upper, ChoiceBox box) {
            if (lower == upper) {
                return new Range(0, 0);
            }
            return upper == begins.size()
                    ? end.endOver(begins.get(lower), box)
                    : begins.get(upper).overBegin(begins.get(lower), box);
        }

        /** What share of all a part has. */
        Range share(int part, ChoiceBox box) {
            Range height = between(part, part + 1, box);
            Range rest = between(0, part, box).plus(between(part + 1, begins.size(), box));
            // more of a part, and less of all others, is a greater share
            return height.least() > 0 && rest.least() >= 0
                    ? new Range(
                            height.least() / (height.least() + rest.most()),
                            height.most() / (height.most() + rest.least()))
                    : Range.UNKNOWN;
        }
    }

    private final List<EntablaturePart> kinds = new ArrayList<>();
    private final List<List<Shown>> parts = new ArrayList<>();

    private PartBounds() {}

    /**
     * Those of the named parts.
     *
     * @return absent where none are named, or where a piece may be left out, so that a part may be another one
     */
    static Optional<PartBounds> of(Map<EntablaturePart, List<String>> named, List<PlacedForms> pieces, Space space) {
        if (named.isEmpty() || pieces.stream().anyMatch(piece -> piece.piece().leaveOut() >= 0)) {
            return Optional.empty();
        }
        PartBounds bounds = new PartBounds();
        new EnumMap<>(named).forEach((kind, names) -> {
            bounds.kinds.add(kind);
            bounds.parts.add(pieces.stream()
                    .filter(piece -> names.contains(piece.name()))
                    .map(piece -> Shown.of(piece, pieces, space))
                    .toList());
        });
        return Optional.of(bounds);
    }

    /** What is known of the places in the stacks of a box; absent where some part may not be seen at all. */
    private Optional<Edges> edges(ChoiceBox box) {
        List<Edge> begins = new ArrayList<>();
        for (List<Shown> part : parts) {
            begins.add(edge(part, false, box));
        }
        Edge end = edge(parts.get(parts.size() - 1), true, box);
        boolean seen = !end.surely.isEmpty() && begins.stream().noneMatch(edge -> edge.surely.isEmpty());
        return seen ? Optional.of(new Edges(begins, end)) : Optional.empty();
    }

    private static Edge edge(List<Shown> part, boolean upper, ChoiceBox box) {
        return new Edge(
                part.stream().map(shown -> shown.piece.side(Axis.UP, upper)).toList(),
                part.stream()
                        .flatMap(shown -> shown.surely(upper, box).stream())
                        .toList());
    }

    /**
     * A column of the parts; absent where nothing is known of it.
     *
     * @param name of the part; absent for all of them
     */
    Optional<Bounder> ofParts(String column, Optional<String> name) {
        List<Integer> asked = IntStream.range(0, kinds.size())
                .filter(i -> name.map(kinds.get(i).word()::equals).orElse(true))
                .boxed()
                .toList();
        boolean height = column.equals("height");
        if (asked.isEmpty() || (!height && !column.equals("share"))) {
            return Optional.empty();
        }
        return Optional.of(box -> edges(box)
                .map(edges -> asked.stream()
                        .map(part ->
                                FigureBound.of(height ? edges.between(part, part + 1, box) : edges.share(part, box)))
                        .reduce(FigureBound.UNKNOWN, FigureBound::and))
                .orElse(FigureBound.UNKNOWN));
    }

    /**
     * How far the shares are from those of an order: half the sum of all differences.
     *
     * @return absent where there is one part alone, which is laid beside no order
     */
    Optional<Bounder> off(BookOrder order) {
        if (kinds.size() < 2) {
            return Optional.empty();
        }
        List<Double> shares = kinds.stream()
                .map(kind -> order.share(kind, kinds).doubleValue())
                .toList();
        return Optional.of(box -> edges(box)
                .map(edges -> {
                    Range apart = new Range(0, 0);
                    for (int i = 0; i < shares.size(); i++) {
                        Range share = edges.share(i, box);
                        double under = shares.get(i) - share.most();
                        double over = share.least() - shares.get(i);
                        apart = apart.plus(new Range(Math.max(0, Math.max(under, over)), Math.max(-under, -over)));
                    }
                    return FigureBound.of(apart.times(0.5));
                })
                .orElse(FigureBound.UNKNOWN));
    }
}

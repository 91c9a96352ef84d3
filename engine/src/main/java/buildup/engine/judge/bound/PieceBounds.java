package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bounds of the figures of one piece: its edges, and on how much it bears. */
final class PieceBounds {
    private static final Map<String, Axis> AXES =
            Map.of("back", Axis.OUT, "face", Axis.OUT, "bottom", Axis.UP, "top", Axis.UP);

    private final List<PlacedForms> pieces;
    private final Space space;

    PieceBounds(List<PlacedForms> pieces, Space space) {
        this.pieces = pieces;
        this.space = space;
    }

    /** A column of the pieces; absent where nothing is known of it. */
    Optional<Bounder> of(String column, Optional<String> name) {
        // framing has no row
        List<PlacedForms> asked = pieces.stream()
                .filter(PlacedForms::inStack)
                .filter(piece -> name.isEmpty() || name.get().equals(piece.name()))
                .toList();
        if (AXES.containsKey(column)) {
            Axis axis = AXES.get(column);
            boolean high = column.equals(axis.high());
            return Optional.of(box -> {
                FigureBound bound = FigureBound.UNKNOWN;
                for (PlacedForms piece : asked) {
                    if (piece.piece().surely(box)) {
                        bound = bound.and(FigureBound.of(piece.side(axis, high).over(box)));
                    }
                }
                return bound;
            });
        }
        if (column.equals("area")) {
            List<Bounder> areas = asked.stream().map(TotalsBounds::area).toList();
            return Optional.of(
                    box -> areas.stream().map(area -> area.of(box)).reduce(FigureBound.UNKNOWN, FigureBound::and));
        }
        return column.equals("bearing") && name.isPresent() && asked.size() == 1
                ? Optional.of(bearing(asked.get(0)))
                : Optional.empty();
    }

    /** What may carry a piece: how far under it it lies, and how much of it may lie there. */
    private record Carrier(PlacedForms piece, SizeSum apart, List<SizeSum> lengths) {
        double most(ChoiceBox box) {
            Range gap = apart.over(box);
            if (!piece.piece().maybe(box)
                    || (piece.box() && (gap.least() > Tolerance.TOUCHING || gap.most() < -Tolerance.TOUCHING))) {
                return 0;
            }
            double most = Double.POSITIVE_INFINITY;
            for (SizeSum length : lengths) {
                most = Math.min(most, length.over(box).most());
            }
            return Math.max(0, most);
        }
    }

    /** No more than what lies over each piece, wall or floor on which it may bear; nothing where it is not there. */
    private Bounder bearing(PlacedForms piece) {
        List<Carrier> carriers = new ArrayList<>();
        SizeSum width = piece.out().high().minus(piece.out().low());
        for (PlacedForms other : pieces) {
            if (!other.name().equals(piece.name())) {
                carriers.add(new Carrier(
                        other,
                        piece.up().low().minus(other.up().high()),
                        List.of(
                                width,
                                other.out().high().minus(other.out().low()),
                                piece.out().high().minus(other.out().low()),
                                other.out().high().minus(piece.out().low()))));
            }
        }
        boolean onRoom = space.wall().solid() && space.wall().to().isPresent();
        return box -> {
            if (!piece.box()) {
                return FigureBound.UNKNOWN;
            }
            double most = onRoom ? width.over(box).most() : 0;
            boolean nearFloor = space.floor().isPresent()
                    && piece.up().low().over(box).least() <= space.floor().getAsDouble() + 2 * Tolerance.TOUCHING;
            most += nearFloor ? width.over(box).most() : 0;
            for (Carrier carrier : carriers) {
                most += carrier.most(box);
            }
            return new FigureBound(0, most + 2 * Tolerance.TOUCHING);
        };
    }
}

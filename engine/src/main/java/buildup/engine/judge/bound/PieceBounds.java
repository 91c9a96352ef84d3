package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Bounds of the figures of one piece: its edges, and on how much it bears. */
final class PieceBounds {
    private static final Map<String, Axis> AXES =
            Map.of("back", Axis.OUT, "face", Axis.OUT, "bottom", Axis.UP, "top", Axis.UP);

    /** What touching leaves at both ends of a contact, and between two heights. */
    private static final double SLACK = 2 * Tolerance.TOUCHING;

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

    /**
     * What may carry a piece.
     *
     * @param gaps how far its side lies under that of the piece, and how far over it: where one is air, neither bears
     * @param lengths no bearing is longer than any of these
     */
    private record Carrier(PlacedForms piece, List<SizeSum> gaps, List<SizeSum> lengths) {
        static Carrier of(PlacedForms piece, LevelSide under) {
            LevelSide top = LevelSide.of(piece, true);
            return new Carrier(
                    piece,
                    List.of(
                            under.up().low().minus(top.up().high()),
                            top.up().low().minus(under.up().high())),
                    List.of(
                            under.width(),
                            top.width(),
                            under.out().high().minus(top.out().low()),
                            top.out().high().minus(under.out().low())));
        }

        double most(ChoiceBox box) {
            boolean apart = gaps.stream().anyMatch(gap -> gap.over(box).least() > SLACK);
            if (!piece.piece().maybe(box) || apart) {
                return 0;
            }
            double most = Double.POSITIVE_INFINITY;
            for (SizeSum length : lengths) {
                most = Math.min(most, length.over(box).most());
            }
            return Math.max(0, most);
        }
    }

    /** No more than what lies over each piece, floor or top of the wall on which it may bear; nothing where it is not there. */
    private Bounder bearing(PlacedForms piece) {
        List<Carrier> carriers = new ArrayList<>();
        LevelSide under = LevelSide.of(piece, false);
        boolean curved = !piece.box();
        for (PlacedForms other : pieces) {
            if (!other.name().equals(piece.name())) {
                carriers.add(Carrier.of(other, under));
                curved |= !other.box();
            }
        }
        double slack = SLACK + (curved ? LevelSide.OF_STEEP_LINES : 0);
        return box -> {
            double width = under.width().over(box).most();
            double most = isAt(space.floor(), under, box) ? width : 0;
            if (space.wall().solid() && isAt(space.wall().to(), under, box)) {
                double overWall = SLACK - under.out().low().over(box).least();
                most += Math.max(0, Math.min(width, overWall));
            }
            for (Carrier carrier : carriers) {
                most += carrier.most(box);
            }
            return new FigureBound(0, most + slack);
        };
    }

    /** Whether some line of a side may lie at that height. */
    private static boolean isAt(OptionalDouble height, LevelSide side, ChoiceBox box) {
        return height.isPresent()
                && side.up().low().over(box).least() <= height.getAsDouble() + SLACK
                && side.up().high().over(box).most() >= height.getAsDouble() - SLACK;
    }
}

package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Bounds of the figures of the whole stack: the outermost of its edges, and sums over its pieces. */
final class TotalsBounds {
    private final List<PlacedForms> pieces;

    TotalsBounds(List<PlacedForms> pieces) {
        this.pieces = pieces.stream().filter(PlacedForms::inStack).toList();
    }

    /** A column of the totals; absent where nothing is known of it. */
    Optional<Bounder> of(String column) {
        return switch (column) {
            case "height" -> Optional.of(height(any -> true));
            case "projection" -> Optional.of(box -> FigureBound.of(outermost(any -> true, Axis.OUT, box)));
            case "top" -> Optional.of(box -> FigureBound.of(outermost(any -> true, Axis.UP, box)));
            case "bottom" -> Optional.of(box -> FigureBound.of(bottom(box)));
            case "trimHeight" -> trimmed() ? Optional.of(height(TotalsBounds::trim)) : Optional.empty();
            case "trimProjection" ->
                trimmed()
                        ? Optional.of(box -> FigureBound.of(outermost(TotalsBounds::trim, Axis.OUT, box)))
                        : Optional.empty();
            case "area" -> Optional.of(area());
            case "weightPerFoot" -> Optional.of(weight());
            default -> Optional.empty();
        };
    }

    private static boolean trim(PlacedForms piece) {
        return piece.kind() == PieceKind.TRIM;
    }

    /** Whether some trim is there whatever is left out: without any its figures are those of a point. */
    private boolean trimmed() {
        return pieces.stream().anyMatch(piece -> trim(piece) && piece.piece().leaveOut() < 0);
    }

    /** The greatest coordinate: that of a piece which is surely there, or more. */
    Range outermost(Predicate<PlacedForms> of, Axis axis, ChoiceBox box) {
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (PlacedForms piece : pieces) {
            if (of.test(piece) && piece.piece().maybe(box)) {
                Range side = piece.side(axis, true).over(box);
                least = piece.piece().surely(box) ? Math.max(least, side.least()) : least;
                most = Math.max(most, side.most());
            }
        }
        return new Range(least, most);
    }

    private Range bottom(ChoiceBox box) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (PlacedForms piece : pieces) {
            if (piece.piece().maybe(box)) {
                Range side = piece.up().low().over(box);
                most = piece.piece().surely(box) ? Math.min(most, side.most()) : most;
                least = Math.min(least, side.least());
            }
        }
        return new Range(least, most);
    }

    /** From the bottom of one piece to the top of another. */
    private record Reach(PlacedForms lower, PlacedForms upper, SizeSum height) {}

    private Bounder height(Predicate<PlacedForms> of) {
        List<Reach> reaches = new ArrayList<>();
        for (PlacedForms lower : pieces) {
            for (PlacedForms upper : pieces) {
                if (of.test(lower) && of.test(upper)) {
                    reaches.add(new Reach(
                            lower, upper, upper.up().high().minus(lower.up().low())));
                }
            }
        }
        return box -> {
            double least = Double.NEGATIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Reach reach : reaches) {
                if (reach.lower.piece().maybe(box) && reach.upper.piece().maybe(box)) {
                    Range height = reach.height.over(box);
                    boolean surely = reach.lower.piece().surely(box)
                            && reach.upper.piece().surely(box);
                    least = surely ? Math.max(least, height.least()) : least;
                    most = Math.max(most, height.most());
                }
            }
            return FigureBound.of(new Range(least, most));
        };
    }

    /** The wood of a piece, and what an inch of it weighs. */
    private record Wood(PlacedForms piece, SizeSum area, SizeSum width, SizeSum height, SizeSum density) {
        Range area(ChoiceBox box) {
            return piece.box() ? positive(width.over(box)).times(positive(height.over(box))) : area.over(box);
        }

        private static Range positive(Range range) {
            return new Range(Math.max(0, range.least()), Math.max(0, range.most()));
        }
    }

    private List<Wood> woods() {
        return pieces.stream().map(TotalsBounds::wood).toList();
    }

    private static Wood wood(PlacedForms piece) {
        return new Wood(
                piece,
                piece.own(reading -> reading.shape().area()),
                piece.out().high().minus(piece.out().low()),
                piece.up().high().minus(piece.up().low()),
                piece.own(TotalsBounds::density));
    }

    /** The area of a piece by itself. */
    static Bounder area(PlacedForms piece) {
        Wood wood = wood(piece);
        return box -> piece.piece().surely(box) ? FigureBound.of(wood.area(box)) : FigureBound.UNKNOWN;
    }

    /** Pounds on a foot for each square inch: a foot has 144 times as many cubic inches as a cubic foot has. */
    private static double density(Piece reading) {
        return reading.wood().densityPerCubicFoot() / 144;
    }

    private Bounder weight() {
        List<Wood> woods = woods();
        return box -> {
            Range sum = new Range(0, 0);
            for (Wood wood : woods) {
                if (wood.piece.piece().maybe(box)) {
                    Range weight = wood.area(box).times(wood.density.over(box));
                    sum = sum.plus(wood.piece.piece().surely(box) ? weight : new Range(0, weight.most()));
                }
            }
            return FigureBound.of(sum);
        };
    }

    /** No more than all pieces beside each other; no less than the largest, for the others may lie in it. */
    private Bounder area() {
        List<Wood> woods = woods();
        return box -> {
            double least = 0;
            double most = 0;
            for (Wood wood : woods) {
                if (wood.piece.piece().maybe(box)) {
                    Range area = wood.area(box);
                    least = wood.piece.piece().surely(box) ? Math.max(least, area.least()) : least;
                    most += area.most();
                }
            }
            return FigureBound.of(new Range(least, most));
        };
    }
}

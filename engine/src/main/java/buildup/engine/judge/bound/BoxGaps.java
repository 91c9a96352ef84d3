package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * How far a piece is off another on each side; where they lie in each other, an edge may belong to either.
 *
 * @param sides one for each side of the box of the other, in
 */
record BoxGaps(PlacedForms piece, List<SizeSum> sides) {
    /** What welding of pieces that nearly touch may move an end by, twice. */
    private static final double SLACK = 2 * Tolerance.TOUCHING;

    static BoxGaps of(PlacedForms piece, PlacedForms other) {
        return new BoxGaps(
                piece,
                List.of(
                        piece.out().low().minus(other.out().high()),
                        other.out().low().minus(piece.out().high()),
                        piece.up().low().minus(other.up().high()),
                        other.up().low().minus(piece.up().high())));
    }

    /** Whether in every stack of a box they do not lie in each other. */
    boolean areClear(ChoiceBox box) {
        return !piece.piece().maybe(box)
                || sides.stream().anyMatch(gap -> gap.over(box).least() >= -Tolerance.COINCIDENT);
    }

    /** Whether besides they do not nearly touch, so that neither is moved to meet the other. */
    boolean areExact(ChoiceBox box) {
        return !piece.piece().maybe(box)
                || sides.stream()
                        .map(gap -> gap.over(box))
                        .anyMatch(gap -> gap.least() > SLACK || gap.isZero(Tolerance.COINCIDENT));
    }
}

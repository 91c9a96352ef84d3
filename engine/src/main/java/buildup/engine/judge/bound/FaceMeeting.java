package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** A straight side of one piece and the facing one of another, which may lie flat against each other. */
final class FaceMeeting {
    /** What welding of pieces that nearly touch may move an end by, twice. */
    static final double SLACK = 2 * Tolerance.TOUCHING;

    private final PlacedForms piece;
    private final PlacedForms other;
    private final SizeSum apart;
    private final List<SizeSum> shared;
    private final List<BoxGaps> others = new ArrayList<>();

    /**
     * Where two sides may meet.
     *
     * @param across the axis square to them
     * @param high whether it is the high side of the first piece
     * @param mine that side along the other axis
     * @param its the facing side of the other piece
     */
    FaceMeeting(
            PlacedForms piece,
            PlacedForms other,
            Axis across,
            boolean high,
            Extent mine,
            Extent its,
            List<PlacedForms> pieces) {
        this.piece = piece;
        this.other = other;
        this.apart = piece.side(across, high).minus(other.side(across, !high));
        this.shared = List.of(
                mine.high().minus(mine.low()),
                its.high().minus(its.low()),
                mine.high().minus(its.low()),
                its.high().minus(mine.low()));
        for (PlacedForms one : pieces) {
            if (!one.name().equals(piece.name()) && !one.name().equals(other.name())) {
                others.add(BoxGaps.of(one, piece));
                others.add(BoxGaps.of(one, other));
            }
        }
    }

    /** Whether they lie flat against each other in every stack of a box, and no third piece lies in either. */
    boolean isThere(ChoiceBox box) {
        boolean there = piece.piece().surely(box)
                && other.piece().surely(box)
                && apart.over(box).isZero(Tolerance.COINCIDENT)
                && length(box).least() > SLACK;
        for (BoxGaps one : others) {
            there = there && one.areClear(box);
        }
        return there;
    }

    /** How much they share. */
    Range length(ChoiceBox box) {
        Range length = new Range(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        for (SizeSum one : shared) {
            Range range = one.over(box);
            length = new Range(Math.min(length.least(), range.least()), Math.min(length.most(), range.most()));
        }
        return length;
    }
}

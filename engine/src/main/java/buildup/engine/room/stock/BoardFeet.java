package buildup.engine.room.stock;

import buildup.catalog.wood.BoardList;
import buildup.catalog.wood.BoardList.Dressed;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import java.util.List;
import java.util.Optional;

/**
 * Board feet as the trade counts them: nominal thickness, at least 1, by nominal width by length; 144 cubic inches each
 * (American Softwood Lumber Standard, DOC PS 20, as quoted by the trade; the least thickness is from memory).
 */
record BoardFeet(Optional<BoardList> list) {
    private static final double QUARTER = 0.25;
    private static final Length SAME = Length.inches(Tolerance.SAW_CUT);

    /** In a foot of a stick of that true size: nominal where the list has it, else the rough quarter above it. */
    double inAFoot(double thickness, double width) {
        double thick = nominal(list.map(BoardList::thicknesses).orElse(List.of()), thickness)
                .orElse(Math.ceil(thickness / QUARTER) * QUARTER);
        double wide =
                nominal(list.map(BoardList::widths).orElse(List.of()), width).orElse(width);
        return Math.max(1, thick) * wide / 12;
    }

    private static Optional<Double> nominal(List<Dressed> sizes, double dressed) {
        return sizes.stream()
                .filter(size -> size.dressed().near(Length.inches(dressed), SAME))
                .findFirst()
                .map(size -> size.nominal().toInches());
    }
}

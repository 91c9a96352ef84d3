package buildup.engine.hold.season;

import buildup.catalog.wood.Sawn;
import buildup.catalog.wood.Wood;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.WidthWay;
import buildup.engine.section.stack.Piece;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much a piece grows from one moisture to another. Between 6 and 14 % by the coefficients of change: Wood Handbook,
 * FPL-GTR-190, 2010, equation 13-2. Beyond, by equation 13-3, which is the same line through 10 % when it is written with
 * the coefficient in place of the shrinkage that the coefficient was made from. Along the grain wood keeps its length.
 */
final class Growth {
    /** Moisture at which coefficient and shrinkage meet, %. */
    private static final double MIDDLE = 10;

    private Growth() {}

    /** Share of its size by which a side grows; negative when it shrinks. */
    static double share(double coefficient, Season from, Season to) {
        double points = to.moisture() - from.moisture();
        return from.usual() && to.usual()
                ? coefficient * points
                : coefficient * points / (1 + coefficient * (from.moisture() - MIDDLE));
    }

    /** The growth of a piece as it sits; nothing when its wood's coefficients are not known. */
    static Optional<Strain> of(Placed placed, Season from, Season to) {
        return of(placed, placed.piece().sawn(), from, to);
    }

    /** The same, were it sawn so. */
    static Optional<Strain> of(Placed placed, Optional<Sawn> sawn, Season from, Season to) {
        Piece piece = placed.piece();
        OptionalDouble width = coefficient(piece.wood(), sawn, true);
        OptionalDouble thickness = coefficient(piece.wood(), sawn, false);
        if (width.isEmpty() || thickness.isEmpty()) {
            return Optional.empty();
        }
        Strain across = Strain.along(
                WidthWay.of(placed), share(width.getAsDouble(), from, to), share(thickness.getAsDouble(), from, to));
        return Optional.of(
                switch (piece.grain()) {
                    case RUN -> across;
                    case OUT -> new Strain(0, 0, across.up());
                    case UP -> new Strain(across.out(), 0, 0);
                });
    }

    /**
     * The coefficient of change of the width or the thickness. Mixed boards count halfway between the two ways in which
     * rings may lie. A panel has no rings: its list says the width under {@code tangential}, the thickness under
     * {@code radial}.
     */
    static OptionalDouble coefficient(Wood wood, Optional<Sawn> sawn, boolean ofWidth) {
        boolean panel = wood.group().filter(group -> group == Wood.Group.PANEL).isPresent();
        if (panel || sawn.isPresent()) {
            boolean tangential = ofWidth == (panel || sawn.get() == Sawn.FLAT);
            return tangential ? wood.tangentialChange() : wood.radialChange();
        }
        return wood.radialChange().isPresent() && wood.tangentialChange().isPresent()
                ? OptionalDouble.of((wood.radialChange().getAsDouble()
                                + wood.tangentialChange().getAsDouble())
                        / 2)
                : OptionalDouble.empty();
    }
}

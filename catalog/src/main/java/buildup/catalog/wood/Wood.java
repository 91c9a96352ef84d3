package buildup.catalog.wood;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A wood.
 *
 * @param about one line for a list
 * @param specificGravity ovendry weight on volume at 12 % moisture content (the basis of the Wood Handbook's strength
 *     tables), no unit
 * @param densityPerCubicFoot weight at 12 % moisture content, lb/ft³
 * @param radialChange C_R, change of size across a quartersawn face, share per 1 % moisture content, within 6 to 14 %
 * @param tangentialChange C_T, the same across a flatsawn face
 * @param group what tables of strength call it; absent when the list does not say
 * @param sawn how its boards are sawn where a piece does not say; absent when they are mixed
 */
public record Wood(
        String name,
        String about,
        double specificGravity,
        double densityPerCubicFoot,
        OptionalDouble radialChange,
        OptionalDouble tangentialChange,
        Optional<Group> group,
        Optional<Sawn> sawn) {
    /** The groups in which strength is published. */
    public enum Group {
        SOFTWOOD,
        HARDWOOD,
        /** Fiberboard and the like, which have no grain. */
        PANEL
    }

    /** Moisture content at which density is given, %. */
    private static final double MOISTURE = 12;

    /** lb/ft³ in one kg/m³: 0.3048³ m³/ft³ over 0.45359237 kg/lb, both exact (NIST Special Publication 811). */
    static final double LB_PER_CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048 / 0.45359237;

    /**
     * Density at 12 % from specific gravity at 12 %: 1000 G (1 + 12/100) kg/m³ (Wood Handbook, FPL-GTR-190, 2010,
     * ch. 4, density as a function of moisture content), in lb/ft³.
     */
    static double density(double specificGravity) {
        return 1000 * specificGravity * (1 + MOISTURE / 100) * LB_PER_CUBIC_FOOT;
    }

    /** The inverse of {@link #density}. */
    static double specificGravity(double densityPerCubicFoot) {
        return densityPerCubicFoot / density(1);
    }
}

package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.catalog.wood.Wood;
import buildup.profiles.Profile;
import java.math.BigDecimal;
import java.util.List;

/**
 * One molding of an order.
 *
 * @param feet wanted
 * @param lengths asked for, in; none when they may be random
 * @param widths of the boards that it is cut from; none when those of the mill are taken
 * @param newKnife whether knives are to be ground for it
 * @param work the kind of work, by which feet are added
 * @param waste that it adds, as a share
 * @param finishes kinds of finish, as the rates call them
 */
public record OrderItem(
        String name,
        Profile profile,
        Wood wood,
        BigDecimal feet,
        List<Double> lengths,
        List<Mill.Width> widths,
        boolean newKnife,
        String work,
        BigDecimal waste,
        List<String> finishes) {
    /** Copies the lists. */
    public OrderItem {
        lengths = List.copyOf(lengths);
        widths = List.copyOf(widths);
        finishes = List.copyOf(finishes);
    }

    /** The stick that it is run from, of its own boards or of those of the mill. */
    Blank blank(Mill mill) {
        return Blank.of(profile, mill.withWidths(widths));
    }

    /** Pounds of the finished molding, so many feet of it. */
    double weight(BigDecimal run) {
        return profile.outline().area() / 144 * wood.densityPerCubicFoot() * run.doubleValue();
    }
}

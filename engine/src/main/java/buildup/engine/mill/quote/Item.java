package buildup.engine.mill.quote;

import buildup.catalog.wood.Wood;
import buildup.engine.mill.milling.Knife;
import buildup.profiles.Profile;
import java.math.BigDecimal;
import java.util.List;

/**
 * One molding of an order.
 *
 * @param feet wanted
 * @param lengths asked for, in; none when they may be random
 * @param newKnife whether a knife is to be ground for it
 * @param work the kind of work, by which feet are added
 * @param waste that it adds, as a share
 * @param finishes kinds of finish, as the rates call them
 */
public record Item(
        String name,
        Profile profile,
        Wood wood,
        BigDecimal feet,
        List<Double> lengths,
        boolean newKnife,
        String work,
        BigDecimal waste,
        List<String> finishes) {
    public Item {
        lengths = List.copyOf(lengths);
        finishes = List.copyOf(finishes);
    }

    /** Width of a knife that runs it, in: its own and a margin at either edge. */
    public double knifeWidth() {
        return knifeWidth(profile);
    }

    /** Whether it is a board, which straight knives plane on four sides. */
    public boolean planed() {
        return planed(profile);
    }

    static boolean planed(Profile profile) {
        return profile.stick() instanceof Profile.Board;
    }

    static double knifeWidth(Profile profile) {
        return profile.width() + 2 * Knife.MARGIN;
    }

    /** Pounds of the finished molding. */
    public double weight() {
        return profile.outline().area() / 144 * wood.densityPerCubicFoot() * feet.doubleValue();
    }
}

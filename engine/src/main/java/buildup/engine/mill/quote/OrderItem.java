package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.catalog.wood.Wood;
import buildup.profiles.Profile;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

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
 * @param halving where it is run as two pieces and glued; absent when it is run whole
 * @param half of what it is a piece; absent for a whole molding
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
        List<String> finishes,
        Optional<Halving> halving,
        Optional<Halving.Half> half) {
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

    /** What is run for it: itself, or its two pieces, of which the second bears the joint and the finish. */
    List<OrderItem> runs() {
        if (halving.isEmpty()) {
            return List.of(this);
        }
        List<Profile> pieces = Halving.of(profile, halving.get());
        List<String> names =
                halving.get().names().stream().map(piece -> name + ", " + piece).toList();
        double joint = Halving.joint(profile, halving.get());
        return List.of(
                piece(names.get(0), pieces.get(0), List.of(), new Halving.Half(name, "", joint)),
                piece(names.get(1), pieces.get(1), finishes, new Halving.Half(name, names.get(0), joint)));
    }

    private OrderItem piece(String called, Profile piece, List<String> finished, Halving.Half of) {
        return new OrderItem(
                called,
                piece,
                wood,
                feet,
                lengths,
                widths,
                newKnife,
                work,
                waste,
                finished,
                Optional.empty(),
                Optional.of(of));
    }

    /** Square feet of joint with the piece beside it, in a foot; 0 for what is glued to nothing. */
    double jointInAFoot() {
        return half.filter(Halving.Half::isLast).map(Halving.Half::joint).orElse(0.0) / 12;
    }
}

package buildup.engine.section.compose;

import buildup.engine.section.stack.Space;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a stack is in its room at all. A ceiling under the whole of it, or a floor over it, is a slip of the pen: in
 * most cases feet written as inches, or a sign forgotten. It is said and then left out, so that the rest can be judged.
 *
 * @param stack the box of the stack, framing left out
 * @param unit in which the document counts
 */
record Room(Space space, Box stack, LengthUnit unit) {
    /** A larger unit that a number may have been meant in: how many times as large, and how that is written. */
    private record Meant(double times, double written, String mark) {}

    /** The room of a stack that has been placed. */
    static Room of(Stack stack, List<Body> bodies) {
        Box box = bodies.stream()
                .filter(Body::inStack)
                .map(body -> body.outline().box())
                .reduce(Box::with)
                .orElseThrow();
        return new Room(stack.space(), box, stack.unit());
    }

    /** The room without a ceiling under the stack or a floor over it, and without the end of the wall there. */
    Space around() {
        OptionalDouble floor = under() ? OptionalDouble.empty() : space.floor();
        OptionalDouble ceiling = over() ? OptionalDouble.empty() : space.ceiling();
        Space.Wall wall = space.wall();
        return new Space(
                floor,
                ceiling,
                space.slope(),
                space.projection(),
                new Space.Wall(
                        wall.from().equals(space.floor()) ? floor : wall.from(),
                        wall.to().equals(space.ceiling()) ? ceiling : wall.to(),
                        wall.solid(),
                        wall.covering()));
    }

    /** Whether the whole stack is above the ceiling. */
    boolean over() {
        double highest = Math.max(space.slope() * stack.back(), space.slope() * stack.face());
        return space.ceiling().isPresent()
                && space.ceiling().getAsDouble() + highest <= stack.bottom() + Tolerance.TOUCHING;
    }

    /** Whether the whole stack is below the floor. */
    boolean under() {
        return space.floor().isPresent() && space.floor().getAsDouble() >= stack.top() - Tolerance.TOUCHING;
    }

    /** What is wrong with the room, if anything is. */
    Optional<Notice> fault() {
        if (over()) {
            double ceiling = space.ceiling().orElseThrow();
            return Optional.of(ComposeNotices.ABOVE_CEILING
                    .with("ceiling", Figure.length(ceiling))
                    .with("bottom", Figure.length(stack.bottom()))
                    .amount(Figure.length(stack.top() - ceiling))
                    .cure(larger(ceiling)));
        }
        if (under()) {
            double floor = space.floor().orElseThrow();
            return Optional.of(ComposeNotices.BELOW_FLOOR
                    .with("floor", Figure.length(floor))
                    .with("top", Figure.length(stack.top()))
                    .amount(Figure.length(floor - stack.bottom()))
                    .cure(lower(floor)));
        }
        return Optional.empty();
    }

    /** The number of the ceiling in the next larger unit in which the stack would be under it. */
    private Phrase larger(double ceiling) {
        double number = number(ceiling);
        List<Meant> all = switch (unit) {
            case INCH -> List.of(new Meant(12, number, "'"));
            case FOOT -> List.of();
            case CENTIMETER -> List.of(new Meant(100, 100 * number, " cm"));
            case MILLIMETER -> List.of(new Meant(10, number, " cm"), new Meant(1000, 1000 * number, " mm"));
        };
        return all.stream()
                .filter(meant -> meant.times() * ceiling >= stack.top())
                .findFirst()
                .map(meant -> ComposeNotices.LARGER_UNIT
                        .with("number", plain(number))
                        .with("unit", unit == LengthUnit.INCH ? "inches" : unit.symbol())
                        .with("meant", plain(meant.written()) + meant.mark()))
                .orElse(ComposeNotices.GIVE_CEILING);
    }

    private Phrase lower(double floor) {
        return -floor <= stack.bottom() + Tolerance.TOUCHING
                ? ComposeNotices.SIGN.with("number", plain(number(floor)))
                : ComposeNotices.GIVE_FLOOR;
    }

    /** As the document would write it without a unit. */
    private double number(double inches) {
        return inches / unit.of(1).toInches();
    }

    private static String plain(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}

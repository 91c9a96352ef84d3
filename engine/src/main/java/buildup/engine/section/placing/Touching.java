package buildup.engine.section.placing;

import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Outline;
import buildup.profiles.travel.Direction;
import buildup.profiles.travel.Travel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Moves a piece until it meets what stands already: pieces, framing, solid wall, floor, ceiling. */
public final class Touching {
    private Touching() {}

    /**
     * The shift along the axis at the first meeting, in; nothing when the piece meets nothing.
     *
     * @param low whether it comes toward the end of the axis that rules call low: down, or back from the room
     * @param inTheWay what stands already, the room left out
     */
    public static Optional<Double> shift(Outline shape, Axis axis, boolean low, Space space, List<Outline> inTheWay) {
        Direction direction = axis == Axis.OUT ? Direction.BACK : low ? Direction.DOWN : Direction.UP;
        List<Outline> all =
                Stream.concat(inTheWay.stream(), ahead(space, direction)).toList();
        OptionalDouble shift = Travel.meeting(shape, all, direction);
        return shift.isPresent() ? Optional.of(shift.getAsDouble()) : Optional.empty();
    }

    /** What of the room ends toward the piece; the far ends of floor, ceiling and wall are not there to be met. */
    private static Stream<Outline> ahead(Space space, Direction direction) {
        Surroundings room = Surroundings.of(space, Surroundings.BEYOND_ALL);
        double wallTop = space.wall().to().orElse(Surroundings.BEYOND_ALL);
        double wallBottom = space.wall().from().orElse(-Surroundings.BEYOND_ALL);
        return switch (direction) {
            case DOWN ->
                both(
                        room.floor(),
                        room.wall().filter(wall -> wallTop < space.ceiling().orElse(Surroundings.BEYOND_ALL)));
            case UP ->
                both(
                        room.ceiling(),
                        room.wall().filter(wall -> wallBottom > space.floor().orElse(-Surroundings.BEYOND_ALL)));
            case BACK -> room.wall().stream();
        };
    }

    private static Stream<Outline> both(Optional<Outline> first, Optional<Outline> second) {
        return Stream.concat(first.stream(), second.stream());
    }
}

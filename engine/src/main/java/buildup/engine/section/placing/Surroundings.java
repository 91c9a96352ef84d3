package buildup.engine.section.placing;

import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import java.util.Optional;

/** The solid wall, the floor and the ceiling as outlines that run on far beyond any stack. */
public record Surroundings(Optional<Outline> wall, Optional<Outline> floor, Optional<Outline> ceiling) {
    /** Farther than any length that can be written: the reader refuses lengths of 10,000 ft and more. */
    static final double BEYOND_ALL = 1 << 20;

    /**
     * The surroundings of a space; what it lacks is absent.
     *
     * @param far how far they run, in; must be more than any coordinate that matters
     */
    public static Surroundings of(Space space, double far) {
        Space.Wall wall = space.wall();
        return new Surroundings(
                wall.solid()
                        ? Optional.of(
                                box(-far, wall.from().orElse(-far), 0, wall.to().orElse(far)))
                        : Optional.empty(),
                space.floor().isPresent()
                        ? Optional.of(box(-far, -far, far, space.floor().getAsDouble()))
                        : Optional.empty(),
                space.ceiling().isPresent()
                        ? Optional.of(box(-far, space.ceiling().getAsDouble(), far, far))
                        : Optional.empty());
    }

    private static Outline box(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }
}

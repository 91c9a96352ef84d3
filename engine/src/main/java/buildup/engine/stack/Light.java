package buildup.engine.stack;

import buildup.profiles.outline.Point;
import buildup.shared.notice.Mark;
import java.util.Optional;

/** A light as the document gives it. */
public sealed interface Light permits Light.Distant, Light.Lamp {
    String name();

    /** Where the document gives it; absent for the light that shines when it gives none. */
    Optional<Mark> mark();

    /** Parallel rays; degrees, altitude over the horizon, azimuth from square to the wall, positive from the left. */
    record Distant(String name, double altitude, double azimuth, Optional<Mark> mark) implements Light {}

    /** A lamp at a place in the section plane, {@code width} across, in. */
    record Lamp(String name, Point at, double width, Optional<Mark> mark) implements Light {}
}

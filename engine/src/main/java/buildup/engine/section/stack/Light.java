package buildup.engine.section.stack;

import buildup.engine.section.sun.SunHour;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Mark;
import java.util.Optional;
import java.util.OptionalDouble;

/** A light as the document gives it. */
public sealed interface Light permits Light.Distant, Light.Lamp, Light.Sun {
    /** Its name in the document, or that of the drafting light. */
    String name();

    /** Where the document gives it; absent for the light that shines when it gives none. */
    Optional<Mark> mark();

    /** Parallel rays; degrees, altitude over the horizon, azimuth from square to the wall, positive from the left. */
    record Distant(String name, double altitude, double azimuth, Optional<Mark> mark) implements Light {}

    /**
     * The sun at an hour; bearings are degrees clockwise from north.
     *
     * @param faces the bearing that the trimmed face looks to
     * @param window the bearing that the window it comes in by looks to
     */
    record Sun(String name, SunHour hour, double faces, OptionalDouble window, Optional<Mark> mark) implements Light {}

    /** A lamp at a place in the section plane, {@code width} across, in. */
    record Lamp(String name, Point at, double width, Optional<Mark> mark) implements Light {
        /** Its end nearer to the wall. */
        public Point left() {
            return at.minus(new Point(width / 2, 0));
        }

        /** Its end farther out. */
        public Point right() {
            return at.plus(new Point(width / 2, 0));
        }
    }
}

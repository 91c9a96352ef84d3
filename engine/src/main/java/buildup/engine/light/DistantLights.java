package buildup.engine.light;

import buildup.engine.stack.Light;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Notice;
import java.util.Optional;

/** Says which distant lights cannot shine on the room side of a wall. */
final class DistantLights {
    private DistantLights() {}

    static Optional<Notice> fault(Light.Distant light) {
        String read = "Light '" + light.name() + "' (altitude " + degrees(light.altitude()) + ", azimuth "
                + degrees(light.azimuth()) + ")";
        if (light.altitude() < 0) {
            return Optional.of(say(read + " is under the horizon.", "Give an altitude from 0 to 90, or a lamp."));
        }
        if (light.altitude() > 90) {
            return Optional.of(say(read + " is past the zenith.", "Give an altitude from 0 to 90."));
        }
        if (Math.abs(light.azimuth()) > 90) {
            return Optional.of(say(
                    read + " comes from behind the wall and makes no shadow.",
                    "Give an azimuth between -90 and 90, measured from square to the wall."));
        }
        if (Lights.sectionAngle(light.altitude(), light.azimuth()) > 90 - LEAST_OFF_UPRIGHT) {
            return Optional.of(say(
                    read + " stands at a section angle of 90°: it runs along the wall and lights none of it.",
                    "Bring it off the wall: an azimuth under 90 and an altitude under 90."));
        }
        return Optional.empty();
    }

    /** Nearer to upright than this, in degrees, a ray meets no face. */
    private static final double LEAST_OFF_UPRIGHT = 0.01;

    private static Notice say(String message, String cure) {
        return Notice.problem("impossible-light-or-eye", message).cure(cure);
    }

    private static String degrees(double value) {
        return LengthPrinter.decimals(Length.inches(value), 2) + "°";
    }
}

package buildup.engine.look.light;

import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import java.util.Optional;

/** Says which distant lights cannot shine on the room side of a wall. */
final class DistantLights {
    private DistantLights() {}

    static Optional<Notice> fault(Light.Distant light) {
        if (light.altitude() < 0) {
            return Optional.of(say(LightNotices.UNDER_THE_HORIZON, light));
        }
        if (light.altitude() > 90) {
            return Optional.of(say(LightNotices.PAST_THE_ZENITH, light));
        }
        if (Math.abs(light.azimuth()) > 90) {
            return Optional.of(say(LightNotices.BEHIND_THE_WALL, light));
        }
        // nearer to upright than this a ray meets no face
        if (Lights.sectionAngle(light.altitude(), light.azimuth()) > 90 - Math.toDegrees(Tolerance.SAME_DIRECTION)) {
            return Optional.of(say(LightNotices.ALONG_THE_WALL, light));
        }
        return Optional.empty();
    }

    private static Notice say(Kind kind, Light.Distant light) {
        return kind.with("light", light.name())
                .with("altitude", degrees(light.altitude()))
                .with("azimuth", degrees(light.azimuth()));
    }

    private static Figure degrees(double value) {
        return Figure.angle(value).rounded(Rounding.decimals(2));
    }
}

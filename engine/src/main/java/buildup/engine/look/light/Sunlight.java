package buildup.engine.look.light;

import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.engine.section.sun.SunHour;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sunlight on a wall: the sun's bearing less the bearing that the wall faces is the azimuth off square. Whoever stands
 * before the wall has bearings that grow to the left hand, so that the azimuth is positive from the left.
 */
public final class Sunlight {
    /** Dark inches of each member of the walk at one hour. */
    public record Hour(double hour, double altitude, double azimuth, List<Double> dark) {
        public Hour {
            dark = List.copyOf(dark);
        }
    }

    private Sunlight() {}

    /** The light that the sun is at its hour. */
    public static Light.Distant distant(Light.Sun sun) {
        SunHour.Place place = sun.hour().place();
        return new Light.Distant(sun.name(), place.altitude(), off(place.bearing(), sun.faces()), sun.mark());
    }

    /** How far a bearing is clockwise of another, -180 to 180 degrees. */
    private static double off(double bearing, double from) {
        return Math.IEEEremainder(bearing - from, 360);
    }

    static Optional<Notice> fault(Light.Sun sun) {
        SunHour.Place place = sun.hour().place();
        if (place.altitude() <= 0) {
            return Optional.of(say(LightNotices.SUN_IS_DOWN, sun).with("under", Figure.angle(-place.altitude())));
        }
        if (sun.window().isPresent()
                && Math.abs(off(place.bearing(), sun.window().getAsDouble())) >= 90) {
            return Optional.of(say(LightNotices.NOT_BY_THIS_WINDOW, sun)
                    .with("bearing", Figure.angle(place.bearing()))
                    .with("window", Figure.angle(sun.window().getAsDouble())));
        }
        return DistantLights.fault(distant(sun));
    }

    private static Notice say(Kind kind, Light.Sun sun) {
        return kind.with("light", sun.name())
                .with("day", sun.hour().day().toString())
                .with("hour", Figure.of(Quantity.COUNT, sun.hour().hour()).rounded(Rounding.decimals(1)));
    }

    /** The whole hours of the light's day at which the sun shines on the section, morning to evening. */
    public static List<Hour> day(Section section, Light.Sun sun) {
        List<Hour> hours = new ArrayList<>();
        for (int hour = 0; hour < 24; hour++) {
            Light.Sun then = new Light.Sun(sun.name(), sun.hour().at(hour), sun.faces(), sun.window(), sun.mark());
            for (Lighting lighting : Lights.of(section, List.of(then), new Notices())) {
                Light.Distant distant = distant(then);
                hours.add(new Hour(
                        hour,
                        distant.altitude(),
                        distant.azimuth(),
                        lighting.darkness().stream().map(Darkness::dark).toList()));
            }
        }
        return hours;
    }
}

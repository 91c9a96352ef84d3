package buildup.engine.section.sun;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.OptionalDouble;
import org.shredzone.commons.suncalc.SunPosition;

/**
 * An hour of a day at a place.
 *
 * @param latitude degrees, north positive
 * @param longitude degrees, east positive; needed for clock time only
 * @param hour 0 to 24: sun time (the sun is due south or north at 12), or clock time when {@code utcOffset} is given
 * @param utcOffset hours of the clock ahead of UTC
 */
public record SunHour(double latitude, OptionalDouble longitude, LocalDate day, double hour, OptionalDouble utcOffset) {
    private static final double SECONDS = 3600;

    /** The sun's true altitude over the level and its bearing clockwise from north, degrees; refraction left out. */
    public record Place(double altitude, double bearing) {}

    /** The same place and day at another hour, 0 to 24, of the same clock. */
    public SunHour at(double otherHour) {
        return new SunHour(latitude, longitude, day, otherHour, utcOffset);
    }

    /** Where the sun stands then, degrees above the level and from north. */
    public Place place() {
        return utcOffset.isPresent() ? place(utc(hour - utcOffset.getAsDouble()), longitude.orElse(0)) : bySunTime();
    }

    private ZonedDateTime utc(double hours) {
        return day.atStartOfDay(ZoneOffset.UTC).plus(Duration.ofSeconds(Math.round(hours * SECONDS)));
    }

    private Place place(ZonedDateTime when, double east) {
        SunPosition position = SunPosition.compute().on(when).at(latitude, east).execute();
        return new Place(position.getTrueAltitude(), position.getAzimuth());
    }

    /**
     * At the longitude, near that of Greenwich, where the sun's hour angle is what sun time says: 15 degrees an hour from
     * noon. What clock and sun differ by (the equation of time) is so read off the sun itself.
     */
    private Place bySunTime() {
        ZonedDateTime when = utc(hour);
        return place(when, Math.IEEEremainder((hour - 12) * 15 - hourAngle(when), 360));
    }

    /** The sun's hour angle at longitude 0, degrees: its bearing as seen from the north pole, where they are one. */
    private static double hourAngle(ZonedDateTime when) {
        double bearing = SunPosition.compute().on(when).at(90, 0).execute().getAzimuth();
        return bearing - 180;
    }
}

package buildup.engine.section.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the sun stands, against a published worked example, tables and spherical trigonometry. */
class SunHourTest {
    private static final LocalDate JUNE = LocalDate.of(2025, 6, 21);
    private static final LocalDate DECEMBER = LocalDate.of(2025, 12, 21);

    /** Refraction and parallax, which are left out, are under 0.02 degrees at the altitudes asked for. */
    private static final Offset<Double> NEAR = within(0.05);

    private static SunHour.Place bySun(double latitude, LocalDate day, double hour) {
        return new SunHour(latitude, OptionalDouble.empty(), day, hour, OptionalDouble.empty()).place();
    }

    private static SunHour.Place byClock(double latitude, double longitude, LocalDate day, double hour, double offset) {
        return new SunHour(latitude, OptionalDouble.of(longitude), day, hour, OptionalDouble.of(offset)).place();
    }

    /**
     * I. Reda, A. Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302, revised 2008,
     * appendix A.5: zenith 50.11162 and azimuth 194.34024.
     */
    @Test
    void the_worked_example_of_the_solar_position_algorithm() {
        double hour = 12 + 30.0 / 60 + 30.0 / 3600;
        SunHour.Place place = byClock(39.742476, -105.1786, LocalDate.of(2003, 10, 17), hour, -7);
        assertThat(90 - place.altitude()).isCloseTo(50.11162, NEAR);
        assertThat(place.bearing()).isCloseTo(194.34024, NEAR);
    }

    /** From memory, after the solar-time tables of the ASHRAE Handbook of Fundamentals, 40 degrees north. */
    @ParameterizedTest
    @CsvSource({"6, 8, 37.4, 90.7", "6, 12, 73.5, 0", "12, 9, 14.0, 41.9", "12, 12, 26.6, 0"})
    void the_solar_time_tables_for_40_degrees_north(int month, double hour, double altitude, double fromSouth) {
        SunHour.Place place = bySun(40, LocalDate.of(2025, month, 21), hour);
        assertThat(place.altitude()).isCloseTo(altitude, within(0.15));
        assertThat(180 - place.bearing()).as("east of south").isCloseTo(fromSouth, within(0.15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60, -35, -10, 0, 10, 23, 30, 40, 52, 65})
    void at_noon_by_sun_time_the_altitude_is_90_less_latitude_from_declination(double latitude) {
        // the declination of the equinox's day is measured where the tables do it, at 40 degrees north
        LocalDate day = LocalDate.of(2025, 4, 20);
        double declination = bySun(40, day, 12).altitude() - 50;
        SunHour.Place noon = bySun(latitude, day, 12);
        assertThat(noon.altitude()).isCloseTo(90 - Math.abs(latitude - declination), within(0.02));
        double meridian = latitude > declination ? 180 : 0;
        assertThat(Math.IEEEremainder(noon.bearing() - meridian, 360)).isCloseTo(0, within(0.2));
    }

    @Test
    void at_the_solstices_the_declination_is_the_obliquity_of_the_ecliptic() {
        // 23.44 degrees: the tilt of the earth's axis to its path (Astronomical Almanac; from memory)
        assertThat(bySun(40, JUNE, 12).altitude()).isCloseTo(90 - 40 + 23.44, within(0.02));
        assertThat(bySun(40, DECEMBER, 12).altitude()).isCloseTo(90 - 40 - 23.44, within(0.02));
    }

    @ParameterizedTest
    @CsvSource({"40, 9", "40, 15.5", "52, 6", "52, 18", "-33, 10", "0, 14", "65, 20"})
    void off_noon_altitude_and_bearing_follow_the_spherical_triangle(double latitude, double hour) {
        // sin h = sin f sin d + cos f cos d cos t; t = 15 degrees an hour from noon (spherical trigonometry)
        double declination = Math.toRadians(bySun(40, JUNE, 12).altitude() - 50);
        double f = Math.toRadians(latitude);
        double t = Math.toRadians(15 * (hour - 12));
        double up = Math.sin(f) * Math.sin(declination) + Math.cos(f) * Math.cos(declination) * Math.cos(t);
        double north = Math.cos(f) * Math.sin(declination) - Math.sin(f) * Math.cos(declination) * Math.cos(t);
        double east = -Math.cos(declination) * Math.sin(t);
        SunHour.Place place = bySun(latitude, JUNE, hour);
        assertThat(place.altitude()).isCloseTo(Math.toDegrees(Math.asin(up)), NEAR);
        double bearing = Math.toDegrees(Math.atan2(east, north));
        assertThat(Math.IEEEremainder(place.bearing() - bearing, 360)).isCloseTo(0, NEAR);
    }

    @Test
    void the_clock_differs_from_the_sun_by_the_equation_of_time_and_the_longitude() {
        // 16 min 25 s ahead of the clock at the beginning of November (from memory)
        LocalDate day = LocalDate.of(2025, 11, 3);
        SunHour.Place clock = byClock(40, -75, day, 12, -5);
        SunHour.Place sun = bySun(40, day, 12 + (16 + 25.0 / 60) / 60);
        assertThat(clock.bearing()).isCloseTo(sun.bearing(), within(0.1));
        // sun time is taken near Greenwich, five hours earlier: the declination moves 0.08 degrees meanwhile
        assertThat(clock.altitude()).isCloseTo(sun.altitude(), within(0.1));
        // a degree of longitude is four minutes
        assertThat(byClock(40, -80, day, 12 + 20.0 / 60, -5).bearing()).isCloseTo(clock.bearing(), NEAR);
        assertThat(byClock(40, -75, day, 13, -4).bearing()).as("summer time").isCloseTo(clock.bearing(), NEAR);
    }

    @Test
    void at_midnight_the_sun_is_under_the_horizon_and_the_day_goes_on_after_24() {
        assertThat(bySun(40, JUNE, 0).altitude()).isCloseTo(-90 + 40 + 23.44, within(0.05));
        assertThat(bySun(40, JUNE, 24).altitude())
                .isCloseTo(bySun(40, JUNE.plusDays(1), 0).altitude(), within(0.01));
    }

    @Test
    void another_hour_of_the_same_day_keeps_place_and_clock() {
        SunHour noon = new SunHour(40, OptionalDouble.of(-75), JUNE, 12, OptionalDouble.of(-5));
        assertThat(noon.at(15)).isEqualTo(new SunHour(40, OptionalDouble.of(-75), JUNE, 15, OptionalDouble.of(-5)));
    }
}

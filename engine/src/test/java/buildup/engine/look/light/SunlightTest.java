package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.light.Sunlight.Hour;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.engine.section.sun.SunHour;
import buildup.shared.notice.NoticeWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Sunlight on a wall, and how the document gives it. */
class SunlightTest {
    private static final Section CORNICE =
            Bench.sound(Bench.resource("/reference-cornice.yaml")).section();

    private static Light.Sun read(String sun) {
        return (Light.Sun) Shone.shelf("lights:\n  - { name: sun, " + sun + " }")
                .stack()
                .lights()
                .get(0);
    }

    private static Light.Sun sun(LocalDate day, double hour, double faces) {
        SunHour when = new SunHour(40, OptionalDouble.empty(), day, hour, OptionalDouble.empty());
        return new Light.Sun("sun", when, faces, OptionalDouble.empty(), Optional.empty());
    }

    @Test
    void the_afternoon_sun_comes_from_the_left_of_a_wall_that_faces_south() {
        // whoever looks at it looks north and has west on the left hand
        LocalDate winter = LocalDate.of(2025, 12, 21);
        assertThat(Sunlight.distant(sun(winter, 15, 180)).azimuth()).isPositive();
        assertThat(Sunlight.distant(sun(winter, 9, 180)).azimuth()).isNegative();
        assertThat(Sunlight.distant(sun(winter, 12, 180)).azimuth()).isCloseTo(0, within(0.05));
    }

    @Test
    void the_azimuth_is_measured_from_where_the_wall_faces_also_across_north() {
        LocalDate summer = LocalDate.of(2025, 6, 21);
        double east = Sunlight.distant(sun(summer, 7, 90)).azimuth();
        double bearing = sun(summer, 7, 90).hour().place().bearing();
        assertThat(east).isCloseTo(bearing - 90, within(1e-9));
        assertThat(Sunlight.distant(sun(summer, 7, 350)).azimuth()).isCloseTo(bearing + 10, within(1e-9));
    }

    @Test
    void a_south_wall_at_40_north_has_sun_from_8_to_16_at_midwinter_and_from_9_to_15_at_midsummer() {
        // at midsummer the sun stands north of east until after 8: 90.7 degrees from south, see reference
        List<Hour> winter = Sunlight.day(CORNICE, sun(LocalDate.of(2025, 12, 21), 12, 180));
        List<Hour> summer = Sunlight.day(CORNICE, sun(LocalDate.of(2025, 6, 21), 12, 180));
        assertThat(winter).extracting(Hour::hour).containsExactly(8.0, 9.0, 10.0, 11.0, 12.0, 13.0, 14.0, 15.0, 16.0);
        assertThat(summer).extracting(Hour::hour).containsExactly(9.0, 10.0, 11.0, 12.0, 13.0, 14.0, 15.0);
    }

    @Test
    void the_day_is_the_same_before_and_after_noon_at_midsummer() {
        List<Hour> hours = Sunlight.day(CORNICE, sun(LocalDate.of(2025, 6, 21), 12, 180));
        for (int i = 0; i < hours.size(); i++) {
            Hour morning = hours.get(i);
            Hour evening = hours.get(hours.size() - 1 - i);
            assertThat(morning.altitude()).isCloseTo(evening.altitude(), within(0.05));
            assertThat(morning.azimuth()).isCloseTo(-evening.azimuth(), within(0.05));
            assertThat(morning.dark()).hasSameSizeAs(CORNICE.members());
            for (int member = 0; member < morning.dark().size(); member++) {
                assertThat(morning.dark().get(member)).isCloseTo(evening.dark().get(member), within(0.02));
            }
        }
    }

    @Test
    void an_hour_s_dark_inches_are_those_of_its_light() {
        Hour noon =
                Sunlight.day(CORNICE, sun(LocalDate.of(2025, 12, 21), 12, 180)).get(4);
        Shone light = Shone.distant(CORNICE, noon.altitude(), noon.azimuth());
        int frieze = 3;
        assertThat(CORNICE.name(CORNICE.members().get(frieze).body())).isEqualTo("frieze");
        assertThat(noon.dark().get(frieze)).isCloseTo(light.dark("frieze", "face"), within(1e-9));
        // 3.5 of overhang under the noon sun, less the 1.125 that the bed takes off below the lip
        assertThat(noon.dark().get(frieze))
                .isCloseTo(3.5 * Math.tan(Math.toRadians(noon.altitude())) - 1.125, within(1e-6));
    }

    @Test
    void a_window_lets_the_sun_in_for_its_own_hours_only() {
        Light.Sun all = sun(LocalDate.of(2025, 12, 21), 12, 180);
        Light.Sun east = new Light.Sun("sun", all.hour(), 180, OptionalDouble.of(90), Optional.empty());
        assertThat(Sunlight.day(CORNICE, east))
                .extracting(Hour::hour)
                .doesNotContain(12.5, 13.0, 16.0)
                .contains(8.0, 11.0);
    }

    @Test
    void days_are_read_as_people_write_them() {
        String rest = "latitude: 40, hour: 15, faces: 180, day: ";
        LocalDate midsummer = LocalDate.of(2025, 6, 21);
        for (String day : List.of("21 June", "21. June", "21 jun", "06-21", "6-21", "2025-06-21", "21 JUNE 2025")) {
            assertThat(read(rest + day).hour().day()).as(day).isEqualTo(midsummer);
        }
        assertThat(read(rest + "2026-06-21").hour().day()).isEqualTo(LocalDate.of(2026, 6, 21));
        assertThat(read(rest + "29 February 2024").hour().day()).isEqualTo(LocalDate.of(2024, 2, 29));
    }

    @Test
    void a_day_that_no_calendar_has_is_refused() {
        for (String day :
                List.of("31 June", "June 21", "21 Juno", "21", "2025-13-01", "29 February", "0 May", "summer")) {
            assertThat(Shone.said("lights:\n  - { name: l, latitude: 40, hour: 15, faces: 180, day: " + day + " }"))
                    .as(day)
                    .singleElement()
                    .satisfies(notice -> assertThat(NoticeWords.INCHES.cure(notice))
                            .isEqualTo("Give 'day:' as 21 June or 2026-06-21."));
        }
    }

    @Test
    void hours_are_read_with_minutes_or_as_a_decimal() {
        String rest = "latitude: 40, day: 21 June, faces: 180, hour: ";
        assertThat(read(rest + "15").hour().hour()).isEqualTo(15);
        assertThat(read(rest + "15:30").hour().hour()).isEqualTo(15.5);
        assertThat(read(rest + "15.5").hour().hour()).isEqualTo(15.5);
        assertThat(read(rest + "9:15").hour().hour()).isEqualTo(9.25);
    }

    @Test
    void an_hour_that_no_day_has_is_refused() {
        for (String hour : List.of("25", "24:30", "15:60", "-1", "noon", "3 pm", "15:5")) {
            assertThat(Shone.said(
                            "lights:\n  - { name: l, latitude: 40, day: 21 June, faces: 180, hour: '" + hour + "' }"))
                    .as(hour)
                    .singleElement()
                    .satisfies(notice ->
                            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Give 'hour:' as 15 or 15:30."));
        }
    }

    @Test
    void clock_time_needs_offset_and_longitude_and_is_kept_with_them() {
        SunHour clock = read("latitude: 39.742476, longitude: -105.1786, day: 2003-10-17, hour: 12:30, utc-offset: -7,"
                        + " faces: 180")
                .hour();
        assertThat(clock.utcOffset()).hasValue(-7);
        assertThat(clock.longitude()).hasValue(-105.1786);
        assertThat(clock.latitude()).isEqualTo(39.742476);
    }
}

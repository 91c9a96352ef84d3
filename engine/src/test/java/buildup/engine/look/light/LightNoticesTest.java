package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lights that cannot shine on the room side of a wall are said, with their place, and left out. */
class LightNoticesTest {
    private static void says(String light, String message, String cure) {
        List<Notice> said = Shone.said("lights:\n  - { name: good, altitude: 45 }\n  - { name: l, " + light + " }");
        assertThat(said).hasSize(1);
        assertThat(said.get(0).level()).isEqualTo(Level.PROBLEM);
        assertThat(said.get(0).code()).isEqualTo("impossible-light-or-eye");
        assertThat(NoticeWords.INCHES.message(said.get(0))).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(said.get(0))).isEqualTo(cure);
        assertThat(said.get(0).mark().orElseThrow()).hasToString("stack.yaml:5:5");
    }

    @Test
    void a_light_under_the_horizon() {
        says(
                "altitude: -5",
                "Light 'l' (altitude -5.00°, azimuth 0.00°) is under the horizon.",
                "Give an altitude from 0 to 90, or a lamp.");
    }

    @Test
    void a_light_past_the_zenith() {
        says(
                "altitude: 95, azimuth: 10",
                "Light 'l' (altitude 95.00°, azimuth 10.00°) is past the zenith.",
                "Give an altitude from 0 to 90.");
    }

    @Test
    void a_light_from_behind_the_wall() {
        says(
                "altitude: 35.264, azimuth: -120",
                "Light 'l' (altitude 35.26°, azimuth -120.00°) comes from behind the wall and makes no shadow.",
                "Give an azimuth between -90 and 90, measured from square to the wall.");
    }

    @Test
    void a_light_along_the_wall_or_straight_down() {
        String cure = "Bring it off the wall: an azimuth under 90 and an altitude under 90.";
        says(
                "altitude: 30, azimuth: 90",
                "Light 'l' (altitude 30.00°, azimuth 90.00°) is upright in section: it runs along the wall"
                        + " and lights none of it.",
                cure);
        says(
                "altitude: 90",
                "Light 'l' (altitude 90.00°, azimuth 0.00°) is upright in section: it runs along the wall"
                        + " and lights none of it.",
                cure);
    }

    @Test
    void a_light_without_altitude() {
        says(
                "azimuth: 45",
                "Light 'l' has no altitude.",
                "Give 'altitude:' in degrees over the horizon, 'at:' for a lamp, or 'latitude:', 'day:' and 'hour:' for"
                        + " the sun.");
    }

    @Test
    void a_light_level_with_the_horizon_shines_straight_in() {
        assertThat(Shone.said("lights:\n  - { altitude: 0 }")).isEmpty();
        Shone level = Shone.at(Shone.shelf("").section(), 0);
        assertThat(level.lighting().sectionAngle()).hasValue(0);
        assertThat(level.length("shelf", "face", Band.Lit.LIT)).isEqualTo(0.75);
    }

    @Test
    void a_sun_under_the_horizon() {
        // at 6 h the hour angle is 90°: sin h = sin 40 sin -23.44
        says(
                "latitude: 40, day: 21 December, hour: 6, faces: 180",
                "The sun of light 'l' (2025-12-21, hour 6.0) is 14.8° under the horizon.",
                "Take an hour of the day.");
    }

    @Test
    void a_sun_that_another_window_would_let_in() {
        says(
                "latitude: 40, day: 21 June, hour: 15, faces: 180, window: 90",
                "The sun of light 'l' (2025-06-21, hour 15.0) stands at bearing 260.2° and does not come in by a window"
                        + " that looks to 90°.",
                "Take another hour, or another window.");
    }

    @Test
    void a_sun_behind_the_wall() {
        says(
                "latitude: 40, day: 21 June, hour: 8, faces: 225",
                "Light 'l' (altitude 37.38°, azimuth -135.71°) comes from behind the wall and makes no shadow.",
                "Give an azimuth between -90 and 90, measured from square to the wall.");
    }

    @Test
    void a_sun_that_cannot_be_placed() {
        cannotBePlaced("day: 21 June, hour: 15, faces: 180", "'latitude:' in degrees, north positive");
        cannotBePlaced("latitude: 91, day: 21 June, hour: 15, faces: 180", "'latitude:' in degrees, north positive");
        cannotBePlaced("latitude: 40, day: 31 June, hour: 15, faces: 180", "'day:' as 21 June or 2026-06-21");
        cannotBePlaced("latitude: 40, day: 21 June, hour: 25, faces: 180", "'hour:' as 15 or 15:30");
        cannotBePlaced(
                "latitude: 40, day: 21 June, hour: 15",
                "'faces:', the bearing that the trimmed face looks to, as 180 for south");
        cannotBePlaced(
                "latitude: 40, day: 21 June, hour: 15, faces: 180, utc-offset: -5",
                "'utc-offset:' as -5 with 'longitude:' in degrees, east positive");
        cannotBePlaced(
                "latitude: 40, day: 21 June, hour: 15, faces: 180, utc-offset: -50, longitude: -75",
                "'utc-offset:' as -5 with 'longitude:' in degrees, east positive");
    }

    private static void cannotBePlaced(String sun, String what) {
        says(sun, "The sun of light 'l' cannot be placed.", "Give " + what + ".");
    }
}

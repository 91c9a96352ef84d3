package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.notice.NoticeWords;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds for any plan. */
class RunLawsTest {
    private static final String ENDS = "left: square, right: square, ";

    private static Planned cornered(String corner, double first, double second) {
        return Planned.of(
                Planned.CORNICE,
                String.format(
                        Locale.ROOT,
                        "plan:\n  - { name: run, %sstretches: [{ name: a, length: %f, corner: %s }, { name: b, length: %f"
                                + " }] }\n",
                        ENDS,
                        first,
                        corner,
                        second));
    }

    @Test
    void what_a_course_gains_outside_it_loses_inside() {
        for (double corner = 30; corner < 180; corner += 7.5) {
            Planned out = cornered("outside " + corner, 96, 60);
            Planned in = cornered("inside " + corner, 96, 60);
            for (Course course : out.job().courses()) {
                double gained = out.fit(course.name(), "a").faceLength() - 96;
                double lost = 96 - in.fit(course.name(), "a").faceLength();
                assertThat(gained).isCloseTo(lost, within(1e-9));
                assertThat(gained).isCloseTo(course.face() / Math.tan(Math.toRadians(corner / 2)), within(1e-9));
                assertThat(out.cut(course.name(), "a").right().miter())
                        .isCloseTo(in.cut(course.name(), "a").right().miter(), within(1e-9));
                assertThat(out.cut(course.name(), "a").right().bevel())
                        .isCloseTo(in.cut(course.name(), "a").right().bevel(), within(1e-9));
            }
        }
    }

    @Test
    void a_corner_that_opens_to_a_straight_wall_changes_nothing() {
        Planned nearly = cornered("outside 179.9999", 96, 60);
        for (Course course : nearly.job().courses()) {
            assertThat(nearly.fit(course.name(), "a").faceLength()).isCloseTo(96, within(1e-4));
            assertThat(nearly.cut(course.name(), "a").right().miter()).isCloseTo(0, within(1e-3));
            assertThat(nearly.cut(course.name(), "a").right().bevel()).isCloseTo(0, within(1e-3));
        }
    }

    @Test
    void lengths_add_up_two_walls_in_line_are_as_long_as_one() {
        Random random = new Random(6);
        for (int i = 0; i < 50; i++) {
            double a = 30 + random.nextInt(100);
            double b = 30 + random.nextInt(100);
            Planned jog = Planned.of(
                    Planned.CORNICE,
                    String.format(
                            Locale.ROOT,
                            "plan:\n  - { name: run, left: square, right: square, stretches: [{ name: a, length: %f,"
                                    + " corner: outside 90 }, { name: jog, length: 20, corner: inside 90 },"
                                    + " { name: b, length: %f }] }\n",
                            a,
                            b));
            for (Course course : jog.job().courses()) {
                // what is gained at the outside corner is lost at the inside one
                assertThat(jog.fit(course.name(), "a").faceLength()
                                + jog.fit(course.name(), "b").faceLength())
                        .isCloseTo(a + b, within(1e-9));
                assertThat(jog.fit(course.name(), "jog").faceLength()).isCloseTo(20, within(1e-9));
            }
        }
    }

    @Test
    void at_every_corner_the_two_sticks_meet_at_every_projection() {
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            double angle = 40 + random.nextInt(130);
            boolean inside = random.nextBoolean();
            Planned planned = cornered((inside ? "inside " : "outside ") + angle, 100, 100);
            for (Course course : planned.job().courses()) {
                Fit a = planned.fit(course.name(), "a");
                Fit b = planned.fit(course.name(), "b");
                assertThat(a.right(course.back()).distance(b.left(course.back())))
                        .isLessThan(1e-9);
                assertThat(a.right(course.face()).distance(b.left(course.face())))
                        .isLessThan(1e-9);
            }
        }
    }

    @Test
    void a_room_of_four_walls_closes_and_its_courses_are_eight_projections_shorter() {
        Planned room = Planned.clean(
                Planned.CORNICE,
                "plan:\n  - { name: room, stretches: [{ length: 120, corner: inside 90 }, { length: 96, corner: inside"
                        + " 90 }, { length: 120, corner: inside 90 }, { length: 96, corner: inside 90 }] }\n");
        assertThat(room.sum("cap"))
                .isCloseTo(432 - 8 * room.fit("cap", "stretch 1").course().face(), within(1e-9));
        Fit first = room.fit("cap", "stretch 1");
        Fit last = room.fit("cap", "stretch 4");
        assertThat(last.right(6).distance(first.left(6))).isLessThan(1e-9);
    }

    @Test
    void a_hexagonal_post_gains_six_times_two_extensions() {
        String side = "{ length: 20, corner: outside 120 }";
        Planned post = Planned.clean(
                Planned.CORNICE,
                "plan:\n  - { stretches: [" + String.join(", ", side, side, side, side, side, side) + "] }\n");
        double face = post.fit("cap", "stretch 1").course().face();
        assertThat(post.sum("cap")).isCloseTo(120 + 12 * face / Math.tan(Math.toRadians(60)), within(1e-9));
        assertThat(post.job().cuts().get(0).stretch()).isEqualTo("stretch 1");
    }

    @Test
    void a_plan_that_does_not_close_is_said_with_the_gap() {
        Planned room = Planned.of(
                Planned.CORNICE,
                "plan:\n  - { name: room, stretches: [{ length: 120, corner: inside 90 }, { length: 96, corner: inside"
                        + " 90 }, { length: 119, corner: inside 90 }, { length: 96, corner: inside 90 }] }\n");
        assertThat(room.said().code()).isEqualTo("plan-does-not-close");
        assertThat(NoticeWords.INCHES.message(room.said()))
                .isEqualTo("Run 'room' comes back 1 beside where it began, after turning 360° of 360°.");
    }
}

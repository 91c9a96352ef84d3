package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.look.view.Drawn;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Segment;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * How much of the room a place sees, by the cosine law (Lambert): from a face, the directions from straight down to an
 * angle t over the level weigh (1 + sin t) / 2 of all, the integral of the cosine.
 */
class AmbientTest {
    /** One of the sixty directions weighs at most (pi / 60) / 2 of the whole; the edge may halve it. */
    private static final Offset<Double> NEAR = within(0.014);

    @Test
    void a_flat_face_sees_the_whole_room() {
        Section board = Drawn.section(false, Outline.rectangle(new Box(0, 0, 1, 20)));
        Segment face = new Line(Drawn.at(1, 0), Drawn.at(1, 20));
        assertThat(Ambient.of(board).along(face, List.of(0.1, 0.5, 0.9))).allMatch(share -> share > 1 - 1e-9);
    }

    @Test
    void a_face_in_a_corner_of_two_equal_walls_loses_what_the_other_stands_in_the_way_of() {
        double side = 4;
        Section corner = Drawn.section(
                false, Outline.rectangle(new Box(-1, -side, 0, 0)), Outline.rectangle(new Box(-1, 0, side, 1)));
        Segment face = new Line(Drawn.at(0, -side), Drawn.at(0, 0));
        List<Double> places = List.of(0.05, 0.25, 0.5, 0.75, 0.95);
        List<Double> shares = Ambient.of(corner).along(face, places);
        for (int i = 0; i < places.size(); i++) {
            double below = side * (1 - places.get(i));
            double expected = (1 + Math.sin(Math.atan2(below, side))) / 2;
            assertThat(shares.get(i)).as("%s below the corner", below).isCloseTo(expected, NEAR);
        }
        assertThat(shares).as("darker towards the corner").isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void the_underside_of_a_shelf_sees_all_that_a_level_face_can() {
        Section shelf =
                Drawn.section(false, Outline.rectangle(new Box(-1, -4, 0, 0)), Outline.rectangle(new Box(-1, 0, 4, 1)));
        Segment bottom = new Line(Drawn.at(0, 0), Drawn.at(4, 0));
        assertThat(Ambient.of(shelf).along(bottom, List.of(0.5))).allMatch(share -> share > 1 - 1e-9);
    }

    @Test
    void a_back_that_no_direction_of_the_room_meets_sees_nothing() {
        Section board = Drawn.section(false, Outline.rectangle(new Box(0, 0, 1, 20)));
        Segment back = new Line(Drawn.at(0, 20), Drawn.at(0, 0));
        assertThat(Ambient.of(board).along(back, List.of(0.5))).containsExactly(0.0);
    }
}

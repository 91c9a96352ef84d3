package buildup.profiles.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SoundnessTest {
    static List<Stroke> walk(double... xy) {
        List<Stroke> strokes = new ArrayList<>();
        int n = xy.length / 2;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            strokes.add(new Stroke(
                    new Line(new Point(xy[2 * i], xy[2 * i + 1]), new Point(xy[2 * j], xy[2 * j + 1])), "s" + i));
        }
        return strokes;
    }

    @Test
    void a_sound_walk_has_no_fault() {
        assertThat(Soundness.faults(walk(0, 0, 1, 0, 1, 1, 0, 1))).isEmpty();
        assertThat(Soundness.faults(OutlineTest.molding().strokes())).isEmpty();
        assertThat(Soundness.faults(
                        OutlineTest.molding().moved(Motion.turn(7.3)).strokes()))
                .isEmpty();
    }

    @Test
    void a_lens_of_two_arcs_is_sound() {
        Arc lower = new Arc(new Point(-1, 0), new Point(1, 0), new Point(0, 1), true);
        Arc upper = new Arc(new Point(1, 0), new Point(-1, 0), new Point(0, -1), true);
        assertThat(Soundness.faults(List.of(new Stroke(lower, "a"), new Stroke(upper, "b"))))
                .isEmpty();
    }

    @Test
    void a_crossing_is_named_by_place_and_strokes() {
        // a bow tie whose sides cross at (1, 0.5), made lopsided so that it holds area
        assertThat(Soundness.faults(walk(0, 0, 2, 1, 2, 0, 0, 1, -1, 0.5)))
                .containsExactly(new Soundness.Crossing(new Point(1, 0.5), 1, 3));
    }

    @Test
    void a_walk_that_runs_back_on_itself_crosses() {
        assertThat(Soundness.faults(walk(0, 0, 2, 0, 2, 1, 3, 1, 2, 1, 0, 1)))
                .singleElement()
                .isInstanceOfSatisfying(Soundness.Crossing.class, crossing -> {
                    assertThat(crossing.firstStroke()).isEqualTo(2);
                    assertThat(crossing.near().distance(new Point(2, 1))).isLessThan(1e-9);
                });
    }

    @Test
    void a_corner_that_lies_on_a_far_side_crosses() {
        assertThat(Soundness.faults(walk(0, 0, 2, 0, 2, 2, 1, 0, 0, 2)))
                .hasOnlyElementsOfType(Soundness.Crossing.class)
                .hasSize(1);
    }

    @Test
    void an_arc_that_cuts_its_own_base_crosses() {
        Arc arc = new Arc(new Point(1, 0), new Point(-1, 0), new Point(0, 0.5), false);
        List<Stroke> strokes =
                new ArrayList<>(walk(-1, 0, -1, -0.3, 1, -0.3, 1, 0).subList(0, 3));
        strokes.add(new Stroke(arc, "arc"));
        assertThat(Soundness.faults(strokes))
                .anySatisfy(fault -> assertThat(fault).isInstanceOfSatisfying(Soundness.Crossing.class, crossing -> {
                    assertThat(crossing.firstStroke()).isEqualTo(2);
                    assertThat(crossing.secondStroke()).isEqualTo(4);
                }));
    }

    @Test
    void clockwise_and_doubled_are_told_and_can_be_mended() {
        assertThat(Soundness.faults(walk(0, 0, 0, 1, 1, 1, 1, 1, 1, 0)))
                .containsExactly(new Soundness.Doubled(1), new Soundness.Clockwise());
    }

    @Test
    void a_line_there_and_back_holds_nothing() {
        assertThat(Soundness.faults(walk(0, 0, 1, 0))).containsExactly(new Soundness.NoArea());
    }
}

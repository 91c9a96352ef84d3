package buildup.engine.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KnifeTest {
    static Stream<List<String>> depths() {
        return Reference.rows("Knife depth");
    }

    static Stream<List<String>> marks() {
        return Reference.rows("Knife marks");
    }

    @ParameterizedTest
    @MethodSource("depths")
    void a_knife_that_leans_stands_out_farther_than_it_cuts(List<String> row) {
        double wood = Double.parseDouble(row.get(0));
        assertThat(Knife.depth(3, 20, wood)).isCloseTo(Double.parseDouble(row.get(1)), within(0.0005));
        assertThat(Knife.depth(3, 0, wood)).as("without a hook").isCloseTo(wood, within(1e-12));
    }

    @Test
    void past_the_shaft_no_knife_reaches() {
        assertThat(Knife.depth(3, 20, 2)).isNaN();
    }

    @ParameterizedTest
    @MethodSource("marks")
    void marks_and_waves_follow_from_turns_knives_and_feed(List<String> row) {
        double marks = Knife.marks(
                Double.parseDouble(row.get(0)), Integer.parseInt(row.get(1)), Double.parseDouble(row.get(2)));
        double pitch = 1 / marks;
        assertThat(marks).isCloseTo(Double.parseDouble(row.get(3)), within(0.0005));
        assertThat(pitch).isCloseTo(Double.parseDouble(row.get(4)), within(0.00005));
        if (!row.get(5).isEmpty()) {
            assertThat(Knife.scallop(pitch, Double.parseDouble(row.get(5))))
                    .isCloseTo(Double.parseDouble(row.get(6)), within(5e-7));
        }
    }

    /** The sagitta of a chord as long as the pitch is R - sqrt(R^2 - (pitch/2)^2), of which the wave is the first term. */
    @Test
    void a_wave_is_as_high_as_the_pitch_is_deep_in_the_circle() {
        for (double pitch : new double[] {0.03, 0.06, 0.1}) {
            double r = 2.5;
            assertThat(Knife.scallop(pitch, 2 * r))
                    .isCloseTo(r - Math.sqrt(r * r - pitch * pitch / 4), within(pitch * pitch * pitch * pitch));
        }
    }

    /** A cove of 1 in a bed of 1-1/4 x 1-3/8: from the head 6 in round, hook 20, of the built-in list. */
    @Test
    void the_template_is_as_wide_as_the_stick_and_as_deep_as_the_formula_says() {
        Knife knife =
                Molded.milled(Molded.profile("cove-bed 1-1/4 x 1-3/8")).knife().orElseThrow();
        assertThat(knife.width()).isCloseTo(1.375 + 2 * Knife.MARGIN, within(1e-9));
        assertThat(knife.woodDepth()).isCloseTo(1, within(1e-9));
        assertThat(knife.depth()).isCloseTo(1.102, within(0.0005));
        assertThat(knife.edge()).allSatisfy(p -> assertThat(p.y()).isBetween(-knife.depth() - 1e-9, 1e-9));
        List<Point> edge = knife.edge();
        for (int i = 1; i < edge.size(); i++) {
            assertThat(edge.get(i).x()).isGreaterThanOrEqualTo(edge.get(i - 1).x() - 1e-9);
        }
        // halfway along the cove, 45 degrees of the circle: the wood is cut 1 - (1 - sqrt(1/2)) deep there
        double half = Math.sqrt(0.5);
        double wood = 1 - half;
        assertThat(edge).anySatisfy(p -> {
            assertThat(p.x()).isCloseTo(half, within(0.04));
            assertThat(p.y()).isCloseTo(-Knife.depth(3, 20, wood), within(0.04));
        });
    }
}

package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sources in reference/milling.md. */
class KnifeTest {
    @ParameterizedTest
    @CsvSource({"0.25, 0.268", "0.5, 0.539", "0.75, 0.817", "1, 1.102", "1.125, 1.250"})
    void the_depth_on_the_knife_follows_from_the_hook(double wood, double knife) {
        assertThat(Knife.depth(3, 20, wood)).isCloseTo(knife, within(0.0005));
    }

    @Test
    void without_a_hook_the_knife_is_as_deep_as_the_wood_and_past_the_shaft_there_is_none() {
        assertThat(Knife.depth(3, 0, 0.7)).isCloseTo(0.7, within(1e-12));
        assertThat(Knife.depth(3, 20, 2.5)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({
        "6000, 1, 30, 16.667, 0.0600",
        "6000, 2, 60, 16.667, 0.0600",
        "6000, 4, 100, 20.000, 0.0500",
        "7000, 1, 25, 23.333, 0.04286",
        "6000, 1, 20, 25.000, 0.0400",
        "6000, 1, 25, 20.000, 0.0500"
    })
    void marks_to_the_inch(double speed, int knives, double feed, double marks, double pitch) {
        assertThat(Knife.marks(speed, knives, feed)).isCloseTo(marks, within(0.0005));
        assertThat(1 / Knife.marks(speed, knives, feed)).isCloseTo(pitch, within(0.000005));
    }

    @Test
    void the_wave_between_two_marks() {
        assertThat(Knife.scallop(0.06, 5)).isCloseTo(0.000180, within(5e-7));
        assertThat(0.06 * 25.4).isCloseTo(1.524, within(1e-9));
    }

    @Test
    void the_template_holds_the_face_with_every_depth_corrected() {
        Knife knife = Molded.milled(Molded.profile("cove 3/4 x 3/4")).knives().get(0);
        assertThat(knife.width()).isCloseTo(0.75 + 2 * Knife.MARGIN, within(1e-9));
        assertThat(knife.stock().orElseThrow().toInches()).isEqualTo(1.5);
        assertThat(knife.woodDepth()).isCloseTo(0.625, within(1e-9));
        assertThat(knife.depth()).isCloseTo(Knife.depth(3, 20, 0.625), within(1e-12));
        // the cove's center is the lower corner of the blank: wood x = 3/4 - sqrt(5/8^2 - y^2), measured from 1/8
        for (Point p : knife.edge()) {
            double wood = p.x() <= 0.625 ? 0.625 - Math.sqrt(Math.max(0, 0.625 * 0.625 - p.x() * p.x())) : 0.625;
            assertThat(-p.y()).as("at %s", p).isCloseTo(Knife.depth(3, 20, wood), within(1e-6));
        }
    }
}

package buildup.engine.hold.nail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Yield modes against the tables of NDS 2018 and against statics; sources in reference/fixing.md. */
class YieldLimitTest {
    private static final double LONG = 10;

    private static double allowable(double diameter, double dowel, double side, double gap) {
        double bearing = YieldLimit.bearing(0.5) * dowel;
        double moment = YieldLimit.bending(diameter) * Math.pow(dowel, 3) / 6;
        return new YieldLimit(bearing, side, bearing, LONG * diameter, gap, moment).least() / YieldLimit.divisor(dowel);
    }

    /** NDS 2018 Table 12N, common nails, G 0.50; the table rounds the bearing strength to 50 psi. */
    @Test
    void common_nails_bear_what_the_table_says() {
        double[] diameters = {0.113, 0.131, 0.148, 0.162};
        double[] threeQuarters = {72, 90, 105, 121};
        double[] one = {72, 97, 118, 141};
        for (int i = 0; i < diameters.length; i++) {
            assertThat(allowable(diameters[i], diameters[i], 0.75, 0)).isCloseTo(threeQuarters[i], within(0.75));
            assertThat(allowable(diameters[i], diameters[i], 1, 0)).isCloseTo(one[i], within(0.75));
        }
    }

    /** NDS 2018 Table 12L: 90 lb, by the root of the thread. */
    @Test
    void a_number_ten_screw_bears_what_the_table_says() {
        assertThat(allowable(0.190, 0.152, 0.5, 0)).isCloseTo(90, within(0.75));
    }

    /** P² (1/2a + 1/2b) + P g = 2M: the couple of the two hinges against the bearing loads and the gap. */
    @Test
    void a_gap_lengthens_the_arm_by_its_width() {
        YieldLimit limit = new YieldLimit(240, LONG, 300, LONG, 0.5625, 6.2);
        double load = limit.least();
        assertThat(load * load * (1 / 480.0 + 1 / 600.0) + load * 0.5625).isCloseTo(12.4, within(1e-9));
    }

    @Test
    void a_wider_gap_never_bears_more() {
        double before = Double.MAX_VALUE;
        for (int eighths = 0; eighths <= 16; eighths++) {
            double load = allowable(0.072, 0.072, 0.75, eighths / 8.0);
            assertThat(load).isLessThan(before).isPositive();
            before = load;
        }
    }

    @Test
    void it_does_not_matter_from_which_side_one_looks() {
        YieldLimit limit = new YieldLimit(240, 0.5, 310, 0.9, 0.1, 5);
        YieldLimit turned = new YieldLimit(310, 0.9, 240, 0.5, 0.1, 5);
        assertThat(limit.least()).isCloseTo(turned.least(), within(1e-12));
    }

    @Test
    void thicker_steel_is_softer_and_its_divisor_larger() {
        assertThat(YieldLimit.bending(0.131)).isEqualTo(100_000);
        assertThat(YieldLimit.bending(0.162)).isEqualTo(90_000);
        assertThat(YieldLimit.bending(0.19)).isEqualTo(80_000);
        assertThat(YieldLimit.divisor(0.17)).isEqualTo(2.2);
        assertThat(YieldLimit.divisor(0.19)).isCloseTo(2.4, within(1e-12));
    }
}

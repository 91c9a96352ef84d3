package buildup.engine.room.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Lines of measures along a wall; check values in reference/room-as-it-is.md. */
class MeasuredTest {
    private static Measured line(double... pairs) {
        return new Measured(IntStream.range(0, pairs.length / 2)
                .mapToObj(i -> new Station(pairs[2 * i], pairs[2 * i + 1]))
                .toList());
    }

    @Test
    void it_is_straight_between_the_places_and_level_beyond_them() {
        Measured line = line(12, 1, 60, 3);
        assertThat(line.at(0)).isEqualTo(1);
        assertThat(line.at(36)).isEqualTo(2);
        assertThat(line.at(100)).isEqualTo(3);
        assertThat(line.between(36, 80).stations())
                .containsExactly(new Station(36, 2), new Station(60, 3), new Station(80, 3));
    }

    /** Example B of the reference. */
    @Test
    void a_clash_between_two_open_ends_is_counted_by_itself() {
        Measured gap = line(0, 0.25, 60, -0.125, 144, 0.375);
        assertThat(gap.lengthBelow()).isEqualTo(41, within(1e-12));
        assertThat(gap.area(-1)).isEqualTo(2.5625, within(1e-12));
        assertThat(gap.area(1)).isEqualTo(16.8125, within(1e-12));
        assertThat(gap.least()).isEqualTo(new Station(60, -0.125));
        assertThat(gap.most()).isEqualTo(new Station(144, 0.375));
    }

    /** Example A: the trapezoids of a measured parabola, in closed form, and its limit by Archimedes. */
    @Test
    void the_area_under_a_ceiling_that_sags_like_a_parabola_is_that_of_the_closed_form() {
        double span = 240;
        double sag = 0.75;
        double clear = 1;
        for (int n : new int[] {2, 3, 8, 60, 400}) {
            double[] pairs = new double[2 * (n + 1)];
            for (int i = 0; i <= n; i++) {
                double z = span * i / n;
                pairs[2 * i] = z;
                pairs[2 * i + 1] = clear - 4 * sag * z * (span - z) / (span * span);
            }
            double exact = span * (clear - 2.0 / 3 * sag * (1 - 1.0 / (n * (double) n)));
            assertThat(line(pairs).area(1)).as("%d places", n).isEqualTo(exact, within(1e-9));
        }
        assertThat(span * (clear - 2.0 / 3 * sag)).isEqualTo(120, within(1e-12));
    }

    /** Independent of the trapezoids: the midpoint rule on fine strips. */
    @Test
    void areas_of_random_lines_agree_with_a_sum_of_thin_strips() {
        Random random = new Random(17);
        for (int round = 0; round < 40; round++) {
            double[] pairs = new double[2 * (2 + random.nextInt(8))];
            double z = 0;
            for (int i = 0; i < pairs.length; i += 2) {
                pairs[i] = z;
                pairs[i + 1] = random.nextDouble() - 0.4;
                z += 1 + 30 * random.nextDouble();
            }
            Measured line = line(pairs);
            double end = pairs[pairs.length - 2];
            int strips = 40_000;
            double open = 0;
            double clash = 0;
            for (int i = 0; i < strips; i++) {
                double gap = line.at(end * (i + 0.5) / strips) * end / strips;
                open += Math.max(0, gap);
                clash -= Math.min(0, gap);
            }
            assertThat(line.area(1)).isEqualTo(open, within(1e-4));
            assertThat(line.area(-1)).isEqualTo(clash, within(1e-4));
        }
    }

    /** Example B again: over the chord of its ends the middle lies lower by 0.4270833. */
    @Test
    void the_best_straight_line_leaves_the_least_spread() {
        Measured gap = line(0, 0.25, 60, -0.125, 144, 0.375);
        assertThat(gap.steepness()).isEqualTo(0.125 / 144, within(1e-12));
        assertThat(gap.less(gap.steepness()).variation()).isEqualTo(0.25 + 60 * 0.125 / 144 + 0.125, within(1e-12));
        assertThat(line(0, 1, 10, 2, 20, 3).steepness()).isEqualTo(0.1, within(1e-12));
        assertThat(line(0, 1, 10, 1).steepness()).isZero();
    }

    /** No slope of a fine fan leaves less. */
    @Test
    void no_other_slope_does_better() {
        Random random = new Random(4);
        for (int round = 0; round < 60; round++) {
            double[] pairs = new double[12];
            for (int i = 0; i < pairs.length; i += 2) {
                pairs[i] = 12 * i + 5 * random.nextDouble();
                pairs[i + 1] = random.nextDouble();
            }
            Measured line = line(pairs);
            double best = line.less(line.steepness()).variation();
            for (double slope = -0.05; slope <= 0.05; slope += 0.0001) {
                assertThat(line.less(slope).variation()).isGreaterThan(best - 1e-9);
            }
        }
    }

    @Test
    void one_place_is_a_level_line() {
        Measured level = new Measured(List.of(new Station(20, 5)));
        assertThat(level.at(0)).isEqualTo(5);
        assertThat(level.variation()).isZero();
        assertThat(level.between(0, 50).area(1)).isEqualTo(250, within(1e-12));
    }
}

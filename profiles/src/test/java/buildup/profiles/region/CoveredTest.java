package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.board;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Areas of unions and overlaps are those of the outlines as given, whatever welding would move. */
class CoveredTest {
    private static final double EXACT = 1e-9;
    private static final long SEED = 8;

    @ParameterizedTest
    @ValueSource(doubles = {0, 3.7, 30, 45, 90, 201.3})
    void a_lap_thinner_than_touching_counts_once(double degrees) {
        Motion turn = Motion.turn(degrees);
        for (double lap : new double[] {0.0001, 0.001, 0.0038, 0.01}) {
            for (double length : new double[] {0.5, 5, 8}) {
                List<Outline> boards = List.of(
                        board(0, 0, 1, length).moved(turn),
                        board(1 - lap, 0, 2 - lap, length).moved(turn));
                assertThat(Covered.area(boards)).isCloseTo(length * (2 - lap), within(EXACT));
                assertThat(OutlineLaps.of(boards)).hasSize(lap < Tolerance.TOUCHING ? 0 : 1);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 3.7, 30, 45, 90, 201.3})
    void a_lap_keeps_its_area_where_a_corner_nearly_meets_another(double degrees) {
        // a wedge driven into a board, its corner nearer than touching to the board's corner: welding would move it
        Motion turn = Motion.turn(degrees);
        for (double off : new double[] {0, 0.001, -0.001, 0.0038, -0.0038}) {
            List<Outline> boards =
                    List.of(board(0, 0, 4, 1).moved(turn), board(off, 0.5, 5, 2).moved(turn));
            double expected = (4 - Math.max(0, off)) * 0.5;
            assertThat(OutlineLaps.of(boards)).singleElement().satisfies(lap -> {
                assertThat(lap.area()).isCloseTo(expected, within(EXACT));
                assertThat(lap.depth()).isCloseTo(0.5, within(EXACT));
            });
            assertThat(Covered.area(boards)).isCloseTo(4 + (5 - off) * 1.5 - expected, within(EXACT));
        }
    }

    @Test
    void a_union_of_hundreds_of_random_outlines_keeps_the_laws_of_areas() {
        Random random = new Random(SEED);
        Stacks stacks = new Stacks(SEED);
        for (int i = 0; i < 200; i++) {
            List<Outline> thrown = stacks.thrown();
            double area = Covered.area(thrown);
            double sum = thrown.stream().mapToDouble(Outline::area).sum();
            String which = "seed " + SEED + ", stack " + i;
            assertThat(area).as(which).isLessThanOrEqualTo(sum + EXACT);

            Motion motion = Motion.turn(360 * random.nextDouble()).then(Motion.shift(30 * random.nextDouble(), -7));
            List<Outline> moved =
                    thrown.stream().map(outline -> outline.moved(motion)).toList();
            assertThat(Covered.area(moved)).as(which).isCloseTo(area, within(1e-7));

            List<Outline> twice = new ArrayList<>(thrown);
            twice.addAll(thrown);
            assertThat(Covered.area(twice)).as(which).isCloseTo(area, within(1e-7));

            // of two, what both hold is what their sum holds too much
            if (thrown.size() > 1) {
                Outline a = thrown.get(0);
                Outline b = thrown.get(1);
                double common = Difference.from(a).shared(Difference.from(b));
                assertThat(Covered.area(List.of(a, b))).as(which).isCloseTo(a.area() + b.area() - common, within(1e-7));
            }
        }
    }

    @Test
    void it_is_the_area_of_a_plain_count_of_slices() {
        Stacks stacks = new Stacks(SEED + 1);
        for (int i = 0; i < 40; i++) {
            List<Outline> thrown = stacks.thrown();
            double slice =
                    Box.around(thrown.stream().map(Outline::box).toList()).width() / 8000;
            // the slices err by chords, and by their width at upright sides: by chance, so at a few of them, not all
            assertThat(Covered.area(thrown))
                    .as("seed %d, stack %d", SEED + 1, i)
                    .isCloseTo(Slices.area(thrown, 8000), within(20 * slice + 0.02));
        }
    }
}

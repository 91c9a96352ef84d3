package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Jobs as hard as those of the published sets, made the way those were made, so that there are as many as one likes; two
 * of the published ones stand in {@code reference/cutting-stock.md}.
 */
class HardSharingTest {
    private static final int CAPACITY = 1000;

    /** The uniform class of Falkenauer (1996): sizes from 20 to 100 for a capacity of 150. */
    private static StickProblem uniform(int count, int seed) {
        return Cutting.one(150, 0, Cutting.random(new Random(1000L * seed + count), count, 20, 100));
    }

    /** His triplets: three pieces fill a stick, none is left over, so that a third of the pieces is the optimum. */
    private static StickProblem triplets(int count, int seed) {
        Random random = new Random(77L * seed + count);
        List<Integer> pieces = new ArrayList<>();
        while (pieces.size() < count) {
            int first = 380 + random.nextInt(111);
            int second = 250 + random.nextInt((CAPACITY - first) / 2 - 250 + 1);
            pieces.addAll(List.of(first, second, CAPACITY - first - second));
        }
        return Cutting.one(CAPACITY, 0, pieces);
    }

    private static StickPlan proved(StickProblem problem) {
        StickPlan plan = StickSearch.solve(problem).orElseThrow();
        Cutting.recount(problem, plan);
        assertThat(plan.best()).as("proved: %s", plan.sticks().size()).isTrue();
        assertThat(plan.sticks().size())
                .isGreaterThanOrEqualTo(Cutting.bound(problem.sticks().get(0).length(), 0, problem.pieces()));
        return plan;
    }

    @Test
    void jobs_of_120_to_500_pieces_are_proved() {
        for (int seed = 0; seed < 3; seed++) {
            proved(uniform(120, seed));
            proved(uniform(250, seed));
            proved(uniform(500, seed));
        }
    }

    @Test
    void pieces_that_were_cut_from_full_sticks_are_put_back_into_as_many() {
        for (int seed = 0; seed < 3; seed++) {
            assertThat(proved(triplets(60, seed)).sticks()).hasSize(20);
        }
    }

    /** Twenty of each size are what the uniform sets of the library have. */
    @Tag("long")
    @Test
    void sixty_jobs_of_the_uniform_class_are_proved() {
        for (int count : List.of(120, 250, 500)) {
            for (int seed = 0; seed < 20; seed++) {
                proved(uniform(count, seed));
            }
        }
    }

    @Tag("long")
    @Test
    void triplets_of_120_and_of_249_pieces_are_put_back() {
        assertThat(proved(triplets(120, 1)).sticks()).hasSize(40);
        assertThat(proved(triplets(249, 1)).sticks()).hasSize(83);
    }

    /** As many different lengths as pieces, which is what stopped searches before they began. */
    @Tag("long")
    @Test
    void pieces_of_almost_as_many_lengths_are_proved() {
        for (int seed = 0; seed < 4; seed++) {
            proved(Cutting.one(CAPACITY, 0, Cutting.random(new Random(seed), 160 + 20 * (seed % 3), 1, 700)));
        }
    }
}

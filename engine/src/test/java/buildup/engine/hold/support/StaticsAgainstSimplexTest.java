package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The whole stack against a second set of equations and a second solver. */
class StaticsAgainstSimplexTest {
    @Test
    void the_stacks_done_by_hand_have_the_same_factor() {
        for (Held held : HandStacks.all()) {
            assertThat(held.factor())
                    .as(held.names(List.of(held.section().bodies().size() - 1)).toString())
                    .isCloseTo(SimplexStatics.factor(held), within(1e-6));
        }
    }

    @Test
    void two_hundred_random_stacks_have_the_same_factor() {
        int[] kinds = new int[3];
        for (long seed = 1; seed <= 200; seed++) {
            Held held = RandomHeld.of(seed);
            double ours = held.factor();
            double theirs = SimplexStatics.factor(held);
            if (Double.isInfinite(theirs)) {
                assertThat(ours).as("seed %d", seed).isEqualTo(theirs);
            } else {
                assertThat(ours).as("seed %d", seed).isCloseTo(theirs, within(1e-6 * Math.max(1, theirs)));
            }
            kinds[Double.isFinite(ours) ? 1 : ours > 0 ? 2 : 0]++;
        }
        assertThat(Arrays.stream(kinds).boxed())
                .as("that tip, that take some load, that take any: %s", Arrays.toString(kinds))
                .allMatch(count -> count >= 20);
    }
}

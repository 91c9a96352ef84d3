package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.statics.Equilibrium;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Mechanism.Movement;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Model.Weight;
import buildup.profiles.outline.Point;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The whole stack against a second set of equations and a second solver. */
class StaticsAgainstSimplexTest {
    private static final int STACKS = Integer.getInteger("buildup.statics", 60);

    @Test
    void the_stacks_done_by_hand_have_the_same_factor() {
        for (Held held : HandStacks.all()) {
            assertThat(held.factor())
                    .as(held.names(List.of(held.section().bodies().size() - 1)).toString())
                    .isCloseTo(SimplexStatics.factor(held), within(1e-6));
        }
    }

    @Tag("sampled")
    @Test
    void random_stacks_have_the_same_factor() {
        int[] kinds = new int[3];
        for (long seed = 1; seed <= STACKS; seed++) {
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
                .allMatch(count -> count >= STACKS / 10);
    }

    /** One of the two stacks in a test: as it is, or once small gaps have closed. */
    private static double closed(Held held) {
        Model model = held.model().withGaps();
        return Equilibrium.factor(model, held.weights(), List.of())
                .flatMap(stands -> Equilibrium.factor(model, held.weights(), Weight.of(held.loads())))
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private static void same(double ours, double theirs, String as) {
        if (Double.isInfinite(theirs)) {
            assertThat(ours).as(as).isEqualTo(theirs);
        } else {
            assertThat(ours).as(as).isCloseTo(theirs, within(1e-6 * Math.max(1, theirs)));
        }
    }

    @Tag("sampled")
    @Test
    void stacks_on_one_to_four_carriers_with_gaps_have_the_same_factor_before_and_after_those_close() {
        int[] kinds = new int[4];
        for (long seed = 1; seed <= STACKS; seed++) {
            Held held = RandomBridge.of(seed);
            double before = SimplexStatics.factor(held);
            double after = SimplexStatics.factor(held, true);
            same(held.factor(), before, "seed " + seed);
            same(closed(held), after, "closed, seed " + seed);
            assertThat(Mechanism.falls(held.model(), new Loading(held.weights())))
                    .as("seed %d falls by itself", seed)
                    .isEqualTo(before == Double.NEGATIVE_INFINITY);
            assertThat(Mechanism.falls(held.model().withGaps(), new Loading(held.weights())))
                    .as("seed %d falls once closed", seed)
                    .isEqualTo(after == Double.NEGATIVE_INFINITY);
            boolean stands = before > Double.NEGATIVE_INFINITY;
            kinds[stands ? Double.isFinite(before) ? 0 : 1 : after > Double.NEGATIVE_INFINITY ? 2 : 3]++;
        }
        assertThat(Arrays.stream(kinds).boxed())
                .as("limited, unlimited, by a gap, never: %s", Arrays.toString(kinds))
                .allMatch(count -> count >= STACKS / 20);
    }

    @Tag("sampled")
    @Test
    void the_motion_at_the_limit_needs_the_same_factor_as_the_forces() {
        int seen = 0;
        for (long seed = 1; seed <= STACKS; seed++) {
            Held held = RandomBridge.of(seed);
            double factor = held.factor();
            if (factor > 0 && Double.isFinite(factor)) {
                Movement movement = Mechanism.collapse(held.model(), held.weights(), Weight.of(held.loads()))
                        .orElseThrow();
                double kept = held.joints().stream()
                        .mapToDouble(tie -> Model.forces(tie).stream()
                                .mapToDouble(force -> force.most() * Math.max(0, -movement.parts(force)))
                                .max()
                                .orElseThrow())
                        .sum();
                double done = work(movement, held.weights());
                double driven = work(movement, Weight.of(held.loads()));
                assertThat((kept - done) / driven).as("seed %d", seed).isCloseTo(factor, within(1e-3 * factor + 1e-4));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(STACKS / 10);
    }

    private static double work(Movement movement, List<Weight> weights) {
        return weights.stream()
                .mapToDouble(weight -> -weight.pounds()
                        * movement.of(weight.body(), new Point(weight.out(), 0)).y())
                .sum();
    }
}

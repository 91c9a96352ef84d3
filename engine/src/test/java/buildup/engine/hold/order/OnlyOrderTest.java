package buildup.engine.hold.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The nearest order, against every order tried one by one. */
class OnlyOrderTest {
    /** Each but the first stands in front of the one before it, on a sill that bars the way down, under a soffit. */
    private static List<String> row() {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            pieces.add("name: p" + i + ", section: [out 1, up 2], back: " + i + ", bottom: 0");
        }
        return pieces;
    }

    private static final String SPACE = "{ wall: { solid: yes }, floor: 0, ceiling: 2 }";

    private static Ordered in(List<String> pieces, int... order) {
        List<String> given = new ArrayList<>();
        for (int i : order) {
            given.add(pieces.get(i));
        }
        return Ordered.in(SPACE, given.toArray(String[]::new));
    }

    @Test
    void the_only_order_of_six_is_found_whatever_order_is_given() {
        for (int[] order : new int[][] {{5, 4, 3, 2, 1, 0}, {0, 2, 1, 3, 4, 5}, {3, 0, 1, 2, 5, 4}}) {
            Ordered stack = in(row(), order);
            assertThat(stack.order().possible()).isFalse();
            assertThat(stack.instead()).containsExactly("p0", "p1", "p2", "p3", "p4", "p5");
            assertThat(stack.order().proved()).isTrue();
        }
        assertThat(in(row(), 0, 1, 2, 3, 4, 5).order().possible()).isTrue();
    }

    @Tag("long")
    @Test
    void of_all_permutations_none_that_goes_is_nearer_than_the_one_proposed() {
        int proposed = 0;
        for (int seed = 0; seed < Integer.getInteger("buildup.order.permuted", 150); seed++) {
            Ordered stack = RandomOrder.of(seed);
            int n = stack.order().steps().size();
            if (n > 6 || stack.order().possible()) {
                continue;
            }
            List<Unit> units = stack.order().steps().stream().map(PutUp::unit).toList();
            List<Integer> standing = new ArrayList<>();
            for (int i = 0; i < stack.section().bodies().size(); i++) {
                if (stack.section().body(i).standing()) {
                    standing.add(i);
                }
            }
            Ways ways = new Ways(stack.section());
            int least = nearest(ways, stack, units, standing, new ArrayList<>(), 0, Integer.MAX_VALUE, false);
            boolean propped = least == Integer.MAX_VALUE;
            if (propped) {
                least = nearest(ways, stack, units, standing, new ArrayList<>(), 0, Integer.MAX_VALUE, true);
            }
            if (stack.order().instead().isPresent()) {
                proposed++;
                assertThat(inversions(stack.order().instead().get()))
                        .as("seed %d", seed)
                        .isEqualTo(least);
            } else {
                assertThat(least).as("seed %d", seed).isEqualTo(Integer.MAX_VALUE);
            }
        }
        assertThat(proposed).isPositive();
    }

    private static int nearest(
            Ways ways,
            Ordered stack,
            List<Unit> units,
            List<Integer> up,
            List<Unit> order,
            int cost,
            int best,
            boolean propped) {
        if (order.size() == units.size()) {
            return Math.min(cost, best);
        }
        int least = best;
        for (Unit unit : units) {
            if (!order.contains(unit)
                    && (propped || isSupported(stack, unit, up))
                    && ways.best(unit, up).isPresent()) {
                int passed = (int) units.stream()
                        .filter(other -> other.last() < unit.last() && !order.contains(other))
                        .count();
                List<Integer> more = new ArrayList<>(up);
                more.addAll(unit.bodies());
                List<Unit> longer = new ArrayList<>(order);
                longer.add(unit);
                least = nearest(ways, stack, units, more, longer, cost + passed, least, propped);
            }
        }
        return least;
    }

    private static boolean isSupported(Ordered stack, Unit unit, List<Integer> up) {
        List<Integer> holders = stack.section().contacts().stream()
                .filter(contact -> contact.facing().isPresent() && contact.b() == unit.last())
                .map(contact -> contact.a())
                .toList();
        return holders.isEmpty() || holders.stream().anyMatch(up::contains);
    }

    private static int inversions(List<Unit> order) {
        int count = 0;
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 1; j < order.size(); j++) {
                count += order.get(j).last() < order.get(i).last() ? 1 : 0;
            }
        }
        return count;
    }
}

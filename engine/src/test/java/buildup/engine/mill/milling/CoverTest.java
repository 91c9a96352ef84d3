package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CoverTest {
    /** Against every choice of ways. */
    @Test
    void the_fewest_runs_are_what_trying_every_choice_gives() {
        Random random = new Random(8);
        for (int round = 0; round < 200; round++) {
            int atoms = 1 + random.nextInt(7);
            List<BitSet> ways = new ArrayList<>();
            List<Integer> costs = new ArrayList<>();
            BitSet all = new BitSet();
            for (int i = 0; i < 1 + random.nextInt(9); i++) {
                BitSet way = new BitSet();
                for (int atom = 0; atom < atoms; atom++) {
                    way.set(atom, random.nextInt(3) == 0);
                }
                ways.add(way);
                costs.add(1 + random.nextInt(5));
                all.or(way);
            }
            int best = Integer.MAX_VALUE;
            for (int choice = 0; choice < 1 << ways.size(); choice++) {
                BitSet made = new BitSet();
                int cost = 0;
                for (int i = 0; i < ways.size(); i++) {
                    if ((choice >> i & 1) == 1) {
                        made.or(ways.get(i));
                        cost += costs.get(i);
                    }
                }
                best = made.equals(all) ? Math.min(best, cost) : best;
            }
            Cover cover = Cover.of(ways, costs);
            BitSet made = new BitSet();
            cover.chosen().forEach(i -> made.or(ways.get(i)));
            assertThat(made).as("round %d", round).isEqualTo(all);
            assertThat(cover.proven()).isTrue();
            assertThat(cover.chosen().stream().mapToInt(costs::get).sum())
                    .as("round %d", round)
                    .isEqualTo(best);
        }
    }
}

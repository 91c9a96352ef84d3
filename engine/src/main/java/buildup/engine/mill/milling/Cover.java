package buildup.engine.mill.milling;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * The cheapest choice of passes that makes all of the outline that can be made: an exact cover search, branch by branch on the stretch
 * with the fewest ways, bounded by the best found. Beyond its patience the best so far stands, and says so.
 *
 * @param chosen numbers of passes
 * @param proven whether no smaller choice exists
 */
record Cover(List<Integer> chosen, boolean proven) {
    private static final int PATIENCE = 50_000;

    Cover {
        chosen = List.copyOf(chosen);
    }

    /** @param made for each pass, the stretches that it makes */
    static Cover of(List<BitSet> made, List<Integer> cost) {
        BitSet all = new BitSet();
        made.forEach(all::or);
        Search search = new Search(made, cost);
        search.go(all, new ArrayList<>(), 0);
        return new Cover(search.best.stream().sorted().toList(), search.steps < PATIENCE);
    }

    private static final class Search {
        private final List<BitSet> made;
        private final List<Integer> cost;
        private List<Integer> best = List.of();
        private int least = Integer.MAX_VALUE;
        private int steps;

        Search(List<BitSet> made, List<Integer> cost) {
            this.made = made;
            this.cost = cost;
        }

        void go(BitSet open, List<Integer> chosen, int spent) {
            steps++;
            if (open.isEmpty()) {
                if (spent < least) {
                    least = spent;
                    best = List.copyOf(chosen);
                }
                return;
            }
            if (spent + 1 >= least || (steps >= PATIENCE && !best.isEmpty())) {
                return;
            }
            for (int pass : ways(hardest(open), open)) {
                BitSet rest = (BitSet) open.clone();
                rest.andNot(made.get(pass));
                chosen.add(pass);
                go(rest, chosen, spent + cost.get(pass));
                chosen.remove(chosen.size() - 1);
            }
        }

        private int hardest(BitSet open) {
            return open.stream()
                    .boxed()
                    .min(Comparator.comparingLong(
                            one -> made.stream().filter(set -> set.get(one)).count()))
                    .orElseThrow();
        }

        /** What makes most for its cost first. */
        private List<Integer> ways(int stretch, BitSet open) {
            List<Integer> ways = new ArrayList<>();
            for (int i = 0; i < made.size(); i++) {
                if (made.get(i).get(stretch)) {
                    ways.add(i);
                }
            }
            ways.sort(Comparator.comparingDouble(pass -> (double) cost.get(pass) / gained(pass, open)));
            return ways;
        }

        private int gained(int pass, BitSet open) {
            BitSet gained = (BitSet) made.get(pass).clone();
            gained.and(open);
            return gained.cardinality();
        }
    }
}

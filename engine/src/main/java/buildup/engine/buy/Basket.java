package buildup.engine.buy;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whole packs of several sizes that hold what is needed.
 *
 * @param taken sizes that are taken, the largest first
 */
record Basket(List<Taken> taken) {
    /** Nothing is needed. */
    static final Basket EMPTY = new Basket(List.of());

    /** More packs of one size than this below the most that could be of use are not tried. */
    private static final int DEEPEST = 60;

    /** Past so many of the largest, all but these few are of the size that is cheapest for what it holds. */
    private static final double FEW = 24;

    /** So many of one size. */
    record Taken(Pack pack, int count) {}

    Basket {
        taken = List.copyOf(taken);
    }

    /** What all of them hold. */
    double size() {
        return taken.stream()
                .mapToDouble(one -> one.count() * one.pack().size())
                .sum();
    }

    /** What all of them cost, hundredths; those without a price cost nothing here. */
    long price() {
        return taken.stream()
                .mapToLong(one -> one.count() * one.pack().price().orElse(0))
                .sum();
    }

    /** Whether each has a price. */
    boolean priced() {
        return taken.stream().allMatch(one -> one.pack().price().isPresent());
    }

    int packs() {
        return taken.stream().mapToInt(Taken::count).sum();
    }

    /**
     * The packs that hold a need: at the least price where each size has one, then with the least left over, then the
     * fewest.
     *
     * @param need not negative, in the unit of the packs
     * @param packs at least one
     */
    static Basket holding(double need, List<Pack> packs) {
        if (need <= Tolerance.COINCIDENT) {
            return EMPTY;
        }
        boolean priced = packs.stream().allMatch(pack -> pack.price().isPresent());
        List<Pack> falling = packs.stream()
                .sorted(Comparator.comparingDouble(Pack::size).reversed())
                .toList();
        Comparator<Basket> best = Comparator.comparingLong((Basket basket) -> priced ? basket.price() : 0)
                .thenComparingDouble(Basket::size)
                .thenComparingInt(Basket::packs);
        Pack bulk = falling.stream()
                .min(Comparator.comparingDouble(pack -> priced ? pack.price().orElse(0) / pack.size() : -pack.size()))
                .orElseThrow();
        int whole = (int) Math.max(0, Math.floor((need - FEW * falling.get(0).size()) / bulk.size()));
        Basket few = best(need - whole * bulk.size(), falling, List.of(), best);
        return few.with(bulk, whole);
    }

    private static Basket best(double need, List<Pack> falling, List<Taken> before, Comparator<Basket> best) {
        Pack first = falling.get(0);
        int most = (int) Math.max(0, Math.ceil(need / first.size() - Tolerance.COINCIDENT));
        if (falling.size() == 1) {
            return new Basket(before).with(first, most);
        }
        int least = Math.max(0, most - DEEPEST);
        return Stream.iterate(most, count -> count >= least, count -> count - 1)
                .map(count -> best(
                        need - count * first.size(),
                        falling.subList(1, falling.size()),
                        new Basket(before).with(first, count).taken(),
                        best))
                .min(best)
                .orElseThrow();
    }

    private Basket with(Pack pack, int count) {
        if (count == 0) {
            return this;
        }
        List<Taken> all = new ArrayList<>();
        boolean there = false;
        for (Taken one : taken) {
            boolean same = one.pack().equals(pack);
            all.add(same ? new Taken(pack, one.count() + count) : one);
            there |= same;
        }
        if (!there) {
            all.add(new Taken(pack, count));
        }
        return new Basket(all);
    }
}

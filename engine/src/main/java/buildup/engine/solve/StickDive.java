package buildup.engine.solve;

import buildup.engine.solve.StickMaster.Part;
import buildup.engine.solve.StickMaster.Relaxed;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;

/**
 * Looks for a plan where the linear relaxation points: whole loads of it are taken, or the one that is nearest to a
 * whole, and the relaxation of what is left is asked anew, down to the last piece. Where that leads nowhere, the next
 * best load is taken instead, a few times in all (diving with limited discrepancies: R. Sadykov, F. Vanderbeck, A.
 * Pessoa, I. Tahiri and E. Uchoa, Primal heuristics for branch and price, INFORMS Journal on Computing 31, 2019,
 * 251-267). It finds plans and proves nothing.
 */
final class StickDive {
    /** Loads that are tried in one place, and how often other than the first are tried on one way down. */
    private static final int MOST_TRIED = 3;

    private static final int MOST_DETOURS = 2;

    /** Calls for a load that is taken, of those that a thread has memory for. */
    private static final int MOST_DEEP = 400;

    private final Bins bins;
    private final StickMaster master;
    private final int[] left;
    private final int[] stock;
    private final List<StickLoad> chosen = new ArrayList<>();
    private long cost;
    private long most;

    /**
     * @param known loads to begin with
     * @param goesOn asked before every round of the linear program, with the steps that the last one took
     */
    StickDive(Bins bins, List<StickLoad> known, LongPredicate goesOn) {
        this.bins = bins;
        this.master = new StickMaster(bins, known, goesOn);
        this.left = bins.counts.clone();
        this.stock = bins.most.clone();
    }

    /** A plan that costs at most so much, if one is found. */
    Optional<List<StickLoad>> within(long target) {
        most = target;
        for (int detours = 0; detours <= MOST_DETOURS; detours++) {
            Optional<List<StickLoad>> found = down(detours, 0);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<List<StickLoad>> down(int detours, int deep) {
        Optional<List<StickLoad>> ended = ended();
        if (ended.isPresent() || deep > MOST_DEEP) {
            return ended;
        }
        Optional<Relaxed> relaxed =
                master.relaxed(left, stock).filter(one -> cost + one.cost() <= most + most * Tolerance.COINCIDENT);
        if (relaxed.isEmpty()) {
            return Optional.empty();
        }
        List<Part> whole = relaxed.get().parts().stream()
                .filter(part -> part.amount() >= 1 - Tolerance.SAME_SHARE)
                .toList();
        if (!whole.isEmpty()) {
            return wholeTaken(whole, detours, deep);
        }
        List<Part> parts = relaxed.get().parts().stream()
                .sorted(Comparator.comparingDouble(Part::amount)
                        .reversed()
                        .thenComparing(part -> -part.load().taken(bins)))
                .limit(1L + Math.min(detours, MOST_TRIED - 1))
                .toList();
        for (int i = 0; i < parts.size(); i++) {
            // the first is tried last with all detours, so that a way is not gone twice
            Optional<List<StickLoad>> found = taken(parts.get(i).load(), 1, detours - i, deep);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The pieces that are left, laid one by one, where that is good enough. */
    private Optional<List<StickLoad>> ended() {
        return Greedy.plan(bins, left, stock)
                .filter(rest -> cost + Greedy.cost(bins, rest) <= most)
                .map(rest -> {
                    List<StickLoad> all = new ArrayList<>(chosen);
                    all.addAll(rest);
                    return List.copyOf(all);
                });
    }

    private Optional<List<StickLoad>> wholeTaken(List<Part> whole, int detours, int deep) {
        if (whole.isEmpty()) {
            return down(detours, deep + 1);
        }
        Part first = whole.get(0);
        int count = (int) Math.floor(first.amount() + Tolerance.SAME_SHARE);
        int fits = fits(first.load(), count);
        List<Part> rest = whole.subList(1, whole.size());
        if (fits == 0) {
            return wholeTaken(rest, detours, deep);
        }
        change(first.load(), fits);
        Optional<List<StickLoad>> found = wholeTaken(rest, detours, deep);
        change(first.load(), -fits);
        return found;
    }

    private Optional<List<StickLoad>> taken(StickLoad load, int times, int detours, int deep) {
        change(load, times);
        Optional<List<StickLoad>> found = down(detours, deep + 1);
        change(load, -times);
        return found;
    }

    /** How often a load can be taken of what is left, at most so often: parts may hold more pieces than there are. */
    private int fits(StickLoad load, int times) {
        int fits = Math.min(times, stock[load.kind()]);
        for (int type = 0; type < left.length; type++) {
            if (load.counts()[type] > 0) {
                fits = Math.min(fits, left[type] / load.counts()[type]);
            }
        }
        return fits;
    }

    private void change(StickLoad load, int times) {
        stock[load.kind()] -= times;
        cost += times * bins.costs[load.kind()];
        for (int type = 0; type < left.length; type++) {
            left[type] -= times * load.counts()[type];
        }
        for (int i = 0; i < times; i++) {
            chosen.add(load);
        }
        for (int i = 0; i > times; i--) {
            chosen.remove(chosen.size() - 1);
        }
    }
}

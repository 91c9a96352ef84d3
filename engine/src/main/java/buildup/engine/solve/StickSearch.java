package buildup.engine.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * One-dimensional cutting stock, exactly: the least price, then the fewest sticks. A first plan is made piece by piece,
 * a bound is proved by a linear program, and what lies between is searched: first among plans that cost no more than
 * the bound, then among ever dearer ones, so that the bound rises while the best plan falls. A search that comes to its
 * limit gives the best plan found and the bound reached.
 */
public final class StickSearch {
    /** Steps of a search that nobody limits otherwise: a few seconds. */
    public static final long USUAL_STEPS = 20_000_000;

    /** Of the steps still to go, the share after which a search among cheap plans gives way to one among more. */
    private static final int SHARE = 4;

    /** Of all steps, the share spent on fewer sticks when the price is known to be the least. */
    private static final int SHARE_FOR_FEWER = 20;

    /** Of the steps still to go, the share that is kept when plans are sought to which the linear program points. */
    private static final int SHARE_KEPT = 4;

    /** Of what lies between bound and best plan, the part by which the search first goes beyond the bound. */
    private static final int FIRST_PART = 16;

    /** Told now and then how the search goes. */
    public interface SearchWatch {
        /**
         * Asks whether to go on.
         *
         * @param steps taken so far
         * @param mostSteps after which the search ends by itself
         * @return false to end the search; what was found so far is kept
         */
        boolean goOn(long steps, long mostSteps);
    }

    private final Bins bins;
    private final long mostSteps;
    private final SearchWatch watch;
    private List<StickLoad> best;
    private long cost;
    private long least;
    private long steps;
    private long until;
    private boolean stopped;

    private StickSearch(Bins bins, List<StickLoad> first, long mostSteps, SearchWatch watch) {
        this.bins = bins;
        this.mostSteps = mostSteps;
        this.watch = watch;
        this.best = first;
        this.cost = Greedy.cost(bins, first);
    }

    /** As {@link #solve(StickProblem, long, SearchWatch)}, within the usual steps: the same answer every time. */
    public static Optional<StickPlan> solve(StickProblem problem) {
        return solve(problem, USUAL_STEPS, (steps, most) -> true);
    }

    /**
     * The best plan found.
     *
     * @param mostSteps after which the search ends; the same number gives the same answer
     * @param watch may end it earlier
     * @return nothing when the sticks were not seen to hold the pieces: when one is too long, or sticks are too few
     */
    public static Optional<StickPlan> solve(StickProblem problem, long mostSteps, SearchWatch watch) {
        if (problem.pieces().isEmpty()) {
            return Optional.of(new StickPlan(List.of(), 0, 0, 0, true, 0));
        }
        Bins bins = Bins.of(problem);
        return Greedy.plan(bins).map(first -> new StickSearch(bins, first, mostSteps, watch).plan());
    }

    /**
     * What is proved without a search.
     *
     * @param price no plan costs less
     * @param steps that this took
     */
    public record Least(long price, long steps) {}

    /** The bound alone: 0 when the sticks were not seen to hold the pieces. */
    public static Least least(StickProblem problem, long mostSteps, SearchWatch watch) {
        if (problem.pieces().isEmpty()) {
            return new Least(0, 0);
        }
        Bins bins = Bins.of(problem);
        return Greedy.plan(bins)
                .map(first -> {
                    StickSearch search = new StickSearch(bins, first, mostSteps, watch);
                    search.bound();
                    return new Least(bins.price(search.least), search.steps);
                })
                .orElse(new Least(0, 0));
    }

    private StickBound bound() {
        until = mostSteps;
        StickBound bound = StickBound.of(bins, best, cost, this::counted);
        least = Math.min(cost, bins.roundedUp(StickBound.cost(bound.total())));
        return bound;
    }

    private StickPlan plan() {
        StickBound bound = bound();
        if (cost > least && !bins.large()) {
            dive(bound);
        }
        if (cost > least && !bins.large()) {
            search(bound);
        }
        boolean cheapest = bins.price(cost) == bins.price(least);
        return new StickPlan(
                cutUp(bins, best),
                bins.price(cost),
                bins.price(least),
                cheapest ? bins.sticks(least) : bins.fewest(),
                cost == least,
                steps);
    }

    /** Looks for ever cheaper plans where the linear relaxation points, for a share of the steps. */
    private void dive(StickBound bound) {
        until = mostSteps - (mostSteps - steps) / SHARE_KEPT;
        StickDive dive = new StickDive(bins, bound.loads(), this::counted);
        Optional<List<StickLoad>> found = dive.within(bins.roundedDown(cost));
        while (found.isPresent()) {
            best = found.get();
            cost = Greedy.cost(bins, best);
            found = cost > least ? dive.within(bins.roundedDown(cost)) : Optional.empty();
        }
    }

    private void search(StickBound bound) {
        StickTree tree = new StickTree(bins, bound, best, steps, this::goesOn);
        long wider = Math.max(1, (cost - least) / FIRST_PART);
        long within = bins.samePrice(least);
        while (cost > least && !stopped && steps < mostSteps) {
            boolean cheapest = bins.price(cost) == bins.price(least);
            long all = bins.roundedDown(cost);
            long target = cheapest ? all : Math.min(within, all);
            until = steps + allotted(cheapest, target == all);
            boolean looked = tree.search(target, least);
            best = tree.best();
            cost = tree.bestCost();
            steps = tree.steps();
            if (looked) {
                least = Math.min(cost, bins.roundedUp(target + 1));
            } else if (cheapest || tree.tooDeep()) {
                break;
            }
            within = Math.max(bins.samePrice(least), within + wider);
            wider *= 2;
        }
    }

    private long allotted(boolean cheapest, boolean all) {
        long left = mostSteps - steps;
        if (cheapest) {
            return Math.min(left, mostSteps / SHARE_FOR_FEWER);
        }
        return all ? left : left / SHARE;
    }

    private boolean counted(long more) {
        steps += more;
        return goesOn(steps);
    }

    private boolean goesOn(long taken) {
        stopped = stopped || !watch.goOn(taken, mostSteps);
        return !stopped && taken < until;
    }

    private static List<StickPlan.CutUp> cutUp(Bins bins, List<StickLoad> loads) {
        List<Deque<Integer>> members = new ArrayList<>();
        bins.members.forEach(own -> members.add(new ArrayDeque<>(own)));
        List<StickPlan.CutUp> sticks = new ArrayList<>();
        for (StickLoad load : loads) {
            List<Integer> pieces = new ArrayList<>();
            for (int type = 0; type < bins.types(); type++) {
                for (int i = 0; i < load.counts()[type]; i++) {
                    pieces.add(members.get(type).remove());
                }
            }
            sticks.add(new StickPlan.CutUp(bins.kinds[load.kind()], pieces));
        }
        return sticks;
    }
}

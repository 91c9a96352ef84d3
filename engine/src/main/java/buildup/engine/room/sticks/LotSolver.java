package buildup.engine.room.sticks;

import buildup.engine.solve.StickPlan;
import buildup.engine.solve.StickProblem;
import buildup.engine.solve.StickSearch;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Solves what the lots of one job ask, and the same only once. */
final class LotSolver {
    /** Steps after which a way that is tried, or a bound, is as good as it must be to be told from another. */
    private static final long STEPS_FOR_A_TRY = 1_500_000;

    /** Steps after which strips lie well enough on their boards. */
    private static final long STEPS_FOR_BOARDS = 20_000;

    private final Limit limit;
    private final boolean glance;
    private final long budget;
    private final Map<StickProblem, Optional<StickPlan>> plans = new HashMap<>();
    private final IdentityHashMap<Lot, Map<Object, Optional<StickPlan>>> asked = new IdentityHashMap<>();
    private final Map<StickProblem, Long> leasts = new HashMap<>();
    private long spent;
    private boolean stopped;

    LotSolver(Limit limit) {
        this(limit, Long.MAX_VALUE, false);
    }

    private LotSolver(Limit limit, long budget, boolean glance) {
        this.glance = glance;
        this.limit = limit;
        this.budget = budget;
    }

    /** For many ways that are tried in turn, which together may take no more steps than one lot. */
    LotSolver forTries() {
        return new LotSolver(new Limit(Math.min(limit.steps(), STEPS_FOR_A_TRY), limit.watch()), limit.steps(), false);
    }

    /** For a first look at many ways: plans are made piece by piece, and nothing is searched. */
    LotSolver forGlances() {
        return new LotSolver(limit, budget, true);
    }

    private boolean goesOn(long steps, long most) {
        stopped = stopped || !limit.watch().goOn(steps, most);
        return !stopped;
    }

    boolean mayTry() {
        return spent < budget && !stopped;
    }

    Optional<StickPlan> plan(StickProblem problem) {
        if (glance) {
            return plans.computeIfAbsent(problem, StickSearch::glance);
        }
        return plans.computeIfAbsent(problem, this::solved);
    }

    /** Strips on boards: asked so often that each must be quick. */
    Optional<StickPlan> boards(StickProblem problem) {
        if (glance) {
            return plan(problem);
        }
        return plans.computeIfAbsent(
                problem, key -> StickSearch.solve(key, Math.min(limit.steps(), STEPS_FOR_BOARDS), this::goesOn));
    }

    /** What was answered for a lot when the same was asked before. */
    Optional<StickPlan> remembered(Lot lot, Object question, Supplier<Optional<StickPlan>> answer) {
        return asked.computeIfAbsent(lot, key -> new HashMap<>()).computeIfAbsent(question, key -> answer.get());
    }

    /** What no plan costs less than; quicker than a plan. */
    long least(StickProblem problem) {
        return leasts.computeIfAbsent(problem, this::bounded);
    }

    private long bounded(StickProblem problem) {
        StickSearch.Least least = StickSearch.least(problem, limit.steps(), this::goesOn);
        spent += least.steps();
        return least.price();
    }

    private Optional<StickPlan> solved(StickProblem problem) {
        Optional<StickPlan> plan = StickSearch.solve(problem, limit.steps(), this::goesOn);
        spent += plan.map(StickPlan::steps).orElse(0L);
        return plan;
    }
}

package buildup.engine.room.sticks;

import buildup.engine.solve.StickPlan;
import buildup.engine.solve.StickProblem;
import buildup.engine.solve.StickSearch;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Solves what the lots of one job ask, and the same only once. */
final class LotSolver {
    /** Steps after which a way that is tried, or a bound, is as good as it must be to be told from another. */
    private static final long STEPS_FOR_A_TRY = 1_500_000;

    private final Limit limit;
    private final long budget;
    private final Map<StickProblem, Optional<StickPlan>> plans = new HashMap<>();
    private long spent;

    LotSolver(Limit limit) {
        this(limit, Long.MAX_VALUE);
    }

    private LotSolver(Limit limit, long budget) {
        this.limit = limit;
        this.budget = budget;
    }

    /** For many ways that are tried in turn, which together may take no more steps than one lot. */
    LotSolver forTries() {
        return new LotSolver(new Limit(Math.min(limit.steps(), STEPS_FOR_A_TRY), limit.watch()), limit.steps());
    }

    boolean mayTry() {
        return spent < budget;
    }

    Optional<StickPlan> plan(StickProblem problem) {
        return plans.computeIfAbsent(problem, this::solved);
    }

    private Optional<StickPlan> solved(StickProblem problem) {
        Optional<StickPlan> plan = StickSearch.solve(problem, limit.steps(), limit.watch());
        spent += plan.map(StickPlan::steps).orElse(0L);
        return plan;
    }
}

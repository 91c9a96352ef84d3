package buildup.engine.sticks;

import buildup.engine.solve.StickPlan;
import buildup.engine.solve.StickProblem;
import buildup.engine.solve.StickSearch;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Solves what the lots of one job ask, and the same only once. */
final class Desk {
    /** Steps after which a bound is good enough: most of it is proved before the first. */
    private static final long STEPS_FOR_A_BOUND = 100_000;

    /** Steps after which a way that is tried is as good as it must be to be told from another. */
    private static final long STEPS_FOR_A_TRY = 300_000;

    private final Limit limit;
    private final Map<StickProblem, Optional<StickPlan>> plans = new HashMap<>();

    Desk(Limit limit) {
        this.limit = limit;
    }

    /** For one of many ways that are tried in turn. */
    Desk quick() {
        return new Desk(new Limit(Math.min(limit.steps(), STEPS_FOR_A_TRY), limit.watch()));
    }

    Optional<StickPlan> plan(StickProblem problem) {
        return plans.computeIfAbsent(problem, one -> StickSearch.solve(one, limit.steps(), limit.watch()));
    }

    /** What no plan costs less than; nothing when no plan was seen. */
    Optional<Long> least(StickProblem problem) {
        return StickSearch.solve(problem, Math.min(limit.steps(), STEPS_FOR_A_BOUND), limit.watch())
                .map(StickPlan::leastPrice);
    }
}

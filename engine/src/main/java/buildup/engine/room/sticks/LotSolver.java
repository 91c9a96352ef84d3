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
    /** Steps after which a lot of strips, or a bound, is as good as it must be. */
    private static final long STEPS_FOR_STRIPS = 1_500_000;

    /** Steps after which a way that is tried is as good as it must be to be told from another. */
    private static final long STEPS_FOR_A_TRY = 30_000;

    /** Steps after which strips lie well enough on their boards. */
    private static final long STEPS_FOR_BOARDS = 20_000;

    private final Limit limit;
    private final long budget;
    private final Map<StickProblem, Optional<StickPlan>> plans;
    private final IdentityHashMap<Lot, Map<Object, Optional<StickPlan>>> asked;
    private final Map<StickProblem, Long> leasts = new HashMap<>();
    private long spent;
    private boolean stopped;

    LotSolver(Limit limit) {
        this(limit, Long.MAX_VALUE, new HashMap<>(), new IdentityHashMap<>());
    }

    private LotSolver(
            Limit limit,
            long budget,
            Map<StickProblem, Optional<StickPlan>> plans,
            IdentityHashMap<Lot, Map<Object, Optional<StickPlan>>> asked) {
        this.limit = limit;
        this.budget = budget;
        this.plans = plans;
        this.asked = asked;
    }

    /** For the strips of lots that share boards. */
    LotSolver forStrips() {
        return within(STEPS_FOR_STRIPS);
    }

    /** For many ways that are tried in turn, which together may take no more steps than one lot. */
    LotSolver forTries() {
        return within(STEPS_FOR_A_TRY);
    }

    /** What is known already stays known. */
    private LotSolver within(long steps) {
        return new LotSolver(
                new Limit(Math.min(limit.steps(), steps), limit.watch()),
                Math.min(budget, limit.steps()),
                plans,
                asked);
    }

    private boolean goesOn(long steps, long most) {
        stopped = stopped || !limit.watch().goOn(steps, most);
        return !stopped;
    }

    boolean mayTry() {
        return spent < budget && !stopped;
    }

    Optional<StickPlan> plan(StickProblem problem) {
        return plans.computeIfAbsent(problem, this::solved);
    }

    /** Strips on boards: asked so often that each must be quick. */
    Optional<StickPlan> boards(StickProblem problem) {
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

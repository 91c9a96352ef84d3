package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import buildup.engine.Bench;
import buildup.engine.solve.StickProblem.Stick;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published instances and their sources stand in {@code reference/cutting-stock.md}, whose tables are read here. */
class StickSearchTest {
    private static final String REFERENCE = Bench.resource("/reference/cutting-stock.md");
    private static final int INCH = 64;

    /** How many random jobs; more in the long run. */
    private static final int JOBS = Integer.getInteger("buildup.stick.jobs", 25);

    record Known(String name, int capacity, List<Integer> items, int optimum, int firstFit) {}

    record Kerfed(int stock, List<Integer> pieces, int without, int with) {}

    private static Stream<List<String>> rows(String heading) {
        String part = REFERENCE.substring(REFERENCE.indexOf(heading));
        return part.substring(part.indexOf("|---"))
                .lines()
                .skip(1)
                .takeWhile(line -> line.startsWith("|"))
                .map(line -> Arrays.stream(line.substring(1).split("\\|", -1))
                        .map(String::strip)
                        .toList());
    }

    static Stream<Known> instances() {
        return rows("## Published instances")
                .map(row -> new Known(
                        row.get(0),
                        Integer.parseInt(row.get(1)),
                        Arrays.stream(row.get(2).split(" "))
                                .map(Integer::valueOf)
                                .toList(),
                        Integer.parseInt(row.get(3)),
                        Integer.parseInt(row.get(4))));
    }

    static Stream<Kerfed> kerfs() {
        return rows("## Kerf")
                .map(row -> new Kerfed(
                        Integer.parseInt(row.get(0)) * INCH,
                        Arrays.stream(row.get(1).split(" "))
                                .map(inches -> (int) Math.round(Double.parseDouble(inches) * INCH))
                                .toList(),
                        row.get(2).isEmpty() ? 0 : Integer.parseInt(row.get(2)),
                        Integer.parseInt(row.get(3))));
    }

    @ParameterizedTest
    @MethodSource("instances")
    void every_published_instance_comes_to_its_known_optimum(Known known) {
        StickProblem problem = Cutting.one(known.capacity, 0, known.items);
        StickPlan plan = StickSearch.solve(problem).orElseThrow();
        Cutting.recount(problem, plan);
        assertThat(plan.sticks()).hasSize(known.optimum);
        assertThat(plan.best()).as("proved").isTrue();
        assertThat(plan.ended()).isTrue();
        assertThat(Cutting.firstFit(known.capacity, 0, known.items))
                .as("first fit decreasing")
                .isEqualTo(known.firstFit);
    }

    @ParameterizedTest
    @MethodSource("kerfs")
    void a_kerf_lies_between_two_pieces_and_none_behind_the_last(Kerfed row) {
        assertThat(sticks(row.stock, INCH / 8, row.pieces)).isEqualTo(row.with);
        if (row.without > 0) {
            assertThat(sticks(row.stock, 0, row.pieces)).isEqualTo(row.without);
        }
    }

    @Test
    void two_pieces_that_fill_a_stick_of_192_exactly_fit_and_a_64th_more_does_not() {
        int piece = 95 * INCH + 60;
        assertThat(sticks(192 * INCH, INCH / 8, List.of(piece, piece))).isEqualTo(1);
        assertThat(sticks(192 * INCH, INCH / 8, List.of(piece, piece + 1))).isEqualTo(2);
    }

    @Tag("sampled")
    @Test
    void random_jobs_are_never_worse_than_first_fit_and_never_under_the_bound() {
        int better = 0;
        int proved = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            List<Integer> pieces = Cutting.random(new Random(seed), 40, 4 * INCH, 90 * INCH);
            StickProblem problem = Cutting.one(192 * INCH, INCH / 8, pieces);
            StickPlan plan =
                    StickSearch.solve(problem, 5_000_000, (steps, most) -> true).orElseThrow();
            Cutting.recount(problem, plan);
            int firstFit = Cutting.firstFit(192 * INCH, INCH / 8, pieces);
            int bound = Cutting.bound(192 * INCH, INCH / 8, pieces);
            assertThat(plan.sticks().size()).as("seed %d", seed).isBetween(bound, firstFit);
            assertThat(plan.leastPrice()).as("seed %d", seed).isBetween((long) bound, plan.price());
            better += plan.sticks().size() < firstFit ? 1 : 0;
            proved += plan.best() ? 1 : 0;
        }
        assertThat(better)
                .as("jobs in which first fit decreasing wastes a stick")
                .isPositive();
        assertThat(proved).as("jobs proved").isEqualTo(JOBS);
    }

    @Tag("long")
    @Test
    void random_jobs_from_many_lengths_keep_their_pieces_and_their_bound() {
        for (int seed = 0; seed < 25; seed++) {
            Random random = new Random(seed);
            List<Stick> sticks = new ArrayList<>();
            for (int feet : List.of(8, 10, 12, 14, 16)) {
                sticks.add(new Stick(feet * 12 * INCH, feet * 285L, StickProblem.NO_END));
            }
            for (int i = 0; i < 6; i++) {
                sticks.add(new Stick((20 + random.nextInt(120)) * INCH, 0, 1));
            }
            List<Integer> pieces = Cutting.random(random, 40, 4 * 16, 90 * 16).stream()
                    .map(sixteenths -> sixteenths * INCH / 16)
                    .toList();
            StickProblem problem = new StickProblem(pieces, sticks, INCH / 8);
            StickPlan plan =
                    StickSearch.solve(problem, 300_000, (steps, most) -> true).orElseThrow();
            Cutting.recount(problem, plan);
            // all wood of the own sticks used, the rest bought at the common price of a foot, no kerf, no waste
            long own = sticks.stream()
                    .filter(stick -> stick.price() == 0)
                    .mapToLong(Stick::length)
                    .sum();
            long wanted = pieces.stream().mapToLong(Integer::longValue).sum();
            assertThat(plan.leastPrice() * 12.0 * INCH / 285)
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(Math.max(0, wanted - own) - 1.0);
        }
    }

    /** Against an oracle that tries every way to share few pieces out. */
    @Test
    void small_jobs_cost_what_trying_every_way_gives() {
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed);
            List<Stick> sticks = List.of(
                    new Stick(60 + random.nextInt(40), 20 + random.nextInt(30), StickProblem.NO_END),
                    new Stick(100 + random.nextInt(30), 40 + random.nextInt(20), StickProblem.NO_END),
                    new Stick(30 + random.nextInt(80), 0, 1 + random.nextInt(2)),
                    new Stick(30 + random.nextInt(80), random.nextInt(15), 1));
            List<Integer> pieces = Cutting.random(random, 4 + random.nextInt(4), 10, 60);
            StickProblem problem = new StickProblem(pieces, sticks, random.nextInt(4));
            StickPlan plan = StickSearch.solve(problem).orElseThrow();
            Cutting.recount(problem, plan);
            EveryWay every = new EveryWay(problem);
            assertThat(plan.best()).as("seed %d proved", seed).isTrue();
            assertThat(List.of(plan.price(), (long) plan.sticks().size()))
                    .as("seed %d: price and sticks", seed)
                    .isEqualTo(List.of(every.price(), (long) every.sticks()));
        }
    }

    @Test
    void what_is_on_hand_is_used_before_anything_is_bought() {
        StickProblem problem = new StickProblem(
                List.of(50, 40, 30), List.of(new Stick(100, 7, StickProblem.NO_END), new Stick(75, 0, 2)), 1);
        StickPlan plan = StickSearch.solve(problem).orElseThrow();
        Cutting.recount(problem, plan);
        assertThat(plan.price()).isZero();
        assertThat(plan.sticks()).extracting(StickPlan.CutUp::kind).containsOnly(1);
    }

    @Test
    void of_two_plans_of_one_price_the_one_with_fewer_sticks_is_taken() {
        StickProblem problem = new StickProblem(
                List.of(50, 50),
                List.of(new Stick(50, 5, StickProblem.NO_END), new Stick(100, 10, StickProblem.NO_END)),
                0);
        StickPlan plan = StickSearch.solve(problem).orElseThrow();
        assertThat(plan.sticks()).hasSize(1);
        assertThat(plan.best()).isTrue();
    }

    @Test
    void a_piece_longer_than_every_stick_has_no_plan() {
        assertThat(StickSearch.solve(Cutting.one(100, 1, List.of(101)))).isEmpty();
    }

    @Test
    void sticks_that_are_too_few_have_no_plan() {
        StickProblem problem = new StickProblem(List.of(60, 60), List.of(new Stick(100, 0, 1)), 1);
        assertThat(StickSearch.solve(problem)).isEmpty();
    }

    @Test
    void nothing_to_cut_takes_nothing() {
        StickPlan plan = StickSearch.solve(Cutting.one(100, 1, List.of())).orElseThrow();
        assertThat(plan.sticks()).isEmpty();
        assertThat(plan.best()).isTrue();
    }

    @Test
    void a_kerf_under_nothing_and_a_piece_of_nothing_are_no_problem_to_solve() {
        assertThatThrownBy(() -> Cutting.one(100, -1, List.of(5))).hasMessageContaining("kerf -1");
        assertThatThrownBy(() -> Cutting.one(100, 1, List.of(0))).hasMessageContaining("[0]");
    }

    @Test
    void a_search_that_is_ended_early_keeps_the_best_it_had_and_the_bound_it_had() {
        StickProblem problem = falkenauer();
        StickPlan plan = StickSearch.solve(problem, Long.MAX_VALUE, (steps, most) -> false)
                .orElseThrow();
        Cutting.recount(problem, plan);
        assertThat(plan.sticks()).hasSizeLessThanOrEqualTo(23);
        assertThat(plan.leastPrice()).isEqualTo(20);
        assertThat(plan.ended()).isFalse();
    }

    @Test
    void a_search_tells_how_it_goes() {
        AtomicLong told = new AtomicLong();
        StickSearch.solve(falkenauer(), 1_000_000, (steps, most) -> {
            assertThat(most).isEqualTo(1_000_000);
            told.incrementAndGet();
            return true;
        });
        assertThat(told.get()).isPositive();
    }

    @Test
    void the_same_limit_gives_the_same_plan() {
        StickProblem problem = Cutting.one(192 * INCH, 8, Cutting.random(new Random(3), 60, 4 * INCH, 90 * INCH));
        assertThat(StickSearch.solve(problem, 100_000, (steps, most) -> true))
                .isEqualTo(StickSearch.solve(problem, 100_000, (steps, most) -> true));
    }

    @Test
    void a_job_too_large_to_search_has_a_plan_and_a_bound() {
        List<Integer> pieces = Cutting.random(new Random(1), 900, 4 * INCH, 90 * INCH);
        StickProblem problem = Cutting.one(192 * INCH, 8, pieces);
        StickPlan plan = StickSearch.solve(problem).orElseThrow();
        Cutting.recount(problem, plan);
        assertThat(plan.leastPrice()).isEqualTo(Cutting.bound(192 * INCH, 8, pieces));
    }

    private static StickProblem falkenauer() {
        Known t60 = instances()
                .filter(known -> known.name.equals("t60_00"))
                .findFirst()
                .orElseThrow();
        return Cutting.one(t60.capacity, 0, t60.items);
    }

    private static int sticks(int length, int kerf, List<Integer> pieces) {
        StickProblem problem = Cutting.one(length, kerf, pieces);
        StickPlan plan = StickSearch.solve(problem).orElseThrow();
        Cutting.recount(problem, plan);
        assertThat(plan.best()).isTrue();
        return plan.sticks().size();
    }

    /** A plan of so many sticks is followed no deeper than a thread's memory for calls goes, here a small one. */
    @Test
    void thousands_of_sticks_are_cut_within_the_memory_of_a_small_thread() throws InterruptedException {
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            pieces.add(40 + i % 40 * 3);
        }
        StickProblem problem =
                new StickProblem(pieces, List.of(new Stick(240, 7, StickProblem.NO_END), new Stick(177, 5, 900)), 1);
        List<Throwable> faults = new ArrayList<>();
        List<StickPlan> plans = new ArrayList<>();
        Thread small = new Thread(
                null,
                () -> StickSearch.solve(problem, 400_000, (steps, most) -> true).ifPresent(plans::add),
                "small",
                1 << 20);
        small.setUncaughtExceptionHandler((thread, fault) -> faults.add(fault));
        small.start();
        small.join();
        assertThat(faults).isEmpty();
        assertThat(plans.get(0).sticks().stream()
                        .mapToInt(stick -> stick.pieces().size())
                        .sum())
                .isEqualTo(4000);
    }
}

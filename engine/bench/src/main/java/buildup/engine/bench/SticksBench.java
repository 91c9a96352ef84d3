package buildup.engine.bench;

import buildup.engine.solve.StickPlan;
import buildup.engine.solve.StickProblem;
import buildup.engine.solve.StickProblem.Stick;
import buildup.engine.solve.StickSearch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A typical job, 6 courses on 20 stretches of walls with 4 corners, 120 pieces: laid out on sticks of five lengths at the
 * least price, and by first fit decreasing on the longest of them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class SticksBench {
    private static final int INCH = 64;
    private static final int KERF = INCH / 8;
    private static final int COURSES = 6;
    private static final int STRETCHES = 20;
    private static final int LONGEST = 16 * 12 * INCH;

    private List<StickProblem> courses;
    private int sticks;
    private int fewest;
    private int firstFit;
    private int apart;

    @Setup
    public void job() {
        // walls of a room with its openings, one on which first fit decreasing wastes a stick; every course adds its own projection at their ends
        List<Integer> walls = new Random(10)
                .ints(STRETCHES, 14 * 16, 150 * 16)
                .boxed()
                .toList();
        courses = new ArrayList<>();
        for (int course = 0; course < COURSES; course++) {
            int more = course * 53;
            List<Integer> pieces = walls.stream()
                    .map(sixteenths -> sixteenths * INCH / 16 + more)
                    .toList();
            courses.add(new StickProblem(pieces, List.of(new Stick(LONGEST, 1, StickProblem.NO_END)), KERF));
        }
        for (StickProblem course : courses) {
            StickPlan plan = StickSearch.solve(course).orElseThrow();
            sticks += plan.sticks().size();
            fewest += (int) plan.leastPrice();
            firstFit += firstFit(course);
            apart = Math.max(apart, (int) (plan.price() - plan.leastPrice()));
        }
        if (apart > 1 || sticks > firstFit) {
            throw new IllegalStateException(words());
        }
        System.out.println(words());
    }

    private String words() {
        return sticks + " sticks, no plan has fewer than " + fewest + ", first fit decreasing takes " + firstFit;
    }

    /** All courses at the fewest sticks, each with its proof. */
    @Benchmark
    public int search() {
        int taken = 0;
        for (StickProblem course : courses) {
            taken += StickSearch.solve(course).orElseThrow().sticks().size();
        }
        return taken;
    }

    /** All courses from five lengths at the least price, each with its proof. */
    @Benchmark
    public long searchOfFiveLengths() {
        long price = 0;
        for (StickProblem course : courses) {
            List<Stick> lengths = new ArrayList<>();
            for (int feet = 8; feet <= 16; feet += 2) {
                lengths.add(new Stick(feet * 12 * INCH, feet * 285L, StickProblem.NO_END));
            }
            StickPlan plan = StickSearch.solve(new StickProblem(course.pieces(), lengths, KERF))
                    .orElseThrow();
            price += plan.price();
        }
        return price;
    }

    /** All pieces of all courses from the same sticks: one lot of 120. */
    @Benchmark
    public int searchAsOne() {
        List<Integer> all =
                courses.stream().flatMap(course -> course.pieces().stream()).toList();
        StickPlan plan = StickSearch.solve(
                        new StickProblem(all, courses.get(0).sticks(), KERF))
                .orElseThrow();
        if (plan.price() - plan.leastPrice() > 1) {
            throw new IllegalStateException("over by " + (plan.price() - plan.leastPrice()));
        }
        return plan.sticks().size();
    }

    @Benchmark
    public int firstFitDecreasing() {
        return courses.stream().mapToInt(SticksBench::firstFit).sum();
    }

    private static int firstFit(StickProblem problem) {
        List<Integer> left = new ArrayList<>();
        for (int piece :
                problem.pieces().stream().sorted(Comparator.reverseOrder()).toList()) {
            int at = 0;
            while (at < left.size() && left.get(at) < piece) {
                at++;
            }
            if (at == left.size()) {
                left.add(LONGEST);
            }
            left.set(at, left.get(at) - piece - KERF);
        }
        return left.size();
    }
}

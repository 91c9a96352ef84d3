package buildup.engine.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs all benchmarks and prints what each comparison comes to. */
public final class Benchmarks {
    private Benchmarks() {}

    public static void main(String[] arguments) throws RunnerException {
        boolean careful = arguments.length > 0 && arguments[0].equals("long");
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include("buildup.engine.bench")
                        .forks(careful ? 3 : 1)
                        .measurementIterations(careful ? 40 : 12)
                        .measurementTime(TimeValue.milliseconds(250))
                        .build())
                .run();
        Map<String, Double> compose = new TreeMap<>();
        Map<Integer, Double> sweep = new TreeMap<>();
        Map<Integer, Double> naive = new TreeMap<>();
        Map<Integer, Double> trace = new TreeMap<>();
        for (RunResult result : results) {
            String name = result.getPrimaryResult().getLabel();
            // the best of the samples: what else the machine does only ever adds
            double score = result.getPrimaryResult().getStatistics().getMin();
            String segments = result.getParams().getParam("segments");
            String points = result.getParams().getParam("points");
            if (points != null) {
                trace.put(Integer.parseInt(points), score);
            } else if (segments == null) {
                compose.put(name, score);
            } else {
                (name.equals("sweep") ? sweep : naive).put(Integer.parseInt(segments), score);
            }
        }
        print(
                "%ncompose %.0f us, bare union %.0f us: %.2f times the union",
                compose.get("compose"), compose.get("union"), compose.get("compose") / compose.get("union"));
        beside(compose, "statics", "its statics, the nails given");
        beside(compose, "fixings", "its five rows of nails followed and checked");
        beside(compose, "propose", "nails proposed for every piece");
        beside(compose, "seekRows", "its statics and the rows of nails sought that hold what falls");
        print(
                "10,000 builds of it with their figures %.0f ms, composing each %.0f ms: %.0f times as fast",
                compose.get("builds") / 1000,
                compose.get("compose") * 10,
                compose.get("compose") * 10_000 / compose.get("builds"));
        print(
                "twenty pieces: composing %.0f us; whether their order goes %.0f us: %.2f times composing; an order that goes"
                        + " sought %.0f us: %.1f times",
                compose.get("composeTwenty"),
                compose.get("orderTwenty"),
                compose.get("orderTwenty") / compose.get("composeTwenty"),
                compose.get("seekTwenty"),
                compose.get("seekTwenty") / compose.get("composeTwenty"));
        print(
                "sticks of 6 courses, 120 pieces: %.1f ms by course, %.1f ms from five lengths, %.1f ms as one lot;"
                        + " first fit decreasing %.4f ms",
                compose.get("search") / 1000,
                compose.get("searchOfFiveLengths") / 1000,
                compose.get("searchAsOne") / 1000,
                compose.get("firstFitDecreasing") / 1000);
        print(
                "nearest of the catalog at any turn and size %.0f ms; one comparison %.1f us by slabs, %.0f us by the union, as it"
                        + " was first: %.0f times as fast",
                compose.get("nearest") / 1000,
                compose.get("bySlabs"),
                compose.get("byUnion"),
                compose.get("byUnion") / compose.get("bySlabs"));
        print("%nsegments   sweep us   growth   every us   growth   every/sweep");
        double lastSweep = Double.NaN;
        double lastNaive = Double.NaN;
        for (int n : sweep.keySet()) {
            print(
                    "%8d %10.0f %8.2f %10.0f %8.2f %13.1f",
                    n,
                    sweep.get(n),
                    sweep.get(n) / lastSweep,
                    naive.get(n),
                    naive.get(n) / lastNaive,
                    naive.get(n) / sweep.get(n));
            lastSweep = sweep.get(n);
            lastNaive = naive.get(n);
        }
        print("%n  points   trace ms   growth   n log n");
        int last = 0;
        for (int n : trace.keySet()) {
            double growth = last == 0 ? Double.NaN : trace.get(n) / trace.get(last);
            double expected = last == 0 ? Double.NaN : n * Math.log(n) / (last * Math.log(last));
            print("%8d %10.1f %8.2f %9.2f", n, trace.get(n) / 1000, growth, expected);
            last = n;
        }
    }

    private static void beside(Map<String, Double> scores, String name, String words) {
        double times = scores.get(name) / scores.get("compose");
        print("%s: %.0f us, %.2f times composing", words, scores.get(name), times);
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}

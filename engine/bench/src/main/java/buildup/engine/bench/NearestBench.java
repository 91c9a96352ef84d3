package buildup.engine.bench;

import buildup.catalog.Catalog;
import buildup.engine.mill.nearest.Freedom;
import buildup.engine.mill.nearest.Neighbors;
import buildup.profiles.Profile;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.region.Difference;
import buildup.profiles.region.WeldedOutlines;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
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
 * What comes nearest to a casing in the whole catalog, at any turn and size; and one of its comparisons as the search first
 * made them, by the union of the overlay library, beside the same by slabs of true segments.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class NearestBench {
    private static final int MOST = 5;

    private Profile wanted;
    private List<Profile> stock;
    private Outline laid;
    private Difference slabs;
    private Difference laidSlabs;

    @Setup
    public void list() {
        Catalog catalog = Catalog.builtIn();
        stock = Neighbors.usual(catalog, LengthUnit.INCH);
        wanted = profile(catalog, "casing-colonial 11/16 x 3-1/4");
        laid = profile(catalog, "base-ranch 9/16 x 3-1/4").asRun().moved(Motion.turn(10));
        slabs = Difference.from(wanted.asRun());
        laidSlabs = Difference.from(laid);
    }

    private static Profile profile(Catalog catalog, String call) {
        return catalog.profile(
                        new Scalar(call, new Mark("bench", 1, 1)),
                        Catalog.USUAL_BOARDS,
                        new LengthReader(LengthUnit.INCH, Map.of()),
                        new Notices())
                .orElseThrow();
    }

    @Benchmark
    public Neighbors nearest() {
        return Neighbors.of(wanted, stock, new Freedom(true, true), MOST, (done, all) -> {});
    }

    @Benchmark
    public double bySlabs() {
        return slabs.to(laidSlabs.shifted(0, 0));
    }

    @Benchmark
    public double byUnion() {
        Outline own = wanted.asRun();
        return 2 * WeldedOutlines.of(List.of(own, laid)).union().area() - own.area() - laid.area();
    }
}

package buildup.engine.bench;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.Traced;
import buildup.profiles.trace.Tracer;
import buildup.profiles.trace.TracingOptions;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A whole tracing of one molding of twelve members, noise 0.002 in, from its points to its outline. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class TraceBench {
    private static final double NOISE = 0.002;

    @Param({"500", "1000", "2000", "4000", "8000", "16000"})
    int points;

    private Trail trail;

    @Setup
    public void draw() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.5, "bottom");
        walk.straight(Way.UP, 0.25, "fillet");
        walk.cove(Way.UP, 0.5, Way.OUT, 0.5, "cove");
        walk.straight(Way.OUT, 0.25, "soffit");
        walk.halfRound(Way.UP, 0.5, "bead");
        walk.straight(Way.UP, 0.25, "neck");
        walk.cymaRecta(Way.UP, 1, Way.OUT, 0.75, "cyma");
        walk.straight(Way.UP, 0.375, "cap");
        walk.levelToBack();
        Outline outline = Outline.closed(walk.close());
        Random random = new Random(points);
        List<Point> sampled = new ArrayList<>();
        double step = outline.perimeter() / points;
        double at = step / 2;
        for (Stroke stroke : outline.strokes()) {
            double length = stroke.segment().length();
            for (; at < length; at += step) {
                Point p = stroke.segment().at(at / length);
                sampled.add(new Point(p.x() + NOISE * random.nextGaussian(), p.y() + NOISE * random.nextGaussian()));
            }
            at -= length;
        }
        trail = new Trail(sampled, true);
        int members = trace().outline().strokes().size();
        if (members != outline.strokes().size()) {
            throw new IllegalStateException(
                    members + " members of " + outline.strokes().size());
        }
    }

    @Benchmark
    public Traced trace() {
        return Tracer.trace(List.of(trail), TracingOptions.PLAIN, new Notices()).orElseThrow();
    }
}

package buildup.engine.bench;

import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.look.view.Visibility.Surface;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
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

/**
 * All of light (parallel rays) and sight (an eye in the room) of one jagged outline: what is seen of every segment, by
 * the sweep and by asking every segment against every other.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class ViewBench {
    private static final List<Viewpoint> VIEWPOINTS =
            List.of(Viewpoint.FarAway.at(Math.PI / 4), new Viewpoint.Near(new Point(72, -24)));

    @Param({"125", "250", "500", "1000", "2000"})
    int segments;

    private List<Surface> outline;

    @Setup
    public void draw() {
        // teeth of random depth on a face as tall as they need: seed fixed, so that every run asks the same
        Random random = new Random(segments);
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
        for (int i = 1; i < segments - 1; i++) {
            double out = i % 2 == 1 ? 2 + 2 * random.nextDouble() : 1 + random.nextDouble();
            points.add(new Point(out, i * 0.05));
        }
        points.add(new Point(0, segments * 0.05));
        outline = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            outline.add(new Surface(new Line(points.get(i), points.get((i + 1) % points.size())), 0));
        }
        double apart = Math.abs(sweep() - everyAgainstEvery());
        if (outline.size() != segments || apart > 1e-6) {
            throw new IllegalStateException("the two differ by " + apart);
        }
    }

    /** Length seen from both viewpoints together, in. */
    @Benchmark
    public double sweep() {
        double seen = 0;
        for (Viewpoint viewpoint : VIEWPOINTS) {
            Visibility view = Visibility.of(viewpoint, outline);
            for (Surface surface : outline) {
                for (Stretch stretch : view.seen(surface.segment())) {
                    seen += (stretch.end() - stretch.start())
                            * surface.segment().length();
                }
            }
        }
        return seen;
    }

    /** The same, each segment against every other. */
    @Benchmark
    public double everyAgainstEvery() {
        double seen = 0;
        for (Viewpoint viewpoint : VIEWPOINTS) {
            for (Surface surface : outline) {
                seen += seen(viewpoint, (Line) surface.segment());
            }
        }
        return seen;
    }

    private double seen(Viewpoint view, Line target) {
        double high = view.key(target.from());
        double low = view.key(target.to());
        if (high - low <= 0) {
            return 0;
        }
        List<double[]> free = new ArrayList<>(List.of(new double[] {low, high}));
        for (Surface surface : outline) {
            Line other = (Line) surface.segment();
            double otherHigh = Math.min(high, view.key(other.from()));
            double otherLow = Math.max(low, view.key(other.to()));
            // facing, and nearer where both are in view: segments of one outline do not cross
            if (otherHigh > otherLow && nearer(view, other, target, (otherLow + otherHigh) / 2)) {
                free = without(free, otherLow, otherHigh);
            }
        }
        double seen = 0;
        for (double[] part : free) {
            seen += at(view, target, part[0]).distance(at(view, target, part[1]));
        }
        return seen;
    }

    private static boolean nearer(Viewpoint view, Line other, Line target, double key) {
        return view.depth(at(view, other, key)) < view.depth(at(view, target, key)) - 1e-9;
    }

    private static Point at(Viewpoint view, Line line, double key) {
        Line ray = view.ray(key);
        Point way = ray.to().minus(ray.from());
        Point along = line.to().minus(line.from());
        return line.from().plus(along.times(ray.from().minus(line.from()).cross(way) / along.cross(way)));
    }

    private static List<double[]> without(List<double[]> parts, double low, double high) {
        List<double[]> left = new ArrayList<>();
        for (double[] part : parts) {
            if (low > part[0]) {
                left.add(new double[] {part[0], Math.min(part[1], low)});
            }
            if (high < part[1]) {
                left.add(new double[] {Math.max(part[0], high), part[1]});
            }
        }
        return left;
    }
}

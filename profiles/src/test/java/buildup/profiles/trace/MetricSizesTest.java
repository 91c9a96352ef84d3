package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A molding that was drawn in millimeters has its sizes on those: common practice, no source. */
@Tag("sampled")
class MetricSizesTest {
    private static final int TRACINGS = Integer.getInteger("buildup.metric.tracings", 3);

    /** A foot 12 out and 10 up, a cove of 15, a fillet of 3, a face of 5, an ovolo of 10; traced by a hand that shakes. */
    private static List<Point> traced(double unit, double scatter, long seed) {
        List<Point> points = new ArrayList<>();
        line(points, 0, 0, 12, 0, 40);
        line(points, 12, 0, 12, 10, 40);
        arc(points, 27, 10, 15, 180, 90, 80);
        line(points, 27, 25, 30, 25, 15);
        line(points, 30, 25, 30, 30, 20);
        arc(points, 20, 30, 10, 0, 90, 60);
        line(points, 20, 40, 0, 40, 60);
        line(points, 0, 40, 0, 0, 120);
        Random random = new Random(seed);
        return points.stream()
                .map(p -> new Point(
                        unit * p.x() + scatter * random.nextGaussian(), unit * p.y() + scatter * random.nextGaussian()))
                .toList();
    }

    private static void line(List<Point> points, double x, double y, double toX, double toY, int count) {
        for (int i = 0; i < count; i++) {
            double t = (double) i / count;
            points.add(new Point(x + (toX - x) * t, y + (toY - y) * t));
        }
    }

    private static void arc(List<Point> points, double x, double y, double r, double from, double to, int count) {
        for (int i = 0; i < count; i++) {
            double a = Math.toRadians(from + (to - from) * i / count);
            points.add(new Point(x + r * Math.cos(a), y + r * Math.sin(a)));
        }
    }

    private static List<Segment> read(List<Point> points, LengthUnit told) {
        return Tracer.trace(
                        List.of(new Trail(points, true)),
                        TracingOptions.PLAIN.in(LengthUnit.MILLIMETER).drawnIn(told),
                        new Notices())
                .orElseThrow()
                .outline()
                .segments();
    }

    /** Projections, heights and radii in units of so many inches, each once. */
    private static List<Double> sizes(List<Segment> segments, double unit) {
        return segments.stream()
                .flatMap(segment -> segment instanceof Arc arc
                        ? Stream.of(arc.radius())
                        : Stream.of(
                                Math.abs(segment.to().x()),
                                Math.abs(segment.to().y())))
                .map(size -> size / unit)
                .filter(size -> size > 0.001)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.06, 0.15})
    void sizes_are_read_in_whole_millimeters_or_as_they_lie_and_on_no_other_step(double scatter) {
        int whole = 0;
        int all = 0;
        for (int seed = 0; seed < TRACINGS; seed++) {
            for (double size : sizes(read(traced(1, scatter, seed), LengthUnit.MILLIMETER), 1 / 25.4)) {
                all++;
                boolean there = Math.abs(size - Math.rint(size)) < 1e-3;
                whole += there ? 1 : 0;
                assertThat(there || Math.abs(2 * size - Math.rint(2 * size)) > 1e-3)
                        .as(size + " is on the half")
                        .isTrue();
            }
        }
        assertThat((double) whole / all).isGreaterThan(scatter > 0.1 ? 0.75 : 0.9);
    }

    /** The same in sixteenths of an inch, 1.5875 mm each, by a scanner that counts in millimeters. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.06, 0.15})
    void a_molding_of_inches_keeps_them_however_it_is_told(double scatter) {
        for (int seed = 0; seed < TRACINGS; seed++) {
            List<Point> points = traced(25.4 / 16, scatter, seed);
            assertThat(read(points, LengthUnit.MILLIMETER)).isEqualTo(read(points, LengthUnit.INCH));
        }
    }
}

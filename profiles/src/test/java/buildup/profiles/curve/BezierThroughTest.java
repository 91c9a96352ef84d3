package buildup.profiles.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A cubic spline is what its definition says (C. de Boor, "A Practical Guide to Splines", 1978, chapter IV, from memory):
 * it goes through its points, its first and second derivatives are continuous over the parameter, which here is the chord
 * length, and the second is nothing at a free end.
 */
class BezierThroughTest {
    private static final double EXACT = 1e-9;

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static List<Bezier> through(
            List<Point> points, Optional<Point> start, Optional<Point> end, boolean closed) {
        return Bezier.through(points, start, end, closed).stream()
                .map(Bezier.class::cast)
                .toList();
    }

    private static List<Point> random(long seed, int count) {
        Random random = new Random(seed);
        return Stream.generate(() -> p(10 * random.nextDouble(), 10 * random.nextDouble()))
                .limit(count)
                .toList();
    }

    /** Over the chord length, at the start of a curve. */
    private static Point slopeAtStart(Bezier curve) {
        return curve.first().minus(curve.from()).times(3 / chord(curve));
    }

    private static Point slopeAtEnd(Bezier curve) {
        return curve.to().minus(curve.second()).times(3 / chord(curve));
    }

    private static Point bendAtStart(Bezier curve) {
        return curve.from().minus(curve.first().times(2)).plus(curve.second()).times(6 / chord(curve) / chord(curve));
    }

    private static Point bendAtEnd(Bezier curve) {
        return curve.first().minus(curve.second().times(2)).plus(curve.to()).times(6 / chord(curve) / chord(curve));
    }

    private static double chord(Bezier curve) {
        return curve.from().distance(curve.to());
    }

    private static void isSmooth(Bezier one, Bezier next) {
        assertThat(one.to()).isEqualTo(next.from());
        assertThat(slopeAtEnd(one).distance(slopeAtStart(next))).isLessThan(EXACT);
        assertThat(bendAtEnd(one).distance(bendAtStart(next))).isLessThan(EXACT);
    }

    @Test
    void it_goes_through_its_points_smoothly_and_ends_without_a_bend() {
        for (long seed = 1; seed <= 50; seed++) {
            List<Point> points = random(seed, 3 + (int) (seed % 9));
            List<Bezier> curves = through(points, Optional.empty(), Optional.empty(), false);
            assertThat(curves).hasSize(points.size() - 1);
            for (int i = 0; i < curves.size(); i++) {
                assertThat(curves.get(i).from()).isEqualTo(points.get(i));
                assertThat(curves.get(i).to()).isEqualTo(points.get(i + 1));
            }
            IntStream.range(1, curves.size()).forEach(i -> isSmooth(curves.get(i - 1), curves.get(i)));
            assertThat(bendAtStart(curves.get(0)).length()).isLessThan(EXACT);
            assertThat(bendAtEnd(curves.get(curves.size() - 1)).length()).isLessThan(EXACT);
        }
    }

    @Test
    void a_direction_that_is_given_at_an_end_is_kept() {
        List<Bezier> curves = through(random(7, 6), Optional.of(p(0, 2)), Optional.of(p(3, 4)), false);
        assertThat(slopeAtStart(curves.get(0)).distance(p(0, 1))).isLessThan(EXACT);
        assertThat(slopeAtEnd(curves.get(4)).distance(p(0.6, 0.8))).isLessThan(EXACT);
        IntStream.range(1, 5).forEach(i -> isSmooth(curves.get(i - 1), curves.get(i)));
    }

    @Test
    void a_ring_is_as_smooth_where_it_closes_and_through_points_of_a_circle_nearly_that_circle() {
        List<Point> round = IntStream.range(0, 24)
                .mapToObj(i -> p(Math.cos(i * Math.PI / 12), Math.sin(i * Math.PI / 12)))
                .toList();
        List<Bezier> curves = through(round, Optional.empty(), Optional.empty(), true);
        assertThat(curves).hasSize(24);
        IntStream.range(0, 24).forEach(i -> isSmooth(curves.get(i), curves.get((i + 1) % 24)));
        for (Bezier curve : curves) {
            for (int i = 0; i <= 20; i++) {
                // at most 5/384 h^4 (C. A. Hall, W. W. Meyer, J. Approx. Theory 16 (1976) 105-122, from memory)
                assertThat(curve.at(i / 20.0).length()).isCloseTo(1, within(5 * Math.pow(Math.PI / 12, 4) / 384));
            }
        }
    }

    @Test
    void points_in_a_row_give_the_line_through_them_and_one_point_alone_no_length() {
        List<Point> row = List.of(p(0, 0), p(1, 2), p(1, 2), p(3, 6));
        List<Bezier> curves = through(row, Optional.empty(), Optional.empty(), false);
        assertThat(curves).hasSize(2);
        assertThat(curves.get(1).at(0.5).distance(p(2, 4))).isLessThan(EXACT);
        List<DrawnCurve> one = Bezier.through(List.of(p(2, 3), p(2, 3)), Optional.empty(), Optional.empty(), false);
        assertThat(one).containsExactly(new Straight(p(2, 3), p(2, 3)));
    }
}

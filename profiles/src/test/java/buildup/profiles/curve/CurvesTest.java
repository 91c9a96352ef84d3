package buildup.profiles.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Listing;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CurvesTest {
    private static final double EXACT = 1e-12;
    private static final Point ORIGIN = Point.ORIGIN;

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    /** A quarter circle of radius 1 as a rational quadratic: weights 1, cos 45 degrees, 1 (Piegl and Tiller, The NURBS Book, 7.3; from memory). */
    private static Spline quarter() {
        return new Spline(
                2,
                List.of(p(1, 0), p(1, 1), p(0, 1)),
                List.of(1.0, Math.sqrt(0.5), 1.0),
                List.of(0.0, 0.0, 0.0, 1.0, 1.0, 1.0));
    }

    private static Stream<DrawnCurve> curves() {
        return Stream.of(
                new Straight(p(0, 0), p(3, 1)),
                Oval.circular(p(1, 2), 3, 0.3, 4),
                Oval.of(p(1, 2), p(3, 1), p(-0.2, 0.9), 1, -2.5),
                Oval.of(p(0, 0), p(3, 0), p(2, 0.01), 0, 6),
                new Bezier(p(0, 0), p(1, 3), p(2, -3), p(3, 0)),
                Bezier.quadratic(p(0, 0), p(2, 4), p(4, 0)),
                new Bezier(p(0, 0), p(4, 1), p(-1, 1), p(3, 0)),
                quarter(),
                new Spline(
                        3,
                        List.of(p(0, 0), p(1, 2), p(3, 2), p(4, -1), p(6, 0), p(7, 3)),
                        List.of(1.0, 2.0, 0.5, 1.0, 3.0, 1.0),
                        List.of(0.0, 0.0, 0.0, 0.0, 1.0, 1.0, 2.5, 2.5, 2.5, 2.5)));
    }

    @ParameterizedTest
    @MethodSource("curves")
    void chords_keep_within_the_error_and_the_ends_are_exact(DrawnCurve curve) {
        for (double error : List.of(1e-2, 1e-4, 1e-5)) {
            List<Point> points = curve.points(error);
            assertThat(points.get(0)).isEqualTo(curve.from());
            assertThat(points.get(points.size() - 1)).isEqualTo(curve.to());
            assertThat(points.size() - 1).isEqualTo(curve.chords(error));
            for (int i = 0; i <= 1000; i++) {
                assertThat(distance(curve.at(i / 1000.0), points)).isLessThanOrEqualTo(error * (1 + 1e-6) + EXACT);
            }
        }
    }

    /** Of a point from a chord path. */
    private static double distance(Point p, List<Point> path) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < path.size(); i++) {
            Point chord = path.get(i).minus(path.get(i - 1));
            double share = p.minus(path.get(i - 1)).dot(chord) / Math.max(1e-300, chord.dot(chord));
            least = Math.min(least, p.distance(path.get(i - 1).towards(path.get(i), Math.max(0, Math.min(1, share)))));
        }
        return least;
    }

    @ParameterizedTest
    @MethodSource("curves")
    void a_curve_moved_is_its_places_moved(DrawnCurve curve) {
        Affine map = new Affine(1.5, 0.5, -0.25, 2, 7, -3);
        for (double t = 0; t <= 1; t += 0.125) {
            assertThat(curve.moved(map).at(t).distance(map.apply(curve.at(t)))).isLessThan(1e-12);
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void what_is_curved_has_points_enough_to_be_found_again(DrawnCurve curve) {
        if (!(curve instanceof Straight)) {
            assertThat(curve.points(0.5)).hasSizeGreaterThan(16);
        }
    }

    /** Bulge = tangent of a quarter of the angle swept, positive counterclockwise: 1 is a half circle. */
    @Test
    void a_bulge_of_one_is_a_half_circle_to_the_right_of_its_chord() {
        DrawnCurve half = Oval.bulged(p(0, 0), p(2, 0), 1).orElseThrow();
        assertThat(half.at(0.5).distance(p(1, -1))).isLessThan(EXACT);
        DrawnCurve other = Oval.bulged(p(0, 0), p(2, 0), -1).orElseThrow();
        assertThat(other.at(0.5).distance(p(1, 1))).isLessThan(EXACT);
        // tan(90/4) sweeps a quarter: chord 2 of a circle of radius root 2 round (1, 1)
        DrawnCurve quarter =
                Oval.bulged(p(0, 0), p(2, 0), Math.tan(Math.PI / 8)).orElseThrow();
        assertThat(quarter.at(0.5).distance(p(1, 1 - Math.sqrt(2)))).isLessThan(EXACT);
        assertThat(Oval.bulged(p(0, 0), p(2, 0), 0)).contains(new Straight(p(0, 0), p(2, 0)));
        assertThat(Oval.bulged(p(0, 0), p(2, 0), 1e300)).isEmpty();
        assertThat(Oval.bulged(p(0, 0), p(2, 0), Double.NaN)).isEmpty();
    }

    /**
     * From (0,0) to (1,1) with radius 1 there are two circles, round (1,0) and (0,1), and two ways round each: seen from
     * (0,1) the ends lie at -90 and 0 degrees, so that the small way toward greater angles is round that one.
     */
    @ParameterizedTest
    @CsvSource({"false, true, 0, 1", "false, false, 1, 0", "true, true, 1, 0", "true, false, 0, 1"})
    void an_arc_between_points_is_one_of_four(boolean large, boolean positive, double x, double y) {
        Oval arc = (Oval) Oval.between(p(0, 0), p(1, 1), 1, 1, 0, large, positive);
        assertThat(arc.center().distance(p(x, y))).isLessThan(EXACT);
        assertThat(Math.abs(arc.sweep())).isCloseTo(large ? 1.5 * Math.PI : 0.5 * Math.PI, within(EXACT));
        assertThat(arc.sweep() > 0).isEqualTo(positive);
        for (double t = 0; t <= 1; t += 0.1) {
            assertThat(arc.at(t).distance(arc.center())).isCloseTo(1, within(EXACT));
        }
    }

    /** SVG 1.1, F.6.6: radii that do not reach are enlarged until they do. */
    @Test
    void radii_too_small_are_enlarged() {
        Oval arc = (Oval) Oval.between(p(0, 0), p(4, 0), 1, 0.5, 0, false, true);
        assertThat(arc.center().distance(p(2, 0))).isLessThan(EXACT);
        assertThat(arc.at(0.5).distance(p(2, -1))).isLessThan(EXACT);
        assertThat(Oval.between(p(0, 0), p(4, 0), 0, 1, 0, false, true)).isInstanceOf(Straight.class);
    }

    @Test
    void a_tilted_ellipse_meets_its_equation() {
        Oval arc = (Oval) Oval.between(p(0, 0), p(1, 2), 3, 1.5, Math.toRadians(30), true, false);
        for (double t = 0; t <= 1; t += 0.05) {
            Point off = arc.at(t).minus(arc.center());
            double a = off.dot(Point.towards(Math.toRadians(30))) / 3;
            double b = off.dot(Point.towards(Math.toRadians(120))) / 1.5;
            assertThat(a * a + b * b).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void a_rational_quadratic_is_a_true_circle() {
        for (double t = 0; t <= 1; t += 0.05) {
            assertThat(quarter().at(t).length()).isCloseTo(1, within(EXACT));
        }
        assertThat(quarter().at(0.5).distance(p(Math.sqrt(0.5), Math.sqrt(0.5))))
                .isLessThan(EXACT);
    }

    @Test
    void a_cubic_spline_without_inner_knots_is_a_bezier_curve() {
        List<Point> controls = List.of(p(0, 0), p(1, 3), p(2, -3), p(3, 0));
        Spline spline =
                new Spline(3, controls, Collections.nCopies(4, 1.0), List.of(0.0, 0.0, 0.0, 0.0, 2.0, 2.0, 2.0, 2.0));
        Bezier bezier = new Bezier(controls.get(0), controls.get(1), controls.get(2), controls.get(3));
        for (double t = 0; t <= 1; t += 0.125) {
            assertThat(spline.at(t).distance(bezier.at(t))).isLessThan(EXACT);
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void every_point_is_on_the_curve(DrawnCurve curve) {
        for (Point point : curve.points(1e-2)) {
            assertThat(IntStream.rangeClosed(0, 2000)
                            .mapToDouble(i -> point.distance(curve.at(i / 2000.0)))
                            .min()
                            .orElseThrow())
                    .isLessThan(1e-2);
        }
    }

    private static String faults(int degree, List<Point> controls, List<Double> weights, List<Double> knots) {
        return FigurePrinter.INCHES.print(Listing.commas(Spline.faults(degree, controls, weights, knots)));
    }

    @Test
    void what_is_no_spline_says_why() {
        List<Point> controls = List.of(p(0, 0), p(1, 3), p(2, -3), p(3, 0));
        List<Double> even = Collections.nCopies(4, 1.0);
        List<Double> knots = List.of(0.0, 0.0, 0.0, 0.0, 2.0, 2.0, 2.0, 2.0);
        assertThat(Spline.faults(3, controls, even, knots)).isEmpty();
        assertThat(Spline.faults(0, controls, even, knots)).hasSize(2);
        assertThat(faults(5, controls, even, knots)).contains("too few");
        assertThat(Spline.faults(3, controls, List.of(1.0, 0.0, 1.0, 1.0), knots))
                .hasSize(1);
        assertThat(faults(3, controls, even, knots.subList(0, 7))).contains("7 knots");
        assertThat(faults(3, controls, even, Collections.nCopies(8, 1.0))).contains("do not rise");
        assertThat(faults(3, controls, even, List.of(0.0, 1.0, 0.0, 2.0, 2.0, 2.0, 2.0, 2.0)))
                .contains("do not rise");
        assertThat(Spline.faults(1, Collections.nCopies(3000, ORIGIN), Collections.nCopies(3000, 1.0), List.of())
                        .toString())
                .contains("1000");
    }

    @Test
    void a_closed_strand_does_not_say_its_first_point_twice() {
        Strand circle = new Strand(List.of(Oval.circular(p(1, 1), 1, 0, 2 * Math.PI)), true);
        List<Point> points = circle.points(1e-4);
        assertThat(points.get(0).distance(points.get(points.size() - 1))).isGreaterThan(1e-3);
        assertThat(circle.most(1e-4)).isEqualTo(points.size() + 1);
        assertThat(circle.reach().width()).isCloseTo(2, within(1e-9));
        assertThat(circle.moved(Affine.scale(2, 1)).reach().width()).isCloseTo(4, within(1e-9));
    }

    @Test
    void whole_quarters_turn_exactly() {
        assertThat(Affine.turn(90).apply(p(3, 1))).isEqualTo(p(-1, 3));
        assertThat(Affine.turn(-90).then(Affine.shift(1, 0)).apply(p(3, 1))).isEqualTo(p(2, -3));
        assertThat(Affine.turn(30).apply(p(1, 0)).distance(p(Math.sqrt(0.75), 0.5)))
                .isLessThan(EXACT);
        assertThat(Affine.scale(1e30, 1).within(1e12)).isFalse();
    }
}

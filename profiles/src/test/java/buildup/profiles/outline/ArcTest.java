package buildup.profiles.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArcTest {
    private static final double QUARTER = Math.PI / 2;

    private static Arc arc(Point center, double radius, double start, double sweep) {
        return new Arc(
                center.plus(Point.towards(start).times(radius)),
                center.plus(Point.towards(start + sweep).times(radius)),
                center,
                sweep > 0);
    }

    private static Arc quarter(double radius) {
        return new Arc(new Point(radius, 0), new Point(0, radius), Point.ORIGIN, true);
    }

    private static double chordArea(List<Point> points) {
        double twice = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            twice += points.get(i).cross(points.get(i + 1));
        }
        return twice / 2;
    }

    private static double chordLength(List<Point> points) {
        double length = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            length += points.get(i).distance(points.get(i + 1));
        }
        return length;
    }

    private static double chordErrorOf(double radius, int n) {
        return radius * (1 - Math.cos(QUARTER / n / 2));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/segment-counts.csv", useHeadersInDisplayName = true)
    void a_quarter_takes_as_many_chords_as_its_tolerance_asks(double tolerance, double radius, int n) {
        assertThat(quarter(radius).flattened(tolerance)).hasSize(n + 1);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/chords.csv", useHeadersInDisplayName = true)
    void chords_err_as_plane_geometry_says(int n, double sagitta, double area, double lengthPercent) {
        List<Point> points = quarter(1).flattened(chordErrorOf(1, n) * (1 + 1e-9));
        assertThat(points).hasSize(n + 1);
        Point middle = points.get(0).towards(points.get(1), 0.5);
        assertThat(1 - middle.length()).isCloseTo(sagitta, within(1e-6));
        assertThat(quarter(1).twiceArea() / 2 - chordArea(points)).isCloseTo(area, within(1e-6));
        assertThat(100 * (1 - chordLength(points) / quarter(1).length())).isCloseTo(lengthPercent, within(1e-4));
    }

    @Test
    void doubling_the_chords_quarters_the_error() {
        for (int n = 4; n <= 64; n *= 2) {
            double coarse = QUARTER / 2 - chordArea(quarter(1).flattened(chordErrorOf(1, n) * (1 + 1e-9)));
            double fine = QUARTER / 2 - chordArea(quarter(1).flattened(chordErrorOf(1, 2 * n) * (1 + 1e-9)));
            assertThat(coarse / fine).as("%d chords", n).isCloseTo(4, within(0.03));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.001, 0.0001})
    void the_area_error_is_at_most_two_thirds_of_chord_error_times_length(double chordError) {
        // a circular segment has at most 2/3 of sagitta times arc length: the parabola's share of its box, from below
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Arc arc = arc(
                    new Point(random.nextDouble(), random.nextDouble()),
                    0.05 + 4 * random.nextDouble(),
                    7 * random.nextDouble(),
                    6 * random.nextDouble() - 3);
            double error = Math.abs(arc.twiceArea() / 2 - chordArea(arc.flattened(chordError)));
            assertThat(error).isLessThanOrEqualTo(2 * chordError * arc.length() / 3 + 1e-12);
        }
    }

    @Test
    void vertices_lie_on_the_curve_and_hold_its_axis_extremes() {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            Point center = new Point(3 * random.nextDouble(), 3 * random.nextDouble());
            double radius = 0.1 + 3 * random.nextDouble();
            Arc arc = arc(center, radius, 7 * random.nextDouble(), 6 * random.nextDouble() - 3);
            List<Point> points = arc.flattened(Tolerance.CHORD);
            assertThat(points).allSatisfy(p -> assertThat(p.distance(center)).isCloseTo(radius, within(1e-12)));
            Box chords =
                    points.stream().map(p -> Box.of(p, p)).reduce(Box::with).orElseThrow();
            assertThat(chords.back()).isCloseTo(arc.box().back(), within(1e-12));
            assertThat(chords.face()).isCloseTo(arc.box().face(), within(1e-12));
            assertThat(chords.bottom()).isCloseTo(arc.box().bottom(), within(1e-12));
            assertThat(chords.top()).isCloseTo(arc.box().top(), within(1e-12));
        }
    }

    @Test
    void two_arcs_of_one_circle_share_the_vertices_of_their_common_stretch() {
        Point center = new Point(0.3, 0.7);
        List<Point> convex = arc(center, 1.1, 0.2, 2.5).flattened(Tolerance.CHORD);
        List<Point> hollow = arc(center, 1.1, 2.0, -1.5).flattened(Tolerance.CHORD);
        List<Point> inner = hollow.subList(1, hollow.size() - 1);
        assertThat(inner)
                .hasSizeGreaterThan(15)
                .allSatisfy(p -> assertThat(convex)
                        .anySatisfy(q -> assertThat(p.distance(q)).isLessThan(1e-12)));
    }

    @Test
    void a_tolerance_beyond_the_radius_still_keeps_the_quarters() {
        assertThat(quarter(0.01).flattened(1)).hasSize(2);
    }

    @Test
    void a_stretch_of_no_length_is_nothing_and_not_a_full_turn() {
        Arc arc = quarter(1);
        for (double t : List.of(0.0, 0.3, 1.0)) {
            assertThat(arc.part(t, t).length()).isZero();
            assertThat(arc.part(t, t).nearest(new Point(5, 5))).isZero();
        }
        Arc wrapped = arc(Point.ORIGIN, 1, Math.PI - 0.1, 0.2);
        assertThat(wrapped.part(0.5, 0.5 + 1e-17).length()).isZero();
        assertThat(wrapped.part(0.4, 0.6).length()).isCloseTo(0.04, within(1e-12));
    }

    @Test
    void places_are_found_where_they_were_put() {
        Arc arc = arc(new Point(1, 1), 2, 3, -4);
        for (double t : List.of(0.0, 0.25, 0.5, 1.0)) {
            assertThat(arc.nearest(arc.at(t))).isCloseTo(t, within(1e-12));
            assertThat(arc.reversed().nearest(arc.at(t))).isCloseTo(1 - t, within(1e-12));
        }
        assertThat(arc.nearest(arc.center())).isZero();
        Point beforeStart = arc.center().plus(Point.towards(3.2).times(2));
        assertThat(arc.atAngle(3.2)).isNegative();
        assertThat(arc.distance(beforeStart)).isCloseTo(beforeStart.distance(arc.from()), within(1e-12));
    }

    @Test
    void the_direction_is_square_to_the_spoke() {
        Arc arc = quarter(2);
        assertThat(arc.direction(0).distance(new Point(0, 1))).isLessThan(1e-15);
        assertThat(arc.direction(1).distance(new Point(-1, 0))).isLessThan(1e-15);
        assertThat(arc.reversed().direction(0).distance(new Point(1, 0))).isLessThan(1e-15);
    }

    @Test
    void a_circular_segment_has_its_closed_forms() {
        // chord 2, rise 1/4: r = (c^2/4 + h^2)/(2h) = 2.125; area, centroid and length by plane geometry
        Arc arc = new Arc(new Point(1, 0), new Point(-1, 0), new Point(0, 0.25 - 2.125), true);
        Outline segment = Outline.closed(List.of(
                new Stroke(arc, "arc"), new Stroke(new Line(new Point(-1, 0), new Point(1, 0)), "chord")));
        assertThat(Math.toDegrees(arc.sweep())).isCloseTo(56.144974, within(1e-6));
        assertThat(arc.length()).isCloseTo(2.082319, within(1e-6));
        assertThat(segment.area()).isCloseTo(0.337464, within(1e-6));
        assertThat(segment.centroid().distance(arc.center())).isCloseTo(1.975522, within(1e-6));
    }
}

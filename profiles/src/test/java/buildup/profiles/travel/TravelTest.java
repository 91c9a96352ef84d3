package buildup.profiles.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TravelTest {
    private static final double EXACT = 1e-12;

    private static Outline board(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    private static Outline rod(double x, double y, double radius) {
        Point right = new Point(x + radius, y);
        Point left = new Point(x - radius, y);
        Point center = new Point(x, y);
        return Outline.closed(List.of(
                new Stroke(new Arc(right, left, center, true), "upper"),
                new Stroke(new Arc(left, right, center, true), "lower")));
    }

    /** A block 4 wide and 2 high with a half-round hollow of this radius in the middle of its top. */
    private static Outline hollowed(double radius) {
        return Outline.closed(List.of(
                new Stroke(new Line(new Point(-2, -2), new Point(2, -2)), "bottom"),
                new Stroke(new Line(new Point(2, -2), new Point(2, 0)), "face"),
                new Stroke(new Line(new Point(2, 0), new Point(radius, 0)), "top"),
                new Stroke(new Arc(new Point(radius, 0), new Point(-radius, 0), Point.ORIGIN, false), "hollow"),
                new Stroke(new Line(new Point(-radius, 0), new Point(-2, 0)), "top"),
                new Stroke(new Line(new Point(-2, 0), new Point(-2, -2)), "back")));
    }

    private static void assertStops(OptionalDouble shift, double expected) {
        assertThat(shift).hasValueCloseTo(expected, within(EXACT));
    }

    @Test
    void a_board_comes_to_rest_on_a_board() {
        assertStops(Travel.down(board(0, 0, 2, 1), board(1, -3, 4, 0.25)), 0.25);
        assertStops(Travel.down(board(0, 9, 2, 10), board(1, -3, 4, 0.25)), 0.25 - 9);
    }

    @Test
    void what_is_beside_the_path_is_not_met() {
        assertThat(Travel.down(board(0, 0, 2, 1), board(3, 0, 4, 5))).isEmpty();
        assertThat(Travel.down(board(3, 0, 4, 5), board(0, 0, 2, 1))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.3, 1, 0.5", "-0.8, 0.5, 0.75", "0, 1, 1", "1.2, 1, 0.4"})
    void round_on_round_rests_with_the_centers_a_sum_of_radii_apart(double offset, double r1, double r2) {
        double height = Math.sqrt((r1 + r2) * (r1 + r2) - offset * offset);
        assertStops(Travel.down(rod(offset, 5, r2), rod(0, 0, r1)), height - 5);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 1, 0.5", "-0.2, 1.5, 1", "0, 1, 0.25", "0.05, 1, 0.9"})
    void a_round_rests_in_a_wider_hollow_with_the_centers_a_difference_of_radii_apart(
            double offset, double hollow, double round) {
        double depth = Math.sqrt((hollow - round) * (hollow - round) - offset * offset);
        assertStops(Travel.down(rod(offset, 0, round), hollowed(hollow)), -depth);
    }

    @Test
    void a_round_as_wide_as_the_hollow_lies_in_it() {
        assertStops(Travel.down(rod(0, 3, 0.75), hollowed(0.75)), -3);
    }

    @Test
    void a_round_wider_than_the_hollow_hangs_on_its_arrises() {
        // 3-4-5: radius 1.25 over arrises 0.75 to each side
        assertStops(Travel.down(rod(0, 0, 1.25), hollowed(0.75)), 1);
    }

    @Test
    void a_round_rests_on_a_slope_where_both_are_equally_steep() {
        Outline slope = Outline.closed(List.of(
                new Stroke(new Line(Point.ORIGIN, new Point(4, 0)), "bottom"),
                new Stroke(new Line(new Point(4, 0), new Point(0, 3)), "slope"),
                new Stroke(new Line(new Point(0, 3), Point.ORIGIN), "back")));
        // 3-4-5: the center stands r * 5/4 over the slope, which is 1.5 high at x = 2
        assertStops(Travel.down(rod(2, 0, 0.5), slope), 1.5 + 0.625);
        assertStops(Travel.meeting(slope.moved(Motion.OVER), List.of(rod(2, 0, 0.5)), Direction.DOWN), 1.5 + 0.625);
    }

    @Test
    void a_sharp_corner_lands_on_a_ledge_exactly() {
        Outline point = board(0, 0, 1, 1).moved(Motion.turn(45));
        assertStops(Travel.down(point, board(-3, -2, 3, -0.5)), -0.5);
        // also when the ledge ends right at the corner, and a hair beyond it
        assertStops(Travel.down(point, board(-3, -2, 0, -0.5)), -0.5);
        assertStops(Travel.down(point, board(-3, -2, 1.0 / 512, -0.5)), -0.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, -1e-12, 1.0 / 512, -1.0 / 512})
    void a_flush_face_beside_the_path_does_not_stop_it(double lap) {
        Outline moving = board(1 - lap, 0, 2, 1);
        Outline beside = board(0, 0, 1, 5);
        assertThat(Travel.down(moving, beside)).isEmpty();
        Outline floor = board(-5, -9, 5, -1);
        assertStops(Travel.meeting(moving, List.of(beside, floor), Direction.DOWN), -1);
        Outline round = rod(0.5, 2, 0.5);
        assertThat(Travel.down(moving, round)).isEmpty();
    }

    @Test
    void a_lap_over_touching_stops_it() {
        assertStops(Travel.down(board(1 - 1.0 / 200, 0, 2, 1), board(0, 0, 1, 5)), 5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, -1e-12, 1.0 / 512, -1.0 / 512})
    void a_backband_slides_over_a_casing_till_its_rabbet_lies_on_it(double lap) {
        Outline backband = Outline.closed(List.of(
                new Stroke(new Line(new Point(0.75, 0), new Point(1.5, 0)), "foot"),
                new Stroke(new Line(new Point(1.5, 0), new Point(1.5, 1.25)), "face"),
                new Stroke(new Line(new Point(1.5, 1.25), new Point(0, 1.25)), "top"),
                new Stroke(new Line(new Point(0, 1.25), new Point(0, 0.75)), "lip"),
                new Stroke(new Line(new Point(0, 0.75), new Point(0.75, 0.75)), "rabbet"),
                new Stroke(new Line(new Point(0.75, 0.75), new Point(0.75, 0)), "rabbet")));
        Outline casing = board(-3, -0.625, 0.75 + lap, 0);
        Outline wall = board(-9, -2, 9, -0.625);
        // the rabbet's flat is 3/4 over the foot; the casing 5/8 high: the foot meets the wall first
        assertStops(Travel.meeting(backband, List.of(casing, wall), Direction.DOWN), -0.625);
        Outline thick = board(-3, -0.625, 0.75 + lap, 0.25);
        assertStops(Travel.meeting(backband, List.of(thick, wall), Direction.DOWN), 0.25 - 0.75);
    }

    @Test
    void a_bead_slides_down_a_face_that_it_is_tangent_to() {
        assertThat(Travel.down(rod(1.5, 9, 0.5), board(0, 0, 1, 4))).isEmpty();
        assertThat(Travel.down(rod(1.5 - 1.0 / 512, 9, 0.5), board(0, 0, 1, 4))).isEmpty();
        assertThat(Travel.down(rod(1.5 - 1.0 / 64, 9, 0.5), board(0, 0, 1, 4))).isPresent();
    }

    @Test
    void a_thin_tongue_over_solid_wood_still_lands() {
        Outline tongue = board(0, 0, 1.0 / 300, 1);
        assertStops(Travel.down(tongue, board(-1, -2, 1, -1)), -1);
        assertStops(Travel.down(board(-1, 5, 1, 6), tongue), 1 - 5);
    }

    @Test
    void it_stops_at_the_first_of_many() {
        List<Outline> obstacles = List.of(board(0, 0, 1, 1), board(1, 0, 2, 3), board(2, 0, 9, 2));
        assertStops(Travel.meeting(board(0, 0, 9, 1), obstacles, Direction.DOWN), 3);
        assertThat(Travel.meeting(board(0, 0, 9, 1), List.of(), Direction.DOWN)).isEmpty();
    }

    @Test
    void coming_up_it_stops_under_what_is_over_it() {
        assertStops(Travel.meeting(board(0, 0, 2, 1), List.of(board(1, 4, 3, 5)), Direction.UP), 3);
        assertStops(Travel.meeting(board(0, 9, 2, 10), List.of(board(1, 4, 3, 5)), Direction.UP), -6);
        assertStops(Travel.meeting(board(0, 0, 2, 1), List.of(board(1, 1, 3, 5)), Direction.UP), 0);
        assertThat(Travel.meeting(board(0, 0, 2, 1), List.of(board(1, 1, 3, 5)), Direction.UP)
                        .getAsDouble())
                .isEqualTo(0.0);
    }

    @Test
    void coming_back_it_stops_before_what_is_behind_it() {
        assertStops(Travel.meeting(board(0, 0, 1, 2), List.of(board(-2, 1, 3.5, 5)), Direction.BACK), 3.5);
        assertThat(Travel.meeting(board(0, 0, 1, 2), List.of(board(-2, 2, 3.5, 5)), Direction.BACK))
                .isEmpty();
        assertThat(Travel.meeting(board(0, 0, 1, 2), List.of(board(-2, 2 - 1.0 / 512, 3.5, 5)), Direction.BACK))
                .isEmpty();
    }

    @Test
    void the_three_ways_are_one_turned_by_quarters() {
        Outline moving = rod(0.3, 0, 0.5);
        List<Outline> obstacles = List.of(hollowed(1), board(0.2, -4, 0.4, -0.9));
        double down = Travel.meeting(moving, obstacles, Direction.DOWN).getAsDouble();
        Motion half = Motion.turn(180);
        assertStops(Travel.meeting(moving.moved(half), moved(obstacles, half), Direction.UP), -down);
        Motion quarter = Motion.turn(-90);
        assertStops(Travel.meeting(moving.moved(quarter), moved(obstacles, quarter), Direction.BACK), down);
    }

    private static List<Outline> moved(List<Outline> outlines, Motion motion) {
        return outlines.stream().map(outline -> outline.moved(motion)).toList();
    }

    @Test
    void after_the_shift_it_touches_and_does_not_overlap() {
        // the closed forms against plain sampling: the least height between the two, at many x
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            Outline moving = molding(random).moved(Motion.turn(90 * random.nextInt(4)));
            Outline obstacle = molding(random).moved(Motion.turn(360 * random.nextDouble()));
            OptionalDouble shift = Travel.down(moving, obstacle);
            if (shift.isEmpty()) {
                continue;
            }
            double back = Math.max(moving.box().back(), obstacle.box().back()) + 1.0 / 128;
            double face = Math.min(moving.box().face(), obstacle.box().face()) - 1.0 / 128;
            List<Point> over = moving.flattened(1e-6);
            List<Point> under = obstacle.flattened(1e-6);
            double least = Double.NEGATIVE_INFINITY;
            for (int k = 0; k <= 400; k++) {
                double x = back + (face - back) * k / 400;
                least = Math.max(least, extreme(under, x, 1) + extreme(over, x, -1));
            }
            assertThat(shift.getAsDouble()).isGreaterThanOrEqualTo(least - 2e-6);
        }
    }

    /** The highest (sign 1) or, negated, the lowest (sign -1) wood over {@code x}, on fine chords. */
    private static double extreme(List<Point> ring, double x, int sign) {
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.x() > x != b.x() > x) {
                best = Math.max(best, sign * (a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x())));
            }
        }
        return best;
    }

    private static Outline molding(Random random) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.5 + random.nextDouble(), "bottom");
        walk.cove(Way.UP, 0.2 + random.nextDouble(), Way.OUT, 0.2 + random.nextDouble(), "cove");
        walk.halfRound(Way.UP, 0.3, "bead");
        walk.ovolo(Way.UP, 0.2 + random.nextDouble(), Way.IN, 0.2, "ovolo");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }
}

package buildup.profiles.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OutlineTest {
    static Outline molding() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.75, "bottom");
        walk.straight(Way.UP, 0.25, "fillet");
        walk.cove(Way.UP, 0.5, Way.OUT, 0.375, "cove");
        walk.halfRound(Way.UP, 0.25, "bead");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    private static void assertSame(Outline a, Outline b, double within) {
        assertThat(a.strokes()).hasSameSizeAs(b.strokes());
        for (int i = 0; i < a.strokes().size(); i++) {
            Segment p = a.strokes().get(i).segment();
            Segment q = b.strokes().get(i).segment();
            assertThat(p.from().distance(q.from())).isLessThanOrEqualTo(within);
            assertThat(p.at(0.5).distance(q.at(0.5))).isLessThanOrEqualTo(within);
        }
    }

    @Test
    void motions_keep_area_and_perimeter_and_carry_the_centroid() {
        Random random = new Random(3);
        Outline outline = molding();
        for (int i = 0; i < 100; i++) {
            Motion flip =
                    List.of(Motion.NONE, Motion.OVER, Motion.ENDS, Motion.SWAP).get(random.nextInt(4));
            Motion motion = flip.then(Motion.turn(360 * random.nextDouble()))
                    .then(Motion.shift(9 * random.nextDouble(), -9 * random.nextDouble()));
            Outline moved = outline.moved(motion);
            assertThat(moved.area()).isCloseTo(outline.area(), within(1e-12));
            assertThat(moved.perimeter()).isCloseTo(outline.perimeter(), within(1e-12));
            assertThat(moved.centroid().distance(motion.apply(outline.centroid())))
                    .isLessThan(1e-12);
            assertThat(moved.flattened(0.001)).hasSizeBetween(20, 60);
        }
    }

    @Test
    void a_place_is_as_far_from_an_outline_as_from_its_nearest_segment() {
        Outline outline = Outline.rectangle(new Box(0, 0, 2, 1));
        assertThat(outline.segments()).hasSize(4);
        assertThat(outline.distance(new Point(1, 0.25))).isCloseTo(0.25, within(1e-12));
        assertThat(outline.distance(new Point(3, 0.5))).isCloseTo(1, within(1e-12));
        assertThat(outline.distance(new Point(3, 2))).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(outline.distance(new Point(2, 0.5))).isCloseTo(0, within(1e-12));
    }

    @Test
    void the_same_mirror_twice_is_none() {
        for (Motion mirror : List.of(Motion.OVER, Motion.ENDS, Motion.SWAP)) {
            assertThat(mirror.mirrors()).isTrue();
            assertSame(molding().moved(mirror).moved(mirror), molding(), 0);
        }
    }

    @Test
    void four_quarter_turns_are_none_and_quarters_are_exact() {
        Outline turned = molding();
        for (int i = 0; i < 4; i++) {
            turned = turned.moved(Motion.turn(90));
        }
        assertSame(turned, molding(), 0);
        assertThat(Motion.turn(-270)).isEqualTo(Motion.turn(90));
        assertThat(Motion.turn(90).apply(new Point(1, 2))).isEqualTo(new Point(-2, 1));
    }

    @Test
    void an_outline_far_away_loses_no_digits() {
        Outline far = molding().moved(Motion.shift(-14000, 84000));
        assertThat(far.area()).isCloseTo(molding().area(), within(1e-9));
        assertThat(far.centroid()
                        .minus(new Point(-14000, 84000))
                        .distance(molding().centroid()))
                .isLessThan(1e-9);
    }

    @Test
    void a_clockwise_walk_is_turned_round_and_doubled_points_are_dropped() {
        Point a = Point.ORIGIN;
        Point b = new Point(0, 2);
        Point c = new Point(3, 2);
        Outline outline = Outline.closed(List.of(
                new Stroke(new Line(a, b), "back"),
                new Stroke(new Line(b, b), "doubled"),
                new Stroke(new Line(b, c), "top"),
                new Stroke(new Line(c, a), "slope")));
        assertThat(outline.area()).isCloseTo(3, within(1e-12));
        assertThat(outline.members()).containsExactly("slope", "top", "back");
    }

    @Test
    void a_walk_that_does_not_close_is_refused() {
        List<Stroke> open = List.of(
                new Stroke(new Line(Point.ORIGIN, new Point(1, 0)), "a"),
                new Stroke(new Line(new Point(1, 0), new Point(1, 1)), "b"));
        assertThatThrownBy(() -> Outline.closed(open))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("goes on from");
        List<Stroke> flat = List.of(
                new Stroke(new Line(Point.ORIGIN, new Point(1, 0)), "a"),
                new Stroke(new Line(new Point(1, 0), Point.ORIGIN), "b"));
        assertThatThrownBy(() -> Outline.closed(flat)).hasMessageContaining("closes no area");
    }

    @Test
    void bounds_are_those_of_the_curves() {
        assertThat(molding().box()).isEqualTo(new Box(0, 0, 0.75 + 0.375 + 0.125, 1));
    }

    @Test
    void wood_is_told_from_air() {
        Outline outline = molding();
        assertThat(outline.holds(new Point(0.5, 0.5))).isTrue();
        assertThat(outline.holds(new Point(1.2, 0.875))).isTrue();
        assertThat(outline.holds(new Point(1.1, 0.3))).isFalse();
        assertThat(outline.holds(new Point(2, 0.5))).isFalse();
    }

    @Test
    void a_rectangle_is_known_however_it_is_turned_by_quarters() {
        Outline board = Outline.rectangle(new Box(0, 0, 0.75, 3.5));
        assertThat(board.isRectangle()).isTrue();
        assertThat(board.moved(Motion.turn(90)).isRectangle()).isTrue();
        assertThat(board.moved(Motion.turn(5)).isRectangle()).isFalse();
        assertThat(molding().isRectangle()).isFalse();
        assertThat(board.straights("face")).containsExactly(new Line(new Point(0.75, 0), new Point(0.75, 3.5)));
        assertThat(board)
                .isEqualTo(Outline.rectangle(new Box(0, 0, 0.75, 3.5)))
                .hasSameHashCodeAs(Outline.rectangle(new Box(0, 0, 0.75, 3.5)));
        assertThat(board.toString()).contains("face");
    }

    @Test
    void boxes_know_how_near_they_are() {
        Box a = new Box(0, 0, 1, 2);
        assertThat(a.near(new Box(1.5, 0, 2, 1), 0.5)).isTrue();
        assertThat(a.near(new Box(1.5, 0, 2, 1), 0.4)).isFalse();
        assertThat(a.grown(1)).isEqualTo(new Box(-1, -1, 2, 3));
        assertThat(a.width() + a.height()).isEqualTo(3);
        assertThatThrownBy(() -> Box.around(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}

package buildup.engine.look.view;

import static buildup.engine.look.view.Drawn.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.view.Visibility.Met;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a viewpoint has in front of it, in cases that can be drawn on paper. */
class VisibilityTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Viewpoint RIGHT = Viewpoint.FarAway.at(0);

    private static Visibility view(Viewpoint viewpoint, Outline... outlines) {
        return Visibility.of(viewpoint, Drawn.surfaces(List.of(outlines)));
    }

    private static Outline box(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    private static double length(Segment segment, List<Stretch> stretches) {
        return stretches.stream().mapToDouble(part -> part.end() - part.start()).sum() * segment.length();
    }

    @Test
    void a_box_shows_the_face_turned_to_the_viewpoint_and_no_other() {
        Outline box = box(0, 0, 1, 2);
        Visibility view = view(RIGHT, box);
        assertThat(view.seen(new Line(at(1, 0), at(1, 2)))).containsExactly(new Stretch(0, 1));
        assertThat(view.seen(new Line(at(0, 2), at(0, 0)))).as("back").isEmpty();
        assertThat(view.seen(new Line(at(0, 0), at(1, 0)))).as("edge on").isEmpty();
        assertThat(view.facing(new Line(at(0, 2), at(0, 0)))).isEmpty();
    }

    @Test
    void a_nearer_box_hides_its_height_of_the_one_behind() {
        Visibility view = view(RIGHT, box(0, 0, 1, 4), box(2, 1, 3, 2));
        assertThat(view.seen(new Line(at(1, 0), at(1, 4)))).containsExactly(new Stretch(0, 0.25), new Stretch(0.5, 1));
        assertThat(view.facing(new Line(at(1, 0), at(1, 4)))).containsExactly(new Stretch(0, 1));
    }

    @Test
    void a_round_faces_half_its_turn_to_parallel_rays_and_less_to_a_near_eye() {
        Arc half = new Arc(at(0, -1), at(0, 1), at(0, 0), true);
        Outline round = Drawn.outline(half, new Line(at(0, 1), at(0, -1)));
        assertThat(length(half, view(RIGHT, round).seen(half))).isCloseTo(Math.PI, EXACT);
        // tangents from distance 2: the spoke stands at acos(1/2) either way
        Visibility near = view(new Viewpoint.Near(at(2, 0)), round);
        assertThat(length(half, near.seen(half))).isCloseTo(2 * Math.acos(0.5), EXACT);
    }

    @Test
    void an_eye_inside_a_hollow_sees_all_of_it() {
        Arc hollow = new Arc(at(1, -1), at(1, 1), at(1, 0), false);
        Outline block = Drawn.outline(
                hollow,
                new Line(at(1, 1), at(1, 2)),
                new Line(at(1, 2), at(-1, 2)),
                new Line(at(-1, 2), at(-1, -2)),
                new Line(at(-1, -2), at(1, -2)),
                new Line(at(1, -2), at(1, -1)));
        Visibility view = view(new Viewpoint.Near(at(0.9, 0.1)), block);
        assertThat(length(hollow, view.seen(hollow))).isCloseTo(Math.PI, EXACT);
    }

    @Test
    void all_round_an_eye_the_first_outline_is_met_in_every_direction() {
        // four boxes on the four sides; straight out lies on the seam of the angles
        Visibility view = view(
                new Viewpoint.Near(at(0, 0)),
                box(2, -1, 3, 1),
                box(-1, 2, 1, 3),
                box(-3, -1, -2, 1),
                box(-1, -3, 1, -2));
        // a right angle is 1
        double[] keys = {0, 1, 2, 3, 4};
        int[] bodies = {0, 1, 2, 3, 0};
        for (int i = 0; i < keys.length; i++) {
            Met met = view.nearest(keys[i]).orElseThrow();
            assertThat(met.body()).as("angle " + keys[i]).isEqualTo(bodies[i]);
            assertThat(met.at().distance(at(0, 0))).isCloseTo(2, EXACT);
        }
        assertThat(view.nearest(0.5)).as("between two boxes").isEmpty();
        Line face = new Line(at(2, 1), at(2, -1));
        assertThat(view.seen(face)).as("across the seam in one stretch").containsExactly(new Stretch(0, 1));
    }

    @Test
    void two_rounds_that_cross_twice_hide_each_other_in_turn() {
        // circles of 1 round (0, 0) and of 2 round (-1.2, 0) cross at x = (1 - 4 + 1.44) / -2.4 = 0.65
        Arc small = new Arc(at(0, -1), at(0, 1), at(0, 0), true);
        Arc large = new Arc(at(-1.2, -2), at(-1.2, 2), at(-1.2, 0), true);
        Visibility view = view(
                RIGHT,
                Drawn.outline(small, new Line(at(0, 1), at(0, -1))),
                Drawn.outline(large, new Line(at(-1.2, 2), at(-1.2, -2))));
        double crossing = Math.acos(0.65);
        assertThat(length(small, view.seen(small))).isCloseTo(2 * crossing, EXACT);
        assertThat(view.seen(large)).hasSize(2);
        double hidden = 2 * Math.acos((0.65 + 1.2) / 2) * 2;
        assertThat(length(large, view.seen(large))).isCloseTo(2 * Math.PI - hidden, EXACT);
    }

    @Test
    void nothing_in_view_meets_nothing() {
        Visibility empty = Visibility.of(RIGHT, List.of());
        assertThat(empty.nearest(at(0, 0))).isEmpty();
        assertThat(empty.from()).isEqualTo(RIGHT);
        assertThat(empty.seen(new Line(at(1, 0), at(1, 2)))).containsExactly(new Stretch(0, 1));
    }

    @Test
    void the_order_of_the_outlines_does_not_matter() {
        Outline[] boxes = {box(0, 0, 1, 4), box(2, 1, 3, 2), box(2.5, 0.5, 4, 1.5), box(-2, 3, 5, 3.5)};
        Line face = new Line(at(1, 0), at(1, 4));
        List<Stretch> seen = view(RIGHT, boxes).seen(face);
        assertThat(view(RIGHT, boxes[3], boxes[2], boxes[1], boxes[0]).seen(face))
                .isEqualTo(seen);
        assertThat(seen).containsExactly(new Stretch(0, 0.125), new Stretch(0.5, 0.75), new Stretch(0.875, 1));
    }

    @Test
    void the_key_and_depth_of_a_point_give_the_point_back_along_its_ray() {
        Point p = at(3, -2);
        for (Viewpoint view : List.of(Viewpoint.FarAway.at(0.7), new Viewpoint.Near(at(-1, 5)))) {
            Line ray = view.ray(view.key(p));
            Point way = ray.to().minus(ray.from());
            assertThat(way.length()).isCloseTo(1, EXACT);
            assertThat(Math.abs(p.minus(ray.from()).cross(way))).isCloseTo(0, EXACT);
            assertThat(view.towards(p).plus(way).length())
                    .as("rays run away from the viewpoint")
                    .isCloseTo(0, EXACT);
        }
    }

    @Test
    void floor_and_ceiling_stand_in_the_way_of_sight_but_not_of_light() {
        Section cornice = Bench.in(
                        "{ floor: -84, ceiling: 12, wall: { solid: yes } }",
                        "name: board, profile: board 3/4 x 3-1/2, back: wall, bottom: datum")
                .section();
        assertThat(Surfaces.solid(cornice).stream().map(surface -> cornice.name(surface.body())))
                .contains("board", "wall", "floor", "ceiling");
        assertThat(Surfaces.withoutFloorAndCeiling(cornice).stream().map(surface -> cornice.name(surface.body())))
                .containsOnly("board", "wall");
        Section open = Drawn.section(true, box(0, 0, 1, 2));
        assertThat(Surfaces.withoutFloorAndCeiling(open)).isEqualTo(Surfaces.solid(open));
    }

    @Test
    void no_arris_casts_where_nothing_stands_between() {
        Arrises arrises = Arrises.of(RIGHT, Drawn.section(false, box(0, 0, 1, 4)));
        assertThat(arrises.casting(at(1, 2), true)).isEmpty();
        assertThat(arrises.castingBeyond(at(1, 2), new Line(at(1, 2), at(1, 3)), true))
                .isEmpty();
    }

    @Test
    void behind_a_bar_its_upper_arris_casts_to_one_side_and_its_lower_to_the_other() {
        Arrises arrises = Arrises.of(RIGHT, Drawn.section(false, box(0, 0, 1, 4), box(2, 1, 3, 2)));
        Optional<Point> high = arrises.casting(at(1, 1.5), true).map(Arrises.Arris::at);
        Optional<Point> low = arrises.casting(at(1, 1.5), false).map(Arrises.Arris::at);
        // keys of level rays from the right grow downward
        assertThat(high).hasValue(at(3, 1));
        assertThat(low).hasValue(at(3, 2));
    }
}

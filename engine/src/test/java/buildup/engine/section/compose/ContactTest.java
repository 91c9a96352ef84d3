package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where pieces touch. */
class ContactTest {
    private static final String LOW = "name: low, profile: board 1 x 2, back: wall, bottom: datum";

    private static Contact only(Bench bench) {
        assertThat(bench.section().contacts()).hasSize(1);
        return bench.section().contacts().get(0);
    }

    @Test
    void the_lower_of_two_carries_the_upper_whichever_was_put_up_first() {
        assertThat(Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top")
                        .contacts())
                .containsExactly("low carries high 1.000");
        assertThat(Bench.loose("name: high, profile: board 1 x 2, back: wall, bottom: low.top", LOW)
                        .contacts())
                .containsExactly("low carries high 1.000");
    }

    @Test
    void a_contact_is_between_its_two_in_either_order_and_between_no_others() {
        Contact contact = only(Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top"));
        int a = contact.a();
        int b = contact.b();
        assertThat(contact.between(a, b)).isTrue();
        assertThat(contact.between(b, a)).isTrue();
        assertThat(contact.between(a, a)).isFalse();
        assertThat(contact.between(b, b)).isFalse();
        assertThat(contact.between(a, b + 1)).isFalse();
        assertThat(contact.between(b + 1, a)).isFalse();
    }

    @Test
    void the_one_nearer_the_wall_backs_the_other() {
        Bench bench = Bench.loose("name: out, profile: board 1 x 1, back: low.face, bottom: 1/2", LOW);
        assertThat(bench.contacts()).containsExactly("low backs out 1.000");
        assertThat(only(bench).slope()).isCloseTo(90, within(1e-9));
        assertThat(only(bench).at()).isEqualTo(new Point(1, 1));
    }

    @Test
    void a_slope_of_just_45_degrees_backs_in_either_hand() {
        // the wedge's slope runs from (2, 0) to (0, 2); over it a triangle with the same long side
        Bench bench = Bench.loose(
                "name: wedge, section: [out 2, chamfer in 2 x 2], back: wall, bottom: datum",
                "name: over, section: [out 2, chamfer in 2 x 2], turn: 180, face: 2, top: 2");
        Contact contact = only(bench);
        assertThat(bench.contacts()).containsExactly("wedge backs over 2.828");
        assertThat(contact.slope()).isCloseTo(45, within(1e-9));
        Bench mirrored = Bench.loose(
                "name: wedge, section: [out 2, chamfer in 2 x 2], flip: ends, face: wall, bottom: datum",
                "name: over, section: [out 2, chamfer in 2 x 2], flip: ends, turn: 180, back: -2, top: 2");
        assertThat(mirrored.contacts())
                .as("from over's face out into the wedge")
                .containsExactly("over backs wedge 2.828");
    }

    @Test
    void a_slope_flatter_than_45_degrees_carries_and_a_steeper_one_backs() {
        assertThat(slopes(2, 1.99)).containsExactly("wedge carries over 2.821");
        assertThat(slopes(1.99, 2)).containsExactly("wedge backs over 2.821");
    }

    private static List<String> slopes(double out, double up) {
        String section = "section: [out " + out + ", chamfer in " + up + " x " + out + "]";
        return Bench.loose(
                        "name: wedge, " + section + ", back: wall, bottom: datum",
                        "name: over, " + section + ", turn: 180, face: " + out + ", top: " + up)
                .contacts();
    }

    @Test
    void a_round_in_a_hollow_of_its_own_size_touches_along_the_arc() {
        Bench bench = Bench.loose(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum",
                "name: rod, section: [out 1, ovolo in 1], flip: ends, face: 1-1/4, bottom: datum");
        Contact contact = only(bench);
        assertThat(contact.length()).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(contact.stretch()).containsInstanceOf(Arc.class);
        assertThat(contact.slope()).isCloseTo(45, within(1e-6));
        assertThat(bench.contacts()).containsExactly("bed backs rod 1.571");
    }

    @Test
    void a_shorter_round_in_a_longer_hollow_touches_as_far_as_both_go() {
        // half a round of radius 1 against the quarter hollow: only the quarter is shared
        Bench bench = Bench.loose(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum",
                "name: rod, section: [ovolo 1, ovolo in 1], flip: ends, face: 1-1/4, bottom: -1");
        assertThat(bench.section().contacts())
                .filteredOn(contact -> contact.length() > 0)
                .singleElement()
                .satisfies(contact -> assertThat(contact.length()).isCloseTo(Math.PI / 2, within(1e-6)));
    }

    @Test
    void a_round_in_a_larger_hollow_touches_at_a_point() {
        Bench bench = Bench.loose(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, flip: over, bottom: datum",
                "name: rod, section: [ovolo 1/4, ovolo in 1/4], flip: ends, face: 1, bottom: touch");
        assertThat(only(bench).length()).isZero();
        assertThat(only(bench).facing()).isEmpty();
        assertThat(only(bench).slope()).isZero();
        Point hollow = new Point(1.25, 1.375);
        assertThat(only(bench).at().distance(hollow)).isCloseTo(1, within(1e-6));
    }

    @Test
    void a_round_on_a_flat_touches_at_its_tangent_point() {
        Bench bench = Bench.loose(
                "name: shelf, profile: board 1 x 6, lay: flat, back: wall, bottom: datum",
                "name: rod, section: [ovolo 1, ovolo in 1], back: 2, bottom: shelf.top");
        assertThat(bench.contacts()).containsExactly("shelf meets rod 0.000");
        assertThat(only(bench).at()).isEqualTo(new Point(2, 1));
    }

    @Test
    void two_corners_touch_at_a_point_that_faces_nowhere() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 1 x 2, back: low.face, bottom: low.top");
        assertThat(bench.contacts()).containsExactly("low meets high 0.000");
        assertThat(only(bench).at()).isEqualTo(new Point(1, 2));
        assertThat(only(bench).from()).isEqualTo(only(bench).to());
    }

    @Test
    void lines_within_a_256th_touch_and_farther_ones_do_not() {
        assertThat(Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top + 0.0038")
                        .contacts())
                .containsExactly("low carries high 1.000");
        assertThat(Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top + 0.0041")
                        .contacts())
                .isEmpty();
        assertThat(Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top - 0.0038")
                        .contacts())
                .containsExactly("low carries high 1.000");
    }

    @Test
    void stretches_that_go_on_in_one_line_are_one_contact() {
        Bench bench = Bench.loose(
                "name: low, section: [out 1 as one, out 1 as two, up 1], flip: over, back: wall, bottom: datum",
                "name: high, profile: board 1 x 3, lay: flat, back: wall, bottom: low.top");
        assertThat(bench.contacts()).containsExactly("low carries high 2.000");
    }

    @Test
    void two_stretches_with_air_between_are_two_contacts() {
        Bench bench = Bench.loose(
                "name: low, section: [out 1, up 1/2, out 1, down 1/2, out 1, up 1], flip: over, back: wall, bottom: datum",
                "name: high, profile: board 1 x 4, lay: flat, back: wall, bottom: low.top");
        assertThat(bench.contacts()).containsExactly("low carries high 1.000", "low carries high 1.000");
        assertThat(bench.section().contacts())
                .extracting(contact -> contact.at().x())
                .containsExactly(0.5, 2.5);
    }

    @Test
    void wall_floor_and_ceiling_touch_pieces_but_not_each_other_nor_framing() {
        Bench bench = Bench.in(
                "{ floor: -10, ceiling: 10 }",
                "name: post, profile: board 1 x 20, back: wall, bottom: floor",
                "name: stud, kind: framing, section: [out 2, up 20], back: 5, bottom: floor");
        assertThat(bench.contacts())
                .containsExactlyInAnyOrder(
                        "wall backs post 20.000", "floor carries post 1.000", "post carries ceiling 1.000");
    }

    @Test
    void a_wall_that_is_not_solid_touches_nothing() {
        assertThat(Bench.loose(LOW).contacts()).isEmpty();
        assertThat(Bench.onWall(LOW).contacts()).containsExactly("wall backs low 2.000");
    }

    @Test
    void rows_run_by_the_order_of_putting_up_and_then_from_low_to_high() {
        Bench bench = Bench.onWall(
                LOW,
                "name: high, profile: board 1 x 2, back: wall, bottom: low.top",
                "name: front, profile: board 1 x 4, back: low.face, bottom: datum");
        assertThat(bench.contacts())
                .containsExactly(
                        "low carries high 1.000",
                        "low backs front 2.000",
                        "wall backs low 2.000",
                        "high backs front 2.000",
                        "wall backs high 2.000");
    }

    /** A piece that is cut back between 2 and 4 up, on its face or on its back, whichever of the two comes first. */
    @Test
    void two_stretches_between_the_same_two_run_from_low_to_high_whichever_side_is_cut_back() {
        String cut = "name: cut, section: [out 1, up 2, in 1/2, up 2, out 1/2, up 2]";
        String board = "name: board, section: [out 1, up 6]";
        for (List<String> pieces : List.of(
                List.of(cut + ", back: 0, bottom: 0", board + ", back: 1, bottom: 0"),
                List.of(board + ", back: 1, bottom: 0", cut + ", back: 0, bottom: 0"),
                List.of(cut + ", flip: ends, back: 1, bottom: 0", board + ", back: 0, bottom: 0"),
                List.of(board + ", back: 0, bottom: 0", cut + ", flip: ends, back: 1, bottom: 0"))) {
            List<Contact> contacts =
                    Bench.loose(pieces.toArray(String[]::new)).section().contacts();
            assertThat(contacts)
                    .as(pieces.toString())
                    .extracting(Contact::at)
                    .containsExactly(new Point(1, 1), new Point(1, 5));
        }
    }

    /** Side by side at one height: the one nearer the wall first. */
    @Test
    void two_stretches_at_one_height_run_from_the_wall_outward() {
        String bridge = "name: bridge, section: [out 1, up 1, out 1, down 1, out 1, up 2]";
        String board = "name: board, section: [out 3, up 1]";
        for (List<String> pieces : List.of(
                List.of(bridge + ", back: 0, bottom: 1", board + ", back: 0, bottom: 0"),
                List.of(board + ", back: 0, bottom: 0", bridge + ", back: 0, bottom: 1"),
                List.of(bridge + ", flip: over, back: 0, bottom: 0", board + ", back: 0, bottom: 2"))) {
            List<Contact> contacts =
                    Bench.loose(pieces.toArray(String[]::new)).section().contacts();
            assertThat(contacts.stream().map(contact -> contact.at().x()))
                    .as(pieces.toString())
                    .containsExactly(0.5, 2.5);
        }
    }
}

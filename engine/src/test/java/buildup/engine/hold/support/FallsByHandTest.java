package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How stacks fall that are small enough to work by hand: what goes as one, on what edge, and how far. */
class FallsByHandTest {
    private static Held boards(String... pieces) {
        return Held.of(Bench.loose(pieces));
    }

    private static Fall.Part only(Held held) {
        List<Fall> falls = held.falls();
        assertThat(falls).hasSize(1);
        assertThat(falls.get(0).parts()).hasSize(1);
        return falls.get(0).first();
    }

    private static void assertPlace(Point place, double out, double up) {
        assertThat(place.x()).isEqualTo(out, within(1e-6));
        assertThat(place.y()).isEqualTo(up, within(1e-6));
    }

    @Test
    void two_that_fall_apart_from_each_other_are_two_motions_the_heavier_first() {
        Held held = boards(
                "name: near, kind: framing, section: [out 1, up 4], back: 0, top: 0",
                "name: far, kind: framing, section: [out 1, up 4], back: 20, top: 0",
                "name: small, section: [out 6, up 1], back: 0, bottom: 0",
                "name: large, section: [out 12, up 1], back: 20, bottom: 0",
                "name: rider, section: [out 1, up 1], back: 30, bottom: 1");
        List<Fall> falls = held.falls();
        assertThat(falls).hasSize(2);
        Fall.Part large = falls.get(0).first();
        assertThat(held.names(large.pieces())).containsExactly("large", "rider");
        assertThat(large.way()).isEqualTo(Fall.Way.TIPS_OUT);
        assertPlace(large.about().orElseThrow(), 21, 0);
        assertThat(held.section().name(large.on().orElseThrow())).isEqualTo("far");
        Fall.Part small = falls.get(1).first();
        assertThat(held.names(small.pieces())).containsExactly("small");
        assertPlace(small.about().orElseThrow(), 1, 0);
        assertThat(held.section().name(small.on().orElseThrow())).isEqualTo("near");
        Fall.Part mirrored = held.mirrored().falls().get(1).first();
        assertThat(mirrored.way()).isEqualTo(Fall.Way.TIPS_BACK);
        assertPlace(mirrored.about().orElseThrow(), -1, 0);
    }

    @Test
    void what_nothing_carries_falls_straight_down_to_what_is_below_it() {
        Held held = boards(
                "name: ground, kind: framing, section: [out 12, up 1], back: 0, top: 0",
                "name: air, section: [out 2, up 1], back: 3, bottom: 5");
        Fall.Part air = only(held);
        assertThat(air.way()).isEqualTo(Fall.Way.FALLS);
        assertThat(air.about()).isEmpty();
        assertThat(air.on()).isEmpty();
        assertThat(air.stop().orElseThrow().travel()).isEqualTo(5, within(1e-6));
        assertThat(air.stop().orElseThrow().degrees()).isZero();
        assertThat(held.section().name(air.stop().orElseThrow().by())).isEqualTo("ground");
    }

    /** Down a slope of 2 in 4 a fall of 1/2 is half the root of 5 long. */
    @Test
    void on_a_slope_without_friction_a_block_slides_along_it() {
        Held held = boards(
                "name: wedge, kind: framing, section: [out 4, chamfer in 2 x 4], back: 0, bottom: 0",
                "name: ground, kind: framing, section: [out 30, up 1], back: 0, top: -1/2",
                "name: block, section: [out 4, chamfer in 2 x 4], turn: 180, back: 0, bottom: 0");
        Fall.Part block = only(held);
        assertThat(block.way()).isEqualTo(Fall.Way.SLIDES_OUT);
        assertThat(block.about()).isEmpty();
        assertThat(held.section().name(block.on().orElseThrow())).isEqualTo("wedge");
        assertThat(block.stop().orElseThrow().travel()).isEqualTo(Math.sqrt(5) / 2, within(1e-6));
        Held back = held.mirrored();
        assertThat(only(back).way()).isEqualTo(Fall.Way.SLIDES_BACK);
    }

    /**
     * It turns on the edge 1 out. Its upper corner, 1/4 out and 8 up from there, meets the post 2 out: it has turned by
     * asin(2 / r) - atan(1/4 / 8), r the root of 1/16 + 64, and stands at the root of r r - 4.
     */
    @Test
    void a_board_that_leans_out_is_stopped_by_the_post_before_it() {
        Held held = boards(
                        "name: ledge, kind: framing, section: [out 1, up 4], back: 0, top: 0",
                        "name: board, section: [out 1, up 8], back: 1/4, bottom: 0",
                        "name: post, kind: framing, section: [out 1, up 12], back: 3, bottom: -2")
                .load("board", 6, 2);
        double radius = Math.hypot(0.25, 8);
        double turned = Math.asin(2 / radius) - Math.atan(0.25 / 8);
        Fall.Part board = only(held);
        assertThat(board.way()).isEqualTo(Fall.Way.TIPS_OUT);
        assertPlace(board.about().orElseThrow(), 1, 0);
        Fall.Stop stop = board.stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("post");
        assertThat(stop.degrees()).isEqualTo(Math.toDegrees(turned), within(1e-4));
        assertThat(stop.travel()).isEqualTo(turned * radius, within(1e-4));
        assertPlace(stop.at(), 3, Math.sqrt(radius * radius - 4));
    }

    /** Its top corner, 1/4 out of the edge and 8 up, comes 1/32 out and a hair down until it meets a post so near. */
    @Test
    void a_joint_of_a_thirty_second_before_it_stops_a_board_that_leans_out() {
        Held held = boards(
                        "name: ledge, kind: framing, section: [out 1, up 4], back: 0, top: 0",
                        "name: board, section: [out 1, up 8], back: 1/4, bottom: 0",
                        "name: post, kind: framing, section: [out 1, up 12], back: 1-9/32, bottom: -2")
                .load("board", 1.2, 20);
        double radius = Math.hypot(0.25, 8);
        double turned = Math.asin((0.25 + 1.0 / 32) / radius) - Math.atan(0.25 / 8);
        Fall.Stop stop = only(held).stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("post");
        assertThat(stop.degrees()).isEqualTo(Math.toDegrees(turned), within(1e-4));
        assertThat(stop.travel()).isEqualTo(turned * radius, within(1e-4));
    }

    @Test
    void what_lies_on_a_board_that_tips_goes_with_it_on_both_sides() {
        Held held = boards(
                        "name: post, kind: framing, section: [out 1, up 4], back: 5, top: 0",
                        "name: beam, section: [out 12, up 1], back: 0, bottom: 0",
                        "name: left, section: [out 1, up 1], back: 0, bottom: 1",
                        "name: right, section: [out 1, up 1], back: 11, bottom: 1",
                        "name: cap, section: [out 1, up 1], back: 0, bottom: 2")
                .load("right", 11.5, 3);
        Fall.Part beam = only(held);
        assertThat(held.names(beam.pieces())).containsExactly("beam", "left", "right", "cap");
        assertPlace(beam.about().orElseThrow(), 6, 0);
    }
}

package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.support.Fall.Part;
import buildup.engine.hold.support.Fall.Stop;
import buildup.engine.hold.support.Fall.Way;
import buildup.profiles.outline.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Motions of several pieces that a pencil follows: who moves with whom, who falls next, and what they come against. */
class MotionsByHandTest {
    private static Held boards(String... pieces) {
        return Held.of(Bench.loose(pieces));
    }

    private static void assertPlace(Point place, double out, double up) {
        assertThat(place.x()).isEqualTo(out, within(1e-6));
        assertThat(place.y()).isEqualTo(up, within(1e-6));
    }

    private static String on(Held held, Part part) {
        return held.section().name(part.on().orElseThrow());
    }

    private static final String LEDGE = "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0";

    /**
     * The lever, 16 square inches, comes down 2 for a turn of 1. The bridge, 21 square inches, lies on its end from 9 to
     * 10 and on a post from 29 on: its end comes down 9, its middle 9 x 9.5 / 20. So it does more of the work.
     */
    @Test
    void of_two_that_move_each_its_own_way_the_one_whose_weight_does_more_comes_first() {
        Held held = boards(
                LEDGE,
                "name: post, kind: framing, section: [out 1, up 6], back: 29, top: 1",
                "name: lever, section: [out 16, up 1], back: -6, bottom: 0",
                "name: bridge, section: [out 21, up 1], back: 9, bottom: 1");
        List<Fall> falls = held.falls();
        List<Part> parts = falls.get(0).parts();
        assertThat(parts).hasSize(2);
        assertThat(held.names(parts.get(0).pieces())).containsExactly("bridge");
        assertThat(parts.get(0).way()).isEqualTo(Way.TIPS_BACK);
        // it rubs on the post or on the lever, whichever: how high its center is, is open
        assertThat(parts.get(0).about().orElseThrow().x()).isEqualTo(29, within(1e-6));
        assertThat(held.names(parts.get(1).pieces())).containsExactly("lever");
        assertThat(parts.get(1).way()).isEqualTo(Way.TIPS_OUT);
        assertThat(parts.get(1).about().orElseThrow().x()).isEqualTo(0, within(1e-6));
        assertThat(falls).as("the lever falls also with the bridge held").hasSize(2);
        assertThat(held.names(falls.get(1).first().pieces())).containsExactly("lever");
    }

    /** The load lifts the bridge on the other end of the lever. */
    @Test
    void what_is_lifted_by_others_comes_behind_what_falls() {
        Held held = boards(
                        "name: far, kind: framing, section: [out 1, up 6], back: -20, top: 1",
                        "name: bridge, section: [out 21, up 1], back: -20, bottom: 1",
                        "name: post, kind: framing, section: [out 1, up 6], back: 5, top: 0",
                        "name: lever, section: [out 12, up 1], back: 0, bottom: 0")
                .load("lever", 11.5, 30);
        List<Part> parts = held.falls().get(0).parts();
        assertThat(parts).hasSize(2);
        assertThat(held.names(parts.get(0).pieces())).containsExactly("lever");
        assertThat(parts.get(0).way()).isEqualTo(Way.TIPS_OUT);
        assertThat(held.names(parts.get(1).pieces())).containsExactly("bridge");
        assertThat(parts.get(1).way()).isEqualTo(Way.TIPS_BACK);
        assertThat(parts.get(1).about().orElseThrow().x()).isEqualTo(-20, within(1e-6));
    }

    /** The rider, put up before the beam that it stands on, is not what the ledge has to be nailed to. */
    @Test
    void of_pieces_that_tip_together_those_on_the_edge_are_held_and_what_only_rides_may_still_fall_off_them() {
        Held held = boards(
                LEDGE,
                "name: rider, section: [out 12, up 1], back: 4, bottom: 1",
                "name: beam, section: [out 16, up 1], back: -6, bottom: 0");
        List<Fall> falls = held.falls();
        assertThat(held.names(falls.get(0).first().pieces())).containsExactly("rider", "beam");
        assertThat(falls).as("6 of the rider's 12 lie on the beam").hasSize(1);
        Held farther = boards(
                LEDGE,
                "name: rider, section: [out 12, up 1], back: 5, bottom: 1",
                "name: beam, section: [out 16, up 1], back: -6, bottom: 0");
        falls = farther.falls();
        assertThat(farther.names(falls.get(0).first().pieces())).containsExactly("rider", "beam");
        assertThat(on(farther, falls.get(0).first())).isEqualTo("ledge");
        assertThat(falls).hasSize(2);
        Part rider = falls.get(1).first();
        assertThat(farther.names(rider.pieces())).containsExactly("rider");
        assertThat(on(farther, rider)).isEqualTo("beam");
        assertPlace(rider.about().orElseThrow(), 10, 1);
    }

    /** Its underside swings down about the edge: the far top corner of the post, 6 out and 2 below, is met first. */
    @Test
    void a_side_that_comes_down_on_a_corner_is_stopped_by_it() {
        Held held = boards(
                LEDGE,
                "name: post, kind: framing, section: [out 1, up 8], back: 5, top: -2",
                "name: shelf, section: [out 16, up 1], back: -4, bottom: 0");
        Stop stop = held.falls().get(0).first().stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("post");
        assertPlace(stop.at(), 6, -2);
        double turned = Math.atan2(2, 6);
        assertThat(stop.degrees()).isEqualTo(Math.toDegrees(turned), within(1e-4));
        assertThat(stop.travel()).isEqualTo(Math.hypot(6, 2) * turned, within(1e-4));
        Stop mirrored = held.mirrored().falls().get(0).first().stop().orElseThrow();
        assertPlace(mirrored.at(), -6, -2);
        assertThat(mirrored.degrees()).isEqualTo(stop.degrees(), within(1e-6));
    }

    /**
     * A leg hangs behind the ledge, its back 5 behind the edge. It swings up past level to the corner of a beam 5.6 behind
     * and 1 above the edge: the leg's back is 5 from the center all the while.
     */
    @Test
    void what_swings_up_behind_the_edge_is_stopped_by_what_is_over_it() {
        Held held = boards(
                "name: ledge, kind: framing, section: [out 1, up 1], face: 0, top: 0",
                "name: beam, kind: framing, section: [out 3, up 4], face: -5.6, bottom: 1",
                "name: shelf, section: [out 20, up 1/2], back: -5, bottom: 0",
                "name: leg, fixed: shelf, section: [out 1, up 3], back: -5, top: shelf.bottom");
        Part part = held.falls().get(0).first();
        assertThat(held.names(part.pieces())).containsExactly("shelf", "leg");
        assertThat(part.way()).isEqualTo(Way.TIPS_OUT);
        Stop stop = part.stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("beam");
        assertPlace(stop.at(), -5.6, 1);
        double along = Math.sqrt(5.6 * 5.6 + 1 - 25);
        double turned = Math.atan2(along, 5) + Math.atan2(1, 5.6);
        assertThat(stop.degrees()).isEqualTo(Math.toDegrees(turned), within(1e-4));
    }

    /** The post is narrower than what falls on it, so that its corners meet the other's side. */
    @Test
    void what_falls_on_something_narrower_is_stopped_by_it() {
        Held held = boards(
                "name: post, kind: framing, section: [out 1, up 4], back: 4, top: 2",
                "name: ground, kind: framing, section: [out 30, up 1], back: -10, top: -4",
                "name: air, section: [out 10, up 1], back: 0, bottom: 5");
        Part part = held.falls().get(0).first();
        assertThat(part.way()).isEqualTo(Way.FALLS);
        Stop stop = part.stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("post");
        assertThat(stop.travel()).isEqualTo(3, within(1e-6));
        assertThat(stop.at().y()).isEqualTo(2, within(1e-6));
        assertThat(stop.at().x()).isBetween(4.0, 5.0);
    }

    /**
     * A block comes down between a post and a wedge of 2 in 4, and drives the wedge away twice as far as it falls itself. It slides along what stands.
     */
    @Test
    void what_slides_between_something_that_stands_and_something_that_gives_slides_on_what_stands() {
        Held held = boards(
                "name: floor board, kind: framing, section: [out 40, up 1], back: -20, top: 0",
                "name: wedge, section: [out 4, chamfer in 2 x 4], back: 0, bottom: 0",
                "name: block, section: [out 4, chamfer in 2 x 4], turn: 180, back: 0, bottom: 0",
                "name: post, kind: framing, section: [out 1, up 9], back: 4, bottom: 0");
        List<Part> parts = held.falls().get(0).parts();
        assertThat(parts).hasSize(2);
        assertThat(held.names(parts.get(0).pieces())).containsExactly("block");
        assertThat(parts.get(0).way()).isEqualTo(Way.FALLS);
        assertThat(on(held, parts.get(0))).isEqualTo("post");
        assertThat(held.names(parts.get(1).pieces())).containsExactly("wedge");
        assertThat(parts.get(1).way()).isEqualTo(Way.SLIDES_BACK);
        assertThat(on(held, parts.get(1))).isEqualTo("floor board");
    }

    /** Corner meets corner all along the way: it is their sides that meet. */
    @Test
    void what_falls_on_something_just_as_wide_is_stopped_by_it() {
        Held held = boards(
                "name: post, kind: framing, section: [out 1, up 4], back: 4, top: 2",
                "name: ground, kind: framing, section: [out 30, up 1], back: -10, top: -4",
                "name: air, section: [out 1, up 1], back: 4, bottom: 5");
        Stop stop = held.falls().get(0).first().stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("post");
        assertThat(stop.travel()).isEqualTo(3, within(1e-6));
    }

    /** The post below the shelf, 9 below what falls, was put up before that, and the shelf is met after 3. */
    @Test
    void what_it_meets_first_stops_it_whatever_was_put_up_before() {
        Held held = boards(
                "name: post, kind: framing, section: [out 1, up 4], top: -4, back: 4",
                "name: shelf, kind: framing, section: [out 30, up 1], top: 2, back: -10",
                "name: air, section: [out 10, up 1], back: 0, bottom: 5");
        Stop stop = held.falls().get(0).first().stop().orElseThrow();
        assertThat(held.section().name(stop.by())).isEqualTo("shelf");
        assertThat(stop.travel()).isEqualTo(3, within(1e-6));
    }

    /** The corners of the post come into the side of what falls, a corner of that onto the ledge, both after 3. */
    @Test
    void of_two_that_it_meets_at_once_the_one_put_up_first_is_told() {
        String post = "name: post, kind: framing, section: [out 1, up 4], back: 4, top: 2";
        String ledge = "name: ledge, kind: framing, section: [out 30, up 1], back: 6, top: 2";
        String air = "name: air, section: [out 10, up 1], back: 0, bottom: 5";
        for (List<String> pieces : List.of(List.of(post, ledge, air), List.of(ledge, post, air))) {
            Held held = boards(pieces.toArray(String[]::new));
            Stop stop = held.falls().get(0).first().stop().orElseThrow();
            assertThat(stop.travel()).isEqualTo(3, within(1e-6));
            assertThat(stop.by()).isZero();
        }
    }

    @Test
    void what_has_nothing_in_its_way_is_not_stopped() {
        Held held = boards(
                "name: aside, kind: framing, section: [out 1, up 4], back: 20, top: 2",
                "name: above, kind: framing, section: [out 10, up 4], back: 0, bottom: 8",
                "name: air, section: [out 10, up 1], back: 0, bottom: 5");
        assertThat(held.falls().get(0).first().stop()).isEmpty();
    }
}

package buildup.engine.hold.support;

import static buildup.engine.hold.support.Held.WOOD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** One group of pieces on its bearing, by moments about the end that it would tip over. */
class BalanceTest {
    private static final Offset<Double> SAME = within(1e-9);
    private static final String BASE = "name: base, kind: framing, section: [out 24, up 1], back: 0, top: 0";

    private static Held held(String... pieces) {
        return Held.of(Bench.loose(pieces));
    }

    private static List<String> messages(Held held) {
        Notices notices = new Notices();
        held.support(notices);
        return notices.sorted().stream().map(NoticeWords.INCHES::message).toList();
    }

    private static final Held BACKWARD = held(
            BASE,
            "name: block, section: [out 1, up 4], back: 2, bottom: 0",
            "name: slab, section: [out 5, up 1], back: -2, bottom: 4");

    @Test
    void a_stack_may_lean_back_too() {
        Balance balance = BACKWARD.balanceOn("base");
        // 4 sq in at 2.5 and 5 at 0.5
        assertThat(balance.resultant()).isCloseTo(12.5 / 9, SAME);
        assertThat(balance.margin()).isCloseTo(12.5 / 9 - 2, SAME);
        assertThat(balance.overturning()).isCloseTo((9 * 2 - 12.5) * WOOD, SAME);
        assertThat(balance.holdBack()).hasValueCloseTo(5.5 * WOOD / 3.75, SAME);
        assertThat(balance.downAt().x()).isCloseTo(2.5, SAME);
        assertThat(balance.holdDown()).hasValueCloseTo(5.5 * WOOD / 0.5, SAME);
        assertThat(messages(BACKWARD))
                .contains("block and slab lean back: 1.83 lb a foot falls 5/8- past base."
                        + " To stand, hold out 0.30 lb a foot at 3-3/4 up, or down 2.24 lb a foot at 2-1/2 out.");
    }

    @Test
    void a_load_on_the_other_side_brings_it_back() {
        double needed = 5.5 * WOOD / (2.9 - 2);
        assertThat(BACKWARD.load("block", 2.9, needed * 1.001).balanceOn("base").leans())
                .isFalse();
        assertThat(BACKWARD.load("block", 2.9, needed * 0.999).balanceOn("base").leans())
                .isTrue();
    }

    /** A block of 4 by 1 whose weight falls 2 in from either end: a load moves it to one side of the middle. */
    @Test
    void the_end_that_is_judged_is_the_one_on_whose_side_of_the_middle_the_weight_falls() {
        Held block = held(BASE, "name: block, section: [out 4, up 1], back: 10, bottom: 0");
        Balance front = block.load("block", 13, 4 * WOOD).balanceOn("base");
        // 4 at 12 and as much at 13; the nail that keeps it would be at the other end
        assertThat(front.loaded()).isCloseTo(12.5, SAME);
        assertThat(front.downAt().x()).isCloseTo(10.5, SAME);
        Balance back = block.load("block", 11, 4 * WOOD).balanceOn("base");
        assertThat(back.loaded()).isCloseTo(11.5, SAME);
        assertThat(back.downAt().x()).isCloseTo(13.5, SAME);
        assertThat(back.overturning()).isZero();
        assertThat(back.holdDown()).isEmpty();
        assertThat(back.holdBack()).isEmpty();
    }

    /** A strip of 3/8 and 6 high: half an inch inside its edge there is no wood, its middle is 3/16 inside. */
    @Test
    void a_narrow_piece_is_held_down_in_its_middle() {
        Balance strip = held(BASE, "name: strip, section: [out 3/8, up 6], back: 10, bottom: 0")
                .load("strip", 10.5, 1)
                .balanceOn("base");
        assertThat(strip.downAt().x()).isCloseTo(10 + 3.0 / 16, SAME);
        assertThat(strip.downAt().y()).isCloseTo(6, SAME);
        // 6 * 3/8 sq in at 10-3/16 and 1 lb at 10-1/2, about the edge at 10-3/8
        double over = 1 * (10.5 - 10.375) - 2.25 * WOOD * 3.0 / 16;
        assertThat(strip.overturning()).isCloseTo(over, SAME);
        assertThat(strip.holdDown()).hasValueCloseTo(over / (3.0 / 16), SAME);
    }

    @Test
    void two_lots_on_one_base_do_not_steady_each_other() {
        Held two = held(
                BASE,
                "name: post, section: [out 1, up 4], back: 1, bottom: 0",
                "name: arm, section: [out 6, up 1], back: 1, bottom: 4",
                "name: block, section: [out 2, up 2], back: 20, bottom: 0");
        List<Balance> balances = two.balancesOn("base");
        assertThat(balances).hasSize(2);
        assertThat(two.names(balances.get(0).group())).containsExactly("post", "arm");
        assertThat(balances.get(0).leans()).isTrue();
        assertThat(two.names(balances.get(1).group())).containsExactly("block");
        assertThat(balances.get(1).leans()).isFalse();
        // 4 sq in at 1.5 and 6 at 4: 3 over an end at 2
        assertThat(messages(two)).anyMatch(text -> text.matches("post and arm lean out: .* falls 1 past base.*"));
    }

    @Test
    void two_posts_under_one_shelf_are_one_lot() {
        Held table = held(
                BASE,
                "name: left, section: [out 1, up 4], back: 1, bottom: 0",
                "name: right, section: [out 1, up 4], back: 6, bottom: 0",
                "name: shelf, section: [out 8, up 1], back: 0, bottom: 4");
        Balance balance = table.balanceOn("base");
        assertThat(balance.bearingBack()).isCloseTo(1, SAME);
        assertThat(balance.bearingFace()).isCloseTo(7, SAME);
        assertThat(balance.leans()).isFalse();
    }

    @Test
    void what_also_rests_elsewhere_is_asked_over_all_that_carries_it() {
        Held bridge = held(
                BASE,
                "name: other, kind: framing, section: [out 2, up 6], back: 30, top: 4",
                "name: post, section: [out 1, up 4], back: 20, bottom: 0",
                "name: lintel, section: [out 12, up 1], back: 20, bottom: 4");
        Balance both = bridge.balanceOn("base");
        assertThat(bridge.names(both.group())).containsExactly("post", "lintel");
        assertThat(bridge.names(both.carriers())).containsExactly("base", "other");
        assertThat(both.bearingBack()).isCloseTo(20, SAME);
        assertThat(both.bearingFace()).isCloseTo(32, SAME);
        assertThat(bridge.names(bridge.balance("lintel").group())).containsExactly("lintel");
        assertThat(bridge.balance("lintel").bearing()).isCloseTo(12, SAME);
        assertThat(bridge.balanceOn("post")).isEqualTo(bridge.balance("lintel"));
    }

    @Test
    void a_thin_board_is_held_in_the_middle_of_its_edge() {
        Held shelf = held(
                "name: ledge, kind: framing, section: [out 4, up 4], face: 0, top: 0",
                "name: shelf, section: [out 12, up 1/2], back: -4, bottom: 0");
        Balance balance = shelf.balanceOn("ledge");
        assertThat(balance.holdAt().x()).isCloseTo(-4, SAME);
        assertThat(balance.holdAt().y()).isCloseTo(0.25, SAME);
        // 6 sq in at 2 beyond
        assertThat(balance.overturning()).isCloseTo(12 * WOOD, SAME);
        assertThat(balance.holdBack()).hasValueCloseTo(48 * WOOD, SAME);
        assertThat(balance.holdDown()).hasValueCloseTo(12 * WOOD / 3.5, SAME);
    }

    @Test
    void where_nothing_can_be_held_back_the_note_says_to_hold_it_down() {
        Held stepped = held(
                "name: stair, kind: framing, section: [out 4, up 10, in 2, down 5, in 2], back: 0, bottom: -5",
                "name: rear, section: [out 1, up 5-1/4], back: 1, bottom: 0",
                "name: front, section: [out 12, up 1], back: 2, bottom: 5");
        Balance balance = stepped.balanceOn("stair");
        assertThat(balance.holdBack())
                .as("the nail would be no higher than the ledge")
                .isEmpty();
        // 5.25 sq in at 1.5 and 12 at 8, over 4; the nail at 1.5
        double overturning = (12 * 4 - 5.25 * 2.5) * WOOD;
        assertThat(balance.overturning()).isCloseTo(overturning, SAME);
        assertThat(balance.holdDown()).hasValueCloseTo(overturning / 2.5, SAME);
        assertThat(messages(stepped))
                .contains("front leans out: 2.45 lb a foot falls 4 past stair."
                        + " To stand, hold back 13.04 lb a foot at 5-3/4 up, or down 6.52 lb a foot at 2-1/2 out.");
    }

    @Test
    void a_bearing_of_nothing_is_no_balance() {
        Held air = held(BASE, "name: kite, section: [out 1, up 1], back: 4, bottom: 9");
        assertThat(new Balances(air.section(), air.path(), List.of()).ofPiece(air.number("kite")))
                .isEmpty();
        assertThat(new Balances(air.section(), air.path(), List.of()).ofPiece(air.number("base")))
                .as("framing is asked nothing")
                .isEmpty();
        assertThat(air.balancesOn("base")).isEmpty();
    }

    @Test
    void the_room_itself_carries_too() {
        Held floor = Held.of(Bench.in(
                "{ floor: 0, wall: { solid: no } }",
                "name: post, section: [out 1, up 4], back: 2, bottom: floor",
                "name: arm, section: [out 5, up 1], back: 2, bottom: 4"));
        assertThat(floor.balanceOn("floor").margin()).isCloseTo(3 - (4 * 2.5 + 5 * 4.5) / 9, SAME);
        assertThat(messages(floor)).anyMatch(text -> text.startsWith("post and arm lean out"));
    }
}

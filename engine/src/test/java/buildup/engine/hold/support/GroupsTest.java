package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which pieces stand on a carrier as one, and which each for itself. */
class GroupsTest {
    private static final String LEDGE = "name: ledge, kind: framing, section: [out 12, up 4], back: 0, top: 0";

    private static Held boards(String... pieces) {
        return Held.of(Bench.loose(pieces));
    }

    private static List<List<String>> groups(Held held, List<Balance> balances) {
        return balances.stream().map(balance -> held.names(balance.group())).toList();
    }

    @Test
    void what_meets_by_a_corner_alone_stands_each_for_itself_and_what_touches_along_a_side_as_one() {
        String stepped = "name: steps, kind: framing, section: [out 4, up 1, in 2, up 1], back: 0, bottom: 0";
        Held corner = boards(
                        stepped,
                        "name: low, section: [out 2, up 1], back: 2, bottom: 1",
                        "name: high, section: [out 2, up 1], back: 0, bottom: 2")
                .free();
        assertThat(groups(corner, corner.balancesOn("steps"))).containsExactly(List.of("low"), List.of("high"));
        Held side = boards(
                        stepped,
                        "name: low, section: [out 2, up 2], back: 2, bottom: 1",
                        "name: high, section: [out 2, up 1], back: 0, bottom: 2")
                .free();
        assertThat(groups(side, side.balancesOn("steps"))).containsExactly(List.of("low", "high"));
    }

    @Test
    void what_is_said_to_be_fixed_to_a_board_goes_with_it_though_the_two_do_not_touch() {
        Held held = boards(
                LEDGE,
                "name: block, section: [out 2, up 2], back: 0, bottom: 0",
                "name: arm, fixed: block, section: [out 2, up 1], back: 0, bottom: 4");
        assertThat(groups(held, held.balancesOn("ledge"))).containsExactly(List.of("block", "arm"));
        assertThat(held.balanceOn("ledge").weight()).isEqualTo(6 * Held.WOOD, within(1e-9));
    }

    @Test
    void what_is_said_to_be_fixed_to_framing_is_no_weight_on_the_board_that_it_lies_on() {
        Held held = boards(
                LEDGE,
                "name: post, kind: framing, section: [out 1, up 8], back: -3, bottom: 0",
                "name: block, section: [out 2, up 2], back: 0, bottom: 0",
                "name: arm, fixed: post, section: [out 2, up 1], back: 0, bottom: 2");
        assertThat(groups(held, held.balancesOn("ledge"))).containsExactly(List.of("block"));
        assertThat(held.balanceOn("ledge").weight()).isEqualTo(4 * Held.WOOD, within(1e-9));
    }

    @Test
    void what_counts_as_fixed_to_the_wall_is_no_weight_on_the_board_that_it_lies_on() {
        Held held = Held.of(Bench.onWall(
                LEDGE,
                "name: block, section: [out 2, up 2], back: 1, bottom: 0",
                "name: cap, section: [out 3, up 1], back: 0, bottom: 2"));
        assertThat(groups(held, held.balancesOn("ledge"))).containsExactly(List.of("block"));
        assertThat(held.balanceOn("ledge").weight()).isEqualTo(4 * Held.WOOD, within(1e-9));
    }

    /** The middle of the two that are nailed lies at (2 x 2 + 6 x 6) / 8, 1 past the ledge; the third only touches them. */
    @Test
    void what_tips_together_is_a_group_though_nails_alone_join_it_and_it_is_but_a_part_of_what_lies_there() {
        Held held = boards(
                        "name: ledge, kind: framing, section: [out 4, up 4], back: 0, top: 0",
                        "name: aside, section: [out 1, up 1], back: 0, bottom: 0",
                        "name: near, section: [out 2, up 1], back: 1, bottom: 0",
                        "name: far, section: [out 6, up 1], back: 3, bottom: 0")
                .weld("far", "near", new Point(3, 0.25));
        Balance both = held.support().balances().stream()
                .filter(one -> held.names(one.group()).equals(List.of("near", "far")))
                .findFirst()
                .orElseThrow();
        assertThat(both.margin()).isEqualTo(-1, within(1e-9));
        assertThat(both.overturning()).isEqualTo(8 * Held.WOOD, within(1e-9));
        assertThat(both.kept().by()).isEqualTo(Balance.Keeper.NOTHING);
        assertThat(held.support().balances())
                .filteredOn(one -> held.names(one.group()).equals(List.of("aside")))
                .singleElement()
                .satisfies(one -> assertThat(one.kept().by()).isEqualTo(Balance.Keeper.WEIGHT));
    }

    /** Its middle lies 1 past the end of the beam, and that of the two, 16 square inches, well on the ledge. */
    @Test
    void a_group_whose_top_piece_falls_off_it_stands_itself() {
        Held held = boards(
                LEDGE,
                "name: beam, section: [out 10, up 1], back: 0, bottom: 0",
                "name: rider, section: [out 6, up 1], back: 8, bottom: 1");
        assertThat(held.support().balances())
                .hasSize(2)
                .allSatisfy(one -> assertThat(one.kept().by())
                        .isEqualTo(
                                held.names(one.group()).equals(List.of("rider"))
                                        ? Balance.Keeper.NOTHING
                                        : Balance.Keeper.WEIGHT));
    }

    /** The load tips the beam over its post; block and cap stay as they are on its other end. */
    @Test
    void what_rides_on_something_that_tips_is_kept_on_it_by_its_weight() {
        Held held = boards(
                        "name: post, kind: framing, section: [out 1, up 4], back: 5, top: 0",
                        "name: beam, section: [out 12, up 1], back: 0, bottom: 0",
                        "name: block, section: [out 1, up 1], back: 0, bottom: 1",
                        "name: cap, section: [out 1, up 1], back: 0, bottom: 2")
                .load("beam", 11.5, 4);
        for (Balance one : held.support().balances()) {
            boolean beam = one.group().contains(held.number("beam"));
            assertThat(one.kept().by())
                    .as(held.names(one.group()).toString())
                    .isEqualTo(beam ? Balance.Keeper.NOTHING : Balance.Keeper.WEIGHT);
        }
    }

    /** Two blocks and what bridges them: each block by itself, the bridge on both, and all three on the ledge. */
    @Test
    void every_group_is_told_once_each_piece_with_what_stands_on_it_alone_and_what_a_carrier_carries() {
        Held held = boards(
                LEDGE,
                "name: one, section: [out 2, up 2], back: 0, bottom: 0",
                "name: two, section: [out 2, up 2], back: 8, bottom: 0",
                "name: bridge, section: [out 10, up 1], back: 0, bottom: 2",
                "name: finial, section: [out 1, up 1], back: 4, bottom: 3");
        assertThat(groups(held, held.support().balances()))
                .containsExactlyInAnyOrder(
                        List.of("one"),
                        List.of("two"),
                        List.of("bridge", "finial"),
                        List.of("finial"),
                        List.of("one", "two", "bridge", "finial"));
        Balance all = held.balanceOn("ledge");
        assertThat(all.bearingBack()).isEqualTo(0, within(1e-9));
        assertThat(all.bearingFace()).isEqualTo(10, within(1e-9));
        assertThat(all.weight()).isEqualTo(19 * Held.WOOD, within(1e-9));
        assertThat(all.resultant()).isEqualTo((4 * 1 + 4 * 9 + 10 * 5 + 4.5) / 19.0, within(1e-9));
        assertThat(all.stands()).isTrue();
        assertThat(all.kept().by()).isEqualTo(Balance.Keeper.WEIGHT);
    }

    /** The two ends stand at different heights: it turns over the one that it leans to. */
    @Test
    void a_group_on_two_heights_turns_over_the_end_that_it_leans_to() {
        String low = "name: low, kind: framing, section: [out 1, up 4], back: 0, top: -1";
        String high = "name: high, kind: framing, section: [out 1, up 4], back: 4, top: 0";
        String beam = "name: beam, section: [out 4, up 1, out 8, up 1], back: 0, bottom: -1";
        Held out = boards(low, high, beam);
        assertThat(out.balance("beam").bearingBack()).isEqualTo(0, within(1e-9));
        assertThat(out.balance("beam").bearingFace()).isEqualTo(5, within(1e-9));
        assertThat(out.balance("beam").outward()).isTrue();
        assertThat(out.balance("beam").level()).isEqualTo(0, within(1e-9));
        Held back = boards(low, high, "name: beam, section: [out 12, up 1, out 1, up 1], back: -8, bottom: -1");
        assertThat(back.balance("beam").outward()).isFalse();
        assertThat(back.balance("beam").level()).as("over the low post").isEqualTo(-1, within(1e-9));
    }

    @Test
    void a_nail_that_holds_back_sits_under_the_top_of_an_upright_back_and_in_the_middle_of_a_thin_edge() {
        Held upright = boards(LEDGE, "name: board, section: [out 2, up 8], back: 11, bottom: 0")
                .load("board", 13, 90);
        assertThat(upright.balance("board").holdAt().y()).isEqualTo(7.75, within(1e-9));
        assertThat(upright.balance("board").holdAt().x()).isEqualTo(11, within(1e-9));
        Held flat = boards(LEDGE, "name: board, section: [out 8, up 3/4], back: 8, bottom: 0")
                .load("board", 16, 90);
        assertThat(flat.balance("board").holdAt().y()).isEqualTo(0.375, within(1e-9));
        // the load's moment over the edge at 12, on 3.5 from the nail 1/2 in from the back, less the board's own share
        assertThat(flat.balance("board").downAt().x()).isEqualTo(8.5, within(1e-9));
        assertThat(flat.balance("board").holdDown()).hasValueCloseTo(90 * 4 / 3.5, within(1e-6));
        assertThat(flat.balance("board").holdBack()).hasValueCloseTo(90 * 4 / 0.375, within(1e-6));
    }

    /** The top of the ramp goes down 1/2 in 10: under the end that the load leans to it is lower or higher. */
    @Test
    void on_a_slope_that_still_counts_as_level_the_edge_is_as_high_as_the_slope_is_there() {
        Held block = boards(
                        "name: ramp, kind: framing, section: [out 10, up 1, chamfer in 1/2 x 10], back: 0, bottom: 0",
                        "name: block, section: [out 2, up 2, chamfer in 0.1 x 2], turn: 180, back: 4, bottom: touch")
                .free();
        assertThat(block.load("block", 5.9, 5).balance("block").level()).isEqualTo(1.2, within(1e-3));
        assertThat(block.load("block", 4.1, 5).balance("block").level()).isEqualTo(1.3, within(1e-3));
    }

    @Test
    void each_way_to_be_kept_to_fall_and_to_be_trusted_has_words_of_its_own() {
        assertThat(Stream.of(Balance.Keeper.values()).map(Balance.Keeper::word))
                .doesNotHaveDuplicates()
                .noneMatch(String::isBlank);
        assertThat(Stream.of(Support.Answer.values()).map(Support.Answer::word))
                .doesNotHaveDuplicates()
                .noneMatch(String::isBlank);
        assertThat(Stream.of(Trust.Why.values()).map(Trust.Why::words))
                .doesNotHaveDuplicates()
                .noneMatch(String::isBlank);
        assertThat(Stream.of(Fall.Way.values()).flatMap(way -> Stream.of(way.words(), way.plural())))
                .doesNotHaveDuplicates()
                .noneMatch(String::isBlank);
    }
}

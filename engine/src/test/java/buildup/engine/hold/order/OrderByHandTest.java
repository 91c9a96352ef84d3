package buildup.engine.hold.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stacks whose order is found with a pencil. */
class OrderByHandTest {
    private static final String FASCIA = "name: fascia, section: [out 3/4, up 2], back: 3, bottom: 0";

    /** Laps 1/2 down behind the fascia and stands 1 over it. */
    private static final String HOOK = "name: crown, section: [out 1, up 1/2, out 2, up 1], back: 2, bottom: 1-1/2";

    private static String ceiling(double inches) {
        return String.format(Locale.ROOT, "{ wall: { solid: no }, floor: -84, ceiling: %.12f }", inches);
    }

    @Test
    void a_crown_hooked_over_a_lip_is_lifted_by_exactly_its_lap() {
        Ordered stack = Ordered.in(ceiling(4), FASCIA, HOOK);
        PutUp crown = stack.step("crown");
        assertThat(crown.goes()).isTrue();
        assertThat(crown.needs().orElseThrow()).isCloseTo(0.5, within(1e-9));
        assertThat(crown.has().orElseThrow()).isCloseTo(1, within(1e-9));
        List<Point> moves = crown.way().orElseThrow().moves();
        assertThat(moves).hasSize(2);
        assertThat(moves.get(0).y()).isCloseTo(0, within(1e-12));
        assertThat(moves.get(0).x()).isNegative();
        assertThat(moves.get(1)).isEqualTo(new Point(0, -0.5));
        assertThat(stack.order().possible()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.0 / 64})
    void room_for_the_lap_and_a_64th_more_is_enough(double more) {
        assertThat(Ordered.in(ceiling(3.5 + more), FASCIA, HOOK).order().possible())
                .isTrue();
    }

    @Test
    void a_64th_less_than_the_lap_is_too_little_and_the_ceiling_is_named() {
        Ordered stack = Ordered.in(ceiling(3.5 - 1.0 / 64), FASCIA, HOOK);
        assertThat(stack.order().possible()).as(stack.order().toString()).isFalse();
        assertThat(stack.blockers("crown")).containsExactly("fascia", "ceiling");
        assertThat(stack.step("crown").needs().orElseThrow()).isCloseTo(0.5, within(1e-9));
        assertThat(stack.step("crown").has().orElseThrow()).isCloseTo(0.5 - 1.0 / 64, within(1e-9));
        // held up first, the crown lets the fascia in under it
        assertThat(stack.instead()).containsExactly("crown", "fascia");
        assertThat(stack.order().propped()).isTrue();
        assertThat(stack.notices("cannot-go-in")).hasSize(1);
    }

    @Test
    void an_order_is_called_the_nearest_only_when_that_is_proved() {
        Ordered stack = Ordered.in(
                ceiling(9),
                "name: one, section: [out 1, up 1], back: 0, bottom: 0",
                "name: two, section: [out 1, up 1], back: 0, bottom: 1");
        List<Unit> units = stack.order().steps().stream().map(PutUp::unit).toList();
        for (boolean proved : new boolean[] {true, false}) {
            PuttingUp found =
                    new PuttingUp(stack.order().steps(), Optional.of(units), proved, false, List.of(), List.of());
            String title = OrderSheets.of(stack.section(), found, Optional.empty()).stream()
                    .filter(sheet -> sheet.key().equals("order.other"))
                    .map(sheet -> sheet.title().toString())
                    .findFirst()
                    .orElseThrow();
            assertThat(title.contains("the nearest to the one given")).as(title).isEqualTo(proved);
        }
    }

    @Test
    void a_dovetailed_pair_is_parted_by_nothing_straight() {
        Ordered stack = Ordered.in(
                "{ wall: { solid: no } }",
                "name: socket, section: [out 4, up 1, in 1-3/4, chamfer down 1/2 x 1/4, in 1-1/2, up 1/2], back: 0, bottom: 0",
                "name: tail, section: [out 1-1/2, chamfer in 1/2 x 1/4], back: 1, bottom: 1/2");
        assertThat(stack.order().possible()).isFalse();
        assertThat(stack.step("tail").way()).isEmpty();
        assertThat(stack.blockers("tail")).containsExactly("socket");
        assertThat(stack.order().instead()).isEmpty();
        assertThat(stack.order().proved()).isTrue();
        assertThat(stack.join()).containsExactly("socket", "tail");
    }

    @Test
    void without_the_far_side_of_its_socket_a_tail_slips_out_along_its_slope_or_back() {
        Ordered stack = Ordered.in(
                "{ wall: { solid: no } }",
                "name: socket, section: [out 3, up 1, in 3/4, chamfer down 1/2 x 1/4], back: 0, bottom: 0",
                "name: tail, section: [out 1-1/2, chamfer in 1/2 x 1/4], back: 1, bottom: 1/2");
        PutUp tail = stack.step("tail");
        assertThat(tail.goes()).isTrue();
        // pushed back by the overhang of the slope, 1/4, it is free to go up
        assertThat(tail.needs().orElseThrow()).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void a_board_in_a_groove_that_opens_to_the_room_slides_in_straight() {
        Ordered stack = Ordered.in(
                ceiling(24),
                "name: groove, section: [out 3, up 1, in 2, up 3/4, out 2, up 1], back: 0, bottom: 0",
                "name: board, section: [out 2, up 3/4], back: 1, bottom: 1");
        assertThat(stack.step("board").way().orElseThrow().isStraight()).isTrue();
        assertThat(stack.step("board").needs()).isEmpty();
    }

    @Test
    void a_strip_behind_a_lip_comes_up_from_below_or_in_and_then_up() {
        // a lip hangs 1 in front of a soffit; the strip fills the corner behind it
        Ordered stack = Ordered.in(
                ceiling(24),
                "name: soffit, section: [out 3, up 3/4], back: 0, bottom: 10",
                "name: lip, section: [out 3/4, up 1-3/4], back: 3, bottom: 9",
                "name: strip, section: [out 1, up 1/2], back: 2, bottom: 9-1/2");
        PutUp strip = stack.step("strip");
        assertThat(strip.goes()).isTrue();
        assertThat(strip.needs().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(strip.way().orElseThrow().moves().get(1)).isEqualTo(new Point(0, 1));
    }

    /**
     * A beam under a ceiling, far from the wall, its base board 1/2 past its cheek: a block in the corner on the wall side is
     * pushed back 1/2 on its way out, and goes down from there into the room. Close to the wall it has no room for that.
     */
    @Test
    void a_block_on_the_wall_side_of_a_beam_comes_up_from_that_side() {
        String cheek = "name: cheek, section: [out 6, up 6], back: %s, top: ceiling";
        String base = "name: base, section: [out 7, up 3/4], back: cheek.back - 1/2, top: cheek.bottom";
        String block = "name: block, kind: nailer, section: [out 1, up 1], face: cheek.back, top: ceiling";
        String room = "{ floor: -84, ceiling: 12 }";
        PutUp far = Ordered.in(room, cheek.formatted("40"), base, block).step("block");
        assertThat(far.goes()).isTrue();
        assertThat(far.needs().orElseThrow()).isCloseTo(0.5, within(1e-9));
        assertThat(far.way().orElseThrow().moves().get(1)).isEqualTo(new Point(0.5, 0));
        assertThat(Ordered.in(room, cheek.formatted("1-1/4"), base, block)
                        .step("block")
                        .goes())
                .as("only 1/4 is left between it and the wall")
                .isFalse();
        assertThat(Ordered.in("{ floor: 4-1/2, ceiling: 12 }", cheek.formatted("40"), base, block)
                        .step("block")
                        .goes())
                .as("3/4 is left between the base and the floor")
                .isFalse();
    }

    @Test
    void without_a_ceiling_a_cap_between_two_posts_is_set_down_from_above() {
        Ordered stack = Ordered.in(
                "{ wall: { solid: no }, floor: -84 }",
                "name: rear, section: [out 1, up 5], back: 0, bottom: 0",
                "name: front, section: [out 1, up 5], back: 3, bottom: 0",
                "name: fill, section: [out 2, up 4], back: 1, bottom: 0");
        WayIn way = stack.step("fill").way().orElseThrow();
        assertThat(way.isStraight()).isTrue();
        assertThat(way.then()).isEqualTo(90.0);
    }

    @Test
    void a_piece_shut_in_on_all_sides_goes_in_before_the_last_that_shuts_it_in() {
        Ordered stack = Ordered.in(
                ceiling(24),
                "name: bottom board, section: [out 4, up 1], back: 0, bottom: 0",
                "name: back board, section: [out 1, up 2], back: 0, bottom: 1",
                "name: front board, section: [out 1, up 2], back: 3, bottom: 1",
                "name: top board, section: [out 4, up 1], back: 0, bottom: 3",
                "name: core, section: [out 2, up 2], back: 1, bottom: 1");
        assertThat(stack.order().possible()).isFalse();
        assertThat(stack.order().proved()).isTrue();
        // before the top board it is set down from above; one pair changes places
        assertThat(stack.instead()).containsExactly("bottom board", "back board", "front board", "core", "top board");
        assertThat(stack.notices("cannot-go-in").get(0).cure().orElseThrow().toString())
                .contains("core", "top board");
    }

    @Test
    void a_bench_unit_goes_up_as_one_with_the_lap_of_its_lowest_piece() {
        // the block behind the fascia laps it by 1; the cap on it stands over both
        Ordered stack = Ordered.with(
                ceiling(5),
                "bench: { top: [block, cap] }\n",
                FASCIA,
                "name: block, section: [out 1, up 1], back: 2, bottom: 1",
                "name: cap, section: [out 3, up 1], back: 2, bottom: 2");
        assertThat(stack.order().steps()).hasSize(2);
        PutUp top = stack.step("cap");
        assertThat(top.unit().bench()).hasValue("top");
        assertThat(top.goes()).isTrue();
        assertThat(top.needs().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(top.has().orElseThrow()).isCloseTo(2, within(1e-9));
        Ordered low = Ordered.with(
                ceiling(3.5),
                "bench: { top: [block, cap] }\n",
                FASCIA,
                "name: block, section: [out 1, up 1], back: 2, bottom: 1",
                "name: cap, section: [out 3, up 1], back: 2, bottom: 2");
        assertThat(low.order().possible()).isFalse();
        assertThat(low.step("cap").has().orElseThrow()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_unit_whose_pieces_do_not_touch_is_no_unit() {
        Ordered stack = Ordered.with(
                ceiling(9),
                "bench: { pair: [one, two] }\n",
                "name: one, section: [out 1, up 1], back: 0, bottom: 0",
                "name: two, section: [out 1, up 1], back: 3, bottom: 0");
        assertThat(stack.notices("bench-unit-wrong")).hasSize(1);
        assertThat(stack.notices("bench-unit-wrong").get(0).sentence().toString())
                .contains("two");
    }

    @Test
    void a_unit_goes_up_after_what_carries_it() {
        Ordered stack = Ordered.with(
                ceiling(9),
                "bench: { pair: [one, two] }\n",
                "name: one, section: [out 1, up 1], back: 0, bottom: 1",
                "name: two, section: [out 1, up 1], back: 1, bottom: 1",
                "name: base, section: [out 2, up 1], back: 0, bottom: 0");
        assertThat(stack.notices("bench-unit-wrong")).hasSize(1);
        assertThat(stack.order().steps().get(0).loose()).isTrue();
    }

    @Test
    void a_piece_that_goes_up_before_all_that_holds_it_is_told() {
        String cap = "name: cap, section: [out 2, up 1], back: 0, bottom: 2";
        String base = "name: base, section: [out 2, up 2], back: 0, bottom: 0";
        Ordered early = Ordered.in("{ wall: { solid: no }, ceiling: 9 }", cap, base);
        assertThat(early.notices("nothing-there-to-hold-it"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.piece()).contains("cap"));
        assertThat(Ordered.in("{ wall: { solid: no }, ceiling: 9 }", base, cap).notices("nothing-there-to-hold-it"))
                .isEmpty();
        // what it is said to be fixed to stands
        assertThat(Ordered.in(
                                "{ wall: { solid: yes }, ceiling: 9 }",
                                cap.replace("back: 0", "back: 1, fixed: wall"),
                                base)
                        .notices("nothing-there-to-hold-it"))
                .isEmpty();
    }

    @Test
    void a_piece_belongs_to_one_unit_and_must_be_there() {
        String[] pieces = {
            "name: one, section: [out 1, up 1], back: 0, bottom: 0",
            "name: two, section: [out 1, up 1], back: 1, bottom: 0",
            "name: three, section: [out 1, up 1], back: 2, bottom: 0"
        };
        assertThat(refusals("{ a: [one, two], b: [two, three] }", pieces)).hasSize(1);
        assertThat(refusals("{ a: [one, to] }", pieces)).hasSize(1);
        assertThat(refusals("{ a: [one] }", pieces)).hasSize(1);
        assertThat(refusals("{ a: one }", pieces)).hasSize(1);
        assertThat(refusals("{ a: [one, two] }", pieces)).isEmpty();
    }

    private static List<String> refusals(String bench, String... pieces) {
        StringBuilder text =
                new StringBuilder("title: order\nspace: { wall: { solid: no } }\nbench: " + bench + "\npieces:\n");
        for (String piece : pieces) {
            text.append("  - { ").append(piece).append(" }\n");
        }
        return Ordered.answer(text.toString()).notices().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .map(Notice::code)
                .toList();
    }

    /**
     * A frieze 5-1/2 high and 3/4 thick under a ceiling 10 over its foot at the wall that falls 4 in 12: level out it keeps
     * 10 - 1.5/3 - 5.5 over itself until it is past its own thickness. Thirty-six out the ceiling is lower than it is high.
     */
    @Test
    void a_ceiling_that_is_low_farther_out_in_the_room_bars_no_way_to_the_wall() {
        String falling = "{ floor: -60, ceiling: { height: 10, slope: -4 in 12 } }";
        assertThat(Ordered.in(falling, "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0")
                        .order()
                        .possible())
                .isTrue();
        // its head is 1/64 under the ceiling where it stands, and level out it would strike at once
        Ordered tight = Ordered.in(
                falling,
                "name: frieze, profile: board 3/4 x 9-47/64, back: wall, bottom: 0",
                "name: shelf, profile: board 3/4 x 2, lay: flat, back: wall, top: frieze.bottom");
        assertThat(tight.step("shelf").goes()).isTrue();
        assertThat(Ordered.in(
                                falling,
                                "name: shelf, profile: board 3/4 x 2, lay: flat, back: wall, top: 0",
                                "name: frieze, profile: board 3/4 x 9-47/64, back: wall, bottom: 0")
                        .step("frieze")
                        .goes())
                .isFalse();
    }
}

package buildup.engine.hold.support;

import static buildup.engine.hold.support.Held.WOOD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.FirstToGive.Mode;
import buildup.engine.hold.statics.Force;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.hold.support.Support.Whole;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Stacks whose limit a pencil finds: two forces and one moment of a body at rest (Meriam and Kraige, Engineering
 * Mechanics: Statics, chapter 3; from memory), and for the indeterminate one the least of all mechanisms (Baker and
 * Heyman, Plastic Design of Frames 1, 1969; from memory). The arithmetic stands in reference/statics.md.
 */
class StaticsByHandTest {
    private static final Offset<Double> SAME = within(1e-6);

    @Test
    void a_shelf_on_a_ledge_turns_about_its_edge_until_the_hold_down_nail_gives() {
        Held shelf = HandStacks.shelfOnLedge();
        // about (0, 0): nail 10 at 3.5 behind, shelf 10 sq in at 1 before, load 4 at 6
        assertThat(shelf.factor()).isCloseTo((10 * 3.5 - 10 * WOOD * 1) / (4 * 6), SAME);
        assertThat(shelf.governs()).isEqualTo("hold-down");
    }

    @Test
    void a_shelf_that_nothing_holds_down_falls_off_its_ledge() {
        Held shelf = HandStacks.shelfOnLedge();
        assertThat(new Held(shelf.section(), shelf.loads(), List.of()).limit()).isEmpty();
    }

    @Test
    void a_bracket_turns_about_its_heel_until_the_nail_at_its_top_draws() {
        // about (0, 0): nail 20 at 3.5 up; bracket 16 sq in at 2, shelf 5 at 2.5, load 2 at 3
        double limit = (20 * 3.5 - 16 * WOOD * 2 - 5 * WOOD * 2.5) / (2 * 3);
        Held bracket = HandStacks.bracketedShelf(Double.POSITIVE_INFINITY).load("shelf", 3, 2);
        assertThat(bracket.factor()).isCloseTo(limit, SAME);
        assertThat(bracket.governs()).isEqualTo("nail");
    }

    /** It draws (16w x 2 + 5w x 2.5 + 3 x load) / 3.5 of 20, carries 21w + load across, and the two shares add up to 1. */
    @Test
    void what_a_nail_carries_across_it_does_not_hold_against_drawing() {
        for (double across : List.of(50.0, 10.0)) {
            double dead = 44.5 * WOOD / 3.5 / 20 + 21 * WOOD / across;
            double live = 2 * 3 / 3.5 / 20 + 2 / across;
            Held bracket = HandStacks.bracketedShelf(across).load("shelf", 3, 2);
            assertThat(bracket.factor()).isCloseTo((1 - dead) / live, SAME);
            assertThat(bracket.governs()).isEqualTo("nail");
        }
    }

    @Test
    void a_shelf_tips_over_the_front_of_its_bracket_however_strong_the_nail() {
        Held bracket = HandStacks.bracketedShelf(50).load("shelf", 4.5, 2);
        // about (4, 4): shelf 5 sq in at 1.5 behind, load 2 at 0.5 before
        assertThat(bracket.factor()).isCloseTo(5 * WOOD * 1.5 / (2 * 0.5), SAME);
        assertThat(bracket.governs()).isEqualTo("shelf on bracket");
    }

    @Test
    void a_block_on_two_bearings_shares_a_load_between_them_as_a_simple_beam() {
        Held block = HandStacks.blockOnTwoBearings();
        // about (1, 0), the near end of the post: cleat at 9 beyond, block 10 sq in at 4, load 2 at 3
        double cleat = 8 - 2 * WOOD;
        assertThat(block.factor()).isCloseTo((cleat * 9 - 10 * WOOD * 4) / (2 * 3), SAME);
        assertThat(block.governs()).isEqualTo("nail");
    }

    @Test
    void a_load_between_two_bearings_on_framing_never_matters() {
        Held block = HandStacks.blockOnTwoBearings();
        double out = 0.5;
        Held over = new Held(block.section(), List.of(), block.joints()).load("block", out, 2);
        assertThat(over.factor()).isInfinite();
        assertThat(over.governs()).isEmpty();
    }

    @Test
    void a_board_that_leans_out_is_held_back_by_the_nail_at_its_top() {
        Held board = HandStacks.leaningBoard();
        // 20 sq in at 1.4 over a foot that ends at 1; nail 6 at 7.75 up; load 1.5 at 4
        assertThat(board.factor()).isCloseTo((6 * 7.75 - 20 * WOOD * 0.4) / (1.5 * 3), SAME);
        assertThat(board.governs()).isEqualTo("hold-back");
    }

    @Test
    void a_rod_rolls_in_its_hollow_about_the_common_center() {
        // every push of the hollow goes through the center: nail 5 down at 0.6 left of it, 3 across at 0.8 below
        assertThat(HandStacks.rodInHollow(5, 0).factor()).isCloseTo(5 * 0.6 / (2 * 0.75), SAME);
        // drawn it keeps 3, across 2.4 or 4: what it does of one it does not do of the other
        assertThat(HandStacks.rodInHollow(5, 3).factor()).isCloseTo(5 * 0.6 / (2 * 0.75), SAME);
        assertThat(HandStacks.rodInHollow(5, 5).factor()).isCloseTo(5 * 0.8 / (2 * 0.75), SAME);
        assertThat(HandStacks.rodInHollow(5, 3).governs()).isEqualTo("rod nail");
    }

    @Test
    void a_beam_on_three_bearings_falls_by_the_least_of_its_mechanisms() {
        // turning about A while B and C slide: statics alone does not say how B and C share
        double near = 6 - 2 * WOOD;
        double far = 5 - 2 * WOOD;
        double aboutA = (near * 5 + far * 10 - 14 * WOOD * 6) / (2 * 7);
        double aboutB = (far * 5 - 14 * WOOD * 1) / (2 * 2);
        assertThat(aboutA).isLessThan(aboutB);
        assertThat(HandStacks.beamOnThree(6, 5).factor()).isCloseTo(aboutA, SAME);
    }

    @Test
    void a_beam_on_three_bearings_turns_about_the_middle_one_when_that_is_strong() {
        double far = 5 - 2 * WOOD;
        double aboutB = (far * 5 - 14 * WOOD * 1) / (2 * 2);
        Held beam = HandStacks.beamOnThree(60, 5);
        assertThat(beam.factor()).isCloseTo(aboutB, SAME);
        assertThat(beam.governs()).isEqualTo("nail C");
    }

    @Test
    void a_piece_said_to_be_fixed_needs_no_nail_and_loads_what_it_is_fixed_to() {
        Held bracket = HandStacks.fixedBracket();
        assertThat(bracket.limit()).isPresent();
        assertThat(bracket.load("arm", 9, 50).factor()).isInfinite();
        // the pair on its ledge: block 16 sq in at -2, arm 9 at 4.5, load 1 at 9
        Held loose = HandStacks.armFixedToLooseBlock().load("arm", 9, 1);
        assertThat(loose.factor()).isCloseTo((48 * WOOD * 6 - 9 * WOOD * 4.5) / 9, SAME);
    }

    @Test
    void a_piece_fixed_to_a_wall_that_does_not_stand_is_held_all_the_same() {
        assertThat(HandStacks.fixedToNothing().load("rail", 0.5, 50).factor()).isInfinite();
    }

    @Test
    void what_touches_by_a_point_alone_carries_nothing() {
        assertThat(HandStacks.onAPoint().limit()).isEmpty();
        assertThat(HandStacks.onAPoint()
                        .nail("pin", "block", "case", new Point(0, 0), 180, 0, 100)
                        .limit())
                .isEmpty();
    }

    @Test
    void a_board_on_two_posts_turns_about_the_outer_end_of_the_far_one() {
        Held board = HandStacks.boardOnTwoPosts();
        assertThat(board.factor()).isCloseTo((3 * 6.5 + 12 * WOOD) / (2 * 4), SAME);
        assertThat(board.limit().orElseThrow().governs()).contains(new FirstToGive("hold-down", Mode.PULL));
        Held bare = new Held(board.section(), board.loads(), List.of());
        assertThat(bare.factor()).isCloseTo(12 * WOOD / (2 * 4), SAME);
        assertThat(bare.limit().orElseThrow().governs()).contains(new FirstToGive("board on far post", Mode.CONTACT));
    }

    /** A board that leans on the post behind it; a cap that a ceiling keeps from tipping; a gap that has closed. */
    @Test
    void a_contact_is_told_with_what_lies_before_what_it_lies_on() {
        Held rail = HandStacks.railOnTwoNails(20, Double.POSITIVE_INFINITY, 5);
        assertThat(names(rail.model())).containsOnly("rail against post");
        assertThat(names(HandStacks.headOffTheWall(10).model().withGaps()))
                .contains("board on ledge", "shelf on board", "board against wall piece");
        Held cap = Held.of(Bench.in(
                "{ ceiling: 5, wall: { solid: no } }",
                "name: post, kind: framing, section: [out 1, up 4], back: 0, top: 4",
                "name: cap, section: [out 3, up 1], back: 0, top: ceiling"));
        assertThat(names(cap.model())).containsOnly("cap on post", "cap under ceiling");
    }

    private static Set<String> names(Model model) {
        return model.forces().stream()
                .filter(force -> force.kind() == Force.Kind.PUSH)
                .map(Force::name)
                .collect(Collectors.toSet());
    }

    @Test
    void two_nails_across_carry_what_both_hold_and_no_more() {
        Held rail = HandStacks.railOnTwoNails(20, Double.POSITIVE_INFINITY, 5);
        // the upper draws (1.5w + P) / 2.5 of 20, and carries that share of 5 less
        assertThat(rail.factor()).isCloseTo((10 - 3.15 * WOOD) / 1.1 / 3, SAME);
        assertThat(rail.limit().orElseThrow().governs()).contains(new FirstToGive("rail nail", Mode.SHEAR));
    }

    @Test
    void two_nails_that_are_strong_across_draw_out_about_the_foot_of_the_rail() {
        // the lower carries 3w + P of 20, and draws that share of 2 less at 0.5 up
        double limit = (6 - 1.65 * WOOD) / 1.05 / 3;
        Held drawn = HandStacks.railOnTwoNails(2, Double.POSITIVE_INFINITY, 20);
        assertThat(drawn.factor()).isCloseTo(limit, SAME);
        assertThat(drawn.limit().orElseThrow().governs()).contains(new FirstToGive("rail nail", Mode.PULL));
        Held heads = HandStacks.railOnTwoNails(20, 2, 20);
        assertThat(heads.factor()).isCloseTo(limit, SAME);
        assertThat(heads.limit().orElseThrow().governs()).contains(new FirstToGive("rail nail", Mode.HEAD));
    }

    @Test
    void a_foot_slides_back_to_the_wall_and_then_the_head_stands() {
        Held head = HandStacks.headOffTheWall(10).decided();
        Whole whole = head.support().whole();
        assertThat(whole.answer()).isEqualTo(Answer.TRUST);
        assertThat(whole.falls()).isEmpty();
        double limit = (6 * 10 + (16.5 * 1.5 - 11.5 * 0.78125 - 5 * 2.5625) * WOOD) / 3.5;
        assertThat(whole.loadFactor()).hasValueCloseTo(limit / 4, within(1e-6));
        assertThat(whole.governs()).contains(new FirstToGive("screw", Mode.PULL));
        Fall.Part part = whole.closing().orElseThrow().first();
        assertThat(head.names(part.pieces())).containsExactly("board", "shelf");
        Fall.Stop stop = part.stop().orElseThrow();
        assertThat(head.section().name(stop.by())).isEqualTo("wall piece");
        assertThat(stop.travel()).as("its foot, to the wall").isCloseTo(1.0 / 16, SAME);
        assertThat(stop.at().distance(new Point(0, 0))).isLessThan(1e-9);
        Balance balance = head.support().balances().get(0);
        assertThat(balance.kept().by()).isEqualTo(Keeper.AFTER_CLOSING);
    }

    @Test
    void without_its_screw_it_rolls_out_and_never_meets_the_wall() {
        Held head = HandStacks.headOffTheWall(10);
        Whole whole =
                new Held(head.section(), head.loads(), List.of()).support().whole();
        assertThat(whole.answer()).isEqualTo(Answer.NO);
        assertThat(whole.underLoad()).as("it stands by itself").isTrue();
        assertThat(whole.loadFactor())
                .hasValueCloseTo((16.5 * 1.5 - 11.5 * 0.78125 - 5 * 2.5625) * WOOD / 3.5 / 4, within(1e-6));
        Fall.Part part = whole.falls().get(0).first();
        assertThat(part.way()).isEqualTo(Fall.Way.TIPS_OUT);
        assertThat(head.section().name(part.on().orElseThrow())).isEqualTo("ledge");
        assertThat(part.stop()).isEmpty();
    }

    @Test
    void a_screw_too_weak_for_the_load_is_told_with_the_gap_closed() {
        Held head = HandStacks.headOffTheWall(1).decided();
        Whole whole = head.support().whole();
        assertThat(whole.answer()).isEqualTo(Answer.NO);
        assertThat(whole.underLoad()).isTrue();
        assertThat(whole.loadFactor().orElseThrow()).isLessThan(1);
    }

    @Test
    void friction_counts_only_where_it_is_asked_for() {
        Held head = HandStacks.headOffTheWall(0.2).loadsTimes(0.1);
        Held pulled = new Held(head.section(), head.loads(), head.joints(), 0).decided();
        assertThat(pulled.support().whole().answer())
                .as("nothing keeps its foot")
                .isEqualTo(Answer.TRUST);
        Support rubbing = new Held(pulled.section(), pulled.loads(), pulled.joints(), 0.4).support();
        assertThat(rubbing.whole().answer()).as("its foot rubs").isEqualTo(Answer.STANDS);
        assertThat(rubbing.friction()).hasValue(0.4);
    }

    @Test
    void a_block_slides_on_a_slope_as_steep_as_its_friction() {
        // tan of 5 in 10 is 0.5: a coefficient just over that keeps it, just under it does not
        Held block = Held.of(Bench.loose(
                        "name: ramp, kind: framing, section: [out 10, up 1, chamfer in 5 x 10], back: 0, bottom: 0",
                        "name: block, section: [out 2, up 2, chamfer in 1 x 2], turn: 180, back: 4, bottom: touch"))
                .free();
        for (double friction : List.of(0.49, 0.51)) {
            Model model = Model.plain(block.section(), List.of(), friction);
            assertThat(Mechanism.falls(model, new Loading(model.weights())))
                    .as("friction %s", friction)
                    .isEqualTo(friction < 0.5);
        }
    }
}

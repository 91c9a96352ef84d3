package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Support.Answer;
import buildup.profiles.outline.Point;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * A board flat on a frieze and on the bed before it: statics of one body on two supports, by hand (resources/reference/
 * statics.md). Wood of 29.35 lb a cubic foot.
 */
class TwoCarriersTest {
    private static final Offset<Double> NEAR = within(0.005);
    private static final String CASE = "name: case, kind: framing, section: [out 14, up 90], face: wall, top: 6";
    private static final String FRIEZE = "name: frieze, profile: board 3/4 x 6, back: wall, bottom: 0";
    private static final String BED =
            "name: bed, profile: board 1 x 1, back: frieze.face, top: frieze.top, fixed: frieze";
    private static final String SOFFIT =
            "name: soffit, profile: board 3/4 x 9-1/4, lay: flat, back: wall, bottom: frieze.top";

    private final Held both = Held.of(Bench.loose(CASE, FRIEZE, BED, SOFFIT));

    @Test
    void a_board_on_two_carriers_is_judged_over_both() {
        Support support = both.support();
        assertThat(support.whole().answer()).isEqualTo(Answer.NO);
        Balance balance = support.balances().get(0);
        assertThat(support.balances()).hasSize(1);
        assertThat(both.names(balance.group())).containsExactly("soffit");
        assertThat(both.names(balance.carriers())).containsExactly("frieze", "bed");
        assertThat(balance.bearingBack()).isCloseTo(0, NEAR);
        assertThat(balance.bearingFace()).isCloseTo(1.75, NEAR);
        assertThat(balance.weight()).isCloseTo(1.414, NEAR);
        assertThat(balance.margin()).isCloseTo(-2.875, NEAR);
        assertThat(balance.holdAt().y()).isCloseTo(6.375, NEAR);
        assertThat(balance.holdBack()).hasValueCloseTo(10.84, within(0.01));
        assertThat(balance.downAt().x()).isCloseTo(0.5, NEAR);
        assertThat(balance.holdDown()).hasValueCloseTo(3.25, within(0.01));
        assertThat(balance.kept().by()).isEqualTo(Keeper.NOTHING);
    }

    @Test
    void without_the_bed_it_falls_farther_past() {
        Held alone = Held.of(Bench.loose(CASE, FRIEZE, SOFFIT));
        Balance balance = alone.support().balances().get(0);
        assertThat(alone.names(balance.carriers())).containsExactly("frieze");
        assertThat(balance.margin()).isCloseTo(-3.875, NEAR);
        assertThat(balance.holdBack()).hasValueCloseTo(14.61, within(0.015));
    }

    @Test
    void the_motion_names_the_board_and_the_edge_of_the_bed() {
        Fall.Part part = both.support().whole().falls().get(0).first();
        assertThat(both.names(part.pieces())).containsExactly("soffit");
        assertThat(part.way()).isEqualTo(Fall.Way.TIPS_OUT);
        assertThat(both.section().name(part.on().orElseThrow())).isEqualTo("bed");
        assertThat(part.about().orElseThrow().distance(new Point(1.75, 6))).isLessThan(1e-9);
    }

    @Test
    void what_the_verdict_rests_on_is_listed() {
        assertThat(both.support().trust())
                .extracting(trust -> both.section().name(trust.piece()) + " to "
                        + both.section().name(trust.on().orElseThrow()) + ", " + trust.why())
                .containsExactly("frieze to case, COUNTS_AS_FIXED", "bed to frieze, SAID");
    }

    /** Held down at its back end by a nail of so many pounds, or held back by one. */
    private static Support nailed(Held held, double down, double back) {
        return held.nail("down", "soffit", "frieze", new Point(0.5, 6), -90, down, 0)
                .nail("back", "soffit", "case", new Point(0, 6.375), 180, back, 0)
                .support();
    }

    @Test
    void the_pulls_that_are_told_are_those_with_which_the_whole_stands() {
        Balance balance = both.support().balances().get(0);
        double down = balance.holdDown().orElseThrow();
        assertThat(nailed(both, down * 1.001, 0).whole().answer()).isEqualTo(Answer.STANDS);
        assertThat(nailed(both, down * 0.999, 0).whole().answer()).isEqualTo(Answer.NO);
        Balance held = nailed(both, down * 2, 0).balances().get(0);
        assertThat(held.leans()).isTrue();
        assertThat(held.kept().by()).isEqualTo(Keeper.FASTENINGS);
        assertThat(held.kept().times()).hasValueCloseTo(2.0, within(1e-6));
        assertThat(held.kept().governs()).contains(new FirstToGive("down", FirstToGive.Mode.PULL));
    }

    @Test
    void a_board_stands_if_and_only_if_its_resultant_falls_between_the_outer_ends_whatever_the_gap_between() {
        // Paterson and Zwick, Overhang (reference/worked-examples.md, J): posts 1 to 2 and 9 to 10, the board 8 long
        for (double back : List.of(-3 - 1.0 / 64, -3 + 1.0 / 64, -1.0, 1.5, 6 - 1.0 / 64, 6 + 1.0 / 64)) {
            Held board = Held.of(Bench.loose(
                    "name: left, kind: framing, section: [out 1, up 4], back: 1, top: 0",
                    "name: right, kind: framing, section: [out 1, up 4], back: 9, top: 0",
                    "name: board, section: [out 8, up 1], back: " + back + ", bottom: 0"));
            boolean left = back < 2;
            boolean right = back + 8 > 9;
            double from = left ? Math.max(back, 1) : 9;
            double to = right ? Math.min(back + 8, 10) : 2;
            boolean inside = back + 4 >= from && back + 4 <= to;
            assertThat(board.support().whole().stands()).as("back %s", back).isEqualTo(inside);
        }
    }
}

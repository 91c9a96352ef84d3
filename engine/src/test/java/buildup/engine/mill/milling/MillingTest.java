package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.profiles.region.Carving;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import org.junit.jupiter.api.Test;

class MillingTest {
    @Test
    void a_board_is_planed_and_needs_nothing() {
        Milled milled = Molded.milled(Molded.profile("board 3/4 x 3-1/2"));
        assertThat(milled.isPlain()).isTrue();
        assertThat(milled.passes().orElseThrow().inOrder()).isEmpty();
        assertThat(milled.passes().orElseThrow().left()).isEmpty();
        assertThat(milled.knives()).isEmpty();
        assertThat(milled.heads()).isEmpty();
        assertThat(Molded.said(Molded.profile("board 3/4 x 3-1/2"), Molded.BUILT_IN))
                .isEmpty();
    }

    /** 5/8 is a listed radius: one run of the bit with its pilot on the bottom. */
    @Test
    void a_cove_of_a_listed_radius_takes_one_run() {
        Passes passes = Molded.milled(Molded.profile("cove 3/4 x 3/4")).passes().orElseThrow();
        assertThat(passes.inOrder()).hasSize(1);
        assertThat(passes.unmade()).isEmpty();
        assertThat(passes.leftArea()).isZero();
        Pass pass = passes.inOrder().get(0);
        assertThat(FigurePrinter.INCHES.print(pass.cutter())).isEqualTo("cove bit, radius 5/8");
        assertThat(pass.depth()).isCloseTo(0.625, within(1e-9));
    }

    /** A half round of 1: a quarter from either side. */
    @Test
    void a_half_round_takes_two_runs_of_a_round_over() {
        Passes passes =
                Molded.milled(Molded.profile("half-round 5/8 x 1")).passes().orElseThrow();
        assertThat(passes.inOrder())
                .extracting(pass -> FigurePrinter.INCHES.print(pass.cutter()))
                .containsOnly("round-over, radius 1/2")
                .hasSize(2);
        assertThat(passes.proven()).isTrue();
        assertThat(passes.leftArea()).isZero();
    }

    @Test
    void a_groove_just_as_wide_as_a_bit_takes_one_run_with_its_fence_and_depth() {
        Passes passes = Molded.milled(Molded.words("out 1, up 1, quirk 1/4 x 1/2 as groove, up 1"))
                .passes()
                .orElseThrow();
        assertThat(passes.inOrder()).hasSize(1);
        Pass pass = passes.inOrder().get(0);
        assertThat(FigurePrinter.INCHES.print(pass.cutter())).isEqualTo("straight bit, diameter 1/4");
        assertThat(pass.side()).isEqualTo(Side.FRONT);
        assertThat(pass.depth()).isCloseTo(0.5, within(1e-9));
        assertThat(pass.fence()).isCloseTo(1.125, within(1e-9));
    }

    @Test
    void what_cuts_into_the_sides_that_the_stick_bears_on_comes_last_and_else_the_deepest_first() {
        for (Profile profile : Molded.all()) {
            List<Pass> passes = Molded.milled(profile).passes().orElseThrow().inOrder();
            for (int i = 1; i < passes.size(); i++) {
                Pass before = passes.get(i - 1);
                Pass after = passes.get(i);
                boolean ordered = before.takesBearing() == after.takesBearing()
                        ? before.depth() >= after.depth()
                        : after.takesBearing();
                assertThat(ordered).as(profile.name()).isTrue();
            }
        }
    }

    /** No pass of any profile bites into the wood, and cut and left and wood make up the blank. */
    @Test
    void no_pass_bites_and_nothing_is_left_that_is_not_said() {
        for (Profile profile : Molded.all()) {
            Milled milled = Molded.milled(profile);
            Passes passes = milled.passes().orElseThrow();
            for (Pass pass : passes.inOrder()) {
                assertThat(Carving.bites(pass.swept(), milled.stick().outline()))
                        .as(profile.name() + ": " + pass.cutter())
                        .isFalse();
            }
            Outline blank = Outline.rectangle(milled.stick().box());
            assertThat(passes.leftArea())
                    .as(profile.name())
                    .isLessThanOrEqualTo(blank.area() - milled.stick().outline().area() + 1e-3);
        }
    }

    /** The blank of a sprung molding is its stick: width and thickness, not drop and projection. */
    @Test
    void a_sprung_molding_is_run_flat() {
        Milled milled = Molded.milled(Molded.profile("plain-crown 3-1/4"));
        assertThat(milled.stick().box().height()).isCloseTo(3.25, within(1e-9));
        assertThat(milled.stick().box().width()).isCloseTo(0.5625, within(1e-9));
        assertThat(milled.passes().orElseThrow().inOrder())
                .extracting(pass -> FigurePrinter.INCHES.print(pass.cutter()))
                .containsOnly("table saw blade through, tilted 38°");
    }

    @Test
    void a_hollow_takes_its_own_radius_and_no_larger() {
        Milled milled = Molded.milled(Molded.profile("cove 3/4 x 3/4"));
        assertThat(milled.hollows()).hasSize(1);
        assertThat(milled.hollows().get(0).largest()).isCloseTo(0.625, within(1e-9));
    }

    @Test
    void an_undercut_is_said_with_the_pass_that_it_needs() {
        assertThat(Molded.said(Molded.words("out 1, drip 1/4 x 1/4, out 1, up 1"), Molded.BUILT_IN))
                .containsExactly(
                        "PROBLEM undercut: The slot 1/4 wide and 1/4 deep at (1.125, 0.250) is not open to the outside"
                                + " head; it needs the bottom head. | Run it from that side, or leave it out.");
    }

    @Test
    void an_inside_corner_that_no_bit_makes_square_is_said_with_what_is_left() {
        assertThat(Molded.said(Molded.profile("corona 2-1/2 x 2"), Molded.BUILT_IN))
                .contains("PROBLEM inside-corner: Inside corner at (2.375, 1.875) is square; the cutter leaves a 1/16"
                        + " radius (0.0006 sq in). | Draw it 1/16 or accept.");
    }

    @Test
    void a_thin_web_beside_a_kerf_is_said() {
        assertThat(Molded.said(Molded.words("out 3/4, up 1/16, quirk 1/8 x 1/2 as kerf, up 2"), Molded.BUILT_IN))
                .containsExactly("PROBLEM thin-web: Only 1/16 left outside the kerf 'kerf'; wants 1/4. | Move it 3/16"
                        + " in, or leave it out.");
        assertThat(Molded.said(Molded.words("out 3/4, up 1, quirk 1/8 x 11/16 as kerf, up 2"), Molded.BUILT_IN))
                .containsExactly("PROBLEM thin-web: Only 1/16 left behind the kerf 'kerf'; wants 1/8. | Cut it 1/16"
                        + " less deep.");
    }

    @Test
    void a_knife_wider_than_the_machine_is_said() {
        assertThat(Molded.said(Molded.words("out 1, up 5, ovolo in 1/4, cove out 1/4, up 5"), Molded.BUILT_IN))
                .contains("PROBLEM knife-too-wide: Knife is 10-3/4 wide; the molder head takes 9. | Run it in two"
                        + " pieces, or list a wider head under 'heads:' in a catalog file.");
    }

    @Test
    void a_profile_deeper_than_the_head_takes_is_said() {
        assertThat(Molded.said(Molded.profile("stool 11/16 x 4-1/2"), Molded.BUILT_IN))
                .noneMatch(said -> said.contains("knife-too-wide"));
        // from below it is only 1 deep, which a head takes
        assertThat(Molded.said(Molded.words("out 1/2, up 1, out 2, up 1"), Molded.BUILT_IN))
                .isEmpty();
        assertThat(Molded.said(Molded.words("out 1/2, up 2, out 2, up 1"), Molded.BUILT_IN))
                .contains("PROBLEM profile-too-deep: A knife would cut 2 deep; the head takes 1-1/8. | Rip the"
                        + " deepest waste off first, or run it in two pieces.");
    }

    @Test
    void tilted_heads_are_asked_when_the_shop_has_them() {
        List<Side> sides = Side.with(List.of(30.0, -15.0));
        assertThat(FigurePrinter.INCHES.print(Side.words(sides.subList(3, 6))))
                .isEqualTo("inside head, outside head tilted up 30° and outside head tilted down 15°");
    }
}

package buildup.engine.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MillingTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            out 1/2, drip 1/4 x 1/4, out 1/2, up 2 | undercut | The line between (0.500, 0.000) and (0.750, 0.000) cannot be cut from the front; it needs a pass from below. | Run it once more that way, or draw it open to the front.
            out 1, up 1/2, quirk 1/2 x 0.998, up 1/2 | kerf-through | Kerf is 1- deep in a 1 board. | Cut it less deep: leave 1/8.
            out 1, up 1/2, quirk 1/4 x 15/16, up 1/2 | thin-web | Only 1/16 left behind the kerf 'quirk'; wants 1/8. | Move it 1/16 in, or leave it out.
            out 1, up 1/16, quirk 1/4 x 1/4, up 1  | thin-web | Only 1/16 left outside the kerf 'quirk'; wants 1/4. | Move it 3/16 in, or leave it out.
            """)
    void what_cannot_be_cut_is_said_with_where_how_much_and_a_cure(
            String words, String code, String message, String cure) {
        assertThat(Molded.said(Molded.words(words), Molded.BUILT_IN))
                .contains("PROBLEM " + code + ": " + message + " | " + cure);
    }

    @Test
    void a_square_inside_corner_keeps_the_radius_of_the_knife() {
        Profile step = Molded.words("out 1, up 1, chamfer in 1/2 x 1/2, up 1/4, out 1/4, up 1/2");
        assertThat(Molded.said(step, Molded.BUILT_IN))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("PROBLEM inside-corner: ")
                        .contains("the cutter leaves a 1/16 radius")
                        .endsWith("| Draw it 1/16 or accept."));
    }

    @Test
    void a_knife_wider_than_the_machine_is_a_problem_with_how_much() {
        Profile wide = Molded.words("out 1, up 9, ovolo in 1/2, in to 0");
        assertThat(Molded.said(wide, Molded.BUILT_IN))
                .contains("PROBLEM knife-too-wide: Knife is 9-3/4 wide; the molder head takes 9. | Run it in two"
                        + " pieces, or list a wider head under 'heads:' in a catalog file.");
    }

    @Test
    void a_profile_too_deep_for_the_head_is_a_problem_with_how_much() {
        Profile deep = Molded.words("out 1/4, cove 2, up 1/4");
        assertThat(Molded.said(deep, Molded.BUILT_IN))
                .contains("PROBLEM profile-too-deep: A knife would cut 2 deep; the head takes 1-1/8. | Rip the deepest"
                        + " waste off first, or run it in two pieces.");
    }

    @Test
    void a_board_is_planed_and_nothing_more() {
        Milled board = Molded.milled(Profile.board("board", 0.75, 3.5));
        assertThat(board.isPlain()).isTrue();
        assertThat(board.knife()).isEmpty();
        assertThat(board.undercuts()).isEmpty();
    }

    /** Each made with the bit of its own name and radius, as a maker draws it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            out 3/4, ovolo in 3/4, in to 0                      | round-over, radius 3/4
            out 1, up 1, cove in 1/2, up 1/2                    | cove bit, radius 1/2
            out 1, up 1/2, quirk 1/4 x 1/4, up 1                | straight bit, diameter 1/4
            """)
    void a_profile_made_for_one_bit_is_made_with_it(String words, String bit) {
        Milled milled = Molded.milled(Molded.words(words));
        Passes passes = milled.passes().orElseThrow();
        assertThat(passes.unmade()).as(words).isEmpty();
        assertThat(passes.leftArea()).isCloseTo(0, within(1e-6));
        assertThat(passes.inOrder()).extracting(Pass::cutter).as(words).containsExactly(bit);
        assertThat(passes.proven()).isTrue();
    }

    /** Places in the wood, a little off its edge, are in no pass; so for the whole catalog. */
    @Test
    void no_pass_cuts_into_the_profile() {
        Random random = new Random(4);
        for (Profile profile : Molded.all()) {
            Milled milled = Molded.milled(profile);
            Outline wood = milled.stick().outline();
            Box box = wood.box();
            for (int i = 0; i < 60; i++) {
                Point p = new Point(
                        box.back() + random.nextDouble() * box.width(),
                        box.bottom() + random.nextDouble() * box.height());
                boolean deep = wood.holds(p)
                        && wood.strokes().stream()
                                .allMatch(stroke -> stroke.segment().distance(p) > 0.01);
                if (deep) {
                    milled.passes()
                            .orElseThrow()
                            .inOrder()
                            .forEach(pass -> assertThat(pass.swept().holds(p))
                                    .as("%s, %s at %s", profile.name(), pass.cutter(), p)
                                    .isFalse());
                }
            }
        }
    }

    /** What is cut and what is left are together what had to come off, where nothing comes off twice. */
    @Test
    void what_is_left_is_never_more_than_what_had_to_come_off() {
        for (Profile profile : Molded.all()) {
            Milled milled = Molded.milled(profile);
            double waste = milled.stick().waste();
            double left = milled.passes().orElseThrow().leftArea();
            // what is left is drawn and measured on chords
            double slack = Tolerance.CHORD * milled.stick().outline().perimeter();
            assertThat(left).as(profile.name()).isBetween(0.0, waste + slack);
            if (milled.passes().orElseThrow().inOrder().isEmpty()) {
                assertThat(left).as(profile.name()).isCloseTo(waste, within(slack));
            }
        }
    }

    /** Against every choice of ways. */
    @Test
    void the_fewest_runs_are_what_trying_every_choice_gives() {
        Random random = new Random(8);
        for (int round = 0; round < 200; round++) {
            int atoms = 1 + random.nextInt(7);
            List<BitSet> ways = new ArrayList<>();
            List<Integer> costs = new ArrayList<>();
            BitSet all = new BitSet();
            for (int i = 0; i < 1 + random.nextInt(9); i++) {
                BitSet way = new BitSet();
                for (int atom = 0; atom < atoms; atom++) {
                    way.set(atom, random.nextInt(3) == 0);
                }
                ways.add(way);
                costs.add(1 + random.nextInt(5));
                all.or(way);
            }
            int best = Integer.MAX_VALUE;
            for (int choice = 0; choice < 1 << ways.size(); choice++) {
                BitSet made = new BitSet();
                int cost = 0;
                for (int i = 0; i < ways.size(); i++) {
                    if ((choice >> i & 1) == 1) {
                        made.or(ways.get(i));
                        cost += costs.get(i);
                    }
                }
                best = made.equals(all) ? Math.min(best, cost) : best;
            }
            Cover cover = Cover.of(ways, costs);
            BitSet made = new BitSet();
            cover.chosen().forEach(i -> made.or(ways.get(i)));
            assertThat(made).as("round %d", round).isEqualTo(all);
            assertThat(cover.proven()).isTrue();
            assertThat(cover.chosen().stream().mapToInt(costs::get).sum())
                    .as("round %d", round)
                    .isEqualTo(best);
        }
    }

    /** A cutter follows a hollow of its own radius; a larger one does not. */
    @Test
    void the_largest_cutter_for_a_hollow_has_its_radius_unless_something_stands_in_the_way() {
        List<Hollow> cove =
                Molded.milled(Molded.words("out 1/4, cove 1, up 1/4")).hollows();
        assertThat(cove).singleElement().satisfies(hollow -> {
            assertThat(hollow.radius()).isCloseTo(1, within(1e-9));
            assertThat(hollow.largest()).isCloseTo(1, within(1e-9));
        });
    }

    @Test
    void a_shop_without_heads_still_says_what_a_corner_keeps() {
        assertThat(Catalog.builtIn().heads()).isNotEmpty();
        assertThat(Molded.BUILT_IN.heads().get(0).corner().toInches()).isCloseTo(1.0 / 16, within(1e-12));
    }
}

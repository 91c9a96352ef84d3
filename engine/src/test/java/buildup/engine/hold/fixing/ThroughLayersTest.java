package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Factor;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nails and screws through a rail, its apron and plaster into a stud; lengths by hand. */
class ThroughLayersTest {
    private static final List<String> LAYERS = List.of(
            "name: apron, profile: board 3/4 x 2-1/2, back: wall, bottom: datum",
            "name: rail, profile: board 3/4 x 3, back: apron.face, bottom: 1-1/2");

    private static String wall(String covering) {
        return "{ floor: -34, wall: { covering: " + covering + " } }";
    }

    private static String row(String use) {
        return "piece: rail, use: " + use + ", at: { up: 2 }";
    }

    private static Joint outer(Driven driven) {
        return driven.nail(1).joints().get(0);
    }

    /**
     * The shank goes 3/4 into the apron and 1 into the stud: 1-3/4, over 10 diameters of 0.164, where NDS 2018, 12.1.6.4 and
     * Table 12N note 3 (as quoted) ask for no reduction. In the apron alone it would be 4.6 diameters, which count nothing.
     */
    @Test
    void a_screw_into_the_stud_holds_the_outer_board_across_by_all_the_wood_behind_it() {
        Joint plaster = outer(Driven.in(wall("1/2"), LAYERS, row("screw 8 x 3")));
        Joint bare = outer(Driven.in(wall("0"), LAYERS, row("screw 8 x 2-1/2")));
        Joint short2 = outer(Driven.in(wall("1/2"), LAYERS, row("screw 8 x 2")));
        assertThat(plaster.across()).isEmpty();
        assertThat(plaster.lateral()).isPositive().isLessThanOrEqualTo(bare.lateral() + 1e-9);
        assertThat(short2.across()).extracting(Factor::why).contains(Factor.Why.SHORT_BITE);
        assertThat(short2.lateral()).as("the apron alone").isZero();
    }

    @Test
    void a_shank_of_six_to_ten_diameters_beyond_the_joint_counts_in_proportion() {
        // 3/4 in the apron and 1/2 in the stud
        Joint joint = outer(Driven.in(wall("1/2"), LAYERS, row("screw 8 x 2-1/2")));
        assertThat(joint.across()).extracting(Factor::why).containsExactly(Factor.Why.SHORT_BITE);
        assertThat(joint.across().get(0).value()).isCloseTo(1.25 / 0.164 / 10, within(1e-9));
    }

    /**
     * A cleat on the ceiling under a joist and a board under it, held by one slanted screw: 3 less 2-1/4 over cos 30 leaves
     * 0.40 in the joist, where 6 diameters of 0.151 are 0.91. That is enough beyond the board, not beyond the cleat, which
     * nothing else holds.
     */
    @Test
    void a_piece_in_between_does_not_hang_by_a_point() {
        List<String> ledge = List.of(
                "name: joist, kind: framing, section: [out 1-1/2, up 7-1/4], back: 20, bottom: ceiling",
                "name: cleat, profile: board 1-1/2 x 3-1/2, lay: flat, back: 19, top: ceiling",
                "name: board, profile: board 3/4 x 5-1/2, lay: flat, back: 18, top: cleat.bottom");
        String room = "{ floor: -96, ceiling: 0 }";
        List<Joint> shallow = hung(room, ledge, "3");
        assertThat(shallow.get(0).byItsPoint()).isFalse();
        assertThat(shallow.get(1).bite()).isCloseTo(3 - 2.25 / Math.cos(Math.toRadians(30)), within(1e-9));
        assertThat(shallow.get(1).byItsPoint()).isTrue();
        // straight up, 1-1/4 of a screw of 3-1/2 is in the joist
        List<Joint> deep = Driven.in(
                        room, ledge, "piece: board, use: screw 8 x 3-1/2, at: { out: 20-3/4, up: -2-1/4 }, spacing: 16")
                .nail(1)
                .joints();
        assertThat(deep.get(1).bite()).isCloseTo(1.25, within(1e-9));
        assertThat(deep.get(1).byItsPoint()).isFalse();
    }

    private static List<Joint> hung(String room, List<String> ledge, String length) {
        String row = "piece: board, use: trim screw 7 x " + length
                + ", at: { out: 19-1/8, up: -2-1/4 }, angle: -30, spacing: 16";
        return Driven.in(room, ledge, row).nail(1).joints();
    }

    @Test
    void a_longer_nail_never_bites_too_little_where_a_shorter_one_bites_enough() {
        for (Fastener fastener : Driven.CATALOG.fasteners()) {
            boolean enough = false;
            for (Fastener.Cut cut : fastener.cuts()) {
                Driven driven = Driven.in(wall("1/2"), LAYERS, row(cut.call()));
                if (fastener.kind() == Fastener.Kind.NAIL) {
                    boolean met = driven.nail(1).biteCheck().met();
                    assertThat(met || !enough).as(cut.call()).isTrue();
                    enough = met;
                }
            }
        }
    }

    @Test
    void a_nail_that_goes_just_through_the_apron_into_plaster_is_offered_and_holds() {
        Driven tooShort = Driven.in(wall("1/2"), LAYERS, row("18 ga x 1-1/4"));
        assertThat(tooShort.said())
                .containsExactly("PROBLEM nail-too-short rail 7 Nail 1 (18 ga x 1-1/4): only 1/2 left in 'apron'. Needs"
                        + " 5/8 (12 diameters). | Use 18 ga x 1-1/2.");
        for (String use : List.of("18 ga x 1-1/2", "16 ga x 2", "16 ga x 2-1/4")) {
            Driven followed = Driven.in(wall("1/2"), LAYERS, row(use));
            assertThat(followed.said()).as(use).isEmpty();
            assertThat(followed.nail(1).holds()).as(use).isTrue();
        }
    }

    @Test
    void a_nail_meant_for_the_wall_that_bites_too_little_in_all_is_told_of_the_wall() {
        List<String> thin = List.of(
                "name: apron, profile: board 1/2 x 2-1/2, back: wall, bottom: datum",
                "name: rail, profile: board 3/4 x 3, back: apron.face, bottom: 1-1/2");
        assertThat(Driven.in(wall("1/2"), thin, row("15 ga x 2")).said().get(0))
                .contains("only 1/4 left in the wall. Needs 7/8");
    }

    private static final List<String> HIGH_ON_THE_WALL =
            List.of("name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: -2");

    private static final String LOW_WALL = "{ floor: -90, wall: { from: -90, to: -2, covering: 1/2 } }";

    @Test
    void a_nail_that_shows_between_its_board_and_the_wall_is_a_fault() {
        Driven driven = Driven.in(
                LOW_WALL, HIGH_ON_THE_WALL, "piece: frieze, use: 16 ga x 2-1/4, at: { up: -1-11/16 }, angle: -30");
        Fixed nail = driven.nail(1);
        // at 30 degrees it is 5/8 along when it is 5/16 down, and 0.866 when it is 3/4 in
        assertThat(nail.drive().crossings().get(1).stuff()).isEqualTo(Crossing.Stuff.AIR);
        assertThat(nail.check(Check.Rule.OPEN_AIR).orElseThrow().has())
                .isCloseTo(0.75 / Math.cos(Math.PI / 6) - 0.625, within(1e-6));
        assertThat(nail.holds()).isFalse();
        assertThat(driven.said().get(0))
                .startsWith(
                        "PROBLEM nail-breaks-out frieze 6 Nail 1 (16 ga x 2-1/4) comes out of 'frieze' at its bottom:"
                                + " 1/4 of it shows before it goes into wood again.");
        assertThat(driven.proposals()).isEmpty();
    }

    @Test
    void a_nail_through_a_gap_that_its_board_hides_is_no_fault() {
        List<String> spaced = List.of("name: frieze, profile: board 3/4 x 5-1/2, back: 1/8, bottom: 0");
        Driven driven = Driven.in(wall("1/2"), spaced, "piece: frieze, use: 15 ga x 2-1/2, at: { up: 2 }");
        assertThat(driven.nail(1).drive().air()).isCloseTo(0.125, within(1e-9));
        assertThat(driven.said()).isEmpty();
        // nor where a cap over the board leaves the gap open at the bottom alone
        List<String> capped = List.of(
                spaced.get(0), "name: cap, profile: board 3/4 x 2-1/2, lay: flat, back: wall, bottom: frieze.top");
        assertThat(Driven.in(wall("1/2"), capped, "piece: frieze, use: 15 ga x 2-1/2, at: { up: 2 }")
                        .said())
                .isEmpty();
    }
}

package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Grip;
import buildup.engine.hold.nail.Hiding.Grade;
import buildup.engine.hold.nail.Strength;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.NoticeWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of nails that do not hold, come out or cannot be driven, each with its cure; and what is not said. */
class NailFaultsTest {
    private static final String OPEN = "{ wall: { solid: no } }";
    private static final String ROOM = "{ floor: -84, ceiling: 12, wall: { solid: yes, covering: 1/2 } }";

    private static final String BLOCK = "name: block, kind: nailer, section: [out 1-1/2, up 3], back: 0, bottom: 0";

    private static List<String> pieces(String... pieces) {
        return List.of(pieces);
    }

    private static List<String> and(List<String> pieces, String... more) {
        List<String> all = new ArrayList<>(pieces);
        all.addAll(Arrays.asList(more));
        return all;
    }

    private static final List<String> FACED =
            pieces(BLOCK, "name: face, profile: board 3/4 x 3, back: block.face, bottom: 0");

    private static String row(String use, String more) {
        return "piece: face, use: " + use + ", at: { up: 1-1/2 }" + more;
    }

    @Test
    void nothing_is_said_of_a_nail_that_holds() {
        Driven driven = Driven.in(OPEN, FACED, row("15 ga x 2", ""));
        assertThat(driven.said()).isEmpty();
        assertThat(driven.nail(1).sound()).isTrue();
        assertThat(driven.nail(1).edge()).hasValueCloseTo(1.5, within(1e-9));
        assertThat(driven.nail(1).check(Check.Rule.FAR_FACE).orElseThrow().has())
                .isCloseTo(0.25, within(1e-9));
    }

    @Test
    void a_nail_that_comes_out_is_cured_by_the_length_that_stays_inside() {
        List<String> tall = pieces(
                "name: block, kind: nailer, section: [out 1-1/2, up 6], back: 0, bottom: 0",
                "name: face, profile: board 3/4 x 6, back: block.face, bottom: 0");
        Driven driven = Driven.in(OPEN, tall, row("15 ga x 2-1/2", ""));
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-breaks-out face 7 Nail 1 (15 ga x 2-1/2) comes out of 'block' by 1/4, at its"
                                + " back. | Use 15 ga x 2.");
    }

    @Test
    void a_nail_through_the_front_of_a_bed_is_said_where_it_comes_out() {
        List<String> pieces = pieces(
                "name: frieze, profile: board 3/4 x 5-1/2, back: 0, bottom: 0",
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: frieze.face, top: frieze.top");
        Driven driven = Driven.in(OPEN, pieces, "piece: bed, use: 18 ga x 1-1/2, at: { out: 1-1/8, up: bed.top }");
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-breaks-out bed 7 Nail 1 (18 ga x 1-1/2) comes out of 'bed' by 5/8, at its"
                                + " front. | Tilt it 25° toward the wall, to 'angle: 25'.");
        assertThat(driven.nail(1).drive().breakOut().orElseThrow().hidden()).isFalse();
    }

    @Test
    void a_short_nail_is_cured_by_the_next_length_and_else_by_another_nail() {
        List<String> thick = pieces(
                "name: block, kind: nailer, section: [out 6, up 3], back: 0, bottom: 0",
                "name: face, profile: board 1-1/2 x 3, back: block.face, bottom: 0");
        Driven driven = Driven.in(
                OPEN, thick, row("18 ga x 1-3/4", ""), row("18 ga x 2", ", first: 4"), row("18 ga x 1", ", first: 8"));
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-too-short face 7 Nail 1 (18 ga x 1-3/4): only 1/4 left in 'block'. Needs 5/8 (12"
                                + " diameters). | Use 16 ga x 2-1/4.",
                        "PROBLEM nail-too-short face 8 Nail 2 (18 ga x 2): only 1/2 left in 'block'. Needs 5/8 (12"
                                + " diameters). | Use 16 ga x 2-1/4.",
                        "PROBLEM nail-too-short face 9 Nail 3 (18 ga x 1): it ends in 'face' itself. Needs 5/8 (12"
                                + " diameters). | Use 16 ga x 2-1/4.");
        assertThat(Driven.in(OPEN, FACED, row("18 ga x 1", "")).said().get(0)).endsWith("| Use 18 ga x 1-1/2.");
    }

    @Test
    void a_screw_is_judged_by_six_diameters_and_by_its_thread() {
        Driven driven = Driven.in(OPEN, FACED, row("screw 8 x 1-1/2", ""), row("screw 8 x 2", ", first: 8"));
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-too-short face 7 Screw 1 (screw 8 x 1-1/2): only 3/4 left in 'block'. Needs"
                                + " 1 (6 diameters). | Use screw 8 x 1-3/4.");
        Grip near = driven.nail(2).grips().get(0);
        assertThat(near.bite()).as("the third at the head has no thread").isCloseTo(0.75 - 2.0 / 3, within(1e-9));
        assertThat(driven.nail(2).design()).isCloseTo(1.25 * 2850 * 0.42 * 0.42 * 0.164, within(1e-9));
    }

    @Test
    void a_nail_into_the_air_ahead_of_wood_is_cured_by_the_length_that_reaches_it() {
        List<String> apart = pieces(BLOCK, "name: face, profile: board 3/4 x 3, back: block.face + 3/4, bottom: 0");
        assertThat(Driven.in(OPEN, apart, row("15 ga x 1-1/4", "")).said())
                .containsExactly(
                        "PROBLEM nail-in-air face 7 Nail 1 (15 ga x 1-1/4) ends in the air behind 'face'. | Use"
                                + " 15 ga x 2-1/2.");
        List<String> far = pieces(BLOCK, "name: face, profile: board 3/4 x 3, back: block.face + 1-3/4, bottom: 0");
        assertThat(Driven.in(OPEN, far, row("15 ga x 1-1/4", "")).said())
                .containsExactly(
                        "PROBLEM nail-in-air face 7 Nail 1 (15 ga x 1-1/4) ends in the air behind 'face'. | None"
                                + " of the changes tried cures this: longer will not help, and no place on its face has wood"
                                + " behind it.");
    }

    @Test
    void a_nail_driven_before_what_it_needs_is_up_is_cured_by_waiting() {
        List<String> early = pieces(
                "name: face, profile: board 3/4 x 3, back: 1-1/2, bottom: 0",
                "name: block, kind: nailer, section: [out 1-1/2, up 3], back: 0, bottom: 0");
        assertThat(Driven.in(OPEN, early, row("15 ga x 2", "")).said())
                .containsExactly(
                        "PROBLEM nail-breaks-out face 7 Nail 1 (15 ga x 2) comes out of 'face' by 1-1/4, at its"
                                + " back. | Drive it after 'block' is up.");
        assertThat(Driven.in(OPEN, early, row("15 ga x 2", ", after: block")).said())
                .isEmpty();
    }

    @Test
    void end_grain_counts_as_nothing_and_across_it_two_thirds() {
        List<String> end = pieces(
                "name: block, kind: nailer, grain: out, section: [out 3, up 3], back: 0, bottom: 0",
                "name: face, profile: board 3/4 x 3, back: block.face, bottom: 0");
        Driven driven = Driven.in(OPEN, end, row("15 ga x 2", ""));
        Driven side = Driven.in(
                OPEN, pieces(end.get(0).replace("grain: out", "grain: up"), end.get(1)), row("15 ga x 2", ""));
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-in-end-grain-or-near-an-edge face 7 'face' is held in end grain of 'block' by"
                                + " nail 1 (15 ga x 2): counts as nothing. | Glue and pin it, or turn the block.");
        assertThat(driven.nail(1).allowable()).isZero();
        assertThat(driven.nail(1).biteFor(driven.body("block"), 5)).isEmpty();
        assertThat(side.said()).isEmpty();
        assertThat(driven.nail(1).joints().get(0).lateral())
                .isCloseTo(side.nail(1).joints().get(0).lateral() * 2 / 3, within(1e-9));
    }

    @Test
    void a_panel_holds_nothing_that_is_published() {
        List<String> board = pieces(BLOCK + ", wood: mdf", FACED.get(1));
        Driven driven = Driven.in(OPEN, board, row("15 ga x 2", ""));
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM no-published-value face 7 'face' is held in 'block' by nail 1 (15 ga x 2): no value"
                                + " for nails in panels is known here, so it counts as nothing. | Nail into wood, or glue it.");
        assertThat(driven.nail(1).joints().get(0).lateral()).isZero();
    }

    @Test
    void a_nail_that_only_grazes_the_corner_of_its_piece_does_not_go_in() {
        Driven driven =
                Driven.in(OPEN, FACED, "piece: face, use: 15 ga x 2, at: { out: face.face, up: face.top }, angle: 60");
        assertThat(driven.said())
                .first()
                .asString()
                .startsWith(
                        "PROBLEM nail-too-short face 7 Nail 1 (15 ga x 2): it does not go into 'face' at all. Needs");
    }

    @Test
    void a_nail_near_an_edge_is_said_with_what_it_needs() {
        Driven driven = Driven.in(OPEN, FACED, "piece: face, use: 15 ga x 2, at: { up: face.top - 1/8 }");
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-in-end-grain-or-near-an-edge face 7 Nail 1 (15 ga x 2) runs 1/8 from an edge."
                                + " Needs 3/16 (2.5 diameters). | Move it to 2-5/8 up.");
    }

    /** Half of a shank in a face lies in the air; 8d finish, 0.099 thick, wants 2.5 times that, 0.2475, of wood beside it. */
    @Test
    void a_nail_in_a_face_has_no_wood_beside_it() {
        List<String> post = pieces(
                "name: post, kind: framing, section: [out 3/4, up 30], back: 0, bottom: 0",
                "name: stool, profile: board 1 x 5-1/2, lay: flat, back: -2-1/2, bottom: 30");
        for (double out : new double[] {0, 0.001, 0.004, 0.006, 0.1, 0.65, 0.746, 0.749}) {
            Driven driven = Driven.in(OPEN, post, "piece: stool, use: 8d finish, at: { out: " + out + ", up: 31 }");
            assertThat(driven.nail(1).edge()).as("at %s", out).hasValueCloseTo(Math.min(out, 0.75 - out), within(1e-6));
            assertThat(driven.nail(1).sound()).as("at %s", out).isFalse();
            assertThat(driven.said())
                    .as("at %s", out)
                    .anyMatch(said -> said.contains("from an edge. Needs 1/4") && said.contains("Move it to 3/8 out"));
        }
        Driven middle = Driven.in(OPEN, post, "piece: stool, use: 8d finish, at: { out: 3/8, up: 31 }");
        assertThat(middle.nail(1).edge()).hasValueCloseTo(0.375, within(1e-9));
        assertThat(middle.said()).isEmpty();
    }

    /** Two flush boards side by side hold no more on the joint between them than each does in its face. */
    @Test
    void a_nail_on_the_joint_of_two_pieces_has_no_wood_beside_it() {
        Driven driven = Driven.in(
                OPEN,
                pieces(
                        "name: sill, kind: framing, section: [out 4, up 1-1/2], back: -4, bottom: 28-1/2",
                        "name: apron, profile: board 3/4 x 3-1/2, back: 0, top: 30",
                        "name: stool, profile: board 1 x 5-1/2, lay: flat, back: -2-1/2, bottom: 30"),
                "piece: stool, use: 8d finish, at: { out: 0, up: 31 }");
        assertThat(driven.nail(1).edge()).hasValueCloseTo(0.0, within(1e-9));
        assertThat(driven.nail(1).holds()).isFalse();
    }

    /** A cleat of 3/4: its middle is 3/8 from both edges, and a screw of 0.164 wants 0.41, or 0.273 bored for. */
    @Test
    void a_narrow_cleat_is_bored_for_and_holds_as_much() {
        List<String> cleat = pieces(BLOCK, "name: cleat, profile: board 3/4 x 3/4, back: block.face, bottom: 1");
        String screw = "piece: cleat, use: screw 8 x 2, at: { up: 1-3/8 }";
        Driven driven = Driven.in(OPEN, cleat, screw);
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-in-end-grain-or-near-an-edge cleat 7 Screw 1 (screw 8 x 2) runs 3/8 from an edge."
                                + " Needs 7/16 (2.5 diameters). | Bore for it: 'bored: yes'.");
        Driven bored = Driven.in(OPEN, cleat, screw + ", bored: yes");
        assertThat(bored.said()).isEmpty();
        assertThat(bored.nail(1).sound()).isTrue();
        assertThat(bored.nail(1).check(Check.Rule.EDGE_BORED).orElseThrow().needs())
                .isCloseTo(2.5 * 0.164 * 2 / 3, within(1e-9));
        assertThat(bored.nail(1).joints().get(0).pull())
                .isEqualTo(driven.nail(1).joints().get(0).pull());
        assertThat(Driven.in(OPEN, cleat, screw.replace("1-3/8", "1-1/8") + ", bored: yes")
                        .said())
                .containsExactly(
                        "PROBLEM nail-in-end-grain-or-near-an-edge cleat 7 Screw 1 (screw 8 x 2) runs 1/8 from an edge."
                                + " Needs 5/16 (1.67 diameters, bored for). | Move it to 1-3/8 up.");
    }

    @Test
    void where_another_length_goes_with_another_place_the_fastener_is_called_by_its_name() {
        var row = Driven.in(OPEN, FACED, row("18 ga x 1-1/2", "")).nail(1).fastening();
        var other = row.use().fastener().cuts().stream()
                .filter(cut -> cut.length().toInches() == 2)
                .findFirst()
                .orElseThrow();
        var moved = new RowEdits(row).moved(new Point(0.125, 0), true, true, true, other);
        assertThat(NoticeWords.INCHES.cure(FixingNotices.NO_USE.notice().cure(moved)))
                .isEqualTo("Move it to 1/8 out, and use 18 ga x 2.");
    }

    @Test
    void a_row_that_is_tilted_already_is_told_the_angle_to_write() {
        var row = Driven.in(OPEN, FACED, row("18 ga x 1-1/2", ", angle: -10"))
                .nail(1)
                .fastening();
        var tilted = new RowEdits(row).tilted(15, Phrase.of("15° toward the wall"));
        assertThat(NoticeWords.INCHES.cure(FixingNotices.NO_USE.notice().cure(tilted)))
                .isEqualTo("Tilt it 15° toward the wall, to 'angle: 5'.");
    }

    /** Round outermost, the ogee begins in line with the face; a rabbet 1/8 off is an edge, and needs 2.5 of 0.072. */
    @Test
    void a_molding_that_begins_in_line_with_the_face_is_no_edge_of_it() {
        String base = "name: base, section: [out 3/4, up 3, %s], back: block.face, bottom: 0";
        String row = "piece: base, use: 15 ga x 2, at: { up: 2-7/8 }";
        String tall = "name: block, kind: nailer, section: [out 1-1/2, up 6], back: 0, bottom: -1";
        Driven ogee = Driven.in(OPEN, pieces(tall, base.formatted("ogee in 3/4 x 1/2")), row);
        assertThat(ogee.said()).isEmpty();
        assertThat(ogee.nail(1).edge().orElseThrow()).isGreaterThan(0.25);
        Driven rabbet = Driven.in(OPEN, pieces(tall, base.formatted("in 1/2, up 3/4")), row);
        assertThat(rabbet.said())
                .singleElement()
                .asString()
                .contains("runs 1/8 from an edge. Needs 3/16 (2.5 diameters).");
    }

    @Test
    void floor_and_ceiling_are_not_known_to_hold() {
        Driven driven = Driven.in(
                ROOM,
                pieces("name: rail, profile: board 3/4 x 2, lay: flat, back: wall, top: ceiling"),
                "piece: rail, use: 15 ga x 2, at: { out: 1, up: rail.bottom }");
        assertThat(driven.said().get(0))
                .startsWith(
                        "PROBLEM nail-too-short rail 6 Nail 1 (15 ga x 2): it ends in the ceiling, where nothing is known"
                                + " to hold.");
    }

    @Test
    void a_tool_that_does_not_get_in_is_said_with_what_is_in_its_way() {
        List<String> low = pieces(
                "name: rail, kind: nailer, profile: board 1 x 5, lay: flat, back: wall, top: 9",
                "name: cap, profile: board 3/4 x 5, lay: flat, back: wall, bottom: rail.top");
        Driven driven = Driven.in(ROOM, low, "piece: cap, use: 18 ga x 1-1/2, at: { out: 3, up: cap.top }");
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM tool-cannot-reach cap 7 The brad nailer for nail 1 (18 ga x 1-1/2) runs into the"
                                + " ceiling. | None of the changes tried cures this: no tilt or place on its face gives the tool"
                                + " room.");
        assertThat(driven.nail(1).holds()).isTrue();
        assertThat(driven.nail(1).sound()).isFalse();
    }

    @Test
    void a_piece_that_is_already_over_the_spot_is_said() {
        List<String> over = and(FACED, "name: cover, profile: board 1/2 x 3, back: face.face, bottom: 0");
        assertThat(Driven.in(OPEN, over, row("15 ga x 2", ", after: cover")).said())
                .containsExactly(
                        "PROBLEM tool-cannot-reach face 8 'cover' lies over the spot of nail 1 (15 ga x 2) by then."
                                + " | Drive it before 'cover' goes up.");
        Driven intime = Driven.in(OPEN, over, row("15 ga x 2", ""));
        assertThat(intime.said()).isEmpty();
        assertThat(intime.nail(1).hiding().coveredBy()).hasValue(intime.body("cover"));
    }

    @Test
    void a_tool_beside_a_shelf_tilts_away_from_it() {
        List<String> shelf = pieces(
                BLOCK,
                "name: shelf, kind: framing, section: [out 12, up 3/4], back: 0, bottom: 3",
                "name: face, profile: board 3/4 x 3, back: block.face, bottom: 0");
        Driven driven = Driven.in(OPEN, shelf, "piece: face, use: 18 ga x 1-1/2, at: { up: 2-1/4 }");
        assertThat(driven.said())
                .containsExactly("PROBLEM tool-cannot-reach face 8 The brad nailer for nail 1 (18 ga x 1-1/2) runs into"
                        + " 'shelf'. | Tilt it 15° up, to 'angle: 15'.");
    }

    /** From the head back are 3 of screw; the screen, 1/4 off the face and 1/2 thick, ends before the bit begins. */
    @Test
    void a_screw_does_not_start_through_a_thin_board_behind_which_there_is_room_for_its_driver() {
        for (String gap : List.of("1/16", "1/4", "2")) {
            Driven driven = Driven.in(
                    OPEN,
                    and(
                            FACED,
                            "name: screen, kind: framing, section: [out 1/2, up 3], back: face.face + " + gap
                                    + ", bottom: 0"),
                    row("screw 8 x 3", ""));
            assertThat(driven.nail(1).reach().inTheWay()).as(gap).hasValue(driven.body("screen"));
        }
    }

    @Test
    void a_screw_needs_room_for_its_own_length_in_front_of_the_bit() {
        List<String> opposite =
                and(FACED, "name: screen, kind: framing, section: [out 1, up 3], back: 12-1/2, bottom: 0");
        Driven driven = Driven.in(OPEN, opposite, row("screw 8 x 2", ""), row("15 ga x 2", ""));
        assertThat(driven.nail(1).reach().inTheWay())
                .as("2 + 2-1/2 + 6 in 10-1/4")
                .hasValue(driven.body("screen"));
        assertThat(driven.nail(2).reach().inTheWay()).as("2-3/4 + 8").hasValue(driven.body("screen"));
        assertThat(Driven.in(OPEN, opposite, row("18 ga x 2", ""))
                        .nail(1)
                        .reach()
                        .free())
                .isTrue();
    }

    @Test
    void a_headless_pin_holds_no_more_than_its_grip_in_the_near_piece() {
        List<String> thin = pieces(BLOCK, "name: face, profile: board 1/4 x 3, back: block.face, bottom: 0");
        Fixed pin = Driven.in(OPEN, thin, row("23 ga x 1", "")).nail(1);
        double inch = Strength.designWithdrawal(Fastener.Kind.NAIL, 0.42, 0.025);
        assertThat(pin.joints().get(0).withdrawal()).as("in the block").isCloseTo(0.75 * inch, within(1e-9));
        assertThat(pin.joints().get(0).head()).as("in the face").isCloseTo(0.25 * inch, within(1e-9));
        assertThat(pin.allowable()).isCloseTo(0.25 * inch, within(1e-9));
    }

    @Test
    void what_becomes_of_a_head_follows_from_pieces_light_and_sight() {
        String room = "space: { floor: -60, wall: { solid: yes } }\n"
                + "eyes: [{ name: standing, distance: 72, height: floor + 62 }]\n";
        List<String> shelf = pieces(
                "name: ground, kind: nailer, profile: board 3/4 x 6, back: wall, bottom: 0",
                "name: board, section: [out 3/4 as bottom, up 3, quirk 1/8 x 1/8, up to 6], back: ground.face, bottom: 0",
                "name: shelf, profile: board 3/4 x 6, lay: flat, back: wall, bottom: 6");
        Driven driven = Driven.of(Driven.text(
                room,
                shelf,
                "piece: board, use: 18 ga x 1, at: { up: 1 }",
                "piece: board, use: 18 ga x 1, at: { up: 5 }",
                "piece: board, use: 18 ga x 1, at: { out: 1, up: board.top }",
                "piece: board, use: 18 ga x 1, at: { out: 1-3/8, up: 3-1/16 }",
                "piece: shelf, use: 18 ga x 1, at: { out: 0, up: 6-3/8 }",
                "piece: board, use: 18 ga x 1, at: { out: 1, up: 0 }"));
        assertThat(driven.all())
                .extracting(nail -> nail.hiding().grade())
                .containsExactly(Grade.SHOWS, Grade.SHADOW, Grade.COVERED, Grade.QUIRK, Grade.BEHIND, Grade.UNSEEN);
        assertThat(driven.nail(1).hiding().seenBy()).containsExactly("standing");
    }

    @Test
    void a_nail_that_ends_in_a_closed_hollow_past_a_good_bite_is_only_noted() {
        List<String> hollow = pieces(
                "name: post, kind: framing, section: [out 1, up 4], back: 0, bottom: 0",
                "name: sill, kind: framing, section: [out 4, up 1], back: 0, bottom: -1",
                "name: lid, kind: framing, section: [out 4, up 1], back: 0, bottom: 4",
                "name: inner, kind: nailer, section: [out 1, up 4], back: 2, bottom: 0",
                "name: face, profile: board 3/4 x 4, back: inner.face, bottom: 0");
        Driven driven = Driven.in(OPEN, hollow, row("15 ga x 2", ""));
        assertThat(driven.said())
                .containsExactly(
                        "NOTE nail-breaks-out face 10 Nail 1 (15 ga x 2) comes out of 'inner' by 1/4, at its back,"
                                + " into a closed hollow. | Tilt it 35° up, to 'angle: 35'.");
    }
}

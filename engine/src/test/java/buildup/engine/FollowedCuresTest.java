package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.edit.Editor;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the verdict offers is typed into the document, and the verdict is asked again. */
class FollowedCuresTest {
    private static final String HALL = "    left: die\n    right: die\n    stretches:\n";

    private static String base(String space, String... stretches) {
        return "wood: check-wood\nspace: " + space + "\npieces:\n"
                + "  - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor }\n"
                + "plan:\n  - name: hall\n" + HALL + "      - " + String.join("\n      - ", stretches) + "\n";
    }

    private static List<Notice> problems(String yaml, String code) {
        return Answered.of(yaml).notices().stream()
                .filter(notice ->
                        notice.level() == Level.PROBLEM && notice.code().equals(code))
                .toList();
    }

    /** The document once the first cure of that problem stands in it. */
    private static String followed(String yaml, String code) {
        Notice first = problems(yaml, code).get(0);
        Notices unable = new Notices();
        Optional<String> edited = Editor.edit(
                "stack.yaml", yaml, NoticeWords.in(Answered.of(yaml).unit()).edits(first), unable);
        assertThat(unable.sorted()).isEmpty();
        return edited.orElseThrow();
    }

    @Test
    void the_worst_hump_decides_and_what_clears_it_clears_every_other() {
        String humps = base(
                "{ floor: 0, wall: { solid: yes } }",
                "{ name: small, length: 100, corner: inside 90, floor: [[0, 0], [50, 1/16], [100, 0]] }",
                "{ name: big, length: 100, corner: inside 90, floor: [[0, 0], [50, 1/2], [100, 0]] }",
                "{ name: middling, length: 100, floor: [[0, 0], [50, 5/16], [100, 0]] }");
        assertThat(Answered.because(humps, Topic.FITS)).startsWith("'base' on 'big': the floor rises 1/2 into it");
        assertThat(Answered.cure(humps, Topic.FITS)).startsWith("Raise the stack by 1/2, or scribe");
        assertThat(problems(humps, "floor-too-high"))
                .extracting(notice -> notice.amount().orElseThrow().amount())
                .containsExactly(0.5, 0.3125, 0.0625);
        assertThat(problems(followed(humps, "floor-too-high"), "floor-too-high"))
                .isEmpty();
    }

    @Test
    void a_metric_hump_is_cleared_by_whole_millimeters() {
        String sags =
                "units: mm\nwood: check-wood\nspace: { floor: -2400, ceiling: 100, wall: { solid: yes } }\npieces:\n"
                        + "  - { name: frieze, profile: board 18 x 100, back: wall, top: ceiling }\nplan:\n  - name: hall\n"
                        + HALL
                        + "      - { name: small, length: 2500, corner: inside 90, ceiling: [[0, 100], [1200, 98], [2500, 100]] }\n"
                        + "      - { name: big, length: 2500, ceiling: [[0, 100], [1200, 85.4], [2500, 100]] }\n";
        assertThat(Answered.cure(sags, Topic.FITS)).startsWith("Lower the stack by 15 mm ");
        assertThat(problems(followed(sags, "ceiling-too-low"), "ceiling-too-low"))
                .isEmpty();
    }

    @Test
    void a_stack_between_two_humps_is_scribed_for_it_has_nowhere_to_go() {
        String pinched = base(
                "{ floor: 0, ceiling: 5-1/2, wall: { solid: yes } }",
                "{ name: one, length: 100, floor: [[0, 0], [50, 1/4], [100, 0]], ceiling: [[0, 5-1/2], [50, 5-3/8], [100,"
                        + " 5-1/2]] }");
        assertThat(Answered.cure(pinched, Topic.FITS)).isEqualTo("Scribe its bottom to the floor.");
        String low = base(
                "{ floor: 0, ceiling: 5-1/2, wall: { solid: yes } }",
                "{ name: one, length: 100, floor: [[0, 0], [50, 1/4], [100, 0]] }");
        assertThat(Answered.cure(low, Topic.FITS)).isEqualTo("Scribe its bottom to the floor.");
    }

    @Test
    void a_stack_is_not_raised_off_what_carries_it() {
        String shoe = base(
                        "{ floor: 0, wall: { solid: yes } }", "{ name: one, length: 100, floor: [[0, 0], [100, 1/4]] }")
                .replace(
                        "bottom: floor }\n",
                        "bottom: floor + 3/8 }\n"
                                + "  - { name: shoe, profile: board 1/2 x 3/4, back: base.face, bottom: floor }\n"
                                + "fastenings:\n"
                                + "  - { name: bn, piece: base, use: 15 ga x 2-1/2, at: { up: 2 } }\n"
                                + "  - { name: sn, piece: shoe, use: 18 ga x 1-1/4, at: { up: 3/8 } }\n");
        assertThat(Answered.because(shoe, Topic.FITS)).startsWith("'shoe' on 'one': the floor rises 1/4 into it");
        assertThat(Answered.cure(shoe, Topic.FITS)).isEqualTo("Scribe its bottom to the floor.");
    }

    /**
     * Drop 3-5/8 cos 38 + 1/4 sin 38 = 3.010; the back leans 38 degrees over the frieze's face at 3/4, and its foot lies
     * 1/4 of wall edge, less what that leans, up. So far under the ceiling the block is as wide as the hollow less 1/8.
     */
    @Test
    void a_crown_on_a_frieze_that_stops_under_the_ceiling_is_offered_a_block_that_holds_its_upper_edge() {
        for (String top : List.of("3-1/2", "3-3/4", "4", "4-1/4", "3")) {
            for (String unit : List.of("in", "mm")) {
                String crown = "units: " + unit + "\nwood: check-wood\n"
                        + "space: { floor: '-96\"', ceiling: '5\"', wall: { covering: '1/2\"' } }\npieces:\n"
                        + "  - { name: frieze, profile: board 3/4\" x 3-1/2\", back: wall, top: '" + top + "\"' }\n"
                        + "  - { name: crown, profile: check-crown-edged 9/16\" x 3-5/8\", back: frieze.face, top: ceiling }\n"
                        + "plan: [{ name: r, left: die, right: die, stretches: [{ name: w, length: '120\"' }] }]\n";
                assertThat(problems(crown, "upper-edge-not-held"))
                        .as(top + unit)
                        .hasSize(1);
                assertThat(Answered.cure(crown, Topic.HELD))
                        .as(top + unit)
                        .contains("At its foot it is")
                        .endsWith("[tried]");
                String held = followed(crown, "upper-edge-not-held");
                assertThat(problems(held, "upper-edge-not-held")).as(held).isEmpty();
                assertThat(problems(held, "overlap")).as(held).isEmpty();
            }
        }
    }

    /** North leaves 3/8 less 3/8 at its middle, east 3/8 and 1/4 at its end: 5/8 is the most, and what the gap varies by. */
    @Test
    void what_is_left_over_a_floor_is_told_round_the_whole_room() {
        String room = base(
                        "{ floor: 0, wall: { solid: yes } }",
                        "{ name: north, length: 100, corner: inside 90, floor: [[0, 0], [50, 3/8], [100, 0]] }",
                        "{ name: east, length: 100, floor: [[0, 0], [100, -1/4]] }")
                .replace("bottom: floor", "bottom: floor + 3/8");
        assertThat(Answered.because(room, Topic.FITS))
                .contains("0 left under base at 50 along north, the least; 5/8 at 100 along east, the most");
        assertThat(Answered.cure(room, Topic.FITS)).endsWith("the gap varies by 5/8");
    }

    private static final String DAMP =
            "units: mm\nwood: white-oak\nspace: { floor: -2400, wall: { covering: 12.5 } }\nseasons:\n"
                    + "  - { name: dry, temperature: 21 C, humidity: 25 %% }\n"
                    + "  - { name: damp, temperature: 26 C, humidity: 80 %% }\npieces:\n"
                    + "  - { name: ledge, profile: board 20 x 60, back: wall, bottom: datum }\n"
                    + "  - { name: panel, profile: board 18 x 285, back: wall, bottom: ledge.top, cut: flat }\n"
                    + "  - { name: cap, profile: board 20 x 60, %s back: wall, bottom: panel.top }\nfastenings:\n"
                    + "  - { name: ln, piece: ledge, use: '15 ga x 2-1/2\"', at: { up: 30 } }\n"
                    + "  - { name: pn, piece: panel, use: '15 ga x 2-1/2\"', at: { up: panel.bottom + %s } }\n%s";

    private static List<String> pressed(String yaml) {
        NoticeWords words = NoticeWords.in(Answered.of(yaml).unit());
        return problems(yaml, "no-room-to-swell").stream()
                .map(notice -> words.message(notice) + " " + words.cure(notice))
                .toList();
    }

    @Test
    void room_to_swell_is_left_on_the_side_that_presses_and_not_where_a_cap_rides_along() {
        String riding = DAMP.formatted(
                "lay: flat,", "142", "  - { name: cn, piece: cap, use: '16 ga x 2\"', at: { out: 9, up: cap.top } }\n");
        assertThat(pressed(riding))
                .singleElement()
                .asString()
                .startsWith("In damp 'panel' and 'ledge' are pressed together by ")
                .contains("Leave that gap between them");
        assertThat(pressed(riding.replace("bottom: ledge.top,", "bottom: ledge.top + 7,")))
                .isEmpty();
        assertThat(pressed(riding.replace("bottom: panel.top }", "bottom: panel.top + 7 }")))
                .singleElement()
                .asString()
                .contains("'panel' and 'ledge'");
    }

    @Test
    void a_panel_that_swells_both_ways_from_its_nails_is_given_room_on_both_sides() {
        String between = DAMP.formatted(
                "", "142", "  - { name: cn, piece: cap, use: '15 ga x 2-1/2\"', at: { up: cap.bottom + 30 } }\n");
        String said = pressed(between).get(0);
        Matcher rooms = Pattern.compile(
                        "Leave (\\d+) mm between 'panel' and '(ledge|cap)', (\\d+) mm between 'panel' and '(ledge|cap)' as built")
                .matcher(said);
        assertThat(rooms.find()).as(said).isTrue();
        int below = Integer.parseInt(rooms.group(rooms.group(2).equals("ledge") ? 1 : 3));
        int above = Integer.parseInt(rooms.group(rooms.group(2).equals("ledge") ? 3 : 1));
        assertThat(pressed(between.replace("bottom: ledge.top,", "bottom: ledge.top + " + below + ",")
                        .replace("bottom: panel.top }", "bottom: panel.top + " + above + " }")))
                .isEmpty();
    }

    private static final String SHELF = """
            wood: check-wood
            space: { floor: -40, ceiling: 30, wall: { covering: 1/2 } }
            pieces:
              - { name: cleat, kind: nailer, profile: board 3/4 x 5, back: wall, bottom: 0 }
              - { name: apron, profile: board 3/4 x 5-1/2, back: cleat.face, bottom: -1/2 }
              - { name: shelf, profile: board 3/4 x 7-1/4, lay: flat, back: wall, bottom: apron.top }
            loads: [{ name: books, on: shelf, out: 5, load: 8 lb/ft }]
            fastenings:
              - { name: cleat low, piece: cleat, use: screw 8 x 2-1/2, at: { up: 1 } }
              - { name: cleat high, piece: cleat, use: screw 8 x 2-1/2, at: { up: 4 } }
              - { name: pins, piece: apron, use: 18 ga x 1-1/4, at: { up: 2 } }
              - { name: shelf screws, piece: shelf, use: screw 8 x 1-3/4, at: { out: 3/8, up: shelf.top } }
            """;

    @Test
    void a_shelf_that_tips_over_an_apron_that_gives_is_offered_nails_through_the_apron() {
        assertThat(Answered.because(SHELF, Topic.STANDS)).contains("takes only");
        assertThat(Answered.cure(SHELF, Topic.STANDS)).contains("through apron").endsWith("[tried]");
        assertThat(problems(followed(SHELF, "load-too-much"), "load-too-much")).isEmpty();
    }

    /** The one place from which screws reach down into the frieze is taken: theirs stand between those that are there. */
    @Test
    void a_row_that_would_meet_another_is_begun_between_its_nails() {
        String taken = """
                wood: check-wood
                space: { floor: -84, wall: { covering: 1/2 } }
                pieces:
                  - { name: frieze, profile: board 3/4 x 6, back: wall, bottom: 0 }
                  - { name: cap, profile: board 1 x 4, lay: flat, back: wall, bottom: frieze.top }
                loads: [{ name: bowls, on: cap, out: 3, load: 10 lb/ft }]
                fastenings:
                  - { name: low, piece: frieze, use: 15 ga x 2-1/2, at: { up: 1 } }
                  - { name: high, piece: frieze, use: 15 ga x 2-1/2, at: { up: 4 } }
                  - { name: across, piece: frieze, use: 15 ga x 2, at: { up: 5-1/2 } }
                  - { name: down, piece: cap, use: 18 ga x 2, at: { out: 3/8 } }
                """;
        assertThat(Answered.because(taken, Topic.STANDS)).contains("takes only");
        assertThat(Answered.cure(taken, Topic.STANDS)).contains("'first: ").endsWith("[tried]");
        String followed = followed(taken, "load-too-much");
        assertThat(followed).contains("first: ");
        assertThat(problems(followed, "load-too-much")).isEmpty();
        assertThat(problems(followed, "nails-that-cross")).isEmpty();
    }

    /** What is offered under one heading is tried before another says that nothing helps. */
    @Test
    void a_crown_nailed_low_and_too_near_an_edge_is_offered_a_thinner_nail_and_a_block_with_nails_into_it() {
        String crown = """
                wood: check-wood
                space: { floor: -96, ceiling: 0, wall: { covering: 1/2 } }
                pieces:
                  - { name: strip, profile: board 3/4 x 5-1/2, back: wall, top: ceiling }
                  - { name: molding, profile: check-crown-edged 9/16 x 3-5/8, back: strip.face, top: ceiling }
                fastenings:
                  - { name: into the wall, piece: strip, use: 15 ga x 2-1/2, at: { up: strip.bottom + 1 } }
                  - { name: foot, piece: molding, use: 16 ga x 1-3/4, at: { up: molding.bottom + 3/8 } }
                """;
        assertThat(problems(crown, "nail-in-end-grain-or-near-an-edge")).hasSize(1);
        assertThat(problems(followed(crown, "nail-in-end-grain-or-near-an-edge"), "nail-in-end-grain-or-near-an-edge"))
                .isEmpty();
        String held = followed(crown, "upper-edge-not-held");
        assertThat(held).contains("into the block behind molding");
        assertThat(problems(held, "upper-edge-not-held")).isEmpty();
        assertThat(problems(held, "overlap")).isEmpty();
    }

    private static final String SKIRT = """
            wood: check-wood
            space: { floor: 0, wall: { covering: 5/8 } }
            pieces:
              - { name: board, profile: board 3/4 x 9-1/4, back: wall, bottom: floor }
              - { name: bead, section: [out 3/16, ovolo 1/8, in 1/8, up 1/16, cove 1/2 x 5/16, up 1/16, bead up 3/8], back: board.face, top: board.top }
              - { name: strip, section: [out 1/32, bead up 11/16], turn: 90, back: wall, bottom: board.top }
            """;

    /** Two cures of one report are both followed by whoever builds it. */
    @Test
    void rows_that_are_offered_for_two_pieces_leave_room_for_each_other() {
        List<Notice> loose = problems(SKIRT, "no-backing");
        assertThat(loose).hasSize(2);
        String both = SKIRT;
        for (Notice notice : loose) {
            both = Editor.edit(
                            "stack.yaml",
                            both,
                            NoticeWords.in(Answered.of(SKIRT).unit()).edits(notice),
                            new Notices())
                    .orElseThrow();
        }
        assertThat(problems(both, "nails-that-cross")).as(both).isEmpty();
        assertThat(problems(both, "no-backing")).isEmpty();
    }

    @Test
    void a_row_is_still_offered_once_the_one_beside_it_is_driven() {
        String one = followed(SKIRT, "no-backing");
        assertThat(problems(one, "no-backing"))
                .hasSize(problems(SKIRT, "no-backing").size() - 1);
        String both = followed(one, "no-backing");
        assertThat(both).contains("first: ");
        assertThat(problems(both, "no-backing")).isEmpty();
        assertThat(problems(both, "nails-that-cross")).isEmpty();
    }

    /** A brad down through a cove into the base under it leans toward the room: -10 degrees, as a row has it. */
    @Test
    void the_angle_of_a_nail_is_told_with_its_sign() {
        String cap = "wood: check-wood\nspace: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }\npieces:\n"
                + "  - { name: base, kind: framing, profile: board 3/4 x 7-1/4, back: wall, bottom: floor }\n"
                + "  - { name: base cap, profile: cove-bed 1 x 1, back: wall, bottom: base.top }\nfastenings:\n"
                + "  - { name: bc, piece: base cap, use: 18 ga x 1, at: { up: 8-1/8 }, spacing: 16 }\n";
        assertThat(problems(cap, "nail-too-short")).singleElement().satisfies(notice -> {
            assertThat(notice.changes())
                    .filteredOn(change -> change.place().endsWith(".angle"))
                    .singleElement()
                    .satisfies(change -> assertThat(NoticeWords.INCHES.cure(notice))
                            .contains("angle " + change.typed(LengthUnit.INCH) + "°"));
        });
        assertThat(problems(followed(cap, "nail-too-short"), "nail-too-short")).isEmpty();
    }

    /** A crown let down on a block: what stands behind it cannot be set by the crown, since the crown would sit on it. */
    @Test
    void what_leaves_no_stack_is_not_told_as_a_way_out() {
        String touching = "wood: check-wood\nspace: { floor: -84, ceiling: 30 }\npieces:\n"
                + "  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }\n"
                + "  - { name: pack, kind: nailer, profile: board 2 x 3, back: frieze.face, top: frieze.top, face: frieze.face + 1 }\n"
                + "  - { name: crown, profile: plain-crown 3-5/8, back: frieze.face, bottom: touch }\n"
                + "  - { name: shelf, profile: board 3/4 x 7-1/4, lay: flat, back: wall, bottom: crown.top }\n";
        List<Notice> falls = problems(touching, "tips");
        assertThat(falls).isNotEmpty();
        assertThat(falls).extracting(NoticeWords.INCHES::cure).noneMatch(cure -> cure.contains("is placed on"));
    }

    /** A screw 1/2 or 5/8 off the wall is less than half of a 2x6 on edge, 3/4, from it: the joist then lies at the wall. */
    @Test
    void no_joist_is_looked_for_behind_the_wall() {
        for (String out : List.of("1/2", "5/8")) {
            String beam = "wood: check-wood\nspace: { floor: -100, ceiling: 0 }\npieces:\n"
                    + "  - { name: core, kind: nailer, profile: board 1-1/2 x 3, lay: flat, back: wall, top: ceiling }\n"
                    + "fastenings:\n"
                    + "  - { name: up, piece: core, use: screw 10 x 3-1/2, at: { out: " + out
                    + ", up: core.bottom } }\n";
            assertThat(problems(beam, "nail-too-short"))
                    .singleElement()
                    .satisfies(notice -> assertThat(NoticeWords.INCHES.cure(notice))
                            .contains("'kind: framing', 1-1/2 wide, its back at 0 out"));
            assertThat(problems(followed(beam, "nail-too-short"), "nail-too-short"))
                    .isEmpty();
        }
    }

    /** 1-1/2 of core, 1/2 of covering and 6 diameters of 0.164 are 2.984: the joist is not enough, with 3 in it is. */
    @Test
    void screws_that_end_in_what_covers_the_ceiling_are_told_the_joist_and_the_length() {
        String beam =
                "wood: check-wood\nspace: { floor: -100, ceiling: 0, wall: { solid: no, covering: 1/2 } }\npieces:\n"
                        + "  - { name: core, kind: nailer, profile: board 1-1/2 x 3, lay: flat, back: 1, top: ceiling }\n"
                        + "fastenings:\n  - { name: up, piece: core, use: screw 8 x 2, at: { out: 2-1/2, up: core.bottom } }\n";
        assertThat(problems(beam, "nail-too-short"))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.cure(notice))
                        .startsWith("Find the joist")
                        .endsWith("Use screw 8 x 3."));
        assertThat(problems(followed(beam, "nail-too-short"), "nail-too-short")).isEmpty();
    }

    /** 11-1/4 of shelf and 3/4 of edge are 12 where 10 are allowed: the shelf is ripped to 9-1/4, and its edge comes along. */
    @Test
    void what_is_set_on_the_edge_of_a_board_comes_back_with_it() {
        String shelf = "wood: check-wood\nspace: { floor: -40, projection: 10 }\npieces:\n"
                + "  - { name: shelf, profile: board 3/4 x 11-1/4, lay: flat, back: wall, bottom: 0 }\n"
                + "  - { name: edge, profile: board 3/4 x 1-1/4, back: shelf.face, top: shelf.top }\n";
        assertThat(problems(shelf, "projects-too-far"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("'shelf' could be 9-1/4 wide."));
        assertThat(problems(followed(shelf, "projects-too-far"), "projects-too-far"))
                .isEmpty();
    }

    /** A ledger 1-1/2 thick is told the place that the list of places has, through its face: 3-1/2 leave 1-1/2 for the stud. */
    @Test
    void a_nailer_that_is_screwed_the_wrong_way_is_told_the_place_through_its_face() {
        String ledger = "wood: check-wood\nspace: { floor: -100, ceiling: 0, wall: { covering: 1/2 } }\npieces:\n"
                + "  - { name: ledger, kind: nailer, profile: board 1-1/2 x 3-1/2, back: wall, top: ceiling }\n"
                + "  - { name: face, profile: board 3/4 x 5-1/2, back: ledger.face, top: ceiling }\n"
                + "fastenings:\n"
                + "  - { name: up, piece: ledger, use: screw 8 x 2-1/2, at: { out: 3/4, up: ledger.bottom } }\n";
        assertThat(problems(ledger, "nail-too-short"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(NoticeWords.INCHES.cure(notice)).startsWith("Use screw 10 x 3-1/2 at 1-1/2 out, "));
    }

    /** What a ceiling is made of is not known: what hangs from it needs a joist that is given. */
    @Test
    void a_beam_screwed_up_into_a_ceiling_is_told_to_give_the_joist_over_it() {
        for (String covering : List.of("0", "1/2")) {
            String beam = ("wood: check-wood\n"
                            + "space: { floor: -100, ceiling: 0, wall: { solid: no, covering: COVERING } }\npieces:\n"
                            + "  - { name: core, kind: nailer, profile: board 1-1/2 x 3, lay: flat, back: 1, top: ceiling }\n"
                            + "  - { name: cheek, profile: board 3/4 x 5, back: core.face, top: ceiling }\n"
                            + "fastenings:\n"
                            + "  - { name: up, piece: core, use: screw 10 x 3-1/2, at: { out: 2-1/2, up: core.bottom } }\n"
                            + "  - { name: in, piece: cheek, use: 15 ga x 2, at: { up: -1 } }\n")
                    .replace("COVERING", covering);
            assertThat(Answered.because(beam, Topic.STANDS)).contains("off the ceiling");
            assertThat(Answered.cure(beam, Topic.STANDS))
                    .contains("'kind: framing'")
                    .endsWith("[tried]");
            for (String code : List.of("nail-too-short", "tips")) {
                String joist = followed(beam, code);
                assertThat(joist).contains("joist over core");
                assertThat(problems(joist, "nail-too-short")).as(joist).isEmpty();
                assertThat(problems(joist, "tips")).as(joist).isEmpty();
            }
        }
    }

    /** Its weight falls 0.001 past the bearing. */
    @Test
    void what_leans_by_a_hair_is_said_to_lie_on_the_edge() {
        String edge = Bench.head("space: { wall: { solid: no } }")
                + Bench.list(
                        "name: case, kind: framing, section: [out 3.999, up 4], back: 0, top: 0",
                        "name: plank, profile: board 3/4 x 8, lay: flat, back: 0, bottom: 0");
        assertThat(Answered.because(edge, Topic.STANDS))
                .contains("falls on the edge of case")
                .doesNotContain("0.00")
                .doesNotContain("0+");
        assertThat(Answered.because(edge.replace("3.999", "3.9"), Topic.STANDS)).contains("past case. To stand, hold");
    }

    @Test
    void nothing_is_moved_into_the_wall_as_half_a_way_out() {
        String cap = "wood: check-wood\nspace: { floor: -30, wall: { covering: 1/2 } }\npieces:\n"
                + "  - { name: rail, section: [out 3/16, chamfer 2 x 1/8, up 1/2], back: wall, bottom: 0 }\n"
                + "  - { name: ledge, profile: board 1/2 x 1-1/2, lay: flat, back: wall, bottom: rail.top }\n"
                + "fastenings:\n"
                + "  - { name: r, piece: rail, use: 18 ga x 2, at: { up: 5/16 } }\n"
                + "  - { name: c, piece: ledge, use: 18 ga x 1-1/4, at: { out: 3/8, up: ledge.top } }\n";
        assertThat(problems(cap, "needs-holding")).hasSize(1);
        NoticeWords words = NoticeWords.in(Answered.of(cap).unit());
        assertThat(words.cure(problems(cap, "needs-holding").get(0))).doesNotContain("into the wall");
    }

    @Test
    void what_stands_once_the_rows_for_others_are_driven_is_offered_those() {
        String shelf = """
                units: mm
                wood: check-wood
                space: { floor: -1400, ceiling: 900, wall: { covering: 12.5 } }
                pieces:
                  - { name: ledger, kind: nailer, profile: board 18 x 90, back: wall, bottom: 0 }
                  - { name: apron, profile: board 18 x 120, back: ledger.face, bottom: -20 }
                  - { name: shelf, profile: board 25 x 240, lay: flat, back: wall, bottom: apron.top }
                loads: [{ name: jars, on: shelf, out: 160, load: 150 N/m }]
                fastenings:
                  - { name: ledger screws, piece: ledger, use: 'screw 8 x 2-1/2"', at: { up: 45 } }
                  - { name: apron pins, piece: apron, use: '18 ga x 1-1/4"', at: { up: 60 } }
                  - { name: shelf nails, piece: shelf, use: '15 ga x 2-1/2"', at: { out: 9, up: shelf.top } }
                """;
        NoticeWords words = NoticeWords.in(Answered.of(shelf).unit());
        List<Notice> falls = problems(shelf, "tips");
        assertThat(falls).hasSizeGreaterThan(1);
        for (Notice fall : falls) {
            assertThat(words.cure(fall)).containsPattern("^(It comes right with .*)?Drive ");
        }
        assertThat(problems(followed(shelf, "tips"), "tips")).isEmpty();
    }
}

package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that cannot be: each is refused once, with its place and a cure. */
class BadPlanTest {
    private static final String ENDS = "left: die, right: die, ";
    private static final String ONE = "stretches: [{ name: a, length: 48 }]";

    private static List<Notice> said(String run) {
        Planned planned = Planned.of(Planned.CORNICE, "plan: [{ name: r, " + run + " }]\n");
        assertThat(planned.notices()).allSatisfy(notice -> {
            assertThat(notice.level()).isEqualTo(Level.REFUSAL);
            assertThat(notice.mark()).isPresent();
            assertThat(NoticeWords.INCHES.cure(notice)).isNotEmpty();
        });
        return planned.notices();
    }

    private static void refused(String run, String code, String message, String cure) {
        List<Notice> notices = said(run);
        assertThat(notices).as(notices.toString()).hasSize(1);
        assertThat(notices.get(0).code()).isEqualTo(code);
        assertThat(NoticeWords.INCHES.message(notices.get(0))).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(notices.get(0))).isEqualTo(cure);
    }

    private static String corner(String corner) {
        return ENDS + "stretches: [{ name: a, length: 48, corner: " + corner + " }, { name: b, length: 48 }]";
    }

    @Test
    void what_has_no_name_is_called_by_its_place_also_behind_one_that_is_refused() {
        refused(
                ENDS
                        + "stretches: [{ length: 48, corner: outside 0 }, { length: 48, corner: outside 90 }, { length: 4 }]",
                "not-a-corner",
                "0° is not a corner: one wall would lie on the other.",
                "Measure through the room at an inside corner, through the wall or case at an outside one.");
        assertThat(said(ENDS + "stretches: [{ length: 0, corner: outside 90 }, { length: 0 }]").stream()
                        .map(NoticeWords.INCHES::message))
                .satisfiesExactly(
                        first -> assertThat(first).contains("'stretch 1'"),
                        second -> assertThat(second).contains("'stretch 2'"));
    }

    @Test
    void a_corner_of_nothing_or_of_a_straight_wall_is_none() {
        refused(
                corner("outside 0"),
                "not-a-corner",
                "0° is not a corner: one wall would lie on the other.",
                "Measure through the room at an inside corner, through the wall or case at an outside one.");
        refused(
                corner("inside 180"),
                "not-a-corner",
                "180° is not a corner: the wall runs straight on.",
                "Make one stretch of the two.");
        refused(
                corner("inside 270"),
                "not-a-corner",
                "270° is not a corner: it was measured on the wrong side.",
                "Measure through the room at an inside corner, through the wall or case at an outside one.");
        refused(
                ENDS.replace("right: die", "right: { end: die, corner: 0 }") + ONE,
                "not-a-corner",
                "0° is not a corner: one wall would lie on the other.",
                "Measure through the room at an inside corner, through the wall or case at an outside one.");
    }

    @Test
    void a_corner_says_inside_or_outside_and_an_angle() {
        refused(
                corner("90"),
                "not-a-corner",
                "'90' does not say which corner it is.",
                "Write 'outside 90' or 'inside 90'.");
        refused(corner("inside NaN"), "not-an-angle", "'NaN' is not an angle.", "Write degrees, as 38 or 22.5.");
    }

    @Test
    void a_stretch_that_is_missing_is_asked_for() {
        refused(
                ENDS + "grain: cap",
                "stretch-missing",
                "Run 'r' has no stretch of wall.",
                "Add 'stretches: [{ name: front, length: 96 }]'.");
        refused(
                ENDS + "stretches: [{ name: a }]",
                "stretch-missing",
                "Stretch 'a' of 'r' has no length.",
                "Add 'length:', measured on the wall from corner to corner.");
        refused(
                "stretches: [{ name: a, length: 48, corner: inside 90 }]",
                "stretch-missing",
                "Run 'r' closes with 1 of the three stretches that it takes at least.",
                "Add the others, or give it two ends.");
        refused(
                ENDS + "stretches: [{ name: a, length: -3 }]",
                "not-a-size",
                "Stretch 'a' of 'r' is -3 long.",
                "Give it more than 0, or leave it out.");
        refused(
                ENDS + "stretches: [{ name: a, length: 48 }, { name: b, length: 48 }]",
                "corner-missing",
                "Between 'a' and 'b' of 'r' no corner is given.",
                "Add 'corner: outside 90' or 'corner: inside 90' to the first.");
    }

    @Test
    void ends_that_contradict_are_refused() {
        refused(
                ENDS + "stretches: [{ name: a, length: 48, corner: inside 90 }]",
                "ends-contradict",
                "Run 'r' closes: its last stretch meets the first at a corner. Yet it has two ends.",
                "Take the last 'corner:' out, or 'left:' and 'right:'.");
        refused(
                "left: { end: die, room: 3 }, right: die, " + ONE,
                "ends-contradict",
                "An end that is 'die' has no 'room': that is of 'return'.",
                "Take 'room:' out, or write 'end: return'.");
        refused(
                ENDS
                        + "stretches: [{ name: a, length: 48, openings: [{ name: d, from: 2, to: 8, ends: square, casing: 1"
                        + " }] }]",
                "ends-contradict",
                "An end that is 'square' has no 'casing': that is of 'butt'.",
                "Take 'casing:' out, or write 'end: butt'.");
    }

    @Test
    void a_missing_end_is_asked_for() {
        refused(
                ONE,
                "end-missing",
                "Run 'r' has no left and no right end.",
                "Write return, die, butt, block or square, as 'left: return'.");
        refused(
                "left: die, " + ONE,
                "end-missing",
                "Run 'r' has no right end.",
                "Write return, die, butt, block or square, as 'left: return'.");
        refused(
                "right: die, " + ONE,
                "end-missing",
                "Run 'r' has no left end.",
                "Write return, die, butt, block or square, as 'left: return'.");
        refused("left: { room: 3 }, right: die, " + ONE, "missing-key", "This end has no kind.", "Add 'end: return'.");
    }

    @Test
    void words_that_nobody_knows_are_answered_with_those_known() {
        refused(
                "left: stop, right: die, " + ONE,
                "unknown-name",
                "No end is called 'stop'.",
                "Write return, die, butt, block or square.");
        refused(
                ENDS + "inside: glue, " + ONE,
                "unknown-name",
                "No way to cut an inside corner is called 'glue'.",
                "Write miter or cope.");
        refused(
                ENDS + "grain: crwn, " + ONE,
                "unknown-name",
                "No piece called 'crwn' whose grain could run round.",
                "Did you mean crown?");
        refused(
                ENDS + "stretches: [{ name: a, length: 48, openings: [{ name: d, from: 2, to: 8, ends: die }] }]",
                "unknown-name",
                "No end beside an opening is called 'die'.",
                "Write butt, return or square.");
    }

    @Test
    void an_opening_lies_on_its_stretch_and_beside_the_others() {
        String stretch = ENDS + "stretches: [{ name: a, length: 48, openings: [";
        refused(
                stretch + "{ name: d, from: 40, to: 50 }] }]",
                "opening-misplaced",
                "Opening 'd' from 40 to 50 does not lie between 0 and 48 of 'a'.",
                "Measure from the left end of the stretch, and list openings from left to right.");
        refused(
                stretch + "{ name: d, from: 10, to: 20 }, { name: e, from: 15, to: 30 }] }]",
                "opening-misplaced",
                "Opening 'e' from 15 to 30 does not lie between 20 and 48 of 'a'.",
                "Measure from the left end of the stretch, and list openings from left to right.");
        refused(
                stretch + "{ name: d, from: 20, to: 10, bottom: -60, top: 1, pieces: [crown] }] }]",
                "opening-misplaced",
                "Opening 'd' from 20 to 10 does not lie between 0 and 48 of 'a'.",
                "Measure from the left end of the stretch, and list openings from left to right.");
        refused(
                stretch + "{ name: d, from: 10, bottom: -60, top: 1 }] }]",
                "missing-key",
                "Opening 'd' of 'a' does not say where it begins and ends.",
                "Add 'from:' and 'to:', measured from the left end of its stretch.");
    }

    @Test
    void a_wall_leans_a_little_over_a_height() {
        String stretch = ENDS + "stretches: [{ name: a, length: 48, plumb: ";
        refused(
                stretch + "{ out: 3/8 } }]",
                "missing-key",
                "A wall out of plumb says how far over what height.",
                "Write 'plumb: { out: 3/8, over: 96 }'; a wall that falls back has a negative 'out'.");
        refused(
                stretch + "{ out: 30, over: 96 } }]",
                "not-a-size",
                "A wall cannot lean 30 over 96.",
                "Give the lean, at most a tenth, and the height over which it was measured.");
        refused(
                "left: { end: butt, casing: -1 }, right: die, " + ONE,
                "not-a-size",
                "'casing' is -1.",
                "Give nothing less than 0.");
    }

    @Test
    void the_same_name_twice_is_refused() {
        refused(
                ENDS + "stretches: [{ name: a, length: 48, corner: inside 90 }, { name: a, length: 48 }]",
                "same-name-twice",
                "'a' twice in the plan.",
                "Call one 'a 2'.");
    }

    @Test
    void a_plan_without_end_is_refused_before_it_is_fitted() {
        String stretch = "{ length: 10, corner: outside 90 }";
        String many = String.join(", ", java.util.Collections.nCopies(201, stretch));
        refused(
                "stretches: [" + many + "]",
                "plan-too-long",
                "Run 'r' holds 201 stretches; at most 200 are fitted.",
                "Make several runs of it.");
        String runs = "plan:\n" + "  - { left: die, right: die, stretches: [{ length: 9 }] }\n".repeat(51);
        assertThat(NoticeWords.INCHES.message(Planned.of(Planned.CORNICE, runs).said()))
                .isEqualTo("The plan holds 51 runs; at most 50 are fitted.");
    }
}

package buildup.engine.judge.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answer;
import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.notice.Level;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeepingClearTest {
    private static final double EXACT = 1e-9;

    /** A board that stands 8 over an opening at the datum, and whatever is asked of it. */
    private static String edge(String more) {
        return """
                wood: check-wood
                space: { floor: -32, ceiling: 60 }
                pieces:
                  - { name: edge, profile: board 1-1/4 x 4, back: wall, bottom: 8 }
                """ + more;
    }

    private static List<String> refusals(String more) {
        Answer answer = Answered.of(edge(more));
        assertThat(answer.known()).isEmpty();
        return Answered.messages(answer, Level.REFUSAL);
    }

    private static Reply reply(Answers answers, Topic topic) {
        return answers.verdict().rulings().stream()
                .filter(ruling -> ruling.topic() == topic)
                .findFirst()
                .orElseThrow()
                .answer();
    }

    /** Worked example I. */
    @Test
    void rules_stand_beside_each_other_and_one_of_them_is_enough_to_refuse() {
        String yaml = edge("firebox: { top: 0, rules: [IRC 2018, NFPA 211 2016] }\n");
        Answers known = Answered.sound(yaml);
        List<FireRow> rows = known.clearance().fire();
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).allowed()).hasValueCloseTo(1.0, within(EXACT));
        assertThat(rows.get(0).margin()).hasValueCloseTo(-0.25, within(EXACT));
        assertThat(rows.get(0).needs()).hasValueCloseTo(10.0, within(EXACT));
        assertThat(rows.get(1).clear()).isTrue();
        assertThat(reply(known, Topic.FIRE)).isEqualTo(Reply.NO);
        assertThat(Answered.messages(Answered.of(yaml), Level.PROBLEM))
                .containsExactly(
                        "'edge' is only 8 above the fire opening and projects 1-1/4; there IRC 2018 allows 1."
                                + " It keeps NFPA 211 2016. Raise it by 2. The local authority and the appliance's label decide.");
    }

    @Test
    void a_stack_that_keeps_all_rules_is_never_said_to_be_right() {
        Answers known = Answered.sound(edge("firebox: { top: -6 }\n"));
        assertThat(known.clearance().fire()).allMatch(FireRow::clear);
        assertThat(reply(known, Topic.FIRE)).isEqualTo(Reply.TRUST);
    }

    @Test
    void what_does_not_burn_is_not_asked_about() {
        Answers known = Answered.sound(edge("firebox: { top: 7, noncombustible: [edge] }\n"));
        assertThat(known.clearance().fire()).isEmpty();
        assertThat(reply(known, Topic.FIRE)).isEqualTo(Reply.TRUST);
    }

    /**
     * By the rule, 1/8 of projection for each inch from 6 to 12 and any past 12: the frieze, 3/4 thick at 1, is 5 short of
     * its 6; the cap on it, 6 deep at 9, is 3 short of 12 though it projects much farther.
     */
    @Test
    void of_what_is_too_near_the_fire_the_farthest_from_right_decides_and_no_cure_lifts_it_off_what_carries_it() {
        String yaml = """
                wood: check-wood
                space: { floor: -32, ceiling: 60 }
                pieces:
                  - { name: frieze, profile: board 3/4 x 8, back: wall, bottom: 1 }
                  - { name: cap, profile: board 1 x 6, lay: flat, back: wall, bottom: 9 }
                firebox: { top: 0, rules: [IRC 2018] }
                """;
        assertThat(Answered.because(yaml, Topic.FIRE)).startsWith("'frieze' is only 1 above the fire opening");
        assertThat(Answered.messages(Answered.of(yaml), Level.PROBLEM))
                .filteredOn(said -> said.startsWith("'cap' is only 9"))
                .singleElement()
                .asString()
                .doesNotContain("Raise it by")
                .contains("Raise the whole stack by 5.");
    }

    @Test
    void what_hangs_in_front_of_the_opening_is_told_so() {
        assertThat(Answered.messages(Answered.of(edge("firebox: { top: 10, rules: NFPA 211 2016 }\n")), Level.PROBLEM))
                .containsExactly("'edge' hangs 2 in front of the fire opening, where NFPA 211 2016 allows nothing."
                        + " Raise it by 8. The local authority and the appliance's label decide.");
    }

    @Test
    void legs_are_held_against_the_sides_of_the_opening() {
        Answers known = Answered.sound(edge("""
                firebox:
                  top: -6
                  left: 12
                  right: 48
                  rules: [IRC 2018, IBC 2111]
                  beside: [{ name: leg, from: 0, to: 2, out: 4 }, { name: pier, from: 54, to: 58, out: 3/4 }]
                """));
        assertThat(known.clearance().fire().stream().filter(row -> !row.ofStack()))
                .extracting(row -> row.rule().name() + " " + row.piece() + " "
                        + row.where().word() + " " + row.distance() + " " + row.clear())
                .containsExactly(
                        "IRC 2018 leg left 10.0 false",
                        "IRC 2018 pier right 6.0 true",
                        "IBC 2111 leg left 10.0 true",
                        "IBC 2111 pier right 6.0 true");
    }

    @Test
    void an_opening_above_the_stack_is_a_problem_and_gives_no_figures() {
        Answer answer = Answered.of(edge("firebox: { top: 20 }\n"));
        assertThat(Answered.messages(answer, Level.PROBLEM))
                .containsExactly("The top of the fire opening, at 20, is above the whole stack, which ends at 12."
                        + " Give 'top:' as the height of the opening's upper edge over the datum.");
        assertThat(answer.known().orElseThrow().clearance().fire()).isEmpty();
    }

    @Test
    void an_edition_that_is_not_listed_is_refused_with_those_that_are() {
        assertThat(refusals("firebox: { top: 0, rules: [IRC 2024] }\n"))
                .containsExactly("IRC is not listed in the edition '2024'."
                        + " Listed: 2006, 2012, 2018. List another under 'clearances:' in a catalog file.");
        assertThat(refusals("firebox: { top: 0, rules: [IRX 2018] }\n"))
                .containsExactly("No clearances are called 'IRX 2018'. Did you mean IRC 2018?");
    }

    @Test
    void a_code_without_its_edition_is_read_as_the_newest_and_said_so() {
        Answer answer = Answered.of(edge("firebox: { top: -20, rules: IRC }\n"));
        assertThat(Answered.messages(answer, Level.NOTE))
                .contains("'IRC' is read as IRC 2018, the newest edition that is listed.");
    }

    @Test
    void every_answer_on_fire_carries_the_caution() {
        assertThat(Answered.messages(Answered.of(edge("firebox: { top: -20 }\n")), Level.NOTE))
                .contains("What is told of fire are rules beside each other, of the editions named."
                        + " The local authority and the appliance's label decide.");
    }

    @Test
    void an_opening_that_cannot_be_one_is_refused() {
        assertThat(refusals("firebox: { left: 12, right: 48 }\n"))
                .containsExactly("The firebox has no top. Add 'top: -4', the height of its upper edge over the datum.");
        assertThat(refusals("firebox: { top: -40 }\n"))
                .containsExactly("The top of the fire opening, at -40, is not above the floor, at -32."
                        + " Give 'top:' as the height of the opening's upper edge over the datum.");
        assertThat(refusals("firebox: { top: 0, left: 12 }\n"))
                .containsExactly("The firebox has a left side and no right one."
                        + " Give both, 'left:' and 'right:', where they are along the run.");
        assertThat(refusals("firebox: { top: 0, left: 48, right: 12 }\n"))
                .containsExactly("The firebox's right side, at 12, is not to the right of its left side, at 48."
                        + " Count both from the left end of the run.");
        assertThat(refusals("firebox: { top: 0, noncombustible: [edgy] }\n"))
                .containsExactly("No piece is called 'edgy'. Did you mean edge?");
    }

    @Test
    void a_leg_that_cannot_be_one_is_refused() {
        assertThat(refusals("firebox: { top: 0, beside: [{ name: leg, from: 0, to: 5, out: 1 }] }\n"))
                .containsExactly("'leg' stands beside an opening whose sides are not given."
                        + " Add 'left:' and 'right:' to the firebox, where its sides are along the run.");
        assertThat(
                        refusals(
                                "firebox: { top: 0, left: 12, right: 48, beside: [{ name: leg, from: 10, to: 15, out: 1 }] }\n"))
                .containsExactly("'leg' stands 3 in front of the opening."
                        + " Let it end before the left side, or begin behind the right one.");
        assertThat(refusals(
                        "firebox: { top: 0, left: 12, right: 48, beside: [{ name: leg, from: 5, to: 5, out: 1 }] }\n"))
                .containsExactly("'leg' beside the opening has no width or does not stand out."
                        + " Let 'to:' be greater than 'from:', and 'out:' more than 0.");
        assertThat(refusals("firebox: { top: 0, left: 12, right: 48, beside: [{ name: leg, from: 0, to: 5 }] }\n"))
                .containsExactly("'leg' has no out. Add 'out:', a length.");
    }

    /** The board is the box from 0 to 1-1/4 out and from 8 to 12 up: distances by Pythagoras. */
    @ParameterizedTest
    @CsvSource({
        "'back: 2, face: 4, bottom: 9, top: 10', 0.75",
        "'back: 4.25, face: 6, bottom: 16, top: 20', 5",
        "'back: 0, top: 7', 1",
        "'back: 1, face: 4, bottom: 9, top: 10', -0.25",
        "'bottom: 11-1/2', -0.5",
        "'kind: door, width: 30, top: 7-1/2', 0.5",
        "'kind: side-wall, away: 3', 1.75",
        "'kind: shade, back: 2, roll: 2, top: 12', 0.75",
        "'kind: sprinkler, out: 4.25, up: 16, clear: 2', 5"
    })
    void air_is_the_least_distance_and_below_nothing_how_far_a_piece_reaches_in(String place, double air) {
        Answers known = Answered.sound(edge("keep-clear: [{ name: place, " + place + " }]\n"));
        assertThat(known.clearance().kept().get(0).has()).isEqualTo(air, within(EXACT));
    }

    @Test
    void a_piece_in_the_way_of_a_door_is_a_problem_of_fit_with_a_cure_that_was_tried() {
        String yaml = edge("keep-clear: [{ name: closet door, kind: door, width: 30, top: 8-1/2, clear: 1/4 }]\n");
        assertThat(reply(Answered.sound(yaml), Topic.FITS)).isEqualTo(Reply.NO);
        assertThat(Answered.messages(Answered.of(yaml), Level.PROBLEM))
                .containsExactly("'edge' reaches 1/2 into 'closet door' (door). Move it up 3/4.");
    }

    /** By Pythagoras: at 3 across, 4 of air want the root of 7 from its lower edge on, 12 - 8 + 2.646 - 2 = 4.646 up. */
    @Test
    void too_little_air_is_told_with_what_is_missing_and_a_direction() {
        assertThat(Answered.messages(
                        Answered.of(
                                edge("keep-clear: [{ name: head, kind: sprinkler, out: 4-1/4, up: 10, clear: 4 }]\n")),
                        Level.PROBLEM))
                .containsExactly("'edge' leaves 3 of air to 'head' (sprinkler), which wants 4: 1 too little."
                        + " Move it up 4-11/16.");
    }

    private static final String CAP =
            "  - { name: cap, profile: board 1 x 4, lay: flat, back: wall, bottom: edge.top }\n";

    private static List<String> problems(String more) {
        return Answered.messages(Answered.of(edge(more)), Level.PROBLEM);
    }

    /** Away from the leaf is into the wall, and the leaf is higher than any trim is moved: common practice, no source. */
    @Test
    void where_no_move_in_the_section_clears_a_door_the_run_ends_before_its_swing() {
        assertThat(problems("keep-clear: [{ name: leaf, kind: door, width: 30, top: 40, bottom: -31, clear: 1/4 }]\n"))
                .containsExactly("'edge' reaches 1-1/4 into 'leaf' (door). End the run before the leaf's swing.");
    }

    /** A socket's plate ends 1 under the board and wants 2: the cap lies on the board, so both go up by 1. */
    @Test
    void what_lies_on_another_piece_goes_up_with_it() {
        String yaml = edge(CAP.replace("edge.top", "12")
                + "keep-clear: [{ name: socket, face: 1, bottom: 3, top: 7, clear: 2 }]\n");
        assertThat(Answered.messages(Answered.of(yaml), Level.PROBLEM))
                .contains(
                        "'edge' leaves 1 of air to 'socket' (box), which wants 2: 1 too little. Raise the stack by 1.");
    }

    /** A cap 4 deep at 12 to 13 before a shade from 2 out, 9 to 12-1/2 up: up it would leave its board, so less deep by 2. */
    @Test
    void a_cap_is_not_lifted_off_the_board_that_carries_it() {
        assertThat(problems(
                        CAP + "keep-clear: [{ name: roll, kind: shade, back: 2, roll: 3, bottom: 9, top: 12-1/2 }]\n"))
                .contains("'cap' reaches 1/2 into 'roll' (shade). Make it 2 wide.");
    }

    @Test
    void a_shade_before_trim_that_can_be_no_smaller_is_hung_farther_out() {
        assertThat(
                        problems(
                                "keep-clear: [{ name: roll, kind: shade, back: 1, roll: 3, bottom: 0, top: 30, clear: 1/2 }]\n"))
                .containsExactly("'edge' reaches 1/4 into 'roll' (shade). Hang it 3/4 farther out.");
    }

    @Test
    void a_place_that_cannot_be_one_is_refused() {
        assertThat(refusals("keep-clear: [{ name: track, back: -3, face: -1, bottom: 8, top: 9 }]\n"))
                .containsExactly("'track' lies inside the wall, 1 behind its plane or on it: no trim comes there."
                        + " Count out from the wall plane.");
        assertThat(refusals("keep-clear: [{ name: track }]\n"))
                .containsExactly("'track' is kept clear nowhere. Give at least one of back, face, bottom and top.");
        assertThat(refusals("keep-clear: [{ name: track, back: 4, face: 2 }]\n"))
                .containsExactly(
                        "'track' has no inside: its face is not before its back, or its top not above its bottom."
                                + " Count out from the wall plane and up from the datum.");
        assertThat(refusals("keep-clear: [{ name: track, kind: curtain, back: 4 }]\n"))
                .containsExactly("Nothing to keep clear of is called 'curtain'."
                        + " Write box, shade, door, side-wall or sprinkler.");
        assertThat(refusals("keep-clear: [{ name: a, back: 4 }, { name: a, back: 5 }]\n"))
                .containsExactly("'a' is kept clear twice. Call one a-2.");
        assertThat(refusals("keep-clear: [{ name: a, back: 4, clear: -1 }]\n"))
                .containsExactly("The air round 'a' is less than 0. Give 'clear:' a length, or leave it out.");
        assertThat(refusals("keep-clear: [{ name: leaf, kind: door, top: 80 }]\n"))
                .containsExactly("'leaf' has no width. Add 'width:', a length.");
    }

    @Test
    void a_rule_may_ask_for_a_margin_by_its_name() {
        Answers known = Answered.sound(edge("""
                firebox: { top: 0, rules: [IRC 2018, NFPA 211 2016] }
                must: [projection to spare of edge in NFPA 211 >= 1/4, projection to spare of edge in IRC >= 0]
                """));
        assertThat(known.must()).extracting(one -> one.met()).containsExactly(true, false);
        assertThat(known.must().get(1).missing()).hasValueCloseTo(0.25, within(EXACT));
    }
}

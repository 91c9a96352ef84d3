package buildup.engine.section.placing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules that place nothing: the whole of what is said, with its place. Pieces begin on line 4 of each document. */
class WrongRulesTest {
    private static final String BOARD = "profile: board 3/4 x 4";
    private static final String FRIEZE = "name: frieze, " + BOARD + ", back: wall, bottom: datum";

    private static Notice only(Bench bench) {
        assertThat(bench.refusals()).hasSize(1);
        return bench.refusals().get(0);
    }

    private static void says(Bench bench, String code, int line, String message, String cure) {
        Notice notice = only(bench);
        assertThat(notice.code()).isEqualTo(code);
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo(cure);
        assertThat(notice.mark().orElseThrow().line()).isEqualTo(line);
    }

    @Test
    void two_pieces_on_each_other() {
        says(
                Bench.refused(
                        "name: A, " + BOARD + ", back: wall, bottom: B.top",
                        "name: B, " + BOARD + ", back: wall, bottom: A.top"),
                "circular-or-missing-placing",
                4,
                "A is placed on B, B is placed on A.",
                "Place one of them on the wall, the floor or the datum.");
    }

    @Test
    void three_in_a_ring_are_said_once_and_what_hangs_on_them_is_not() {
        says(
                Bench.refused(
                        "name: D, " + BOARD + ", back: wall, bottom: A.top",
                        "name: A, " + BOARD + ", back: wall, bottom: B.top",
                        "name: B, " + BOARD + ", back: wall, top: C.bottom",
                        "name: C, " + BOARD + ", back: wall, bottom: A.bottom"),
                "circular-or-missing-placing",
                5,
                "A is placed on B, B is placed on C, C is placed on A.",
                "Place one of them on the wall, the floor or the datum.");
    }

    @Test
    void a_piece_on_itself() {
        says(
                Bench.refused("name: A, " + BOARD + ", back: wall, bottom: A.top"),
                "circular-or-missing-placing",
                4,
                "A is placed on itself.",
                "Place one of them on the wall, the floor or the datum.");
    }

    @Test
    void a_ring_through_a_touch() {
        says(
                Bench.refused(
                        "name: A, " + BOARD + ", back: wall, bottom: B.top",
                        "name: B, " + BOARD + ", back: wall, bottom: touch"),
                "circular-or-missing-placing",
                4,
                "A is placed on B, B is placed on A.",
                "Place one of them on the wall, the floor or the datum.");
    }

    @Test
    void no_rule_on_an_axis() {
        says(
                Bench.refused("name: cap, " + BOARD + ", back: wall"),
                "circular-or-missing-placing",
                4,
                "'cap' has no place: nothing says a height.",
                "Give 'bottom:' or 'top:'.");
        says(
                Bench.refused("name: cap, " + BOARD + ", top: 3"),
                "circular-or-missing-placing",
                4,
                "'cap' has no place: nothing says a projection.",
                "Give 'back:' or 'face:'.");
    }

    @Test
    void a_member_of_its_own_and_an_edge_on_one_axis() {
        says(
                Bench.refused("name: cap, " + BOARD + ", back: wall, bottom: 0, at: { top: 4 }"),
                "doubled-rule",
                4,
                "'cap' has two rules for a height; only a board or plain blocking is ripped to fit.",
                "Keep 'bottom:' or 'top:'.");
    }

    @Test
    void a_piece_that_is_not_there() {
        says(
                Bench.refused(FRIEZE, "name: cap, " + BOARD + ", back: freize.face, bottom: 4"),
                "unknown-name",
                5,
                "No piece called 'freize'.",
                "Did you mean frieze (3/4 projection x 4 height)? There is 1 other.");
        Notice far = only(Bench.refused(FRIEZE, "name: cap, " + BOARD + ", back: nothing.face, bottom: 4"));
        assertThat(NoticeWords.INCHES.cure(far)).contains("cap").contains("frieze");
    }

    @Test
    void an_edge_that_is_not_there_or_not_straight() {
        Notice mistyped = only(Bench.refused(FRIEZE, "name: cap, " + BOARD + ", back: wall, bottom: frieze.topp"));
        assertThat(NoticeWords.INCHES.message(mistyped))
                .isEqualTo("'frieze' has no one straight, level or upright edge called 'topp'.");
        assertThat(NoticeWords.INCHES.cure(mistyped)).isEqualTo("Did you mean top?");
        Notice round = only(Bench.refused(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum",
                "name: cap, " + BOARD + ", back: bed.cove, bottom: 4"));
        assertThat(NoticeWords.INCHES.message(round))
                .isEqualTo("'bed' has no one straight, level or upright edge called 'cove'.");
        Notice own = only(Bench.refused("name: cap, " + BOARD + ", back: wall, at: { shoulder: 4 }"));
        assertThat(NoticeWords.INCHES.message(own))
                .isEqualTo("'cap' has no one straight, level or upright edge called 'shoulder'.");
        assertThat(own.mark().orElseThrow().line()).isEqualTo(4);
    }

    @Test
    void a_member_in_two_lines_or_askew_is_no_edge() {
        assertThat(NoticeWords.INCHES.message(only(Bench.refused(
                        "name: step, section: [out 1 as foot, up 1, in 1/2, up 1 as foot], back: wall, bottom: 0",
                        "name: cap, " + BOARD + ", back: wall, bottom: step.foot"))))
                .contains("called 'foot'");
        assertThat(NoticeWords.INCHES.message(only(Bench.refused(
                        "name: wedge, section: [out 1, chamfer in 1 x 1 as slope], back: wall, bottom: 0",
                        "name: cap, " + BOARD + ", back: wall, bottom: wedge.slope"))))
                .contains("called 'slope'");
    }

    @Test
    void an_edge_of_the_other_axis() {
        says(
                Bench.refused(FRIEZE, "name: cap, " + BOARD + ", back: frieze.top, bottom: 4"),
                "not-a-place",
                5,
                "'frieze.top' is a height, not a projection.",
                "Name a back or a face.");
    }

    @Test
    void a_place_of_the_room_on_the_other_axis() {
        for (String place : List.of("floor", "ceiling", "datum")) {
            assertThat(Bench.refused("name: cap, " + BOARD + ", back: " + place + ", bottom: 0")
                            .refusals())
                    .as(place)
                    .singleElement()
                    .satisfies(notice -> assertThat(NoticeWords.INCHES.message(notice))
                            .isEqualTo("'" + place + "' is not a projection."));
        }
        assertThat(NoticeWords.INCHES.message(
                        only(Bench.refused("name: cap, " + BOARD + ", back: wall, bottom: wall"))))
                .isEqualTo("'wall' is not a height.");
        says(
                Bench.refused("name: cap, " + BOARD + ", back: wall, at: { bottom: wall }"),
                "not-a-place",
                4,
                "A place of the room is a projection, not a height.",
                "Name a bottom or a top.");
    }

    @Test
    void a_floor_that_the_space_does_not_have() {
        says(
                Bench.refused("name: cap, " + BOARD + ", back: wall, bottom: floor"),
                "unknown-name",
                4,
                "This space has no floor.",
                "Give 'space: { floor: HEIGHT }'.");
    }

    @Test
    void more_than_one_place_in_a_rule() {
        String cure = "Write one place and lengths, as 'frieze.top + 1/4'.";
        for (String rule : List.of("frieze.top + frieze.bottom", "1/2 - frieze.top")) {
            says(
                    Bench.refused(FRIEZE, "name: cap, " + BOARD + ", back: wall, bottom: " + rule),
                    "not-a-place",
                    5,
                    "'" + rule + "' measures from more than one place or from the far side of one.",
                    cure);
        }
    }

    @Test
    void a_length_that_nobody_named() {
        assertThat(NoticeWords.INCHES.message(
                        only(Bench.refused(FRIEZE, "name: cap, " + BOARD + ", back: wall, bottom: frieze.top + lip"))))
                .isEqualTo("No length is called 'lip'.");
    }

    @Test
    void a_reveal_larger_than_the_piece_it_is_measured_on_is_a_problem() {
        Bench bench = Bench.loose(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum",
                "name: cap, " + BOARD + ", back: wall, bottom: bed.top - 2");
        assertThat(bench.notices("reveal-larger-than-its-piece"))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.level()).isEqualTo(Level.PROBLEM);
                    assertThat(NoticeWords.INCHES.message(notice))
                            .isEqualTo("'cap' stands 2 from the top of 'bed', which is only 1-3/8.");
                    assertThat(NoticeWords.INCHES.cure(notice))
                            .isEqualTo("Measure from its other edge, or make it 1-3/8 or less.");
                    assertThat(notice.piece()).contains("cap");
                });
    }
}

package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.nail.Fastening;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the document says of its fastenings, and what is wrong with it. */
class FasteningsTest {
    private static final List<String> BOARDS = List.of(
            "name: back, kind: nailer, profile: board 1-1/2 x 5-1/2, back: wall, bottom: 0",
            "name: front, profile: board 3/4 x 5-1/2, back: back.face, bottom: 0",
            "name: strip, profile: cove 3/4 x 3/4, back: front.face, bottom: 0");

    private static Driven with(String... rows) {
        return Driven.in("{ wall: { solid: yes } }", BOARDS, rows);
    }

    @Test
    void what_is_left_out_is_usual() {
        Fastening row =
                with("piece: front, use: 18 ga x 1-1/4, at: { up: 2 }").nail(1).fastening();
        assertThat(row.name()).isEqualTo("nail 1");
        assertThat(row.angle()).isZero();
        assertThat(row.spacing()).isEqualTo(16);
        assertThat(row.per()).isEqualTo(1);
        assertThat(row.after()).isEmpty();
        assertThat(row.perFoot()).isEqualTo(0.75);
    }

    @Test
    void a_row_may_be_given_in_full() {
        Driven driven = with("name: low, piece: front, use: TRIM SCREW 7 x 57.15 mm, at: { out: front.face,"
                + " up: front.bottom + 2 }, angle: 5, spacing: 8 in, per: 2, after: strip");
        Fastening row = driven.nail(1).fastening();
        assertThat(row.name()).isEqualTo("low");
        assertThat(row.use().call()).isEqualTo("trim screw 7 x 2-1/4");
        assertThat(row.perFoot()).isEqualTo(3);
        assertThat(driven.nail(1).after()).isEqualTo(driven.body("strip"));
        assertThat(driven.nail(1).head().y()).isCloseTo(2, within(1e-9));
        assertThat(driven.said()).isEmpty();
    }

    @Test
    void a_height_alone_is_found_on_the_room_side_and_a_projection_on_the_walk_or_the_top() {
        Driven driven = with(
                "piece: front, use: 18 ga x 1-1/4, at: { up: 4 }",
                "piece: front, use: 18 ga x 1-1/4, at: { out: back.face + 3/8 }",
                "piece: strip, use: 18 ga x 1, at: { out: front.face + 1/4 }");
        assertThat(driven.nail(1).head().x()).isCloseTo(2.25, within(1e-9));
        assertThat(driven.nail(2).head().y()).isCloseTo(5.5, within(1e-9));
        assertThat(driven.nail(3).way().y())
                .as("into the cove's face, which looks up")
                .isNegative();
    }

    @Test
    void a_place_may_hang_on_a_member_that_ripping_has_taken_the_name_of() {
        List<String> ripped = List.of(
                "name: block, kind: nailer, section: [out 2 as foot, up 3], back: 0, bottom: 1, top: 3-1/2",
                "name: front, profile: board 3/4 x 5-1/2, back: block.face, bottom: 0");
        Driven driven = Driven.in(
                "{ wall: { solid: yes } }",
                ripped,
                "piece: front, use: 18 ga x 1-1/2, at: { up: block.foot + 1/2 }",
                "piece: front, use: 18 ga x 1-1/2, at: { up: block.top - 1/2 }");
        assertThat(driven.nail(1).head().y()).isCloseTo(1.5, within(1e-9));
        assertThat(driven.nail(2).head().y()).isCloseTo(3, within(1e-9));
    }

    @Test
    void a_place_that_is_nearly_on_the_face_is_on_it() {
        assertThat(with("piece: front, use: 18 ga x 1-1/4, at: { out: 2.29, up: 4 }")
                        .nail(1)
                        .head()
                        .x())
                .isEqualTo(2.25);
    }

    @Test
    void a_place_off_its_piece_is_said_and_left_out() {
        Driven driven = with(
                "piece: front, use: 18 ga x 1-1/4, at: { up: 7 }",
                "piece: front, use: 18 ga x 1-1/4, at: { out: 3 }",
                "piece: front, use: 18 ga x 1-1/4, at: { out: 2-1/2, up: 3 }");
        assertThat(driven.all()).isEmpty();
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM nail-off-its-piece front 8 Nail 1 (18 ga x 1-1/4) is 1-1/2 off 'front', at 2-1/4 out,"
                                + " 7 up. | It runs from 0 to 5-1/2.",
                        "PROBLEM nail-off-its-piece front 9 Nail 2 (18 ga x 1-1/4) is 3/4 off 'front', at 3 out,"
                                + " 5-1/2 up. | It runs from 1-1/2 to 2-1/4.",
                        "PROBLEM nail-off-its-piece front 10 Nail 3 (18 ga x 1-1/4) is 1/4 off 'front', at 2-1/2 out,"
                                + " 3 up. | Give its height or its projection alone: the other is found on the face.");
    }

    @Test
    void everything_wrong_with_the_rows_is_refused_at_once() {
        Driven driven = with(
                "piece: frnt, use: 18 ga x 1-1/4, at: { up: 2 }",
                "use: 18 ga x 1-1/4, at: { up: 2 }",
                "piece: front, use: 19 ga x 1, at: { up: 2 }",
                "piece: front, use: 18 ga, at: { up: 2 }",
                "piece: front, at: { up: 2 }",
                "piece: front, use: 18 ga x 1-1/4",
                "piece: front, use: 18 ga x 1-1/4, at: { up: touch }",
                "piece: front, use: 18 ga x 1-1/4, at: { up: frnt.top }",
                "piece: front, use: 18 ga x 1-1/4, at: { up: front.tip }",
                "piece: front, use: 18 ga x 1-1/4, at: { up: front.face }",
                "piece: front, use: 18 ga x 1-1/4, at: { up: 2 }, angle: 80.5",
                "piece: front, use: 18 ga x 1-1/4, at: { up: 2 }, spacing: 0",
                "piece: front, use: 18 ga x 1-1/4, at: { up: 2 }, per: none",
                "piece: front, use: 18 ga x 1-1/4, at: { up: 2 }, after: back",
                "piece: front, use: 18 ga x 1-1/4, at: { up: 2 }, after: stripe",
                "piece: front, use: 18 ga x 1-1/4, at: { up: 2, in: 3 }");
        assertThat(driven.said())
                .containsExactly(
                        "REFUSAL unknown-name - 8 No piece called 'frnt' to be fastened. | Did you mean front?",
                        "REFUSAL missing-key - 9 A fastening names no piece. | Add 'piece:'.",
                        "REFUSAL unknown-name 19 ga x 1 10 No nail or screw is called '19 ga'. | Did you mean 15 ga? Or"
                                + " list your own, with its diameter, under 'fasteners:' in a catalog file.",
                        "REFUSAL missing-size 18 ga 11 '18 ga' needs one length. | Sold: 3/8, 1/2, 5/8, 3/4, 1, 1-1/4,"
                                + " 1-1/2, 1-3/4, 2; list others under 'fasteners:' in a catalog file.",
                        "REFUSAL missing-key - 12 A fastening does not name its nail or screw. | Add 'use: 15 ga x 2'.",
                        "REFUSAL missing-key - 13 A fastening has no place. | Add 'at: { up: PLACE }'.",
                        "REFUSAL not-a-place - 14 A nail cannot be placed by touch. | Give a height or a projection.",
                        "REFUSAL unknown-name - 15 No piece called 'frnt'. | Did you mean front?",
                        "REFUSAL unknown-name - 16 'front' has no one straight, level or upright edge called 'tip'. | Did"
                                + " you mean top?",
                        "REFUSAL not-a-place - 17 'front.face' is a projection, not a height. | Name a bottom or a top.",
                        "REFUSAL not-an-angle - 18 A nail cannot go in 80.5° off square. | Measure from square to the face,"
                                + " at most 75°.",
                        "REFUSAL not-a-size - 19 A row cannot be spaced 0 apart. | Write it as 16.",
                        "REFUSAL not-a-number - 20 'none' is not how many nails go in at a place. | Write 1 to 20.",
                        "REFUSAL nail-before-its-piece front 21 'front' cannot be fastened after 'back': it is not up yet. |"
                                + " Name 'front' or a later piece, or leave 'after:' out.",
                        "REFUSAL unknown-name - 22 No piece called 'stripe' to be fastened. | Did you mean strip?",
                        "REFUSAL unknown-key - 23 No key is called 'in' in 'fastenings.at'. | Known here: out, up.");
    }

    @Test
    void a_thousand_rows_are_refused() {
        String[] rows = new String[501];
        Arrays.fill(rows, "piece: front, use: 18 ga x 1, at: { up: 2 }");
        assertThat(with(rows).said())
                .first()
                .asString()
                .endsWith(
                        "The stack holds 501 rows of fastenings; at most 500 are looked at. | Give each row once, with"
                                + " its spacing.");
    }

    @Test
    void a_length_that_nobody_sells_is_a_problem_and_is_looked_at() {
        Driven driven = with("piece: front, use: 18 ga x 1-3/8, at: { up: 2 }");
        assertThat(driven.nail(1).drive().length()).isEqualTo(1.375);
        assertThat(driven.said())
                .containsExactly(
                        "PROBLEM unknown-length 18 ga x 1-3/8 8 '18 ga' is not sold 1-3/8 long. | Sold: 3/8, 1/2,"
                                + " 5/8, 3/4, 1, 1-1/4, 1-1/2, 1-3/4, 2; list others under 'fasteners:' in a catalog file.");
    }

    @Test
    void the_grain_of_a_piece_has_three_ways() {
        Driven driven = Driven.in(
                "{ wall: { solid: yes } }",
                List.of("name: front, profile: board 1 x 2, grain: across, back: 0, top: 0"));
        assertThat(driven.said())
                .containsExactly(
                        "REFUSAL unknown-name front 4 No way of the grain is called 'across'. | Write run, out or"
                                + " up.");
    }
}

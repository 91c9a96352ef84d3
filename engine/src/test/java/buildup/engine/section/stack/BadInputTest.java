package buildup.engine.section.stack;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Wrong documents: the whole of what is said, with its place. Pieces begin on line 4 of each. */
class BadInputTest {
    private static final String BOARD = "profile: board 3/4 x 4, back: wall, bottom: datum";
    private static final String FRIEZE = "name: frieze, " + BOARD;

    private static void says(Bench bench, String code, int line, String message, String cure) {
        List<Notice> found = bench.notices(code);
        assertThat(found).as(bench.notices().toString()).anySatisfy(notice -> {
            assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo(cure);
            assertThat(notice.mark().orElseThrow().line()).isEqualTo(line);
        });
    }

    private static Bench pieces(String... pieces) {
        return Bench.refused(pieces);
    }

    /** One piece on line 4 under a head of its own on line 2. */
    private static Bench under(String head) {
        return Bench.of("wood: check-wood\n" + head + "\npieces:\n  - { " + FRIEZE + " }\n");
    }

    @Test
    void a_stack_without_pieces() {
        for (String text : new String[] {"wood: check-wood\npieces: []\n", "wood: check-wood\npieces:\n"}) {
            says(
                    Bench.of(text),
                    "empty-stack",
                    2,
                    "The stack holds no pieces: there is nothing to measure.",
                    "List them under 'pieces:'.");
        }
        assertThat(Bench.of("title: x\n").codes()).contains("empty-stack");
    }

    @Test
    void pieces_under_a_mistyped_key_are_asked_about_by_that_key_alone() {
        assertThat(Bench.of("wood: check-wood\npeices:\n  - { " + FRIEZE + " }\n")
                        .codes())
                .containsExactly("unknown-key");
    }

    @Test
    void ten_thousand_pieces_are_refused_in_one_sentence() {
        StringBuilder text = new StringBuilder("wood: check-wood\npieces:\n");
        for (int i = 0; i < 10_000; i++) {
            text.append("  - { name: p").append(i).append(", ").append(BOARD).append(" }\n");
        }
        Bench bench = Bench.of(text.toString());
        assertThat(bench.refusals()).hasSize(1);
        says(
                bench,
                "too-many-pieces",
                3,
                "The stack holds 10000 pieces; a section holds at most 500.",
                "Draw the repeated part once.");
    }

    @Test
    void a_piece_without_a_usable_name() {
        String cure = "Give it a short name of its own, as 'name: frieze'.";
        says(pieces(BOARD), "not-a-name", 4, "Piece 1 has no name.", cure);
        says(pieces("name: ' ', " + BOARD), "not-a-name", 4, "Piece 1 has no name.", cure);
        for (String name : new String[] {"wall", "floor", "ceiling", "datum", "touch"}) {
            says(
                    pieces("name: " + name + ", " + BOARD),
                    "not-a-name",
                    4,
                    "'" + name + "' is a place of the room, not a name for a piece.",
                    cure);
        }
        for (String name : new String[] {"frieze.2", "a + b", "a - b"}) {
            says(
                    pieces("name: " + name + ", " + BOARD),
                    "not-a-name",
                    4,
                    "The name '" + name + "' holds a dot, ' + ' or ' - ', which rules use.",
                    cure);
        }
        says(
                pieces(FRIEZE, "name: " + "x".repeat(61) + ", " + BOARD),
                "not-a-name",
                5,
                "The name of piece 2 is 61 characters long.",
                cure);
    }

    @Test
    void the_same_name_twice() {
        Bench bench = pieces(FRIEZE, "name: frieze-2, " + BOARD, FRIEZE);
        says(bench, "same-name-twice", 6, "'frieze' twice.", "Call one 'frieze-3'.");
    }

    @Test
    void a_kind_that_there_is_not() {
        says(
                pieces("name: frieze, kind: blocking, " + BOARD),
                "unknown-name",
                4,
                "No kind of piece is called 'blocking'.",
                "Write trim, nailer or framing.");
    }

    @Test
    void neither_profile_nor_section_or_both() {
        String cure = "Give 'profile: NAME SIZE', or 'section: [words]' for a one-off.";
        says(
                pieces("name: frieze, back: wall, bottom: datum"),
                "no-outline",
                4,
                "'frieze' has neither profile nor section.",
                cure);
        says(
                pieces(FRIEZE + ", section: [out 1, up 1]"),
                "no-outline",
                4,
                "'frieze' has both a profile and a section.",
                cure);
    }

    @Test
    void a_profile_that_is_not_known_brings_no_complaint_about_the_other_keys_of_the_piece() {
        Bench bench =
                pieces("name: cap, profile: check-bedd 1 x 1, rip: { top: 1/8 }, flip: ends, back: wall, bottom: 0");
        assertThat(bench.refusals()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("unknown-name");
            assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("No profile is called 'check-bedd'.");
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Did you mean check-bed?");
        });
    }

    @Test
    void a_key_that_nobody_asks_for() {
        says(
                pieces(FRIEZE + ", botom: wall"),
                "unknown-key",
                4,
                "No key is called 'botom' in 'pieces'.",
                "Did you mean bottom?");
        assertThat(under("titel: x").notices("unknown-key"))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Did you mean title?"));
    }

    @Test
    void a_wood_or_a_unit_that_is_not_known() {
        assertThat(pieces("name: frieze, wood: chck-wood, " + BOARD).notices("unknown-name"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("No wood is called 'chck-wood'."));
        says(under("units: furlong"), "unknown-name", 2, "No unit is called 'furlong'.", "Write in, ft, mm or cm.");
        assertThat(under("boards: sftwood").refusals())
                .as("true sizes need no list")
                .isEmpty();
    }

    @Test
    void an_unknown_thing_to_be_fixed_to() {
        says(
                pieces(FRIEZE, "name: cap, fixed: freize, profile: board 1 x 1, back: wall, bottom: frieze.top"),
                "unknown-name",
                5,
                "No piece called 'freize' to be fixed to.",
                "Did you mean frieze?");
        assertThat(pieces(FRIEZE + ", fixed: frieze").codes()).as("itself").contains("unknown-name");
        assertThat(pieces(FRIEZE + ", fixed: wall").refusals()).isEmpty();
    }

    @Test
    void millimeters_read_as_inches() {
        Bench bench = Bench.loose("name: crown, profile: board 19 x 114.3, back: wall, bottom: datum");
        says(
                bench,
                "mm-read-as-inches",
                4,
                "'crown' is 114.3 across. As inches that is 9.5 ft of molding: mm?",
                "Write the unit behind it, '114.3 in' or '114.3 mm', or 'units: mm' for the file.");
        assertThat(Bench.loose(FRIEZE, "name: case, kind: framing, section: [out 14, up 90], face: wall, top: 0")
                        .codes())
                .doesNotContain("mm-read-as-inches");
    }

    /** A panel 7 ft high and a frieze under a gallery 45 ft up are rare, and right where they are written so. */
    @Test
    void a_size_with_its_unit_written_is_not_asked_whether_it_is_millimeters() {
        for (String size : List.of("84 in", "7'", "7 ft", "2134 mm")) {
            for (String shape : List.of("section: [out 1/2, up " + size + "]", "profile: board 1/2 x " + size)) {
                assertThat(Bench.loose("name: panel, " + shape + ", back: wall, bottom: datum")
                                .codes())
                        .as(shape)
                        .doesNotContain("mm-read-as-inches");
            }
        }
        assertThat(Bench.loose("name: panel, profile: board 84 x 96 in, back: wall, bottom: datum")
                        .codes())
                .as("the other size is bare")
                .contains("mm-read-as-inches");
        assertThat(Bench.loose("name: high, profile: board 1 x 3, back: wall, bottom: 45 ft")
                        .codes())
                .doesNotContain("mm-read-as-inches");
        assertThat(Bench.loose("name: high, profile: board 1 x 3, back: wall, bottom: 540")
                        .codes())
                .contains("mm-read-as-inches");
    }

    @Test
    void a_named_size_is_asked_for_where_it_is_bare() {
        String panel = "name: panel, section: [out 1/2, up tall], back: wall, bottom: datum";
        assertThat(Bench.of(Bench.head("sizes: { tall: 84 in }") + Bench.list(panel))
                        .codes())
                .doesNotContain("mm-read-as-inches");
        assertThat(Bench.of(Bench.head("sizes: { tall: 84 }") + Bench.list(panel))
                        .codes())
                .contains("mm-read-as-inches");
    }

    @Test
    void a_size_that_is_none() {
        says(
                pieces("name: frieze, profile: board 3/43 x 4, back: wall, bottom: datum"),
                "fraction-mistyped",
                4,
                "3/43 is not a shop fraction (halves, quarters, 8ths, 16ths, 32nds, 64ths).",
                "Meant 3/4?");
        assertThat(pieces("name: frieze, profile: board 0 x 4, back: wall, bottom: datum")
                        .codes())
                .contains("thickness-zero-or-negative");
        assertThat(under("sizes: { lip: soon }").refusals()).isNotEmpty();
    }

    @Test
    void a_room_that_cannot_be() {
        says(
                under("space: { floor: 12, ceiling: 10 }"),
                "ceiling-under-floor",
                2,
                "The ceiling is not above the floor.",
                "Heights are measured up from the datum; a floor below it is negative.");
        says(
                under("space: { wall: { covering: -1/2 } }"),
                "not-a-size",
                2,
                "A covering cannot be thinner than nothing.",
                "Write its thickness, as 1/2.");
        says(
                under("space: { wall: { from: 10, to: 4 } }"),
                "wall-upside-down",
                2,
                "The wall ends where it begins, or below.",
                "Let 'to' be above 'from'.");
        says(
                under("space: { wall: { from: frieze.top } }"),
                "not-a-length",
                2,
                "'from' cannot hang on a piece here.",
                "Give a length, or floor + a length.");
        says(
                under("space: { wall: { to: floor + 2 } }"),
                "unknown-name",
                2,
                "This space has no floor.",
                "Give 'space: { floor: HEIGHT }'.");
    }

    @Test
    void an_eye_without_a_place() {
        says(
                under("eyes: [{ name: seated, distance: 72 }]"),
                "impossible-light-or-eye",
                2,
                "Eye 'seated' has no place.",
                "Give distance (from the wall plane) and height, as 'floor + 60'.");
    }

    @Test
    void values_of_the_wrong_shape() {
        assertThat(under("space: 12").codes()).contains("wrong-shape");
        assertThat(pieces(FRIEZE + ", rip: 1/4").codes()).contains("wrong-shape");
        assertThat(pieces(FRIEZE + ", turn: much").codes()).contains("not-an-angle");
        assertThat(under("space: { wall: { solid: maybe } }").codes()).contains("not-yes-or-no");
        says(
                pieces("name: frieze, profile: board 3/4 x 4, at: { back: [1], bottom: 0 }"),
                "not-a-place",
                4,
                "'at' holds more than a place.",
                "Write 'at: { MEMBER: PLACE }'.");
    }

    @Test
    void everything_wrong_is_said_in_one_run() {
        Bench bench = pieces(
                "name: a.b, profile: board 3/4 x 4, back: wall, bottom: datum",
                "name: bed, profile: nothing 3, kind: odd, back: wall, bottom: datum",
                "name: cap, profile: board 3/4 x 4, back: nowhere.face");
        assertThat(bench.codes())
                .contains("not-a-name", "circular-or-missing-placing")
                .filteredOn("unknown-name"::equals)
                .hasSize(3);
    }
}

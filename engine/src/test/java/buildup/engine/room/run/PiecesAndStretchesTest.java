package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.NoticeWords;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Which pieces run along a stretch, which an opening interrupts, and how each ends; all lengths by hand. */
class PiecesAndStretchesTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String ROOM = Bench.head("space: { floor: 0, ceiling: 96, wall: { solid: yes } }")
            + Bench.list(
                    "name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor",
                    "name: rail, profile: board 3/4 x 3, back: wall, bottom: 32",
                    "name: crown, profile: board 3/4 x 3-1/2, back: wall, top: ceiling");

    private static final String CASING = Bench.head("space: { wall: { solid: yes } }")
            + Bench.list(
                    "name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: 0",
                    "name: band, profile: board 1-1/8 x 3/4, back: wall, bottom: casing.top");

    private static final String MANTEL = Bench.head("space: { wall: { solid: yes } }")
            + Bench.list(
                    "name: frieze, profile: board 3/4 x 7-1/4, back: wall, bottom: 0",
                    "name: shelf, profile: board 1 x 8, lay: flat, back: wall, bottom: frieze.top");

    private static String run(String keys) {
        return "plan:\n  - { name: run, " + keys + " }\n";
    }

    private static Planned room(String openings) {
        return Planned.of(
                ROOM,
                run("left: square, right: square, stretches: [{ name: north, length: 144, openings: [" + openings
                        + "] }]"));
    }

    @Test
    void a_window_interrupts_the_rail_and_neither_base_nor_crown() {
        Planned room = room("{ name: window, from: 40, to: 76, bottom: 30, top: 80 }");
        assertThat(room.fit("base", "north").faceLength()).isEqualTo(144);
        assertThat(room.fit("crown", "north").faceLength()).isEqualTo(144);
        assertThat(room.fit("rail", "north, left of window").faceLength()).isEqualTo(40);
        assertThat(room.fit("rail", "north, right of window").faceLength()).isEqualTo(68);
    }

    @Test
    void a_door_without_a_bottom_goes_down_and_a_sill_that_only_touches_does_not_interrupt() {
        Planned room =
                room("{ name: door, from: 40, to: 76, top: 84 }, { name: hatch, from: 100, to: 120, bottom: 35 }");
        assertThat(room.fit("base", "north, right of door").faceLength()).isEqualTo(68);
        assertThat(room.fit("rail", "north, right of door").faceLength()).isEqualTo(68);
        // the rail's top is at 35: the hatch stands on it
        assertThat(room.fit("crown", "north, left of hatch").faceLength()).isEqualTo(100);
    }

    @Test
    void an_opening_that_names_its_pieces_interrupts_those_alone() {
        Planned room = room("{ name: cabinet, from: 40, to: 76, pieces: [base, rail] }");
        assertThat(room.fit("base", "north, left of cabinet").faceLength()).isEqualTo(40);
        assertThat(room.fit("crown", "north").faceLength()).isEqualTo(144);
    }

    @Test
    void a_stretch_carries_the_pieces_that_it_names_and_the_others_end_at_its_corner() {
        String corner = "left: square, right: square, stretches: [{ name: a, length: 100, corner: %s 90 }, { name: b,"
                + " length: 50, pieces: [base] }]";
        Planned inside = Planned.of(ROOM, run(corner.formatted("inside")));
        assertThat(inside.fit("base", "a").faceLength()).isCloseTo(99.25, EXACT);
        assertThat(inside.fit("rail", "a").faceLength()).isEqualTo(100);
        assertThat(inside.cut("rail", "a").right().kind()).isEqualTo(EndCut.Kind.BUTT);
        assertThat(inside.job().cuts())
                .filteredOn(cut -> cut.stretch().equals("b"))
                .extracting(Cut::course)
                .containsExactly("base");
        Planned outside = Planned.of(ROOM, run(corner.formatted("outside")));
        assertThat(outside.fit("base", "a").faceLength()).isCloseTo(100.75, EXACT);
        assertThat(outside.fit("rail", "a").faceLength()).isEqualTo(100);
        assertThat(outside.cut("rail", "a").right().kind()).isEqualTo(EndCut.Kind.SQUARE);
    }

    @Test
    void the_shelf_of_a_mantel_returns_while_its_frieze_butts() {
        Planned mantel = Planned.of(
                MANTEL,
                run("left: [{ end: return, pieces: [shelf] }, { end: butt, casing: 1 }], right: [butt, { end: return,"
                        + " pieces: [shelf] }], stretches: [{ name: breast, length: 60 }]"));
        assertThat(mantel.fit("frieze", "breast").faceLength()).isEqualTo(60);
        assertThat(mantel.fit("shelf", "breast").faceLength()).isCloseTo(60 + 2 * 8, EXACT);
        assertThat(mantel.cut("shelf", "breast, left return").length()).isCloseTo(8, EXACT);
        assertThat(mantel.stretches()).containsExactly("breast", "breast, left return", "breast, right return");
    }

    /** The rail of a frame: each leg one width longer than the opening's edge, the head two; a band outside likewise. */
    @Test
    void a_casing_goes_round_its_opening_as_a_frame_does() {
        Planned door = Planned.of(
                CASING,
                run(
                        "around: opening, left: square, right: square, stretches: [{ name: left leg, length: 80, corner:"
                                + " outside 90 }, { name: head, length: 32, corner: outside 90 }, { name: right leg, length: 80 }]"));
        assertThat(door.cut("casing", "left leg").length()).isCloseTo(83.5, EXACT);
        assertThat(door.cut("casing", "head").length()).isCloseTo(39, EXACT);
        assertThat(door.cut("band", "head").length()).isCloseTo(32 + 2 * 4.25, EXACT);
        assertThat(door.fit("casing", "head").shortPoint()).isCloseTo(32, EXACT);
        EndCut top = door.cut("casing", "left leg").right();
        assertThat(top.miter()).isCloseTo(45, EXACT);
        assertThat(top.bevel()).isCloseTo(0, EXACT);
        // laid face up with its inner edge at the fence, the top of the left leg points left: the piece lies on the
        // right
        assertThat(FigurePrinter.INCHES.print(top.words()))
                .isEqualTo(
                        "flat, face up, inner edge at the fence; miter 45\u00B0 left, bevel 0\u00B0; keep the right");
    }

    @Test
    void plinth_blocks_and_rosettes_take_their_part_of_the_legs() {
        Planned door = Planned.of(
                CASING,
                run("around: opening, left: { end: block, block: 6 }, right: { end: block, block: 6 }, stretches: [{"
                        + " name: left leg, length: 80, block: 1/8, corner: outside 90 }, { name: head, length: 32,"
                        + " block: 1/8, corner: outside 90 }, { name: right leg, length: 80 }]"));
        assertThat(door.cut("casing", "left leg").length()).isCloseTo(80 - 6 - 0.125, EXACT);
        assertThat(door.cut("casing", "head").length()).isCloseTo(32 - 0.25, EXACT);
        assertThat(door.cut("casing", "right leg").length()).isCloseTo(80 - 6 - 0.125, EXACT);
        assertThat(FigurePrinter.INCHES.print(door.cut("casing", "head").left().words()))
                .isEqualTo("square, against the block");
    }

    /** A pilaster 6 wide and 1 deep on a wall of 60: what the base loses inside it gains outside. */
    @Test
    void a_run_goes_round_a_pilaster_and_into_a_bay() {
        Planned pilaster = Planned.of(
                ROOM,
                run("left: square, right: square, stretches: [{ name: a, length: 27, corner: inside 90 }, { name: b,"
                        + " length: 4, corner: outside 90 }, { name: front, length: 6, corner: outside 90 }, { name: c,"
                        + " length: 4, corner: inside 90 }, { name: d, length: 27 }]"));
        assertThat(pilaster.fit("base", "a").faceLength()).isCloseTo(27 - 0.75, EXACT);
        assertThat(pilaster.fit("base", "b").faceLength()).isCloseTo(4, EXACT);
        assertThat(pilaster.fit("base", "front").faceLength()).isCloseTo(7.5, EXACT);
        Planned bay = Planned.of(
                ROOM,
                run("left: square, right: square, stretches: [{ name: a, length: 30, corner: inside 135 }, { name: b,"
                        + " length: 48, corner: inside 135 }, { name: c, length: 30 }]"));
        // the extension of p / tan(C / 2) of the trade's own rule
        assertThat(bay.fit("base", "b").faceLength()).isCloseTo(48 - 2 * 0.75 / Math.tan(Math.toRadians(67.5)), EXACT);
        assertThat(bay.cut("base", "b").left().bevel()).isCloseTo(22.5, within(1e-9));
    }

    /** A column of 24 small stretches: the sum of the faces is the perimeter of the polygon that lies so far out. */
    @Test
    void a_column_is_a_plan_of_many_small_stretches() {
        int sides = 24;
        StringBuilder stretches = new StringBuilder();
        for (int i = 0; i < sides; i++) {
            stretches.append(i == 0 ? "" : ", ").append("{ length: 4, corner: outside 165 }");
        }
        Planned column = Planned.of(ROOM, run("stretches: [" + stretches + "]"));
        double apothem = 4 / (2 * Math.tan(Math.PI / sides));
        assertThat(column.sum("base"))
                .isCloseTo(2 * sides * (apothem + 0.75) * Math.tan(Math.PI / sides), within(1e-6));
    }

    @Test
    void what_is_said_of_walls_round_an_opening_is_not_passed_over_without_a_word() {
        String legs = "around: opening, left: square, right: square, %sstretches: [{ name: leg, length: 80 %s}]";
        assertThat(Planned.of(CASING, run(legs.formatted("", ""))).notices()).isEmpty();
        Planned told = Planned.of(
                CASING, run(legs.formatted("studs: { every: 16, first: 3 }, ", ", ceiling: [[0, 90], [80, 90]]")));
        assertThat(told.said().code()).isEqualTo("told-of-walls");
        assertThat(NoticeWords.INCHES.message(told.said()))
                .isEqualTo("Run 'run' goes round an opening: what is said of walls has no use there, as 'studs',"
                        + " 'ceiling'.");
    }

    @Test
    void what_contradicts_itself_is_refused() {
        assertThat(refusal("left: [{ end: return, pieces: [base] }], right: square, stretches: [{ length: 60 }]"))
                .isEqualTo("On the left nothing is said of the pieces that are not named.");
        assertThat(refusal("left: [square, butt], right: square, stretches: [{ length: 60 }]"))
                .isEqualTo("On the left several ends name no piece.");
        assertThat(refusal("left: { end: square, block: 3 }, right: square, stretches: [{ length: 60 }]"))
                .isEqualTo("An end that is 'square' has no 'block': that is of 'block'.");
        assertThat(refusal("left: square, right: square, stretches: [{ length: 60, pieces: [bass] }]"))
                .isEqualTo("No piece called 'bass' that could run here.");
        assertThat(refusal("around: window, left: square, right: square, stretches: [{ length: 60 }]"))
                .isEqualTo("No run goes around 'window'.");
        assertThat(refusal(
                        "left: square, right: square, stretches: [{ length: 60, openings: [{ name: o, from: 1, to: 9,"
                                + " bottom: 40, top: 30 }] }]"))
                .isEqualTo("The top of opening 'o' is not over its bottom.");
    }

    private static String refusal(String keys) {
        return NoticeWords.INCHES.message(Planned.of(ROOM, run(keys)).said());
    }
}

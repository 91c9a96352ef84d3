package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Where pieces of one stack end differently, a return turns the corner of what it lies on; all lengths by hand. */
class MixedEndsTest {
    private static final Offset<Double> EXACT = within(1e-9);

    /** A frieze 3/4 out, a bed on it to 1-3/4, a bead on the bed to 2-1/4, a shelf on top to 4. */
    private static final String STACK = Bench.head("space: { wall: { solid: yes } }")
            + Bench.list(
                    "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0",
                    "name: bed, profile: board 1 x 2, back: frieze.face, top: frieze.top",
                    "name: bead, profile: board 1/2 x 1, back: bed.face, top: bed.top",
                    "name: shelf, profile: board 1 x 4, lay: flat, back: wall, bottom: frieze.top");

    private static Planned wall(String ends) {
        return Planned.of(STACK, "plan:\n  - { name: run, " + ends + ", stretches: [{ name: wall, length: 60 }] }\n");
    }

    /** The same on the left and on the right. */
    private static Planned both(String ends) {
        return wall("left: " + ends + ", right: " + ends);
    }

    @Test
    void a_return_runs_back_along_the_end_grain_of_a_board_cut_square() {
        Planned wall = both("[{ end: return, pieces: [bed] }, square]");
        assertThat(wall.cut("frieze", "wall").length()).isEqualTo(60);
        Fit bed = wall.fit("bed", "wall");
        assertThat(bed.backLength()).isCloseTo(60, EXACT);
        assertThat(bed.longPoint()).isCloseTo(60 + 2 * 1, EXACT);
        for (String side : new String[] {"left", "right"}) {
            Fit piece = wall.fit("bed", "wall, " + side + " return");
            assertThat(piece.longPoint()).isCloseTo(1.75, EXACT);
            assertThat(piece.shortPoint()).isCloseTo(0.75, EXACT);
        }
    }

    @Test
    void a_return_lies_flat_on_the_end_that_it_covers_and_reaches_the_wall() {
        Fit right = both("[{ end: return, pieces: [bed] }, square]").fit("bed", "wall, right return");
        assertThat(right.outline())
                .usingElementComparator((a, b) -> a.distance(b) < 1e-9 ? 0 : 1)
                // its inside from the miter to the wall along the frieze's end, its face an inch farther right
                .containsExactly(new Point(60, -0.75), new Point(61, -1.75), new Point(61, 0), new Point(60, 0));
        Fit left = both("[{ end: return, pieces: [bed] }, square]").fit("bed", "wall, left return");
        assertThat(left.outline())
                .usingElementComparator((a, b) -> a.distance(b) < 1e-9 ? 0 : 1)
                .containsExactly(new Point(0, 0), new Point(-1, 0), new Point(-1, -1.75), new Point(0, -0.75));
    }

    @Test
    void where_all_that_is_behind_returns_the_layers_keep_their_order_round_the_corner() {
        Planned wall = both("return");
        assertThat(wall.fit("bed", "wall").longPoint()).isCloseTo(60 + 2 * 1.75, EXACT);
        assertThat(wall.fit("bead", "wall").longPoint()).isCloseTo(60 + 2 * 2.25, EXACT);
        Planned mixed = both("[square, { end: return, pieces: [frieze, bed] }]");
        assertThat(mixed.fit("bed", "wall").longPoint()).isCloseTo(60 + 2 * 1.75, EXACT);
    }

    @Test
    void a_piece_on_a_piece_turns_whatever_comes_nearest_to_it() {
        // the bead lies on the bed, cut square, and both on the frieze that returns: 3/4 past the end
        Planned bedSquare = both("[{ end: return, pieces: [frieze, bead] }, square]");
        assertThat(bedSquare.fit("bead", "wall").backLength()).isCloseTo(60 + 2 * 0.75, EXACT);
        assertThat(bedSquare.fit("bead", "wall").longPoint()).isCloseTo(60 + 2 * (0.75 + 0.5), EXACT);
        // the bed returns round the frieze, cut square, and the bead round the bed: 1 past the end
        Planned friezeSquare = both("[{ end: return, pieces: [bed, bead] }, square]");
        assertThat(friezeSquare.fit("bead", "wall").backLength()).isCloseTo(60 + 2 * 1, EXACT);
        assertThat(friezeSquare.fit("bead", "wall").longPoint()).isCloseTo(60 + 2 * (1 + 0.5), EXACT);
        assertThat(friezeSquare.fit("bead", "wall, left return").longPoint()).isCloseTo(2.25, EXACT);
    }

    @Test
    void what_lies_at_other_heights_is_not_turned() {
        // the shelf lies on the wall, over the frieze
        Planned wall = both("[{ end: return, pieces: [shelf] }, square]");
        assertThat(wall.fit("shelf", "wall").longPoint()).isCloseTo(60 + 2 * 4, EXACT);
        assertThat(wall.fit("shelf", "wall").backLength()).isCloseTo(60, EXACT);
    }

    @Test
    void a_return_covers_the_end_of_what_stops_on_a_block() {
        Planned wall = wall("left: [{ end: return, pieces: [bed] }, { end: block, block: 2 }], right: square");
        assertThat(wall.fit("bed", "wall").backLength()).isCloseTo(60 - 2, EXACT);
    }

    @Test
    void at_an_opening_a_return_stops_on_the_face_of_what_runs_on() {
        Planned wall = Planned.of(
                STACK,
                "plan:\n  - { name: run, left: square, right: square, stretches: [{ name: wall, length: 60,"
                        + " openings: [{ name: niche, from: 20, to: 40, pieces: [bed], ends: return }] }] }\n");
        Fit left = wall.fit("bed", "wall, left of niche");
        assertThat(left.backLength()).isCloseTo(20, EXACT);
        assertThat(left.longPoint()).isCloseTo(21, EXACT);
        Fit piece = wall.fit("bed", "wall, left of niche, right return");
        assertThat(piece.longPoint()).isCloseTo(1, EXACT);
        assertThat(piece.shortPoint()).isCloseTo(0, EXACT);
        assertThat(piece.right(piece.course().face()).distance(new Point(21, -0.75)))
                .isLessThan(1e-9);
        assertThat(FigurePrinter.INCHES.print(piece.toCut().right().words()))
                .isEqualTo("square, against the face of the frieze");
    }

    @Test
    void a_return_asks_for_no_more_wall_than_it_takes() {
        // the bed goes 1 past the square end, and 1 is there
        assertThat(wall("left: [{ end: return, room: 1, pieces: [bed] }, square], right: square")
                        .notices())
                .extracting(Notice::code)
                .containsExactly("return-too-short-to-nail");
        assertThat(wall("left: [{ end: return, room: 7/8, pieces: [bed] }, square], right: square")
                        .notices())
                .filteredOn(notice -> notice.code().equals("return-longer-than-its-wall"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(notice.amount().orElseThrow().amount()).isCloseTo(0.125, EXACT));
    }

    @Test
    void a_return_beside_a_piece_that_dies_runs_into_that_wall_and_it_is_said() {
        Planned wall =
                wall("left: square, right: [{ end: return, pieces: [bed] }, square, { end: die, pieces: [shelf] }]");
        assertThat(wall.notices())
                .filteredOn(notice -> notice.level() == Level.PROBLEM)
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.code()).isEqualTo("return-longer-than-its-wall");
                    assertThat(NoticeWords.INCHES.message(notice))
                            .isEqualTo("'bed' returns 1 past the right end, into the wall that 'shelf' dies on.");
                    assertThat(notice.amount().orElseThrow().amount()).isCloseTo(1, EXACT);
                });
        assertThat(wall("left: [{ end: return, pieces: [bed] }, square], right: die")
                        .notices())
                .noneMatch(notice -> notice.level() == Level.PROBLEM);
    }
}

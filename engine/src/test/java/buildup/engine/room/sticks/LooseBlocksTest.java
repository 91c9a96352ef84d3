package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Rosettes, plinth blocks and backing blocks as pieces that are cut, by hand. */
class LooseBlocksTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String DOOR = """
            wood: yellow-poplar
            space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
            pieces: [{ name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }]
            plan:
              - name: door
                around: opening
                left: { end: block, block: 6 }
                right: { end: block, block: 6 }
                stretches:
                  - { name: left leg, length: 80, corner: outside 90, block: 1/8 }
                  - { name: head, length: 32, corner: outside 90, block: 1/8 }
                  - { name: right leg, length: 80 }
            """;

    private static final String ROOM = """
            wood: yellow-poplar
            space: { floor: -84, ceiling: 12, wall: { covering: 1/2 } }
            pieces: [{ name: crown, profile: plain-crown 3-5/8, back: wall, top: ceiling }]
            plan: [{ left: die, right: die, studs: { every: 16, first: 10 }, stretches: [{ name: north, length: 100 }] }]
            """;

    private static Cuts cuts(String stack, String stock) {
        return Cuts.of(
                Answer.of(
                        DocumentReader.read(
                                        "stack.yaml", (stack + stock).getBytes(StandardCharsets.UTF_8), new Notices())
                                .orElseThrow(),
                        Catalog.builtIn()),
                Limit.usual());
    }

    /** Of strips 3/4 x 3/4 a block 7/8 x 3-1/2 would take two layers of five. */
    @Test
    void a_block_that_would_be_glued_up_from_many_strips_wants_a_board() {
        Cuts cuts = cuts(DOOR, "stock: { sticks: [{ of: board 3/4 x 3/4, buy: 8' }] }\n");
        assertThat(cuts.known().orElseThrow().lengths().without())
                .extracting(piece -> piece.id())
                .contains("PB1", "PB2", "RO1", "RO2");
        assertThat(cuts.notices())
                .extracting(notice -> NoticeWords.INCHES.message(notice))
                .contains("'plinth block': no board that is listed is as thick and wide, 7/8 x 3-1/2.");
    }

    /** The casing is 3-1/2 wide and 3/4 thick; a rosette reaches 1/8 past it on all sides, and all stand 1/8 proud. */
    @Test
    void plinth_blocks_and_rosettes_are_cut_from_the_boards_that_are_thick_enough() {
        Cuts cuts = cuts(DOOR, "stock: { sticks: [{ of: 1x4, buy: 8' }, { of: 5/4x6, buy: 8' }] }\n");
        assertThat(cuts.known().orElseThrow().cut())
                .extracting(
                        LooseBlock::kind,
                        LooseBlock::length,
                        LooseBlock::width,
                        LooseBlock::thickness,
                        LooseBlock::note)
                .containsExactly(
                        tuple(LooseBlock.Kind.PLINTH, 6.0, 3.5, 0.875, "grain upright"),
                        tuple(LooseBlock.Kind.ROSETTE, 3.75, 3.75, 0.875, "grain upright"),
                        tuple(LooseBlock.Kind.ROSETTE, 3.75, 3.75, 0.875, "grain upright"),
                        tuple(LooseBlock.Kind.PLINTH, 6.0, 3.5, 0.875, "grain upright"));
        CutList list = cuts.known().orElseThrow().lengths();
        assertThat(list.without()).isEmpty();
        assertThat(onSticksOf(list, "5/4x6")).containsExactlyInAnyOrder("PB1", "PB2", "RO1", "RO2");
        assertThat(onSticksOf(list, "1x4")).containsExactlyInAnyOrder("A1", "A2", "A3");
    }

    /** {@code block: 0} says that there is none; a rosette is then as wide as its casing. */
    @Test
    void a_block_that_covers_nothing_is_none_but_for_a_rosette() {
        String stock = "stock: { sticks: [{ of: 1x4, buy: 8' }, { of: 5/4x6, buy: 8' }] }\n";
        for (String covers : List.of("0", "0.01", "1/64")) {
            for (String angle : List.of("inside 90", "outside 90", "outside 135")) {
                String room = """
                        wood: yellow-poplar
                        pieces: [{ name: base, profile: board 3/4 x 3-1/2, back: wall, bottom: 0 }]
                        plan:
                          - left: { end: block, block: %1$s }
                            right: { end: block, block: %1$s }
                            stretches: [{ name: one, length: 60, corner: %2$s, block: %1$s }, { name: two, length: 50 }]
                        """.formatted(covers, angle);
                assertThat(cuts(room, stock).known().orElseThrow().cut())
                        .as(covers + ", " + angle)
                        .isEmpty();
            }
        }
        String flush = DOOR.replace("block: 6", "block: 0").replace("block: 1/8", "block: 0");
        assertThat(cuts(flush, stock).known().orElseThrow().cut())
                .extracting(LooseBlock::kind, LooseBlock::length, LooseBlock::width)
                .containsExactly(tuple(LooseBlock.Kind.ROSETTE, 3.5, 3.5), tuple(LooseBlock.Kind.ROSETTE, 3.5, 3.5));
    }

    private static List<String> onSticksOf(CutList list, String name) {
        return list.sticks().stream()
                .filter(stick -> stick.supply().name().startsWith(name))
                .flatMap(stick -> stick.strips().stream())
                .flatMap(strip -> strip.pieces().stream())
                .map(Stick.LaidPiece::piece)
                .map(piece -> piece.id())
                .toList();
    }

    /**
     * A crown of 38 with a drop v: its legs are v less 1/8 / sin 38, and v tan 38 less 1/8 / cos 38; half of a kerf of 1/8
     * comes to each. Studs every 16 along 100 want 7 blocks, which are 4 pairs of 3 and 3 kerfs: 12-3/8.
     */
    @Test
    void backing_blocks_come_in_pairs_from_a_strip_ripped_corner_to_corner() {
        Cuts cuts = cuts(
                ROOM, "stock: { kerf: 1/8, sticks: [{ of: plain-crown 3-5/8, buy: 10' }, { of: 3x4, buy: 8' }] }\n");
        Cuts.Known known = cuts.known().orElseThrow();
        LooseBlock strip = known.cut().get(0);
        double s = Math.toRadians(38);
        assertThat(known.blocks().get(0).count()).isEqualTo(7);
        assertThat(strip.length()).isCloseTo(4 * 3 + 3.0 / 8, EXACT);
        assertThat(strip.thickness()).isCloseTo(known.blocks().get(0).height() + 0.0625 / Math.sin(s), EXACT);
        assertThat(strip.width()).isCloseTo(known.blocks().get(0).width() + 0.0625 / Math.cos(s), EXACT);
        assertThat(strip.note()).isEqualTo("ripped corner to corner, then cut into 7; grain along the wall");
        assertThat(onSticksOf(known.lengths(), "3x4")).containsExactly("BB1");
        int most = known.lengths().asCut().stream()
                .filter(piece -> piece.id().equals("BB1"))
                .mapToInt(piece -> piece.length())
                .sum();
        assertThat(LengthSteps.inches(most)).isCloseTo(12.375, within(1.0 / 64));
    }

    @Test
    void hidden_blocks_without_a_stick_are_a_note_and_seen_ones_a_problem() {
        Cuts hidden = cuts(ROOM, "stock: { sticks: [{ of: plain-crown 3-5/8, buy: 10' }] }\n");
        assertThat(hidden.notices())
                .filteredOn(notice -> notice.code().equals("no-stock"))
                .extracting(Notice::level)
                .containsExactly(Level.NOTE);
        Cuts seen = cuts(DOOR, "stock: { sticks: [{ of: plain-crown 3-5/8, buy: 8' }] }\n");
        assertThat(seen.notices())
                .filteredOn(notice -> notice.code().equals("no-stock"))
                .extracting(Notice::level)
                .contains(Level.PROBLEM);
    }
}

package buildup.engine.judge.must;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.Quantity;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Words that stand in several sheets, rows by their own names, and what the stack has none of. */
class MustOfTheRightSheetTest {
    /** Short brads through an apron into a ground: 1 in long through 3/4 in, so that 1/4 in of them bites. */
    private static final String BRADS = """
            units: in
            wood: yellow-poplar
            space: { floor: -48, ceiling: 48, wall: { covering: 1/2 } }
            pieces:
              - { name: ground, kind: nailer, profile: board 1-1/2 x 3-1/2, back: wall, bottom: datum }
              - { name: apron, profile: board 3/4 x 5-1/2, back: ground.face, top: ground.top }
            fastenings:
              - { name: gs, piece: ground, use: screw 8 x 3, at: { up: 1-3/4 } }
              - { name: apron brads, piece: apron, use: 18 ga x 1, at: { up: 2-3/4 }, first: 4 }
            """;

    /** A shelf on a frieze on a ground, in a light from straight before it at 45 degrees; nothing overlaps, gapes or falls. */
    private static final String SHELF = """
            units: in
            wood: yellow-poplar
            space: { floor: -60, ceiling: 36, wall: { covering: 1/2 } }
            lights: [{ name: noon, altitude: 45 }]
            approach: [{ name: door, from: { distance: 140, height: 2 }, to: { distance: 24, height: 2 } }]
            pieces:
              - { name: ground, kind: nailer, profile: board 1-1/2 x 7-1/4, back: wall, bottom: datum }
              - { name: frieze, profile: board 3/4 x 7-1/4, back: ground.face, bottom: datum }
              - { name: shelf, profile: board 1 x OUT, lay: flat, back: wall, bottom: SHELF }
            """;

    private static Answer answer(String yaml) {
        return Answer.of(
                DocumentReader.read("must.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
    }

    private static MustResult met(String stack, String line) {
        return answer(stack + "must:\n  - " + line + "\n")
                .known()
                .orElseThrow()
                .must()
                .get(0);
    }

    private static MustResult brads(String line) {
        return met(BRADS, line);
    }

    private static MustResult shelf(String line) {
        return met(shelf("frieze.top", "7-1/4"), line);
    }

    private static String shelf(String bottom, String out) {
        return SHELF.replace("SHELF", bottom).replace("OUT", out);
    }

    @Test
    void nails_are_those_that_are_driven_and_not_one_that_could_be() {
        assertThat(brads("bite >= 1/2").figure().orElseThrow()).isCloseTo(0.25, within(1e-9));
        assertThat(brads("bite >= 1/2").met()).isFalse();
        assertThat(brads("bite of apron >= 1/2").figure().orElseThrow()).isCloseTo(0.25, within(1e-9));
        // 1-1/2 long through 3/4
        assertThat(met(BRADS.replace("18 ga x 1,", "18 ga x 1-1/2,"), "bite of apron >= 1/2")
                        .figure()
                        .orElseThrow())
                .isCloseTo(0.75, within(1e-9));
    }

    @Test
    void a_row_goes_by_its_own_name_too() {
        assertThat(brads("bite of apron brads >= 1/8").figure().orElseThrow()).isCloseTo(0.25, within(1e-9));
        // 3 in through 1-1/2 of ground and 1/2 of covering
        assertThat(brads("bite of gs >= 1").figure().orElseThrow()).isCloseTo(1, within(1e-9));
    }

    @Test
    void what_the_report_only_offers_is_asked_for_by_the_name_of_its_row() {
        assertThat(brads("bite of nail 1 >= 1/2").figure().orElseThrow()).isGreaterThan(0.25);
    }

    @Test
    void a_figure_of_the_whole_so_far_is_none_of_a_piece() {
        // the frieze is 7-1/4 high and stands 1-1/2 + 3/4 out; the stack is an inch higher by its shelf
        assertThat(shelf("height of frieze <= 7-1/4").met()).isTrue();
        assertThat(shelf("projection of frieze = 2-1/4").met()).isTrue();
        assertThat(shelf("height of shelf = 1").met()).isTrue();
        assertThat(shelf("height so far of shelf = 8-1/4").met()).isTrue();
    }

    /** The shelf stands out 7-1/4 - 2-1/4 = 5 over the frieze, and its shadow at 45 degrees falls 5 down. */
    @Test
    void a_word_of_several_sheets_is_looked_for_in_all_of_them() {
        assertThat(shelf("depth <= 4").figure().orElseThrow()).isCloseTo(5, within(1e-9));
        assertThat(shelf("depth of frieze <= 4").figure().orElseThrow()).isCloseTo(5, within(1e-9));
        assertThat(shelf("overhang >= 1").figure().orElseThrow()).isCloseTo(5, within(1e-9));
        // sunk 1/4 into the frieze as well: that overlap is 1/4 deep, and the shadow, 5 under the arris, still deeper
        String sunk = shelf("frieze.top - 1/4", "7-1/4");
        assertThat(met(sunk, "depth <= 4").figure().orElseThrow()).isCloseTo(5, within(1e-9));
        assertThat(met(sunk, "depth of shelf over frieze >= 1/8").figure().orElseThrow())
                .isCloseTo(0.25, within(1e-6));
        assertThat(met(sunk, "depth of frieze over shelf <= 1/8").met())
                .as("whichever of two pieces is named first")
                .isFalse();
    }

    @Test
    void what_there_is_none_of_is_within_any_limit_and_reaches_none() {
        for (String none : List.of(
                "gap",
                "gap of shelf over frieze",
                "gap of frieze over shelf",
                "area of shelf over frieze",
                "depth of shelf over frieze",
                "overhang of shelf.face in noon",
                "depth of shelf.face in noon",
                "dark of shelf.face in noon",
                "by",
                "first shows at of ground",
                "most seen of ground")) {
            assertThat(shelf("'" + none + " <= 0.0625'").met()).as(none).isTrue();
            assertThat(shelf("'" + none + " = 0'").met()).as(none).isTrue();
            MustResult least = shelf("'" + none + " >= 0.0625'");
            assertThat(least.met()).as(none).isFalse();
            assertThat(least.figure()).as(none).hasValue(0);
        }
    }

    @Test
    void what_is_too_far_apart_to_be_a_joint_is_not_closed() {
        String apart = shelf("frieze.top + 1", "7-1/4");
        assertThat(met(apart, "gap of shelf over frieze <= 1/16").met()).isFalse();
    }

    @Test
    void what_was_not_asked_is_not_none_and_the_key_that_asks_is_named() {
        Answer answer = answer(shelf("frieze.top", "7-1/4").replaceAll("(?m)^approach:.*\n", "")
                + "must:\n  - most seen of ground <= 1\n  - seen of ground <= 1\n");
        assertThat(answer.known().orElseThrow().must())
                .allSatisfy(result -> assertThat(result.met()).isFalse());
        assertThat(answer.notices())
                .filteredOn(notice -> notice.code().equals("must-not-met"))
                .extracting(NoticeWords.INCHES::cure)
                .containsExactly("Add 'approach', which asks for it.", "Add 'eyes', which asks for it.");
    }

    @Test
    void what_nothing_bounds_is_more_than_any_value() {
        String block = """
                wood: red-oak
                space: { floor: 0 }
                pieces: [{ name: block, profile: board 3 x 6, face: 5, bottom: 0 }]
                """;
        String loaded = block + "loads: [{ name: books, on: block, out: 3-1/2, load: 10 }]\n";
        for (String line : List.of("load factor >= 2", "all may grow >= 2", "times of block >= 2")) {
            MustResult endless = met(loaded, line);
            assertThat(endless.met()).as(line).isTrue();
            assertThat(endless.figure()).as(line).isEmpty();
            assertThat(met(loaded, line.replace(">=", "<=")).met()).as(line).isFalse();
        }
        assertThat(met(block, "load factor >= 2").met())
                .as("without a load nothing is known of loads")
                .isFalse();
    }

    /**
     * A shelf 12 out throws its shadow 12 - 2-1/4 = 9-3/4 down the line of the frieze, past its foot 7-1/4 below: the face is
     * dark from end to end, and the shadow is no less deep for that.
     */
    @Test
    void a_shadow_that_covers_a_face_is_as_deep_as_its_line_would_have_it() {
        String deep = shelf("frieze.top", "12");
        assertThat(met(deep, "share of frieze.face in noon = 100 %").met()).isTrue();
        assertThat(met(deep, "depth of frieze.face in noon >= 9").figure().orElseThrow())
                .isCloseTo(9.75, within(1e-6));
        assertThat(met(deep, "depth of frieze.face in noon <= 4").met()).isFalse();
    }

    @Test
    void the_unit_of_a_value_tells_what_is_meant() {
        String fire = shelf("frieze.top", "7-1/4") + "firebox: { top: -8 }\n";
        assertThat(met(fire, "needs of shelf in IRC <= 14 in").quantity()).isEqualTo(Quantity.LENGTH);
        assertThat(met(fire, "needs of shelf <= 14 in").quantity()).isEqualTo(Quantity.LENGTH);
    }

    /** A row on studs is known by its run, its stretch and its own name. */
    @Test
    void a_row_goes_by_its_piece_also_where_it_is_known_by_other_names() {
        String planned = shelf("frieze.top", "7-1/4")
                + "fastenings: [{ name: gs, piece: ground, use: screw 8 x 3, at: { up: 4 } }]\n"
                + "plan: [{ name: case, left: square, right: square, studs: { every: 16, first: 8 },"
                + " stretches: [{ name: side, length: 96 }] }]\n";
        // every 16 in from 8 on, on 96: 8, 24 ... 88
        assertThat(met(planned, "nails at of gs >= 1").figure()).hasValue(6);
        assertThat(met(planned, "nails at of ground >= 1").figure()).hasValue(6);
        assertThat(answer(planned + "must: [nails at of shelf >= 1]\n").notices())
                .filteredOn(notice -> notice.code().equals("must-not-met"))
                .extracting(NoticeWords.INCHES::message)
                .containsExactly("'nails at of shelf >= 1' is not met: the stack has no such figure.");
    }

    @Test
    void a_rule_of_the_books_goes_by_its_edition_too() {
        String fire = shelf("frieze.top", "7-1/4") + "firebox: { top: -8, rules: [IRC 2018] }\n";
        assertThat(met(fire, "needs of shelf in IRC 2018 <= 20").figure())
                .isPresent()
                .isEqualTo(met(fire, "needs of shelf in IRC <= 20 in").figure());
    }

    /** A bare number up to 1 is a part of one to some and percent to others: nobody is to guess which. */
    @Test
    void of_a_bare_share_up_to_one_both_readings_are_told_and_nothing_is_nothing() {
        for (var told : Map.of("0.5", "'50 %' or '0.5 %'", "1/2", "'50 %' or '0.5 %'", "1", "'100 %' or '1 %'")
                .entrySet()) {
            String yaml =
                    shelf("frieze.top", "7-1/4") + "must: [share of frieze.face in noon <= " + told.getKey() + "]\n";
            assertThat(answer(yaml).notices())
                    .extracting(NoticeWords.INCHES::cure)
                    .contains("Write " + told.getValue() + ".");
        }
        String within = shelf("frieze.top", "7-1/4") + "must: [share of frieze.face in noon = 50 % within 0.02]\n";
        assertThat(answer(within).notices())
                .extracting(NoticeWords.INCHES::message)
                .contains("'0.02' for 'share' may be 2 % or 0.02 %.");
        // 0 is none either way
        assertThat(shelf("share of frieze.face in noon >= 0").met()).isTrue();
    }

    @Test
    void of_half_a_percent_a_half_may_be_meant() {
        for (String half : List.of("0.5", ".5")) {
            assertThat(answer(shelf("frieze.top", "7-1/4") + "must: [share of frieze.face in noon <= " + half + "]\n")
                            .known())
                    .isEmpty();
        }
        assertThat(shelf("share of frieze.face in noon <= 0.5 %").met()).isFalse();
        // 5 of 7-1/4 dark
        assertThat(shelf("share of frieze.face in noon <= 75").met()).isTrue();
    }

    /** Of a figure of light the lights of the stack are of use, not the orders that proportions are held against. */
    @Test
    void behind_a_figure_the_names_of_its_own_sheet_are_told() {
        Answer asked = answer(SHELF.replace("OUT", "9").replace("SHELF", "frieze.top")
                + "proportion: { opening: { width: 36, height: 80 } }\n"
                + "must: ['dark of frieze.face in sunset <= 3']\n");
        assertThat(asked.notices())
                .filteredOn(notice -> notice.code().equals("unknown-figure"))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("Nothing is called 'sunset' behind 'in'.");
                    assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Known here: noon.");
                });
    }
}

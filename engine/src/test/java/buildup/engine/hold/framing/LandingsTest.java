package buildup.engine.hold.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.hold.support.Support;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Rows of nails on studs, plates, masonry and joists; places by hand. */
class LandingsTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String BASE = """
            wood: yellow-poplar
            space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
            pieces:
              - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor }
              - { name: frieze, profile: board 3/4 x 3-1/2, back: wall, top: ceiling }
            """;

    private static Answer answer(String yaml) {
        return Answer.of(
                DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
    }

    private static Answer ask(String row, String run, String stretch) {
        return answer(BASE + "fastenings:\n  - { name: row, use: 15 ga x 2-1/2, " + row + " }\nplan:\n  - { name: run,"
                + " left: die, right: die, " + run + " stretches: [{ name: north, length: 144" + stretch + " }] }\n");
    }

    private static Landing landing(Answer answer) {
        return answer.known().map(Answers::framing).orElseThrow().landings().get(0);
    }

    private static List<Notice> said(Answer answer) {
        return answer.notices().stream()
                .filter(notice -> notice.code().equals("misses-the-framing"))
                .toList();
    }

    private static final String STUDS = "studs: { every: 16, first: 12 },";

    @Test
    void a_row_begun_at_the_first_stud_lands_on_all() {
        Answer answer = ask("piece: base, at: { up: 3 }, first: 12", STUDS, "");
        Landing row = landing(answer);
        assertThat(row.into()).isEqualTo(Landing.Into.STUDS);
        assertThat(row.places())
                .isEqualTo(IntStream.range(0, 9).mapToObj(i -> 12.0 + 16 * i).toList());
        assertThat(row.misses()).isEmpty();
        // from 12 on every 16, the last at 140: the first twelve inches are the nearest to none, sixteen between two
        assertThat(row.between()).isCloseTo(16, EXACT);
        assertThat(said(answer)).isEmpty();
    }

    private static Support support(Answer answer) {
        return answer.known().map(Answers::support).orElseThrow();
    }

    private static Answer hung(String first, String spacing, String studs) {
        return answer("""
                wood: red-oak
                space: { floor: -90, wall: { covering: 1/2 } }
                pieces:
                  - { name: frieze, profile: board 3/4 x 7-1/4, back: wall, bottom: datum }
                fastenings:
                  - { name: row, piece: frieze, use: 15 ga x 2-1/2, at: { up: 4 }, per: 2, spacing: %s%s }
                plan:
                  - { name: run, left: die, right: die, stretches: [{ name: north, length: 144%s }] }
                """.formatted(spacing, first.isEmpty() ? "" : ", first: " + first, studs));
    }

    @Test
    void what_a_row_carries_shrinks_with_the_share_of_it_that_lands() {
        // from 12 on every 12, 11 of them, on studs every 24: those at 24, 48, .. 120 land, which are 5
        double all = support(hung("12", "12", "")).whole().times().orElseThrow();
        double landed = support(hung("12", "12", ", studs: { every: 24, first: 24 }"))
                .whole()
                .times()
                .orElseThrow();
        assertThat(landed).isCloseTo(all * 5 / 11, within(1e-6));
    }

    /** The frieze on two runs of 144, its nails at 12, 24, .. 132 of each, with studs of their own. */
    private static Answer onTwoRuns(String north, String south) {
        return answer("""
                wood: red-oak
                space: { floor: -90, wall: { covering: 1/2 } }
                pieces:
                  - { name: frieze, profile: board 3/4 x 7-1/4, back: wall, bottom: datum }
                fastenings:
                  - { name: row, piece: frieze, use: 15 ga x 2-1/2, at: { up: 4 }, per: 2, spacing: 12, first: 12 }
                plan:
                  - { name: one, left: die, right: die, stretches: [{ name: north, length: 144, studs: { %s } }] }
                  - { name: two, left: die, right: die, stretches: [{ name: south, length: 144, studs: { %s } }] }
                """.formatted(north, south));
    }

    @Test
    void the_stretch_on_which_the_fewest_land_decides_whichever_comes_first() {
        double all = support(hung("12", "12", "")).whole().times().orElseThrow();
        String five = "every: 24, first: 24";
        String two = "every: 48, first: 48";
        String none = "every: 24, first: 18";
        for (Answer answer : List.of(onTwoRuns(five, two), onTwoRuns(two, five))) {
            assertThat(support(answer).whole().answer()).isEqualTo(Support.Answer.STANDS);
            assertThat(support(answer).whole().times().orElseThrow()).isCloseTo(all * 2 / 11, within(1e-6));
        }
        for (Answer answer : List.of(onTwoRuns(five, none), onTwoRuns(none, two))) {
            assertThat(support(answer).whole().answer()).isEqualTo(Support.Answer.NO);
            assertThat(answer.notices().stream()
                            .filter(notice -> notice.code().equals("tips"))
                            .map(NoticeWords.INCHES::message))
                    .singleElement()
                    .asString()
                    .contains("with 0 of 11 of row 'row' on a stud");
        }
    }

    /** Two boards alike, the nails of one at 12, 36, .. 132, those of the other at 24, 48, .. 120. */
    private static Answer twoRows(String north, String south) {
        return answer("""
                wood: red-oak
                space: { floor: -90, wall: { covering: 1/2 } }
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
                  - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: -20 }
                fastenings:
                  - { name: six, piece: frieze, use: 15 ga x 2-1/2, at: { up: 3 }, per: 2, spacing: 24, first: 12 }
                  - { name: five, piece: base, use: 15 ga x 2-1/2, at: { up: -17 }, per: 2, spacing: 24, first: 24 }
                plan:
                  - { name: one, left: die, right: die, stretches: [{ name: north, length: 144%s }] }
                  - { name: two, left: die, right: die, stretches: [{ name: south, length: 144%s }] }
                """.formatted(north, south));
    }

    @Test
    void of_two_stretches_each_of_which_is_worse_for_another_row_the_one_decides_on_which_it_holds_less() {
        double all = support(twoRows("", "")).whole().times().orElseThrow();
        String twoOfFive = ", studs: [12, 24, 36, 60, 72, 84, 108, 132]";
        String twoOfSix = ", studs: [12, 24, 48, 72, 84, 96, 120]";
        for (Answer answer : List.of(twoRows(twoOfFive, twoOfSix), twoRows(twoOfSix, twoOfFive))) {
            assertThat(support(answer).whole().answer()).isEqualTo(Support.Answer.STANDS);
            assertThat(support(answer).whole().times().orElseThrow()).isCloseTo(all * 2 / 6, within(1e-6));
        }
        String threeOfSix = ", studs: [12, 24, 36, 48, 72, 84, 96, 120]";
        assertThat(support(twoRows(twoOfFive, threeOfSix)).whole().times().orElseThrow())
                .isCloseTo(all * 2 / 5, within(1e-6));
        String noneOfFive = ", studs: [12, 36, 60, 84, 108, 132]";
        for (Answer answer : List.of(twoRows(noneOfFive, twoOfSix), twoRows(twoOfSix, noneOfFive))) {
            assertThat(support(answer).whole().answer()).isEqualTo(Support.Answer.NO);
            assertThat(answer.notices().stream()
                            .filter(notice -> notice.code().equals("tips"))
                            .map(NoticeWords.INCHES::message))
                    .singleElement()
                    .asString()
                    .contains("with 0 of 5 of row 'five' on a stud");
        }
    }

    @Test
    void a_stack_does_not_stand_by_nails_that_go_between_the_studs() {
        Answer answer = hung("", "10", ", studs: { every: 24, first: 24 }");
        assertThat(support(answer).whole().answer()).isEqualTo(Support.Answer.NO);
        Notice falls = answer.notices().stream()
                .filter(notice -> notice.code().equals("tips"))
                .findFirst()
                .orElseThrow();
        assertThat(NoticeWords.INCHES.message(falls))
                .isEqualTo("The stack does not stand on 'north': with 1 of 14 of row 'row' on a stud, frieze tips"
                        + " out, 3-1/4+ to wall.");
        assertThat(NoticeWords.INCHES.cure(falls)).contains("Set it out with 'first: 24' and 'spacing: 24'.");
        // as the cure says: half a nail a foot in place of 1.2
        Answer cured = hung("24", "24", ", studs: { every: 24, first: 24 }");
        double all = support(hung("", "10", "")).whole().times().orElseThrow();
        assertThat(support(cured).whole().times().orElseThrow()).isCloseTo(all * 0.5 / 1.2, within(1e-6));
        assertThat(said(cured)).isEmpty();
    }

    @Test
    void a_row_begun_between_them_misses_all_and_is_told_where_to_begin() {
        Answer answer = ask("piece: base, at: { up: 3 }, first: 8", STUDS, "");
        Landing row = landing(answer);
        assertThat(row.misses()).hasSize(9);
        // 4 off, and a stud takes it up to half its 1-1/2 less 1/4
        assertThat(row.off()).isCloseTo(4 - 0.5, EXACT);
        assertThat(row.between()).isCloseTo(144, EXACT);
        Notice notice = said(answer).get(0);
        assertThat(notice.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(notice))
                .isEqualTo("'base' on 'north': row 'row' misses the studs in 9 of 9 places, at 8, 24, 40 and 56, ...");
        assertThat(NoticeWords.INCHES.cure(notice))
                .startsWith("Set it out with 'first: 12' and 'spacing: 16'; or leave 'first:' out");
    }

    /** 12 and 16 meet every 48: of 12, 24, .. 132 only 12, 60 and 108 are studs. */
    @Test
    void a_spacing_that_does_not_go_with_the_studs_meets_every_fourth() {
        Answer answer = ask("piece: base, at: { up: 3 }, spacing: 12, first: 12", STUDS, "");
        Landing row = landing(answer);
        assertThat(row.places()).hasSize(11);
        assertThat(row.landed()).isEqualTo(3);
        assertThat(row.between()).isCloseTo(48, EXACT);
        assertThat(row.best()).isEqualTo(new Landing.Layout(12, 16, 0));
    }

    @Test
    void a_row_that_does_not_say_where_it_begins_is_set_out_on_the_studs() {
        Answer answer = ask("piece: base, at: { up: 3 }", STUDS, "");
        Landing row = landing(answer);
        assertThat(row.set()).isFalse();
        assertThat(row.best().first()).isCloseTo(12, EXACT);
        assertThat(row.misses()).isEmpty();
        assertThat(said(answer)).isEmpty();
    }

    /**
     * Studs at 12, 36, .. 132 and spaces of 16 meet every 48: from 12, at 12, 60 and 108 of 12, 28, .. 140. Begun anywhere
     * else no more land.
     */
    @Test
    void a_row_whose_spacing_does_not_go_with_the_studs_begins_where_most_of_it_lands() {
        Answer answer = ask("piece: base, at: { up: 3 }", "studs: { every: 24, first: 12 },", "");
        Landing row = landing(answer);
        assertThat(row.places())
                .isEqualTo(IntStream.range(0, 9).mapToObj(i -> 12.0 + 16 * i).toList());
        assertThat(row.landed()).isEqualTo(3);
        assertThat(row.best()).isEqualTo(new Landing.Layout(12, 24, 0));
        assertThat(NoticeWords.INCHES.cure(said(answer).get(0)))
                .isEqualTo("Set it out with 'first: 12' and 'spacing: 24'.");
    }

    /** Studs at 15-1/4, 63-1/4 and 111-1/4, 48 apart, are met by spaces of 12 from 3-1/4 on. */
    @Test
    void a_row_closer_than_the_studs_lands_on_those_that_it_can() {
        Landing row =
                landing(ask("piece: base, at: { up: 3 }, spacing: 12", "studs: { every: 16, first: 15-1/4 },", ""));
        assertThat(row.places()).startsWith(3.25, 15.25, 27.25);
        assertThat(row.landed()).isEqualTo(3);
    }

    /** From 43 on the studs stand an inch farther on: begun 1/2 beside the first, where its edge still takes it, all land. */
    @Test
    void a_row_begins_beside_the_middle_of_a_stud_where_more_of_it_then_lands() {
        Landing row =
                landing(ask("piece: base, at: { up: 3 }", "", ", studs: [10, 26, 43, 59, 75, 91, 107, 123, 139]"));
        assertThat(row.places()).hasSize(9).startsWith(10.5);
        assertThat(row.misses()).isEmpty();
    }

    /** The last stud, at 143-1/4, is nearer than an inch to the end of 144: the row stays in the middle of the eight others. */
    @Test
    void a_row_that_lands_on_the_middles_is_not_shifted_to_the_edges_for_one_more() {
        Landing row = landing(ask("piece: base, at: { up: 3 }", "studs: { every: 16, first: 15-1/4 },", ""));
        assertThat(row.places()).hasSize(8).startsWith(15.25);
        assertThat(row.misses()).isEmpty();
    }

    /** Between the ends of a stick of 14, 12 in, is one space. */
    @Test
    void a_stick_without_a_stud_is_nailed_near_either_end_and_all_of_it_misses() {
        Answer stub = answer(BASE + "fastenings: [{ name: row, use: 15 ga x 2-1/2, piece: base, at: { up: 3 } }]\n"
                + "plan: [{ left: die, right: die, studs: { every: 16, first: 15-1/4 },"
                + " stretches: [{ name: stub, length: 14 }] }]\n");
        assertThat(landing(stub).places()).containsExactly(1.0, 13.0);
        assertThat(landing(stub).landed()).isZero();
        assertThat(NoticeWords.INCHES.cure(said(stub).get(0))).startsWith("Add blocking between them");
    }

    /** 58 between the ends of 60 take 4 spaces of 14-1/2. */
    @Test
    void masonry_takes_a_nail_near_either_end_and_none_farther_apart_than_the_spacing() {
        Landing row = landing(answer(BASE
                + "fastenings: [{ name: row, use: 15 ga x 2-1/2, piece: base, at: { up: 3 }, spacing: 16 }]\n"
                + "plan: [{ left: die, right: die, studs: masonry, stretches: [{ name: one, length: 60 }] }]\n"));
        assertThat(row.places()).containsExactly(1.0, 15.5, 30.0, 44.5, 59.0);
        assertThat(row.between()).isCloseTo(14.5, EXACT);
    }

    @Test
    void studs_that_were_found_are_taken_one_by_one_and_a_door_interrupts_the_row() {
        Answer answer = ask(
                "piece: base, at: { up: 3 }, first: 10",
                "",
                ", studs: [10, 26, 43, 58, 74, 90, 106, 122, 138], openings: [{ name: door, from: 30, to: 70 }]");
        List<Landing> rows = answer.known().map(Answers::framing).orElseThrow().landings();
        assertThat(rows).extracting(Landing::stretch).containsExactly("north, left of door", "north, right of door");
        assertThat(rows.get(0).places()).containsExactly(10.0, 26.0);
        assertThat(rows.get(1).places()).containsExactly(74.0, 90.0, 106.0, 122.0, 138.0);
        assertThat(rows).allSatisfy(row -> assertThat(row.misses()).isEmpty());
    }

    @Test
    void plates_and_masonry_take_a_nail_anywhere() {
        Answer plate = ask(
                "piece: frieze, at: { up: 95 }, first: 5",
                "studs: { every: 16, first: 12, top-plate: 3, bottom-plate: 1-1/2 },",
                "");
        assertThat(landing(plate).into()).isEqualTo(Landing.Into.PLATE);
        assertThat(landing(plate).misses()).isEmpty();
        Answer under = ask(
                "piece: frieze, at: { up: 93 }, first: 5",
                "studs: { every: 16, first: 12, top-plate: 3, bottom-plate: 1-1/2 },",
                "");
        assertThat(landing(under).into()).isEqualTo(Landing.Into.STUDS);
        assertThat(landing(under).misses()).isNotEmpty();
        Answer masonry = ask("piece: base, at: { up: 3 }, first: 5", "studs: masonry,", "");
        assertThat(landing(masonry).into()).isEqualTo(Landing.Into.MASONRY);
    }

    /** 144 less 1 at either end are 142: 9 spaces of 15.78, since 8 of 16 are too few. */
    @Test
    void where_a_row_stands_evenly_its_own_spacing_is_told() {
        Landing base = landing(ask("piece: base, at: { up: 3 }", "studs: masonry,", ""));
        assertThat(base.places()).hasSize(10);
        assertThat(base.best().spacing()).isCloseTo(142.0 / 9, EXACT);
    }

    @Test
    void what_is_known_of_one_stretch_goes_before_what_is_known_of_the_run() {
        Answer answer = ask("piece: base, at: { up: 3 }, first: 8", STUDS, ", studs: { every: 16, first: 8 }");
        assertThat(landing(answer).misses()).isEmpty();
    }

    @Test
    void rows_are_proposed_on_the_studs() {
        Answer answer = answer(BASE + "fastenings: []\nplan:\n  - { name: run, left: die, right: die, " + STUDS
                + " stretches: [{ name: north, length: 144 }] }\n");
        List<Landing> rows = answer.known().map(Answers::framing).orElseThrow().proposed();
        assertThat(rows).isNotEmpty().allSatisfy(row -> {
            assertThat(row.best().first()).isCloseTo(12, EXACT);
            assertThat(row.misses()).isEmpty();
        });
    }

    private static Answer overhead(String nail, String joists) {
        return answer("""
                wood: yellow-poplar
                space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
                pieces: [{ name: soffit, profile: board 3/4 x 3-1/2, lay: flat, back: wall, top: ceiling }]
                fastenings: [{ name: row, piece: soffit, at: { out: 1-3/4 }, first: 12, %s }]
                plan: [{ left: die, right: die, joists: { %s }, stretches: [{ name: north, length: 144 }] }]
                """.formatted(nail, joists));
    }

    /** 2-1/2 less 3/4 of board and 1/2 of plaster. */
    @Test
    void a_nail_into_joists_that_run_out_bites_by_what_board_and_plaster_leave() {
        Landing row = landing(overhead("use: 15 ga x 2-1/2", "every: 16, first: 12"));
        assertThat(row.into()).isEqualTo(Landing.Into.JOISTS);
        assertThat(row.misses()).isEmpty();
        assertThat(row.bite().orElseThrow()).isCloseTo(1.25, EXACT);
        Answer beside = overhead("use: 15 ga x 2-1/2", "every: 16, first: 4");
        assertThat(landing(beside).misses()).hasSize(9);
        assertThat(landing(beside).bite().orElseThrow()).isZero();
    }

    /** A joist along the wall from 1 to 2-1/2 out: a nail at 1-3/4, 15 degrees toward the wall, stays in it. */
    @Test
    void along_the_wall_a_nail_bites_in_the_joist_that_lies_there_and_else_in_none() {
        Landing straight = landing(overhead("use: 15 ga x 2-1/2", "every: 16, first: 1-3/4, run: along"));
        assertThat(straight.bite().orElseThrow()).isCloseTo(1.25, EXACT);
        Landing aslant = landing(overhead("use: 15 ga x 2-1/2, angle: 15", "every: 16, first: 1-3/4, run: along"));
        assertThat(aslant.misses()).isEmpty();
        assertThat(aslant.bite().orElseThrow()).isCloseTo(2.5 - 1.25 / Math.cos(Math.toRadians(15)), EXACT);
        // a joist from 0.65 to 2.15: at 30 degrees the nail comes out of its side, 1.1 nearer to the wall than its head
        Landing out = landing(overhead("use: 15 ga x 2-1/2, angle: 30", "every: 16, first: 1.4, run: along"));
        assertThat(out.bite().orElseThrow()).isCloseTo(1.1 / 0.5 - 1.25 / Math.cos(Math.toRadians(30)), EXACT);
        Answer none = overhead("use: 15 ga x 2-1/2", "every: 16, first: 12, run: along");
        assertThat(landing(none).landed()).isZero();
        assertThat(landing(none).bite().orElseThrow()).isZero();
        assertThat(said(none))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.message(notice))
                        .contains("beside the joists, which run along the wall"));
    }

    /** 12 diameters of a 15 gauge nail, 0.072 in, are 0.864. */
    @Test
    void a_nail_that_goes_little_into_a_joist_is_said() {
        Answer answer = overhead("use: 15 ga x 2", "every: 16, first: 12");
        assertThat(landing(answer).bite().orElseThrow()).isCloseTo(0.75, EXACT);
        assertThat(answer.notices()).extracting(Notice::code).contains("short-bite-in-joist");
        assertThat(overhead("use: 15 ga x 2-1/2", "every: 16, first: 12").notices())
                .extracting(Notice::code)
                .doesNotContain("short-bite-in-joist");
    }

    @Test
    void framing_that_cannot_be_is_refused() {
        assertThat(refusal("studs: { first: 12 },")).isEqualTo("Studs or joists say no 'every'.");
        assertThat(refusal("studs: { every: 16 },")).isEqualTo("Studs or joists say no 'first'.");
        assertThat(refusal("studs: { every: 16, first: 12, width: 17 },"))
                .isEqualTo("Studs or joists 17 wide do not stand every 16, the first at 12.");
        assertThat(refusal("studs: brick,")).isEqualTo("'studs' does not say where they stand.");
        assertThat(refusal("joists: [20, 12],")).isEqualTo("The places of 'joists' do not go up: 12.");
        assertThat(refusal("joists: { every: 16, first: 12, run: up },"))
                .isEqualTo("No direction of joists is called 'up'.");
    }

    private static String refusal(String keys) {
        Answer answer = ask("piece: base, at: { up: 3 }", keys, "");
        List<Notice> refusals = answer.notices().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .toList();
        assertThat(refusals).as(keys).hasSize(1);
        return NoticeWords.INCHES.message(refusals.get(0));
    }

    private static Answer screwedUp(String screw, String joist, String row) {
        return answer("""
                wood: yellow-poplar
                space: { floor: -96, ceiling: 0, wall: { covering: 1/2 } }
                pieces:
                  - { name: joist, kind: framing, section: [out 24, up 7-1/4], back: 0, bottom: JOIST }
                  - { name: strip, kind: nailer, profile: board 3/4 x 2-1/2, lay: flat, back: 2, top: ceiling }
                fastenings:
                  - { name: s, piece: strip, use: SCREW, at: { out: 3, up: strip.bottom }, ROW }
                plan:
                  - { name: n, left: die, right: die, joists: { every: 16, first: 8 }, stretches: [{ name: a, length: 100 }] }
                """.replace("JOIST", joist).replace("SCREW", screw).replace("ROW", row));
    }

    /** 2 in less 3/4 of the strip and 1/2 of the covering leave 3/4 in the joist; 6 diameters of a No. 8 are .984. */
    @Test
    void what_covers_the_ceiling_is_in_the_way_of_a_screw_into_a_joist_that_is_given_as_a_piece() {
        for (String joist : List.of("ceiling", "ceiling + 1/2")) {
            assertThat(screwedUp("screw 8 x 2", joist, "spacing: 16")
                            .known()
                            .orElseThrow()
                            .fixed()
                            .get(0)
                            .bite())
                    .as(joist)
                    .isCloseTo(0.75, EXACT);
            assertThat(landing(screwedUp("screw 8 x 2", joist, "first: 8, spacing: 16"))
                            .bite()
                            .orElseThrow())
                    .as("the bite told of the joists is that of the piece")
                    .isCloseTo(0.75, EXACT);
            assertThat(screwedUp("screw 8 x 2-1/2", joist, "first: 8, spacing: 16")
                            .known()
                            .orElseThrow()
                            .support()
                            .whole()
                            .answer())
                    .isEqualTo(Support.Answer.STANDS);
        }
    }

    /** Joists at 8, 24, 40; screws at 1, 17, 33: none within its half thickness of one. */
    @Test
    void screws_between_the_joists_hold_nothing_though_a_joist_is_given_as_a_piece() {
        Answer answer = screwedUp("screw 8 x 2-1/2", "ceiling", "first: 1, spacing: 16");
        assertThat(support(answer).whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(answer.notices().stream()
                        .map(notice -> NoticeWords.in(answer.unit()).message(notice)))
                .anyMatch(said -> said.contains("with 0 of 7 of row 's' on a joist"));
    }
}

package buildup.engine.hold.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
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
                .isEqualTo("'base' on 'north': 9 of the 9 of row 'row' miss the studs, at 8, 24, 40 and 56, ...");
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

    @Test
    void framing_that_cannot_be_is_refused() {
        assertThat(refusal("studs: { first: 12 },")).isEqualTo("Studs or joists say no 'every'.");
        assertThat(refusal("studs: { every: 16 },")).isEqualTo("Studs or joists say no 'first'.");
        assertThat(refusal("studs: { every: 16, first: 12, width: 17 },"))
                .isEqualTo("Studs or joists 17 wide do not stand every 16, the first at 12.");
        assertThat(refusal("studs: brick,")).isEqualTo("'studs' does not say where they stand.");
        assertThat(refusal("joists: [20, 12],")).isEqualTo("The places of 'joists' do not go up: 12.");
        assertThat(refusal("joists: { every: 16, first: 12, run: up },")).isEqualTo("Joists do not run 'up'.");
    }

    private static String refusal(String keys) {
        Answer answer = ask("piece: base, at: { up: 3 }", keys, "");
        List<Notice> refusals = answer.notices().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .toList();
        assertThat(refusals).as(keys).hasSize(1);
        return NoticeWords.INCHES.message(refusals.get(0));
    }
}

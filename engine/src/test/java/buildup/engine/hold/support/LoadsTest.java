package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.support.Loads.Wanted;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The loads of a document, read and set on their pieces. */
class LoadsTest {
    private final Bench bench = Bench.loose(
            "name: case, kind: framing, section: [out 4, up 4], face: 0, top: 0",
            "name: shelf, section: [out 10, up 1], back: -4, bottom: 0");

    private final Notices notices = new Notices();

    private List<Wanted> read(String... entries) {
        String text = "loads:\n  - " + String.join("\n  - ", entries) + "\n";
        Document document = DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Fields root = Fields.of(document, new Claims(), notices, bench.stack().lengths());
        return Loads.read(bench.stack(), root, notices);
    }

    private Notice only() {
        assertThat(notices.sorted()).hasSize(1);
        return notices.sorted().get(0);
    }

    private void refused(String code, int line, String message, String cure) {
        Notice notice = only();
        assertThat(notice.level()).isEqualTo(Level.REFUSAL);
        assertThat(notice.code()).isEqualTo(code);
        assertThat(notice.mark().orElseThrow().line()).isEqualTo(line);
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo(cure);
    }

    @Test
    void a_load_is_pounds_a_foot_at_a_place_on_a_piece() {
        Wanted load =
                read("{ name: books, on: shelf, out: 5-1/2, load: 20 lb/ft }").get(0);
        assertThat(load.name()).isEqualTo("books");
        assertThat(load.piece()).isEqualTo("shelf");
        assertThat(load.out()).isCloseTo(5.5, within(1e-12));
        assertThat(load.poundsPerFoot()).isCloseTo(20, within(1e-12));
        assertThat(load.mark().line()).isEqualTo(2);
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void newtons_a_metre_become_pounds_a_foot() {
        // 1 lb = 0.45359237 kg and standard gravity 9.80665 m/s2 (NIST SP 811, appendix B; from memory), 1 ft = 0.3048
        // m
        double perPound = 0.45359237 * 9.80665 / 0.3048;
        assertThat(read("{ on: shelf, out: 1, load: 100 N/m }").get(0).poundsPerFoot())
                .isCloseTo(100 / perPound, within(1e-12));
        assertThat(100 / perPound).isCloseTo(6.852, within(0.0005));
    }

    @Test
    void a_bare_number_is_pounds_a_foot_and_blanks_do_not_matter() {
        List<Wanted> loads =
                read("{ on: shelf, out: 1, load: 7.5 }", "{ on: shelf, out: 25.4 mm, load: ' 7.5lb/ft ' }");
        assertThat(loads).extracting(Wanted::poundsPerFoot).containsExactly(7.5, 7.5);
        assertThat(loads).extracting(Wanted::name).containsExactly("load 1", "load 2");
        assertThat(loads.get(1).out()).isCloseTo(1, within(1e-12));
    }

    @Test
    void a_document_without_loads_has_none() {
        Document document = DocumentReader.read("stack.yaml", "title: none\n".getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Fields root = Fields.of(document, new Claims(), notices, bench.stack().lengths());
        assertThat(Loads.read(bench.stack(), root, notices)).isEmpty();
    }

    @Test
    void a_load_on_an_unknown_piece_is_refused_with_the_nearest_name() {
        assertThat(read("{ name: books, on: shelf, out: 1, load: 1 }", "{ name: lean, on: shlef, out: 1, load: 1 }"))
                .hasSize(1);
        refused("unknown-name", 3, "Load 'lean' is on no piece called 'shlef'.", "Did you mean shelf?");
    }

    @Test
    void a_load_on_nothing_is_refused() {
        assertThat(read("{ name: lean, out: 1, load: 1 }")).isEmpty();
        Notice notice = only();
        assertThat(notice.code()).isEqualTo("unknown-name");
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("Load 'lean' is on no piece.");
        assertThat(notice.mark().orElseThrow().line()).isEqualTo(2);
    }

    @Test
    void a_load_without_an_amount_is_refused() {
        assertThat(read("{ name: lean, on: shelf, out: 1 }")).isEmpty();
        refused("not-a-load", 2, "Load 'lean' does not say how heavy it is.", "Write 'load: 20 lb/ft' (or N/m).");
    }

    @Test
    void an_amount_in_another_unit_or_pulling_up_is_refused() {
        assertThat(read("{ name: lean, on: shelf, out: 1, load: 20 kg/m }")).isEmpty();
        refused("not-a-load", 2, "Load 'lean': '20 kg/m' is not a load.", "Write 'load: 20 lb/ft' (or N/m).");
        for (String wrong : List.of("-20", "1e3", "20 lb", "1234567", "a lot", "'20,5'", "NaN")) {
            assertThat(read("{ name: lean, on: shelf, out: 1, load: " + wrong + " }"))
                    .as(wrong)
                    .isEmpty();
        }
    }

    @Test
    void a_load_without_a_place_is_refused() {
        assertThat(read("{ on: shelf, out: 1, load: wrong }", "{ on: shelf, load: 20 lb/ft }"))
                .isEmpty();
        Notice second = notices.sorted().get(1);
        assertThat(second.level()).isEqualTo(Level.REFUSAL);
        assertThat(second.code()).isEqualTo("not-a-place");
        assertThat(second.mark().orElseThrow().line()).isEqualTo(3);
        assertThat(NoticeWords.INCHES.message(second))
                .as("counted as it stands in the list")
                .isEqualTo("Load 'load 2' has no place.");
        assertThat(NoticeWords.INCHES.cure(second)).isEqualTo("Give 'out:', its distance from the wall plane.");
    }

    @Test
    void a_place_that_is_no_length_is_refused_once() {
        assertThat(read("{ name: lean, on: shelf, out: far, load: 20 lb/ft }")).isEmpty();
        assertThat(only().level()).isEqualTo(Level.REFUSAL);
        assertThat(only().mark().orElseThrow().line()).isEqualTo(2);
    }

    @Test
    void a_load_beside_its_piece_is_said_and_not_counted() {
        List<Load> loads = Loads.on(
                bench.section(),
                read(
                        "{ name: lean, on: shelf, out: 6-1/2, load: 20 lb/ft }",
                        "{ name: books, on: shelf, out: 6, load: 1 }"),
                notices);
        assertThat(loads).extracting(Load::name).containsExactly("books");
        Notice notice = only();
        assertThat(notice.level()).isEqualTo(Level.PROBLEM);
        assertThat(notice.code()).isEqualTo("load-beyond-the-stack");
        assertThat(notice.mark().orElseThrow().line()).isEqualTo(2);
        assertThat(notice.piece()).contains("shelf");
        assertThat(notice.amount().orElseThrow().amount()).isCloseTo(0.5, within(1e-12));
        assertThat(NoticeWords.INCHES.message(notice))
                .isEqualTo("Load 'lean' stands 1/2 beside 'shelf', in the air: it is not counted.");
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Place it between -4 and 6.");
    }

    @Test
    void a_load_on_framing_is_said_and_moves_nothing() {
        List<Load> loads = Loads.on(
                bench.section(),
                read("{ name: safe, on: case, out: -1, load: 500 }", "{ name: books, on: shelf, out: 2, load: 1 }"),
                notices);
        assertThat(loads).extracting(Load::name).containsExactly("books");
        assertThat(only().level()).isEqualTo(Level.NOTE);
        assertThat(only().code()).isEqualTo("load-on-framing");
        assertThat(NoticeWords.INCHES.message(only()))
                .isEqualTo("Load 'safe' lies on 'case', which is framing and stands already: it is not counted.");
    }

    @Test
    void a_load_behind_its_piece_is_in_the_air_as_well() {
        Notices said = new Notices();
        assertThat(Loads.on(bench.section(), read("{ name: lean, on: shelf, out: -5, load: 1 }"), said))
                .isEmpty();
        assertThat(NoticeWords.INCHES.message(said.sorted().get(0)))
                .isEqualTo("Load 'lean' stands 1 beside 'shelf', in the air: it is not counted.");
    }

    @Test
    void a_load_on_the_very_edge_counts() {
        assertThat(Loads.on(
                        bench.section(),
                        read("{ on: shelf, out: -4, load: 1 }", "{ on: shelf, out: 6, load: 1 }"),
                        notices))
                .hasSize(2);
        assertThat(notices.sorted()).isEmpty();
    }
}

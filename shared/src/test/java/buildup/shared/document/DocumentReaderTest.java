package buildup.shared.document;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.Said;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentReaderTest {

    private static final String FILE = "cornice.yaml";

    private final Notices notices = new Notices();

    @Test
    void every_scalar_is_the_text_that_was_written() {
        Mapping root =
                read("{ ratio: 1:12, yes: on, n: 010, half: .5, plus: +3, quoted: \"3/4\", single: '5''', mm: 38 mm }")
                        .orElseThrow()
                        .root();

        assertThat(root.entries().stream().map(entry -> text(entry.value())))
                .containsExactly("1:12", "on", "010", ".5", "+3", "3/4", "5'", "38 mm");
        assertThat(root.get("yes")).isPresent();
        assertThat(root.get("no")).isEmpty();
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void every_node_knows_its_line_and_column() {
        Document document = read("title: Cap\npieces:\n  - { name: bed, back: wall }\n  - näme: ½\n    top: 1\n")
                .orElseThrow();
        Sequence pieces = (Sequence) document.root().get("pieces").orElseThrow();
        Mapping second = (Mapping) pieces.items().get(1);

        assertThat(document.file()).isEqualTo(FILE);
        assertThat(document.root().mark()).isEqualTo(mark(1, 1));
        assertThat(pieces.mark()).isEqualTo(mark(3, 3));
        assertThat(pieces.items().get(0).mark()).isEqualTo(mark(3, 5));
        assertThat(second.entries().get(0).key().mark()).isEqualTo(mark(4, 5));
        assertThat(second.get("näme").orElseThrow().mark()).isEqualTo(mark(4, 11));
        assertThat(second.get("top").orElseThrow().mark()).isEqualTo(mark(5, 10));
    }

    @Test
    void a_value_that_was_left_out_is_the_empty_text() {
        assertThat(text(read("title:\n").orElseThrow().root().get("title").orElseThrow()))
                .isEmpty();
    }

    @Test
    void a_byte_order_mark_and_foreign_line_ends_do_no_harm() {
        Mapping root = read("\uFEFFtitle: Cap\r\nunits: in\r\n").orElseThrow().root();

        assertThat(text(root.get("title").orElseThrow())).isEqualTo("Cap");
        assertThat(root.get("units").orElseThrow().mark()).isEqualTo(mark(2, 8));
    }

    @Test
    void what_is_marked_once_may_be_repeated() {
        Mapping root = read("a: &piece { name: bed }\nb: *piece\nc: &w poplar\nd: *w\n")
                .orElseThrow()
                .root();

        assertThat(root.get("b")).isEqualTo(root.get("a"));
        assertThat(text(root.get("d").orElseThrow())).isEqualTo("poplar");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n", "# nothing yet\n", "---\n", "''", "\uFEFF"})
    void an_empty_file_is_refused(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(Said.of(only()))
                .isEqualTo(refusal("empty-file", "cornice.yaml is empty.", 1, 1, "Begin with 'title:'."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"- a\n- b\n", "just words", "[1, 2]"})
    void a_file_without_keys_is_refused(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(Said.of(only()))
                .isEqualTo(refusal(
                        "not-a-mapping", "cornice.yaml holds no keys at its top.", 1, 1, "Begin with 'title:'."));
    }

    @Test
    void a_binary_file_is_refused_where_it_stops_being_text() {
        Notice nul = binary(new byte[] {'a', ':', '\n', 'b', 0});
        Notice latin = binary("title: Brüstung".getBytes(StandardCharsets.ISO_8859_1));
        Notice wide = binary("title".getBytes(StandardCharsets.UTF_16));
        Notice cut = binary(new byte[] {'a', ':', ' ', (byte) 0xC3});
        Notice noCharacter = binary("a: \uFFFF".getBytes(StandardCharsets.UTF_8));

        assertThat(Said.of(nul))
                .isEqualTo(refusal(
                        "binary-file",
                        "cornice.yaml is not a text file in UTF-8.",
                        2,
                        2,
                        "Save it as text in UTF-8, or name the right file."));
        assertThat(latin.mark()).contains(mark(1, 10));
        assertThat(wide.mark()).contains(mark(1, 1));
        assertThat(cut.mark()).contains(mark(1, 4));
        assertThat(noCharacter.mark()).contains(mark(1, 4));
    }

    @Test
    void a_key_given_twice_is_refused_at_the_second_with_both_lines_and_the_first_is_kept() {
        Mapping root =
                read("title: A\nspace: { floor: 0 }\ntitle: B\n").orElseThrow().root();

        assertThat(text(root.get("title").orElseThrow())).isEqualTo("A");
        assertThat(Said.of(only()))
                .isEqualTo(refusal(
                        "key-twice",
                        "'title' is given twice: in line 1 and again in line 3.",
                        3,
                        1,
                        "Keep one of them."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"a: 1\\n\\tb: 2|2|1", "a:\\n\\t- x|2|1", "a:\\n  b: 1\\n \\tc: 2|3|2", "\\ta: 1|1|1"})
    void a_tab_in_the_indent_is_refused_where_it_stands(String text, int line, int column) {
        assertThat(read(text.replace("\\n", "\n").replace("\\t", "\t"))).isEmpty();
        assertThat(Said.of(only()))
                .isEqualTo(refusal(
                        "tab-in-yaml", "A tab stands where the line is indented.", line, column, "Use blanks."));
    }

    @Test
    void a_tab_far_above_is_not_blamed_for_a_later_fault() {
        read("a: { b: 1,\n\tc: 2 }\nd: 1\ne: 2\nf: 'open\n");
        assertThat(only().code()).isEqualTo("yaml-error");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "a: 'x|1:6|A quote is opened in line 1 and never closed.|Close the quote.",
                "a: [1, 2|1:9|A bracket is opened in line 1 and not closed, or a comma is missing."
                        + "|Close the bracket or put the comma.",
                "a: {b: 1\\nc: 2|2:2|A bracket is opened in line 1 and not closed, or a comma is missing."
                        + "|Close the bracket or put the comma.",
                "a: b: c|1:5|A colon stands where none can be."
                        + "|Line the key up with its neighbors, or put quotes round a text that holds a colon.",
                "a: 1\\nb\\nc: 2|3:1|A key has no colon behind it.|Put a colon and a blank behind the key.",
                "a: 1\\n- b|2:1|This line is not indented like its neighbors.|Line it up with them.",
                "a: @x|1:4|A text cannot begin with this character.|Put quotes round the text.",
                "a: *x|1:4|'*x' repeats something not marked before it."
                        + "|Mark it with '&x', or quote a text that begins with '*'.",
                "a: &x [*x]|1:8|'*x' repeats something not marked before it."
                        + "|Mark it with '&x', or quote a text that begins with '*'.",
                "? [a]\\n: b|1:3|A key must be a single text."
                        + "|Put quotes round it if the brackets belong to a text.",
                "a: }|1:4|This is not YAML: expected the node content, but found '}'."
                        + "|Compare with the lines around it.",
                "%YAML 2.0\\n---\\na: 1|1:1|This is not YAML 1.2: Version{major=2, minor=0}.|Save it as YAML 1.2."
            })
    void a_fault_of_the_yaml_is_told_in_plain_words(String text, String place, String message, String cure) {
        assertThat(read(text.replace("\\n", "\n"))).isEmpty();
        Notice notice = only();
        assertThat(notice.code()).isEqualTo("yaml-error");
        assertThat(notice.mark()).map(Mark::toString).contains(FILE + ":" + place);
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo(cure);
    }

    @Test
    void a_second_document_is_refused() {
        assertThat(read("a: 1\n---\nb: 2\n")).isEmpty();
        assertThat(Said.of(only()))
                .isEqualTo(refusal(
                        "more-than-one-document",
                        "A second document begins here; a file holds one.",
                        2,
                        1,
                        "Split the file at '---'."));
    }

    @Test
    void a_decimal_comma_in_braces_is_refused_and_the_number_put_together_so_that_reading_goes_on() {
        Mapping sizes = (Mapping) read("sizes: { lip: 1,5, lap: floor + 2,25 mm }\n")
                .orElseThrow()
                .root()
                .get("sizes")
                .orElseThrow();

        assertThat(sizes.entries().stream().map(entry -> text(entry.value())))
                .containsExactly("1,5", "floor + 2,25 mm");
        assertThat(Said.all(notices))
                .containsExactly(
                        refusal(
                                "comma-in-braces",
                                "A comma inside brackets ends the entry, so 1,5 fell in two.",
                                1,
                                15,
                                "Quote it: \"1,5\"."),
                        refusal(
                                "comma-in-braces",
                                "A comma inside brackets ends the entry, so floor + 2,25 mm fell in two.",
                                1,
                                25,
                                "Quote it: \"floor + 2,25 mm\"."));
    }

    @Test
    void a_decimal_comma_behind_a_word_in_a_list_is_refused_too() {
        Sequence words = (Sequence) read("section: [out 3,5, up 2]\n")
                .orElseThrow()
                .root()
                .get("section")
                .orElseThrow();

        assertThat(words.items().stream().map(DocumentReaderTest::text)).containsExactly("out 3,5", "up 2");
        assertThat(NoticeWords.INCHES.cure(only())).isEqualTo("Quote it: \"out 3,5\".");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: [24, 48]",
                "a: [24,48]",
                "a: [out 3, up 2]",
                "a: [out 3,up 2]",
                "a: [crown, 5]",
                "a: [band 2, 3]",
                "a: { b: \"1,5\", c: '2,5' }",
                "a: [\"out 3,5\", 2]",
                "a: 1,5",
                "a: { b: 1,\n5: 2 }",
                "a: { b: 1,\n 5 }",
                "a: { b: [1], 5 }",
                "a: { x, 5 }"
            })
    void a_comma_that_parts_two_entries_is_left_alone(String text) {
        assertThat(read(text)).isPresent();
        assertThat(notices.sorted()).isEmpty();
    }

    private Optional<Document> read(String text) {
        return DocumentReader.read(FILE, text.getBytes(StandardCharsets.UTF_8), notices);
    }

    private static Notice binary(byte[] bytes) {
        Notices own = new Notices();
        assertThat(DocumentReader.read(FILE, bytes, own)).isEmpty();
        List<Notice> all = own.sorted();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private Notice only() {
        assertThat(notices.sorted()).hasSize(1);
        return notices.sorted().get(0);
    }

    private static Said refusal(String code, String message, int line, int column, String cure) {
        return Said.refusal(code, message).at(mark(line, column)).cure(cure);
    }

    private static Mark mark(int line, int column) {
        return new Mark(FILE, line, column);
    }

    private static String text(Node node) {
        return ((Scalar) node).text();
    }
}

package buildup.shared.document;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.Said;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldsTest {

    private final Notices notices = new Notices();
    private final Claims claims = new Claims();

    @Test
    void values_come_out_as_what_they_are_asked_for() {
        Fields fields = fields(
                "title: Cap\ntop: 3/4\nspring: 38°\nsolid: no\nspace: { floor: -84 }\nitems: [{ n: a }, { n: b }]\n");

        assertThat(fields.text("title")).contains("Cap");
        assertThat(fields.length("top")).contains(Length.inches(0.75));
        assertThat(fields.angle("spring")).contains(Angle.degrees(38));
        assertThat(fields.yesNo("solid")).contains(false);
        assertThat(fields.fields("space").flatMap(space -> space.length("floor")))
                .contains(Length.inches(-84));
        assertThat(fields.mapping("space"))
                .map(Mapping::entries)
                .map(List::size)
                .contains(1);
        assertThat(fields.list("items").stream().map(item -> item.text("n").orElseThrow()))
                .containsExactly("a", "b");
        assertThat(fields.scalar("title")).contains(new Scalar("Cap", mark(1, 8)));
        assertThat(fields.node("space")).isEqualTo(fields.mapping("space"));
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void what_is_absent_is_nothing_and_no_fault() {
        Fields fields = fields("title: Cap\n");

        assertThat(fields.text("x")).isEmpty();
        assertThat(fields.length("x")).isEmpty();
        assertThat(fields.angle("x")).isEmpty();
        assertThat(fields.yesNo("x")).isEmpty();
        assertThat(fields.fields("x")).isEmpty();
        assertThat(fields.list("x")).isEmpty();
        assertThat(fields.scalars("x")).isEmpty();
        assertThat(fields.has("x")).isFalse();
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void a_block_left_empty_is_as_good_as_absent() {
        Fields fields = fields("lights:\nspace:\ntitle:\n");

        assertThat(fields.list("lights")).isEmpty();
        assertThat(fields.scalars("lights")).isEmpty();
        assertThat(fields.fields("space")).isEmpty();
        assertThat(fields.text("title")).isEmpty();
        assertThat(fields.has("title")).isTrue();
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void what_is_needed_and_not_there_is_said_once_where_it_belongs() {
        Fields fields = fields("title: Cap\nwood:\nfeet: 12\nrates: [a, b]\n").about("cap");
        Kind kind = DocumentCodes.MISSING_KEY.refusal("'{piece}' has no {key}.", "Add it.");
        Function<String, Notice> missing = key -> kind.with("key", key);

        assertThat(fields.needed("feet", missing.apply("feet")).map(Scalar::text))
                .contains("12");
        assertThat(fields.needs("wood", missing.apply("wood"))).isTrue();
        assertThat(notices.sorted()).isEmpty();

        assertThat(fields.needed("wood", missing.apply("wood"))).isEmpty();
        assertThat(fields.needed("color", missing.apply("color"))).isEmpty();
        assertThat(fields.needs("size", missing.apply("size"))).isFalse();
        assertThat(notices.sorted())
                .extracting(NoticeWords.INCHES::message)
                .containsExactlyInAnyOrder("'cap' has no wood.", "'cap' has no color.", "'cap' has no size.");

        assertThat(fields.needed("rates", missing.apply("rates"))).isEmpty();
        assertThat(notices.sorted())
                .as("a value of the wrong shape is there, and only its shape is said")
                .hasSize(4);
    }

    @Test
    void a_size_left_empty_is_refused() {
        assertThat(fields("top:\n").length("top")).isEmpty();
        assertThat(NoticeWords.INCHES.message(only())).isEqualTo("No length is given.");
    }

    @Test
    void one_value_or_a_list_of_them_reads_the_same() {
        Fields fields = fields("one: glue\nmany: [glue, pins]\n");

        assertThat(fields.scalars("one").stream().map(Scalar::text)).containsExactly("glue");
        assertThat(fields.scalars("many").stream().map(Scalar::text)).containsExactly("glue", "pins");
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "Yes", "true", "TRUE"})
    void yes_has_several_spellings(String written) {
        assertThat(fields("solid: " + written).yesNo("solid")).contains(true);
    }

    @Test
    void a_bad_value_is_refused_where_it_stands_and_names_the_piece() {
        Fields fields = fields("- top: 3/43\n  spring: steep\n  solid: maybe\n").about("crown");
        assertThat(fields.length("top")).isEmpty();
        assertThat(fields.angle("spring")).isEmpty();
        assertThat(fields.yesNo("solid")).isEmpty();

        assertThat(Said.all(notices))
                .containsExactly(
                        Said.refusal(
                                        "fraction-mistyped",
                                        "3/43 is not a shop fraction (halves, quarters, 8ths, 16ths, 32nds, 64ths).")
                                .at(mark(2, 8))
                                .of("crown")
                                .cure("Meant 3/4?"),
                        Said.refusal("not-an-angle", "'steep' is not an angle.")
                                .at(mark(3, 11))
                                .of("crown")
                                .cure("Write degrees, as 38 or 22.5."),
                        Said.refusal("not-yes-or-no", "'maybe' is neither yes nor no.")
                                .at(mark(4, 10))
                                .of("crown")
                                .cure("Write yes or no."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text|one value|a list|[a]",
                "text|one value|a block of 'key: value'|{ b: c }",
                "length|one value|a list|[1]",
                "fields|a block of 'key: value'|one value|a",
                "fields|a block of 'key: value'|a list|[a]",
                "list|a list|one value|a",
                "list|a list|a block of 'key: value'|{ b: c }",
                "list|a block of 'key: value'|one value|[a]",
                "scalars|one value|a block of 'key: value'|{ b: c }",
                "scalars|one value|a list|[[a]]"
            })
    void a_value_of_the_wrong_shape_is_refused_with_the_right_one(
            String asked, String expected, String found, String written) {
        Fields fields =
                fields("space: { wall: " + written + " }").fields("space").orElseThrow();
        boolean nothing = switch (asked) {
            case "text" -> fields.text("wall").isEmpty();
            case "length" -> fields.length("wall").isEmpty();
            case "fields" -> fields.fields("wall").isEmpty();
            case "list" -> fields.list("wall").isEmpty();
            default -> fields.scalars("wall").isEmpty();
        };

        assertThat(nothing).isTrue();
        Notice notice = only();
        assertThat(notice.code()).isEqualTo("wrong-shape");
        assertThat(NoticeWords.INCHES.message(notice))
                .isEqualTo("'space.wall' holds " + found + " where " + expected + " is expected.");
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Write " + expected + ".");
        assertThat(notice.mark().orElseThrow().line()).isEqualTo(1);
    }

    @Test
    void how_a_size_was_read_is_noted_where_it_stands() {
        assertThat(fields("top: 13/8\n").length("top")).contains(Length.inches(1.625));
        assertThat(Said.of(only()))
                .isEqualTo(Said.note("ambiguous", "13/8 read as 1.625: is that meant?")
                        .at(mark(1, 6)));
    }

    @Test
    void a_bare_fraction_of_a_metric_file_is_refused_where_it_stands_and_either_unit_cures_it() {
        LengthReader metric = new LengthReader(LengthUnit.MILLIMETER, Map.of());
        assertThat(fields("top: 2-1/2\n").withReader(metric).length("top")).isEmpty();
        assertThat(Said.all(notices))
                .containsExactly(Said.refusal("ambiguous", "2-1/2 in or mm?")
                        .at(mark(1, 6))
                        .cure("Write 2-1/2 in, or 2.5 mm."));
        assertThat(fields("top: 2-1/2 in\n").withReader(metric).length("top")).contains(Length.inches(2.5));
        assertThat(fields("top: 2.5 mm\n").withReader(metric).length("top")).contains(Length.millimeters(2.5));
    }

    @Test
    void named_sizes_can_be_given_to_the_reader_later_on() {
        Fields fields = fields("space: { floor: lip }\n")
                .withReader(new LengthReader(LengthUnit.INCH, Map.of("lip", Length.inches(0.25))));

        assertThat(fields.fields("space").flatMap(space -> space.length("floor")))
                .contains(Length.inches(0.25));
    }

    @Test
    void a_length_inside_a_longer_text_is_refused_at_that_text() {
        Fields fields = fields("profile: board 3/4 x 5-1/7\n");
        assertThat(fields.readLength(new Scalar("3/4", fields.mark("profile")))).contains(Length.inches(0.75));
        assertThat(fields.readLength(new Scalar("5-1/7", fields.mark("profile"))))
                .isEmpty();
        assertThat(only().mark()).contains(mark(1, 10));
    }

    @Test
    void a_place_can_be_asked_for_whether_the_key_is_there_or_not() {
        Fields space = fields("a: 1\nspace: { floor: 0 }\n").fields("space").orElseThrow();

        assertThat(space.mark()).isEqualTo(mark(2, 8));
        assertThat(space.mark("floor")).isEqualTo(mark(2, 17));
        assertThat(space.mark("ceiling")).isEqualTo(mark(2, 8));
        assertThat(space.mapping().mark()).isEqualTo(mark(2, 8));
    }

    private Fields fields(String text) {
        String whole = text.startsWith("- ") ? "pieces:\n" + text : text;
        Document document = DocumentReader.read("s.yaml", whole.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Fields root = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
        return text.startsWith("- ") ? root.list("pieces").get(0) : root;
    }

    private Notice only() {
        assertThat(notices.sorted()).hasSize(1);
        return notices.sorted().get(0);
    }

    private static Mark mark(int line, int column) {
        return new Mark("s.yaml", line, column);
    }
}

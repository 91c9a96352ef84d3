package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.document.edit.Editor;
import buildup.shared.document.edit.Tidying;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.edit.Naming;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Edits of the stacks that come with the program, and of those of the tests. */
@Tag("long")
class EditedStacksTest {

    static Stream<Path> documents() {
        return Stream.concat(
                stacks(),
                Stream.of(
                        Ran.demo("reading-room-order.yaml"),
                        Path.of("../catalog/src/main/resources/buildup/catalog/rates.yaml")));
    }

    static Stream<Path> stacks() {
        return Stream.concat(
                ofTheProgram(), Stream.of(Ran.stack("nailed-door-head.yaml"), Ran.stack("wainscot-cap.yaml")));
    }

    static Stream<Path> ofTheProgram() {
        return Stream.of(
                Ran.demo("reading-room-case.yaml"),
                Ran.demo("reading-room-cornice.yaml"),
                Ran.demo("reading-room-door-head.yaml"),
                Ran.demo("reading-room-wainscot-cap.yaml"),
                Path.of("src/main/resources/buildup/cli/new/cornice.yaml"),
                Path.of("src/main/resources/buildup/cli/new/door-head.yaml"),
                Path.of("src/main/resources/buildup/cli/new/cap.yaml"));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void every_value_can_be_set_and_set_back(Path file) {
        String text = Ran.read(file);
        Map<String, String> values = values(text);
        assertThat(values).hasSizeGreaterThan(10);
        values.forEach((place, value) -> {
            String edited = edited(text, new Edit.Set(place, new Content.Text("zz9")));
            assertThat(values(edited)).as(place).isEqualTo(with(values, place, "zz9"));
            assertThat(edited(edited, new Edit.Set(place, new Content.Text(value))))
                    .as(place)
                    .isEqualTo(text);
        });
    }

    @ParameterizedTest
    @MethodSource("stacks")
    @Tag("long")
    void every_piece_can_have_another_name_and_nothing_else_is_told(Path file) {
        String text = Ran.read(file);
        String told = Ran.report(text, "--format", "json").out();
        for (String name : names(text, "pieces")) {
            String edited = edited(text, new Edit.Rename(Naming.PIECE, name, "Qq " + name));
            assertThat(Ran.report(edited, "--format", "json").out().replace("Qq " + name, name))
                    .as(name)
                    .isEqualTo(told);
            assertThat(edited(edited, new Edit.Rename(Naming.PIECE, "Qq " + name, name)))
                    .isEqualTo(text);
        }
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void every_size_can_have_another_name_and_all_is_as_it_was(Path file) {
        String text = Ran.read(file);
        String told = Ran.report(text, "--format", "json").out();
        Document document = document(text);
        if (document.root().get("sizes").orElse(document.root()) instanceof Mapping sizes && sizes != document.root()) {
            for (Entry entry : sizes.entries()) {
                String name = entry.key().text();
                String edited = edited(text, new Edit.Rename(Naming.SIZE, name, "Qq size"));
                assertThat(Ran.report(edited, "--format", "json").out())
                        .as(name)
                        .isEqualTo(told);
                assertThat(edited(edited, new Edit.Rename(Naming.SIZE, "Qq size", name)))
                        .isEqualTo(text);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void every_piece_can_be_moved_about_and_back(Path file) {
        String text = Ran.read(file);
        int size = names(text, "pieces").size();
        for (int from = 1; from <= size; from++) {
            for (int to = 1; to <= size; to++) {
                String moved = edited(text, new Edit.Move("pieces." + from, to));
                assertThat(edited(moved, new Edit.Move("pieces." + to, from)))
                        .as("%d to %d", from, to)
                        .isEqualTo(text);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void a_document_laid_out_says_the_same_and_comes_out_of_the_next_layout_as_it_is(Path file) {
        String text = Ran.read(file);
        String tidy = tidy(text);
        assertThat(document(tidy).says(document(text))).isTrue();
        assertThat(tidy(tidy)).isEqualTo(tidy);
    }

    @ParameterizedTest
    @MethodSource("ofTheProgram")
    void what_comes_with_the_program_is_laid_out_as_it_would_be(Path file) {
        assertThat(tidy(Ran.read(file))).isEqualTo(Ran.read(file));
    }

    private static String tidy(String text) {
        Notices notices = new Notices();
        String tidy = Tidying.layOut("stack", text, notices).orElse("");
        assertThat(notices.sorted()).isEmpty();
        return tidy;
    }

    private static String edited(String text, Edit edit) {
        Notices notices = new Notices();
        String edited = Editor.edit("stack", text, List.of(edit), notices).orElse("");
        assertThat(notices.sorted()).as(edit.toString()).isEmpty();
        return edited;
    }

    private static Document document(String text) {
        return DocumentReader.read("stack", text.getBytes(UTF_8), new Notices()).orElseThrow();
    }

    private static List<String> names(String text, String block) {
        return ((Sequence) document(text).root().get(block).orElseThrow())
                .items().stream()
                        .map(item -> ((Scalar) ((Mapping) item).get("name").orElseThrow()).text())
                        .toList();
    }

    /** Every single value but the names, under the words by which it is called; entries by their numbers. */
    private static Map<String, String> values(String text) {
        Map<String, String> values = new LinkedHashMap<>();
        collect(document(text).root(), "", values);
        return values;
    }

    private static void collect(Node node, String place, Map<String, String> values) {
        if (node instanceof Mapping mapping) {
            mapping.entries().stream()
                    .filter(entry -> !entry.key().text().equals("name"))
                    .forEach(entry ->
                            collect(entry.value(), place + "." + entry.key().text(), values));
        } else if (node instanceof Sequence list) {
            for (int i = 0; i < list.items().size(); i++) {
                collect(list.items().get(i), place + "." + (i + 1), values);
            }
        } else {
            values.put(place.substring(1), ((Scalar) node).text());
        }
    }

    private static Map<String, String> with(Map<String, String> values, String place, String value) {
        Map<String, String> changed = new LinkedHashMap<>(values);
        changed.put(place, value);
        return changed;
    }
}

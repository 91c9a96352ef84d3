package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file holds what its name says, whatever command writes it. */
class WrittenFormTest {
    private static final String ORDER =
            "title: Quarter rounds\nrates: example\nmill: usual\nitems: [{ profile: quarter-round 3/4 x 3/4, wood: red-oak, feet: 100 }]\n";

    private static final String TRACING = "0,0\n1,0\n1,0.5\n0.75,0.5\n0.75,2\n0,2\n";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "report, a.html, <!DOCTYPE html>",
        "report, a.JSON, {",
        "report, a.txt, Reading-room",
        "report, a, Reading-room",
        "cuts, a.csv, 'stack,label'",
        "cuts, a.htm, <!DOCTYPE html>",
        "profile, a.svg, <?xml",
        "profile, a.dxf, 0",
        "profile, a.json, {",
        "quote, a.pdf, %PDF-",
        "quote, a.svg, <?xml",
        "quote, a.html, <!DOCTYPE html>",
        "trace, a.yml, # Traced",
        "trace, a.svg, <?xml",
        "trace, a.json, {"
    })
    void the_ending_of_a_file_says_what_is_in_it(String command, String name, String start) throws IOException {
        Ran ran = wrote(command, name);
        assertThat(ran.err()).doesNotContain("its name says");
        assertThat(written(name).stripLeading()).as(ran.err()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({
        "report, a.pdf, '.txt, .json, .csv or .html'",
        "cuts, a.svg, '.txt, .json, .csv or .html'",
        "profile, a.pdf, '.txt, .json, .csv, .html, .svg or .dxf'",
        "quote, a.dxf, '.txt, .json, .csv, .html, .svg or .pdf'",
        "trace, a.png, '.yaml, .txt, .json, .csv, .html or .svg'"
    })
    void what_a_command_does_not_write_is_refused(String command, String name, String endings) throws IOException {
        Ran ran = wrote(command, name);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err())
                .contains("The ending of " + folder.resolve(name) + " names nothing that " + command
                        + " writes. Let it end in " + endings + ", or give --format.");
        assertThat(folder.resolve(name)).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "report, a.json, csv, csv",
        "report, a.pdf, text, txt",
        "quote, a.pdf, html, html",
        "trace, a.csv, yaml, yaml",
        "draw, a.png, svg, svg"
    })
    void a_form_that_is_asked_for_wins_and_the_name_is_told(String command, String name, String form, String ending)
            throws IOException {
        Ran ran = wrote(command, name, command.equals("draw") ? "--to" : "--format", form);
        assertThat(ran.err())
                .contains(folder.resolve(name) + " holds " + form
                        + ", and its name says something else. Let it end in ." + ending + ".");
        assertThat(folder.resolve(name)).isNotEmptyFile();
    }

    @ParameterizedTest
    @CsvSource({"report, a.doc, text, txt", "quote, a.v2, text, txt", "trace, a.profile, yaml, yaml"})
    void an_ending_that_says_nothing_gets_the_usual_form_and_a_word(
            String command, String name, String form, String ending) throws IOException {
        Ran ran = wrote(command, name);
        assertThat(ran.err())
                .contains(" holds " + form + ", and its name says something else. Let it end in ." + ending);
        assertThat(folder.resolve(name)).isNotEmptyFile();
    }

    private Ran wrote(String command, String name, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(command));
        words.add(
                switch (command) {
                    case "profile" -> "quarter-round 3/4 x 3/4";
                    case "quote" -> given("order.yaml", ORDER);
                    case "trace" -> given("tracing.csv", TRACING);
                    default -> Ran.demo("reading-room-case.yaml").toString();
                });
        words.addAll(List.of("-o", folder.resolve(name).toString()));
        words.addAll(List.of(more));
        return Ran.of(words.toArray(String[]::new));
    }

    private String given(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private String written(String name) throws IOException {
        return Files.readString(folder.resolve(name), StandardCharsets.ISO_8859_1);
    }
}

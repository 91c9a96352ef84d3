package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NewCommandTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"cornice", "door-head", "cap", "mantel"})
    void a_starter_stands_and_is_held_by_the_fastenings_that_it_shows(String starter) {
        Ran made = Ran.of("new", starter);
        assertThat(made.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(made.err()).isEmpty();
        Ran report = Ran.report(made.out());
        assertThat(report.code()).as(report.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(report.out())
                .contains("\nWILL IT BE RIGHT?  yes", "\n yes   stands   ", "\n yes   held     ")
                .doesNotContain("\n trust ");
        assertThat(report.err()).doesNotContain("problem", "refusal");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cornice", "door-head", "cap", "mantel"})
    void a_starter_explains_itself_and_keeps_to_a_page(String starter) {
        String stack = Ran.of("new", starter).out();
        assertThat(stack).startsWith("# ").endsWith("}\n");
        assertThat(stack.lines().filter(line -> line.contains("#"))).hasSizeGreaterThan(8);
        assertThat(stack.lines()).allMatch(line -> line.length() <= 140);
    }

    @Test
    void without_a_word_it_is_a_cornice() {
        assertThat(Ran.of("new")).isEqualTo(Ran.of("new", "cornice"));
    }

    @Test
    void a_file_that_is_not_there_yet_is_written() {
        Path file = folder.resolve("mine.yaml");
        assertThat(Ran.of("new", "cap", "-o", file.toString())).isEqualTo(new Ran(ExitCode.CLEAN, "", ""));
        assertThat(Ran.read(file)).isEqualTo(Ran.of("new", "cap").out());
    }

    @Test
    void nothing_is_written_over() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "my own work");
        assertThat(Ran.of("new", "-o", file.toString()))
                .isEqualTo(new Ran(
                        ExitCode.NOT_WRITTEN,
                        "",
                        "refusal  new  " + file + " is there already. Name a file that is not there yet.\n"));
        assertThat(Ran.read(file)).isEqualTo("my own work");
    }

    @Test
    void a_link_that_leads_nowhere_is_not_written_through() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), folder.resolve("absent.yaml"));
        assertThat(Ran.of("new", "-o", link.toString()).code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(folder.resolve("absent.yaml")).doesNotExist();
    }

    @Test
    void a_folder_that_is_not_there_is_said_to_be_so() {
        Path absent = folder.resolve("none");
        assertThat(Ran.of("new", "-o", absent.resolve("x.yaml").toString()).err())
                .isEqualTo("refusal  new  There is no folder " + absent + ". Make it first.\n");
        assertThat(Ran.of("new", "-o", folder.toString()).code()).isEqualTo(ExitCode.NOT_WRITTEN);
    }

    @Test
    void an_unknown_starter_is_answered_with_the_nearest() {
        assertThat(Ran.of("new", "cornise"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  new  There is no 'cornise' to start from. Did you mean cornice?\n"));
    }
}

package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class BuildupTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Streams streams = Streams.of(new ByteArrayInputStream(new byte[0]), out, err);

    @Test
    void what_is_not_there_is_not_offered() {
        assertThat(run("--help")).isEqualTo(ExitCode.CLEAN);
        assertThat(answered()).doesNotContain("solid", "ot there yet");
        assertThat(run("solid", "s")).isEqualTo(ExitCode.REFUSED);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "report", "check", "draw", "watch", "new", "cuts", "profile", "quote", "trace", "search", "set", "fmt"
            })
    void every_command_has_its_help(String name) {
        assertThat(run(name, "--help")).isEqualTo(ExitCode.CLEAN);
        assertThat(answered()).startsWith("Usage: buildup " + name).doesNotContain("\r");
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"report", "check", "draw", "watch", "cuts", "profile", "quote", "trace", "search", "set"})
    void every_command_takes_the_shops_own_lists(String name) {
        run(name, "--help");
        assertThat(answered()).contains("--catalog=FILE");
    }

    @Test
    void the_help_lists_the_commands() {
        assertThat(run("--help")).isEqualTo(ExitCode.CLEAN);
        assertThat(answered())
                .contains(
                        "report", "draw", "profile", "watch", "new", "cuts", "trace", "quote", "check", "schema", "set",
                        "fmt");
    }

    @Test
    void the_version_is_told() {
        assertThat(run("--version")).isEqualTo(ExitCode.CLEAN);
        assertThat(answered()).startsWith("buildup ");
    }

    @Test
    void no_command_at_all_is_a_usage_error() {
        assertThat(run()).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("buildup --help");
    }

    @Test
    void a_misspelt_command_is_answered_with_the_nearest() {
        assertThat(run("reprot", "x.yaml")).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("reprot").contains("did you mean").contains("report");
        assertThat(answered()).isEmpty();
    }

    @Test
    void an_unknown_option_points_to_the_help_of_its_command() {
        assertThat(run("report", "x.yaml", "--loud")).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("--loud").contains("buildup report --help");
    }

    @Test
    void an_unknown_form_names_the_known_ones() {
        assertThat(run("report", "x.yaml", "--format", "xml")).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("text, json, csv, html").contains("xml");
    }

    @Test
    void a_missing_stack_is_asked_for_by_name() {
        assertThat(run("report")).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("STACK");
    }

    @Test
    void a_word_that_starts_with_an_at_sign_is_a_word() {
        assertThat(run("@no-such-file")).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("@no-such-file");
    }

    @Test
    void a_fault_inside_is_told_with_what_was_asked_and_without_a_trace() {
        assertThat(runFaulty(() -> {
                    throw new IllegalStateException("two\nlines");
                }))
                .isEqualTo(ExitCode.REFUSED);
        assertThat(said())
                .matches("buildup: something went wrong inside: java.lang.IllegalStateException: two lines"
                        + " at BuildupTest.java:\\d+\n"
                        + "buildup: asked was: buildup faulty\n"
                        + "buildup: these two lines and the version, buildup unpacked, are what mends it\n");
    }

    @Test
    void a_fault_inside_leaves_what_was_read_and_the_version_in_a_file_and_nothing_else() throws IOException {
        streams.given().add("mine.yaml", "title: a\n".getBytes(StandardCharsets.UTF_8));
        runFaulty(() -> {
            throw new IllegalStateException("inside");
        });
        Matcher name =
                Pattern.compile("these two lines and (\\S+) are what mends it").matcher(said());
        assertThat(name.find()).as(said()).isTrue();
        Path file = Path.of(name.group(1));
        assertThat(Files.readString(file)).isEqualTo("# buildup unpacked, mine.yaml\ntitle: a\n\n");
        Files.delete(file);
    }

    @Test
    void too_little_memory_is_told_as_what_it_is() {
        assertThat(runFaulty(() -> {
                    throw new OutOfMemoryError();
                }))
                .isEqualTo(ExitCode.REFUSED);
        assertThat(said())
                .startsWith("buildup: Java was given too little memory")
                .hasLineCount(1);
    }

    @Test
    void an_overflowing_stack_inside_is_told_too() {
        assertThat(runFaulty(() -> {
                    throw new StackOverflowError();
                }))
                .isEqualTo(ExitCode.REFUSED);
        assertThat(said()).startsWith("buildup: something went wrong inside").hasLineCount(3);
    }

    @Test
    void text_goes_out_as_utf_8() {
        assertThat(run("tür")).isEqualTo(ExitCode.REFUSED);
        assertThat(said()).contains("tür");
    }

    private int run(String... words) {
        return Buildup.run(streams, words);
    }

    private int runFaulty(Callable<Integer> fault) {
        CommandLine line = Buildup.commandLine(streams, List.of("faulty"));
        line.addSubcommand("faulty", new Faulty(fault));
        return Buildup.run(line, streams, "faulty");
    }

    private String answered() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Command
    private record Faulty(Callable<Integer> fault) implements Callable<Integer> {
        @Override
        public Integer call() throws Exception {
            return fault.call();
        }
    }

    @Test
    void what_is_no_number_to_count_with_is_refused_wherever_one_is_asked_for() {
        for (String none : new String[] {"NaN", "Infinity", "-Infinity", "1e999", "x", ""}) {
            for (String[] words : new String[][] {
                {"profile", "cove 3/4", "--tilt", none},
                {"cuts", "-", "--seconds", none},
                {"trace", "-", "--rotate", none}
            }) {
                Ran ran = Ran.of(words);
                assertThat(ran.code()).as(String.join(" ", words)).isEqualTo(ExitCode.REFUSED);
                assertThat(ran.err()).contains("'" + none + "' is not a number");
            }
        }
    }
}

package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TwoStacksTest {
    private static final String RAIL = """
            title: A rail of the reading room
            wood: yellow-poplar
            pieces:
              - { name: rail, profile: board 3/4 x 4, back: wall, bottom: 0 }
            """;

    private static final String SUNK = RAIL + "  - { name: bead, profile: board 3/4 x 2, back: 0.5, bottom: 1 }\n";

    @TempDir
    private Path folder;

    private String a;
    private String b;

    @BeforeEach
    void set_up_two_stacks_of_one_name() throws IOException {
        a = Files.writeString(folder.resolve("rail.yaml"), RAIL).toString();
        b = Files.writeString(Files.createDirectory(folder.resolve("b")).resolve("rail.yaml"), SUNK)
                .toString();
    }

    @Test
    void the_worse_of_the_two_decides_how_it_ends() {
        assertThat(Ran.of("report", a, a).code()).isEqualTo(ExitCode.CLEAN);
        assertThat(Ran.of("report", a, b).code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(Ran.of("report", b, a).code()).isEqualTo(ExitCode.PROBLEM);
    }

    @Test
    void each_notice_says_which_of_the_two_it_is_about() {
        Ran ran = Ran.of("report", a, b);
        assertThat(ran.err().lines())
                .anyMatch(line -> line.startsWith("A  note  rail.yaml:4:5"))
                .anyMatch(line -> line.startsWith("B  problem  rail.yaml:5:5"));
        assertThat(ran.out()).contains("bead   B only");
    }

    @Test
    void one_of_the_two_may_be_standard_input() {
        Ran ran = Ran.with(RAIL.getBytes(StandardCharsets.UTF_8), "report", "-", a);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).contains("of which 0 differ.");
    }

    @Test
    void both_may_not() {
        Ran ran = Ran.with(RAIL.getBytes(StandardCharsets.UTF_8), "report", "-", "-");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("B  refusal  stdin  Standard input cannot be both stacks.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "csv", "html"})
    void nothing_is_compared_with_a_refused_stack(String format) {
        Ran ran = Ran.of("report", a, folder.resolve("x.yaml").toString(), "--format", format);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("B  refusal  x.yaml  There is no file");
    }

    @Test
    void a_refused_stack_is_an_object_when_objects_are_asked_for() {
        Ran ran = Ran.of("report", a, folder.resolve("x.yaml").toString(), "--format", "json");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("\"no-stack\"").doesNotContain("\"differences\"");
    }

    @Test
    void the_page_shows_both_and_the_differences_of_all_figures() {
        Ran ran = Ran.of("report", a, b, "--format", "html");
        assertThat(ran.out())
                .startsWith("<!DOCTYPE html>")
                .contains("id=\"a\"", "id=\"b\"", "Every figure side by side", "new piece: bead")
                .doesNotContain("connect-src");
        assertThat(ran.err()).contains("B  problem");
    }

    @Test
    void it_goes_to_the_file_that_was_asked_for_and_over_neither_stack() {
        Path out = folder.resolve("two.json");
        assertThat(Ran.of("report", a, b, "--format", "json", "-o", out.toString())
                        .out())
                .isEmpty();
        assertThat(Ran.read(out))
                .isEqualTo(Ran.of("report", a, b, "--format", "json").out());
        for (String stack : new String[] {a, b}) {
            Ran ran = Ran.of("report", a, b, "-o", stack);
            assertThat(ran.code()).isEqualTo(ExitCode.NOT_WRITTEN);
            assertThat(ran.err()).contains("is what the answer comes from");
        }
        assertThat(Ran.read(Path.of(b))).isEqualTo(SUNK);
    }

    @Test
    void the_same_two_give_the_same_bytes() {
        for (String format : new String[] {"text", "json", "csv", "html"}) {
            assertThat(Ran.of("report", a, b, "--format", format))
                    .isEqualTo(Ran.of("report", a, b, "--format", format));
        }
    }
}

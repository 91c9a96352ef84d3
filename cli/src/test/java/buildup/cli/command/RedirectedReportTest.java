package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.Waiting;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A report that goes to a file by the shell's own arrow. */
class RedirectedReportTest {
    private static final String HUNG =
            "wood: red-oak\npieces: [{ name: a, profile: board 1 x 1, back: 1, bottom: 5 }]\n";

    private static String[] run(boolean screen, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Buildup.run(
                Streams.of(
                        new ByteArrayInputStream(HUNG.getBytes(StandardCharsets.UTF_8)),
                        out,
                        err,
                        Waiting.unseen(),
                        screen),
                words);
        return new String[] {out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8)};
    }

    @Test
    void holds_what_was_said_which_a_screen_shows_beside_it() {
        assertThat(run(false, "report", "-")[0])
                .contains("NOTICES\nproblem stdin")
                .contains("touches nothing");
        String[] screen = run(true, "report", "-");
        assertThat(screen[0]).doesNotContain("NOTICES");
        assertThat(screen[1]).contains("problem  stdin");
    }

    @Test
    void says_nothing_beside_it_when_asked_to_be_quiet() {
        assertThat(run(true, "report", "-", "-q")[1]).isEmpty();
    }

    @Test
    void two_stacks_begin_with_both_verdicts_and_the_rows_that_differ() {
        Ran ran = Ran.of(
                "report",
                Ran.demo("reading-room-cornice.yaml").toString(),
                Ran.demo("reading-room-wainscot-cap.yaml").toString());
        assertThat(ran.out())
                .containsSubsequence(
                        "\nWILL IT BE RIGHT?\n",
                        "\nall      yes; 1 to look  yes; 1 to look\n         at              at\n",
                        "\nseen     yes             yes\n",
                        "\nmust     yes             not asked       differs\n",
                        "\nWHERE THE VERDICTS DIFFER\n");
    }
}

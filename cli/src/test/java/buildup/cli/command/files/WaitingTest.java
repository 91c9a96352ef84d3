package buildup.cli.command.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WaitingTest {
    private static final long SECOND = 1_000_000_000L;

    private final StringWriter shown = new StringWriter();
    private long now = 5;

    private Waiting waiting(boolean terminal) {
        return new Waiting(Optional.of(new PrintWriter(shown)).filter(writer -> terminal), () -> now);
    }

    @Test
    void a_short_run_shows_nothing() {
        Waiting waiting = waiting(true);
        now += SECOND;
        assertThat(waiting.look()).isTrue();
        waiting.searched(10, 100);
        waiting.end();
        assertThat(shown.toString()).isEmpty();
    }

    @Test
    void after_two_seconds_a_terminal_sees_that_it_works_and_then_nothing_more() {
        Waiting waiting = waiting(true);
        now += 3 * SECOND;
        waiting.look();
        waiting.look();
        assertThat(shown.toString()).isEqualTo("\rworking, 3 s");
        waiting.end();
        assertThat(shown.toString()).isEqualTo("\rworking, 3 s\r            \r");
        now += SECOND;
        assertThat(waiting.look()).isFalse();
        assertThat(shown.toString()).endsWith("\r            \r");
    }

    @Test
    void a_search_shows_how_far_it_is() {
        Waiting waiting = waiting(true);
        now += 3 * SECOND;
        assertThat(waiting.searched(50, 100)).isTrue();
        assertThat(waiting.searched(50, 100)).isTrue();
        assertThat(shown.toString()).isEqualTo("\rsearching [===============               ] 50 %");
        waiting.searchEnded();
        waiting.look();
        assertThat(shown.toString()).contains("\rworking, 3 s ").doesNotContain("\n");
    }

    @Test
    void it_is_gone_before_anything_is_written() throws IOException {
        Waiting waiting = waiting(true);
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (OutputStream out = waiting.before(written)) {
            now += 3 * SECOND;
            waiting.look();
            out.write("answer".getBytes(StandardCharsets.UTF_8));
        }
        assertThat(shown.toString()).endsWith(" \r");
        assertThat(written.toString(StandardCharsets.UTF_8)).isEqualTo("answer");
    }

    @Test
    void a_file_or_a_pipe_sees_nothing() {
        Waiting waiting = waiting(false);
        now += 60 * SECOND;
        assertThat(waiting.searched(50, 100)).isTrue();
        waiting.look();
        waiting.end();
        assertThat(shown.toString()).isEmpty();
    }
}

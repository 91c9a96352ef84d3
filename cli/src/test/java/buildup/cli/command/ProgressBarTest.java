package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressBarTest {
    private static final long SECOND = 1_000_000_000L;

    private final StringWriter shown = new StringWriter();
    private long now = 5;

    private ProgressBar bar(boolean terminal, long seconds) {
        return new ProgressBar(Optional.of(new PrintWriter(shown)).filter(writer -> terminal), () -> now, seconds);
    }

    @Test
    void a_short_search_shows_nothing() {
        ProgressBar bar = bar(true, Long.MAX_VALUE);
        now += SECOND;
        assertThat(bar.goOn(10, 100)).isTrue();
        bar.end();
        assertThat(shown.toString()).isEmpty();
    }

    @Test
    void after_two_seconds_a_terminal_sees_how_far_it_is_and_then_nothing_more() {
        ProgressBar bar = bar(true, Long.MAX_VALUE);
        now += 3 * SECOND;
        assertThat(bar.goOn(50, 100)).isTrue();
        assertThat(bar.goOn(50, 100)).isTrue();
        assertThat(shown.toString()).isEqualTo("\rsearching [===============               ] 50 %");
        bar.end();
        assertThat(shown.toString()).endsWith(" \r").doesNotContain("\n");
    }

    @Test
    void a_file_or_a_pipe_sees_nothing() {
        ProgressBar bar = bar(false, Long.MAX_VALUE);
        now += 60 * SECOND;
        assertThat(bar.goOn(50, 100)).isTrue();
        bar.end();
        assertThat(shown.toString()).isEmpty();
        assertThat(bar.cut()).isFalse();
    }

    @Test
    void a_limit_of_time_ends_the_search_and_stays_reached() {
        ProgressBar bar = bar(false, 10);
        now += 10 * SECOND;
        assertThat(bar.goOn(1, 100)).isTrue();
        now += 1;
        assertThat(bar.goOn(2, 100)).isFalse();
        assertThat(bar.cut()).isTrue();
    }
}

package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.files.Waiting;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressBarTest {
    private static final long SECOND = 1_000_000_000L;

    private final Waiting waiting = new Waiting(Optional.empty(), () -> 0);
    private long now = 5;

    @Test
    void a_limit_of_time_ends_the_search_and_stays_reached() {
        ProgressBar bar = new ProgressBar(waiting, () -> now, 10);
        now += 10 * SECOND;
        assertThat(bar.goOn(1, 100)).isTrue();
        now += 1;
        assertThat(bar.goOn(2, 100)).isFalse();
        assertThat(bar.cut()).isTrue();
    }

    @Test
    void an_interruption_ends_the_search_and_is_no_matter_of_time() {
        ProgressBar bar = new ProgressBar(waiting, () -> now, Long.MAX_VALUE);
        assertThat(bar.goOn(1, 100)).isTrue();
        assertThat(waiting.interrupt()).isTrue();
        assertThat(bar.goOn(2, 100)).isFalse();
        assertThat(bar.cut()).isFalse();
        assertThat(waiting.interrupted()).isTrue();
    }

    @Test
    void where_nothing_is_searched_there_is_nothing_to_wait_for() {
        assertThat(waiting.interrupt()).isFalse();
        ProgressBar bar = new ProgressBar(waiting, () -> now, Long.MAX_VALUE);
        bar.goOn(1, 100);
        bar.end();
        assertThat(waiting.interrupt()).isFalse();
    }
}

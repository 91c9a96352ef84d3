package buildup.cli.command;

import buildup.engine.solve.StickSearch;
import java.io.Console;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Watches a search: a bar when it takes longer than two seconds and someone sits at a terminal, and its end when a limit
 * of time is reached.
 */
final class ProgressBar implements StickSearch.SearchWatch {
    private static final long SECOND = 1_000_000_000L;
    private static final long PATIENCE = 2 * SECOND;
    private static final int WIDTH = 30;
    private static final int WHOLE = 100;

    private final Optional<PrintWriter> terminal;
    private final LongSupplier clock;
    private final long began;
    private final long most;
    private long last = -1;
    private boolean cut;

    /**
     * @param terminal at which someone sits; absent when nobody does
     * @param clock counts nanoseconds
     * @param seconds after which the search ends
     */
    ProgressBar(Optional<PrintWriter> terminal, LongSupplier clock, double seconds) {
        this.terminal = terminal;
        this.clock = clock;
        this.began = clock.getAsLong();
        this.most = Math.round(seconds * SECOND);
    }

    /** Shown at the terminal itself, if there is one: a bar has no place in a file, to which errors may go. */
    static ProgressBar atTerminal(double seconds) {
        return new ProgressBar(Optional.ofNullable(System.console()).map(Console::writer), System::nanoTime, seconds);
    }

    @Override
    public boolean goOn(long steps, long mostSteps) {
        long taken = clock.getAsLong() - began;
        if (taken > PATIENCE) {
            show(Math.min(WHOLE, WHOLE * steps / Math.max(1, mostSteps)));
        }
        cut = cut || taken > most;
        return !cut;
    }

    private void show(long percent) {
        if (percent != last) {
            last = percent;
            int done = (int) (WIDTH * percent / WHOLE);
            print("\rsearching [" + "=".repeat(done) + " ".repeat(WIDTH - done) + "] " + percent + " %");
        }
    }

    /** Wipes the bar away. */
    void end() {
        if (last >= 0) {
            print("\r" + " ".repeat(WIDTH + 20) + "\r");
        }
    }

    private void print(String words) {
        terminal.ifPresent(out -> {
            out.print(words);
            out.flush();
        });
    }

    /** Whether a search ended because of the time. */
    boolean cut() {
        return cut;
    }
}

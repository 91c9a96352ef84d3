package buildup.cli.command;

import buildup.cli.command.files.Waiting;
import buildup.engine.solve.StickSearch;
import java.util.function.LongSupplier;

/** Watches a search: tells whoever waits how far it is, and ends it when a limit of time is reached. */
final class ProgressBar implements StickSearch.SearchWatch {
    private static final long SECOND = 1_000_000_000L;

    private final Waiting waiting;
    private final LongSupplier clock;
    private final long began;
    private final long most;
    private boolean cut;

    /**
     * @param waiting who waits
     * @param clock counts nanoseconds
     * @param seconds after which the search ends
     */
    ProgressBar(Waiting waiting, LongSupplier clock, double seconds) {
        this.waiting = waiting;
        this.clock = clock;
        this.began = clock.getAsLong();
        this.most = Math.round(seconds * SECOND);
    }

    @Override
    public boolean goOn(long steps, long mostSteps) {
        boolean wanted = waiting.searched(steps, mostSteps);
        cut = cut || clock.getAsLong() - began > most;
        return wanted && !cut;
    }

    /** The search is over. */
    void end() {
        waiting.searchEnded();
    }

    /** Whether a search ended because of the time. */
    boolean cut() {
        return cut;
    }
}

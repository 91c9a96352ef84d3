package buildup.cli.watch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Reads a stack again whenever what its files hold has changed, and hands on what came of it. Of many saves in a row the
 * last is what counts. Something sound is handed on at once; something wrong only when it stays wrong a moment longer,
 * since an editor may be in the middle of writing.
 *
 * @param <T> what reading gives
 */
public final class Follower<T> {
    /** A save is over when so long nothing has happened. */
    private static final long QUIET_MS = 15;

    /** So many saves in a row that this time is over: look at what there is. */
    private static final long LONGEST_STORM_MS = 200;

    /** How long something wrong is given to come right, before it is told. */
    private static final long GRACE_MS = 150;

    /** The longest sleep: what no event tells is seen by then. */
    private static final long TICK_MS = 250;

    /** Tries to catch the files between two saves. */
    private static final int MOST_TRIES = 5;

    /**
     * One reading.
     *
     * @param value what came of it
     * @param sound whether nothing was refused
     * @param files what is to be followed, whether it is there or not
     */
    public record Reading<T>(T value, boolean sound, List<Path> files) {
        public Reading {
            files = List.copyOf(files);
        }
    }

    /** Reads the files. */
    public interface Source<T> {
        /** What they hold now; never fails, since what is wrong is part of the answer. */
        Reading<T> read();
    }

    private final Source<T> source;
    private List<Path> files;
    private Contents seen = new Contents(Map.of());
    private Contents shown = seen;

    /** @param files what is followed before anything has been read */
    public Follower(Source<T> source, List<Path> files) {
        this.source = source;
        this.files = List.copyOf(files);
    }

    /** The first reading. */
    public T first() {
        T value = steady().value();
        shown = seen;
        return value;
    }

    /** Hands on every later reading that is to be shown, one at a time, until the thread is interrupted. */
    public void run(Consumer<T> sink) throws IOException {
        try (FileEvents events = new FileEvents()) {
            while (true) {
                if (!Contents.of(files).equals(seen)) {
                    follow(events, sink);
                } else if (events.await(files, TICK_MS)) {
                    calm(events, QUIET_MS, LONGEST_STORM_MS);
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits until nothing happens for a moment, or too much for too long. */
    private void calm(FileEvents events, long quiet, long longest) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(longest);
        while (events.await(files, quiet) && System.nanoTime() < end) {
            // each event starts the wait anew
        }
    }

    private void follow(FileEvents events, Consumer<T> sink) throws InterruptedException {
        Reading<T> reading = steady();
        if (!reading.sound()) {
            calm(events, GRACE_MS, GRACE_MS);
            if (!Contents.of(files).equals(seen)) {
                return;
            }
        }
        // after a moment that was passed over, it may be what it was before
        if (!seen.equals(shown)) {
            shown = seen;
            sink.accept(reading.value());
        }
    }

    /**
     * A reading during which the files did not change. Where they change all the time, the last try is taken; it is then
     * remembered with what they held before it, so that they are read again.
     */
    private Reading<T> steady() {
        for (int tries = 1; ; tries++) {
            Contents before = Contents.of(files);
            Reading<T> reading = source.read();
            boolean same = files.equals(reading.files());
            files = reading.files();
            if ((same && Contents.of(files).equals(before)) || tries == MOST_TRIES) {
                seen = before;
                return reading;
            }
        }
    }
}

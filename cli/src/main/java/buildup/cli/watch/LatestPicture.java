package buildup.cli.watch;

import java.util.concurrent.TimeUnit;

/** Holds the newest picture. Whoever waits for a newer one is woken when it is put up. */
public final class LatestPicture {
    private Shown shown;

    /**
     * A picture.
     *
     * @param version counts the pictures put up, from 1
     */
    record Shown(long version, Picture picture) {}

    LatestPicture(Picture first) {
        shown = new Shown(1, first);
    }

    /** Puts up a picture in place of the one before. */
    synchronized void put(Picture picture) {
        shown = new Shown(shown.version() + 1, picture);
        notifyAll();
    }

    /** What is up now. */
    synchronized Shown shown() {
        return shown;
    }

    /**
     * Waits for a picture of another version than the one known.
     *
     * @return what is up when there is one, or when that many milliseconds are over
     */
    synchronized Shown awaitOther(long known, long milliseconds) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
        long left = milliseconds;
        while (shown.version() == known && left > 0) {
            wait(left);
            left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
        }
        return shown;
    }
}

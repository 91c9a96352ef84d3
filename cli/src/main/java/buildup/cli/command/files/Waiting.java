package buildup.cli.command.files;

import java.io.Console;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * What someone at a terminal sees of a run that takes longer than two seconds: that it works and for how long or, where a
 * search knows, how far it is. It goes away before anything else is written. Nothing is seen where nobody sits.
 */
public final class Waiting {
    private static final long SECOND = 1_000_000_000L;
    private static final long PATIENCE = 2 * SECOND;
    private static final long BETWEEN_LOOKS = 250;
    private static final int WIDTH = 30;
    private static final int WHOLE = 100;
    private static final long UNKNOWN = -1;

    private final Optional<PrintWriter> terminal;
    private final LongSupplier clock;
    private final long began;
    private String shown = "";
    private long percent = UNKNOWN;
    private boolean ended;
    private boolean interrupted;

    /**
     * @param terminal at which someone sits; absent when nobody does
     * @param clock counts nanoseconds
     */
    public Waiting(Optional<PrintWriter> terminal, LongSupplier clock) {
        this.terminal = terminal;
        this.clock = clock;
        this.began = clock.getAsLong();
    }

    /** Shown at the terminal itself, if there is one: it has no place in a file, to which errors may go. */
    public static Waiting at(Optional<Console> console) {
        return new Waiting(console.map(Console::writer), System::nanoTime);
    }

    /** Nobody waits. */
    public static Waiting unseen() {
        return new Waiting(Optional.empty(), System::nanoTime);
    }

    /** Looks now and then by itself, until the program ends. */
    public void start() {
        if (terminal.isPresent()) {
            Thread looks = new Thread(this::looks, "waiting");
            looks.setDaemon(true);
            looks.start();
        }
    }

    private void looks() {
        try {
            while (look()) {
                Thread.sleep(BETWEEN_LOOKS);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Shows how it stands after two seconds; false once there is nothing more to show. */
    synchronized boolean look() {
        long taken = clock.getAsLong() - began;
        if (!ended && taken > PATIENCE) {
            String time = ", " + taken / SECOND + " s";
            show(percent == UNKNOWN ? "working" + time : percent == 0 ? "searching" + time : bar());
        }
        return !ended;
    }

    private String bar() {
        int done = (int) (WIDTH * percent / WHOLE);
        return "searching [" + "=".repeat(done) + " ".repeat(WIDTH - done) + "] " + percent + " %";
    }

    private void show(String words) {
        if (!words.equals(shown)) {
            print("\r" + words + " ".repeat(Math.max(0, shown.length() - words.length())));
            shown = words;
        }
    }

    /** A search begins: whoever interrupts from now on gets the best that it has. */
    public synchronized void searchBegins() {
        percent = 0;
    }

    /**
     * A search tells how far it is.
     *
     * @return whether it is to go on: not once the run was interrupted
     */
    public synchronized boolean searched(long done, long of) {
        percent = Math.min(WHOLE, WHOLE * done / Math.max(1, of));
        look();
        return !interrupted;
    }

    /** The search is over; what follows is other work. */
    public synchronized void searchEnded() {
        percent = UNKNOWN;
    }

    /** Someone wants the run to end; true when a search goes on, which then gives the best that it has. */
    public synchronized boolean interrupt() {
        interrupted = percent != UNKNOWN;
        return interrupted;
    }

    /** Whether a search was ended by an interruption. */
    public synchronized boolean interrupted() {
        return interrupted;
    }

    /** Wipes away what is shown, and shows nothing more. */
    public synchronized void end() {
        ended = true;
        if (!shown.isEmpty()) {
            print("\r" + " ".repeat(shown.length()) + "\r");
            shown = "";
        }
    }

    private void print(String words) {
        terminal.ifPresent(out -> {
            out.print(words);
            out.flush();
        });
    }

    /** The same stream, before whose first byte it goes away. */
    public OutputStream before(OutputStream stream) {
        return new FilterOutputStream(stream) {
            @Override
            public void write(int one) throws IOException {
                end();
                out.write(one);
            }

            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                end();
                out.write(bytes, from, length);
            }
        };
    }
}

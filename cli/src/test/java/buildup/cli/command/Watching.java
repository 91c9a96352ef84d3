package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A {@code watch} that runs within the test until it is closed. */
public final class Watching implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/[0-9a-f]+/");
    private static final long PATIENCE_S = 30;
    private static final long LOOK_MS = 10;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final CompletableFuture<Integer> code = new CompletableFuture<>();
    private final Thread thread;

    /** Starts {@code buildup watch} with those words. */
    public Watching(String... words) {
        String[] all = new String[words.length + 1];
        all[0] = "watch";
        System.arraycopy(words, 0, all, 1, words.length);
        Streams streams = Streams.of(new ByteArrayInputStream(new byte[0]), out, err);
        thread = new Thread(() -> code.complete(Buildup.run(streams, all)));
        thread.start();
    }

    /** Where the page is, once it says so. */
    public URI address() throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (System.nanoTime() < end && !code.isDone()) {
            Matcher said = ADDRESS.matcher(out());
            if (said.find()) {
                return URI.create(said.group());
            }
            Thread.sleep(LOOK_MS);
        }
        throw new AssertionError("no address: " + out() + err());
    }

    /** What it said. */
    public String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    /** What it had to complain of. */
    public String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    /** Ends it. */
    @Override
    public void close() throws ExecutionException, InterruptedException, TimeoutException {
        thread.interrupt();
        assertThat(code.get(PATIENCE_S, TimeUnit.SECONDS)).as(err()).isEqualTo(ExitCode.CLEAN);
    }
}

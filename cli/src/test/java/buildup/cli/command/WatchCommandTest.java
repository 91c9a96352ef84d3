package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Main;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchCommandTest {
    private static final long PATIENCE_S = 30;

    private static final String LEDGE = """
            title: Ledge of the reading room
            catalog: own.yaml
            wood: bog-oak
            pieces:
              - { name: shelf, profile: board 3/4 x 4, lay: flat, back: wall, bottom: 0 }
            """;

    private static final String WOODS = "woods:\n  - { name: bog-oak, density: 60 }\n";

    @TempDir
    private Path folder;

    private Path stack;
    private Path woods;

    @BeforeEach
    void set_up_a_stack_with_its_own_catalog() throws IOException {
        stack = Files.writeString(folder.resolve("ledge.yaml"), LEDGE);
        woods = Files.writeString(folder.resolve("own.yaml"), WOODS);
    }

    @Test
    void the_address_is_said_once() throws Exception {
        try (Watching watch = new Watching(stack.toString())) {
            assertThat(page(watch.address(), "")).contains("Ledge of the reading room", "connect-src 'self'");
            assertThat(watch.out())
                    .isEqualTo("The page: " + watch.address() + "\nIt follows every save. Ctrl-C ends it.\n");
        }
    }

    @Test
    void the_page_follows_the_stack_and_its_own_catalog() throws Exception {
        try (Watching watch = new Watching(stack.toString())) {
            watch.address();
            Files.writeString(stack, LEDGE.replace("x 4", "x 5"));
            awaitPart(watch, parts -> parts.contains("projection 4 -&gt; 5"));
            Files.writeString(woods, WOODS.replace("60", "30"));
            awaitPart(watch, parts -> parts.contains("weight 1.56 -&gt; 0.78 lb a foot"));
        }
    }

    @Test
    void a_wrong_save_a_deletion_and_their_repair_are_seen() throws Exception {
        try (Watching watch = new Watching(stack.toString())) {
            watch.address();
            Files.writeString(stack, LEDGE.replace("board", "bord"));
            awaitPart(watch, parts -> parts.contains("refusal  ledge.yaml:5:") && parts.contains("<svg"));
            Files.writeString(stack, LEDGE);
            awaitPart(watch, parts -> parts.contains("\"stale\": []"));
            Files.delete(woods);
            awaitPart(watch, parts -> parts.contains("There is no file " + woods));
            Files.delete(stack);
            awaitPart(watch, parts -> parts.contains("There is no file " + stack));
            Files.writeString(woods, WOODS);
            Files.writeString(stack, LEDGE);
            awaitPart(watch, parts -> parts.contains("\"stale\": []"));
        }
    }

    @Test
    void two_stacks_are_followed_beside_each_other() throws Exception {
        Path other = Files.writeString(folder.resolve("other.yaml"), LEDGE.replace("x 4", "x 6"));
        try (Watching watch = new Watching(stack.toString(), "--beside", other.toString())) {
            assertThat(page(watch.address(), "parts")).contains("projection 4 -&gt; 6");
            Files.writeString(other, LEDGE.replace("x 4", "x 7"));
            awaitPart(watch, parts -> parts.contains("projection 4 -&gt; 7") && parts.contains("projection 6 -&gt; 7"));
        }
    }

    @Test
    void a_stack_that_is_wrong_at_first_is_followed_all_the_same() throws Exception {
        Files.writeString(stack, "pieces: [\n");
        try (Watching watch = new Watching(stack.toString())) {
            assertThat(page(watch.address(), "")).contains("ledge.yaml:");
            Files.writeString(stack, LEDGE);
            awaitPart(watch, parts -> parts.contains("<svg"));
        }
    }

    @Test
    void a_port_may_be_chosen_and_one_that_is_taken_is_said_to_be() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            String port = Integer.toString(taken.getLocalPort());
            assertThat(Ran.of("watch", stack.toString(), "--port", port))
                    .isEqualTo(new Ran(
                            ExitCode.REFUSED,
                            "",
                            "refusal  ledge.yaml  Port " + port + " is taken, or may not be used. Leave --port out, or"
                                    + " give another.\n"));
        }
        assertThat(Ran.of("watch", stack.toString(), "--port", "70000").err()).contains("There is no port 70000.");
        assertThat(Ran.of("watch", stack.toString(), "--port", "-1").code()).isEqualTo(ExitCode.REFUSED);
    }

    @Test
    void what_cannot_be_followed_is_refused() {
        assertThat(Ran.of("watch", "-").err())
                .isEqualTo("refusal  stdin  Standard input cannot be followed. Name a stack document.\n");
        assertThat(Ran.of("watch", folder.resolve("ledg.yaml").toString()).err())
                .contains("Did you mean ledge.yaml?");
        assertThat(Ran.of("watch", folder.toString()).err()).contains("is a folder, not a file.");
        assertThat(Ran.of("watch", stack.toString(), "--beside", "-").code()).isEqualTo(ExitCode.REFUSED);
        assertThat(Ran.of("watch", "a\0b").code()).isEqualTo(ExitCode.REFUSED);
    }

    /** Ctrl-C is one of the signals on which Java runs what was left for the end; this is another. */
    @Test
    void ending_it_from_outside_is_no_failure() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "watch",
                        stack.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(out.readLine()).startsWith("The page: http://127.0.0.1:");
            process.destroy();
            assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(ExitCode.CLEAN);
        } finally {
            process.destroyForcibly();
        }
    }

    private static String page(URI address, String name) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(address.resolve(name)).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private static void awaitPart(Watching watch, Predicate<String> is) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        String parts = page(watch.address(), "parts");
        while (!is.test(parts)) {
            assertThat(System.nanoTime()).as(parts).isLessThan(end);
            Thread.sleep(30);
            parts = page(watch.address(), "parts");
        }
    }
}

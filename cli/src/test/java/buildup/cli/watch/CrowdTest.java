package buildup.cli.watch;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.write.ShippedFont;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The page under more than it is made for: slow connections in crowds, and a day of saves. */
@Timeout(600)
@Tag("long")
class CrowdTest {
    private static final int SLOW = 500;

    /** Ten thousand: {@code -Dbuildup.saves=10000}. */
    private static final int SAVES = Integer.getInteger("buildup.saves", 300);

    /** What may be held more at the end than after the first saves, bytes: far under one page a save. */
    private static final long HELD = 4 << 20;

    private static final int PATIENCE_MS = 60_000;

    private static final String LEDGE = """
            title: A ledge for the reading room
            pieces:
              - { name: shelf, profile: board 3/4 x %s, lay: flat, back: wall, bottom: 0 }
            """;

    private final Watch watch = new Watch(List.of(ledge("3-1/2")), ShippedFont.load());

    private static buildup.engine.Answer ledge(String width) {
        return Typed.of(LEDGE.formatted(width));
    }

    @Test
    void slow_connections_keep_nobody_from_the_page() throws IOException {
        List<Socket> slow = new ArrayList<>();
        try (PageServer server = PageServer.open(watch.latest(), 0)) {
            URI address = URI.create(server.address());
            for (int i = 0; i < SLOW; i++) {
                Socket socket = new Socket(address.getHost(), address.getPort());
                // some say nothing, some begin, some stop within a header
                String begun = List.of("", "G", "GET " + address.getPath() + " HTTP/1.1\r\nHost: 127")
                        .get(i % 3);
                socket.getOutputStream().write(begun.getBytes(StandardCharsets.ISO_8859_1));
                slow.add(socket);
            }
            assertThat(page(address)).startsWith("HTTP/1.1 200 OK").contains("A ledge for the reading room");
            watch.take(List.of(ledge("4")));
            assertThat(page(address)).contains("board 3/4 x 4");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    private static String page(URI address) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.getOutputStream()
                    .write(("GET " + address.getPath() + " HTTP/1.1\r\nHost: 127.0.0.1:" + address.getPort()
                                    + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.ISO_8859_1));
            return String.join(
                    "\n",
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))
                            .lines()
                            .toList());
        }
    }

    @Test
    void a_day_of_saves_holds_no_more_than_the_last_of_them() {
        long early = 0;
        for (int save = 1; save <= SAVES; save++) {
            // every fifth is a slip that cannot be read
            watch.take(List.of(ledge(save % 5 == 0 ? "x" : 3 + save % 7 + "")));
            if (save == SAVES / 3) {
                early = held();
            }
        }
        assertThat(held() - early).isLessThan(HELD);
        assertThat(watch.latest().shown().version()).isEqualTo(SAVES + 1);
    }

    private static long held() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}

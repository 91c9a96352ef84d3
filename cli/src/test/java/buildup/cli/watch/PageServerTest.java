package buildup.cli.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import buildup.cli.command.Typed;
import buildup.cli.write.ShippedFont;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.BindException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageServerTest {
    private static final int PATIENCE_MS = 20_000;

    private static final String LEDGE = """
            title: A ledge for the reading room
            pieces:
              - { name: shelf, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: 0 }
            """;

    private final Watch watch = new Watch(List.of(Typed.of(LEDGE)), ShippedFont.load());
    private PageServer server;
    private URI address;

    @BeforeEach
    void open() throws IOException {
        server = PageServer.open(watch.latest(), 0);
        address = URI.create(server.address());
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void whoever_has_the_address_gets_the_page() throws IOException {
        List<String> answer = ask("GET", address.getPath(), host());
        assertThat(answer)
                .startsWith("HTTP/1.1 200 OK")
                .anyMatch(line -> line.contains("A ledge for the reading room"));
        assertThat(answer.stream().map(String::toLowerCase))
                .contains(
                        "content-type: text/html; charset=utf-8",
                        "cache-control: no-store",
                        "x-content-type-options: nosniff",
                        "x-frame-options: deny",
                        "referrer-policy: no-referrer",
                        "cross-origin-resource-policy: same-origin",
                        "cross-origin-opener-policy: same-origin")
                .anyMatch(line -> line.startsWith("content-security-policy: default-src 'none';")
                        && line.contains("frame-ancestors 'none'"))
                .noneMatch(line -> line.startsWith("access-control-"));
    }

    @Test
    void every_start_has_another_address_that_cannot_be_guessed() throws IOException {
        try (PageServer other = PageServer.open(watch.latest(), 0)) {
            assertThat(address.getPath()).matches("/[0-9a-f]{32}/");
            assertThat(URI.create(other.address()).getPath()).isNotEqualTo(address.getPath());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/favicon.ico",
                "/00000000000000000000000000000000/",
                "TOKEN",
                "TOKEN/index.html",
                "TOKEN/events/",
                "TOKEN/parts?x=1",
                "TOKEN/?x",
                "TOKEN//",
                "TOKEN/../",
                "TOKEN/../../etc/passwd",
                "TOKEN/%2e%2e/%2e%2e/etc/passwd",
                "TOKEN/..%2f..%2fetc/passwd",
                "//etc/passwd",
                "TOKEN/%00",
                "http://127.0.0.1/TOKEN/",
            })
    void nothing_else_is_there(String path) throws IOException {
        assertNothing(ask(
                "GET",
                path.replace("/TOKEN/", address.getPath())
                        .replace("TOKEN/", address.getPath())
                        .replace("TOKEN", address.getPath().replaceAll("/$", "")),
                host()));
    }

    @Test
    void a_path_without_end_gets_nothing() throws IOException {
        assertThat(ask("GET", address.getPath() + "a/".repeat(20_000), host()).get(0))
                .doesNotContain("200");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Host: example.com",
                "Host: example.com:PORT",
                "Host: 127.0.0.1",
                "Host: 127.0.0.1:1",
                "Host: 127.0.0.1.example.com:PORT",
                "Host: 0.0.0.0:PORT",
                "Host: ",
                "X-Nothing: of this",
                "Host: 127.0.0.1:PORT\nHost: example.com",
                "Host: 127.0.0.1:PORT\nOrigin: http://example.com",
                "Host: 127.0.0.1:PORT\nOrigin: null",
                "Host: 127.0.0.1:PORT\nOrigin: https://127.0.0.1:PORT",
                "Host: 127.0.0.1:PORT\nOrigin: http://127.0.0.1:1",
                "Host: 127.0.0.1:PORT\nSec-Fetch-Site: cross-site",
                "Host: 127.0.0.1:PORT\nSec-Fetch-Site: same-site",
                "Host: 127.0.0.1:PORT\nSec-Fetch-Site: same-origin\nSec-Fetch-Site: cross-site",
            })
    void a_request_from_elsewhere_is_not_answered(String headers) throws IOException {
        String[] lines =
                headers.replace("PORT", Integer.toString(address.getPort())).split("\n");
        for (String name : List.of("", "parts", "events")) {
            List<String> answer = ask("GET", address.getPath() + name, lines);
            assertThat(answer.get(0)).matches("HTTP/1.1 40[04] .*");
            assertThat(answer).noneMatch(line -> line.contains("ledge"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Host: localhost:PORT",
                "Host: 127.0.0.1:PORT\nSec-Fetch-Site: none",
                "Host: 127.0.0.1:PORT\nSec-Fetch-Site: same-origin\nOrigin: http://127.0.0.1:PORT",
            })
    void a_request_from_here_is_answered(String headers) throws IOException {
        String[] lines =
                headers.replace("PORT", Integer.toString(address.getPort())).split("\n");
        assertThat(ask("GET", address.getPath(), lines).get(0)).isEqualTo("HTTP/1.1 200 OK");
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "HEAD", "PATCH", "TRACE", "FETCH"})
    void nothing_can_be_done_but_look(String method) throws IOException {
        List<String> answer = ask(method, address.getPath(), host(), "Content-Length: 0");
        assertThat(answer.get(0)).startsWith("HTTP/1.1 405");
        assertThat(answer).contains("Allow: GET").noneMatch(line -> line.contains("ledge"));
        assertThat(ask(method, "/", host(), "Content-Length: 0").get(0)).startsWith("HTTP/1.1 404");
    }

    @Test
    void what_is_no_request_at_all_does_no_harm() throws IOException {
        for (String noise : List.of("\n\n", "GET\n\n", "GET / HTTP/9.9\n\n", "\0\1\2\n\n", "GET a b c\n\n")) {
            raw(noise);
        }
        assertThat(ask("GET", address.getPath(), host()).get(0)).isEqualTo("HTTP/1.1 200 OK");
    }

    @Test
    void only_this_machine_is_listened_to() throws IOException {
        for (NetworkInterface one : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress own : Collections.list(one.getInetAddresses())) {
                if (own instanceof Inet4Address && !own.isLoopbackAddress()) {
                    assertThatThrownBy(() -> new Socket(own, address.getPort()).close())
                            .isInstanceOf(IOException.class);
                }
            }
        }
    }

    @Test
    void a_new_picture_is_told_at_once_and_whoever_comes_again_is_told_the_newest() throws IOException {
        try (Socket first = stream()) {
            BufferedReader events = reader(first);
            assertThat(data(events)).isEqualTo("data: 1");
            watch.take(List.of(Typed.of(LEDGE.replace("3-1/2", "4"))));
            assertThat(data(events)).isEqualTo("data: 2");
        }
        watch.take(List.of(Typed.of(LEDGE.replace("3-1/2", "5"))));
        try (Socket again = stream()) {
            assertThat(data(reader(again))).isEqualTo("data: 3");
        }
        assertThat(String.join("", ask("GET", address.getPath() + "parts", host())))
                .contains("\"version\": 3", "projection 4 -&gt; 5");
    }

    @Test
    void many_open_pages_do_not_keep_others_from_the_page() throws IOException {
        List<Socket> open = new ArrayList<>();
        try {
            for (int i = 0; i < 40; i++) {
                open.add(stream());
            }
            assertThat(ask("GET", address.getPath(), host()).get(0)).isEqualTo("HTTP/1.1 200 OK");
        } finally {
            for (Socket socket : open) {
                socket.close();
            }
        }
    }

    @Test
    void a_port_that_is_taken_is_said_to_be() {
        assertThatThrownBy(
                        () -> PageServer.open(watch.latest(), address.getPort()).close())
                .isInstanceOf(BindException.class);
    }

    @Test
    void nobody_answers_when_it_is_closed() throws IOException {
        try (Socket stream = stream()) {
            BufferedReader events = reader(stream);
            assertThat(data(events)).isEqualTo("data: 1");
            server.close();
            assertThat(ended(events)).isTrue();
        }
        assertThatThrownBy(() -> new Socket(address.getHost(), address.getPort()).close())
                .isInstanceOf(IOException.class);
    }

    private static boolean ended(BufferedReader events) {
        try {
            while (events.readLine() != null) {
                continue;
            }
            return true;
        } catch (SocketTimeoutException still) {
            return false;
        } catch (IOException cut) {
            return true;
        }
    }

    private String host() {
        return "Host: 127.0.0.1:" + address.getPort();
    }

    private static void assertNothing(List<String> answer) {
        assertThat(answer.get(0)).matches("HTTP/1.1 40[04] .*");
        assertThat(answer).noneMatch(line -> line.contains("ledge") || line.contains("root:"));
    }

    private List<String> ask(String method, String path, String... headers) throws IOException {
        return raw(method + " " + path + " HTTP/1.1\n" + String.join("\n", headers) + "\nConnection: close\n\n");
    }

    private List<String> raw(String request) throws IOException {
        try (Socket socket = connected(request)) {
            socket.shutdownOutput();
            return reader(socket).lines().toList();
        }
    }

    private Socket stream() throws IOException {
        return connected("GET " + address.getPath() + "events HTTP/1.1\n" + host() + "\n\n");
    }

    private Socket connected(String request) throws IOException {
        Socket socket = new Socket(address.getHost(), address.getPort());
        socket.setSoTimeout(PATIENCE_MS);
        socket.getOutputStream().write(request.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        socket.getOutputStream().flush();
        return socket;
    }

    private static BufferedReader reader(Socket socket) throws IOException {
        return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    private static String data(BufferedReader events) throws IOException {
        String line = events.readLine();
        while (line != null && !line.startsWith("data:")) {
            line = events.readLine();
        }
        return String.valueOf(line);
    }
}

package buildup.cli.watch;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Shows the newest page to browsers on this machine. Three things are there: the page; the stream of its
 * versions (server-sent events, WHATWG HTML, section 9.2), by which an open page learns that there is a newer one; and
 * the newest parts, which it then asks for.
 */
public final class PageServer implements AutoCloseable {
    /** Name of the stream of versions, beside the page. */
    static final String EVENTS = "events";

    /** Name of what is new. */
    static final String PARTS = "parts";

    /** Pages open at a time; each holds a thread. */
    private static final int MOST_STREAMS = 24;

    /**
     * Connections that are read at a time. One whose request comes slowly, or never, holds a thread until it is dropped, so
     * there are many, of which most never start; more connections wait to be dropped.
     */
    private static final int MOST_THREADS = 1_000;

    /** Without work for so long a thread ends. */
    private static final long IDLE_S = 20;

    /** What a thread has for its calls, bytes: a page hangs ready, so little is called. */
    private static final long STACK = 256 << 10;

    /** After so long without news a line is sent anyway: it tells both ends that the other is still there. */
    private static final long HEARTBEAT_MS = 5_000;

    private final LatestPicture latest;
    private final HttpServer server;
    private final AccessCheck access;
    private final ExecutorService threads;
    private final Semaphore streams = new Semaphore(MOST_STREAMS);

    private PageServer(LatestPicture latest, HttpServer server) {
        this.latest = latest;
        this.server = server;
        this.access = new AccessCheck(server.getAddress().getPort(), AccessCheck.freshToken());
        this.threads = new ThreadPoolExecutor(
                0,
                MOST_THREADS,
                IDLE_S,
                TimeUnit.SECONDS,
                new SynchronousQueue<>(),
                work -> {
                    Thread thread = new Thread(null, work, "page", STACK);
                    thread.setDaemon(true);
                    return thread;
                },
                new ThreadPoolExecutor.DiscardPolicy());
    }

    /**
     * Opens the server.
     *
     * @param port 0 for any that is free
     * @throws java.net.BindException when the port is taken or may not be used
     */
    public static PageServer open(LatestPicture latest, int port) throws IOException {
        // a page and its head leave in two parcels; the second must not wait for the first to be confirmed
        System.setProperty("sun.net.httpserver.nodelay", "true");
        // seconds; who begins to ask and does not end holds a thread no longer
        System.setProperty("sun.net.httpserver.maxReqTime", "10");
        HttpServer http =
                HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port), 0);
        PageServer server = new PageServer(latest, http);
        http.setExecutor(server.threads);
        http.createContext("/", server::answer);
        http.start();
        return server;
    }

    /** Where the page is. */
    public String address() {
        return access.address();
    }

    @Override
    public void close() {
        threads.shutdownNow();
        server.stop(0);
    }

    private void answer(HttpExchange request) throws IOException {
        try (request) {
            Headers headers = request.getResponseHeaders();
            headers.set("Cache-Control", "no-store");
            headers.set("X-Content-Type-Options", "nosniff");
            headers.set("X-Frame-Options", "DENY");
            // beside the page's own policy, which names what may run in it; this one holds for every answer
            headers.set(
                    "Content-Security-Policy",
                    "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; connect-src 'self';"
                            + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
            headers.set("Referrer-Policy", "no-referrer");
            headers.set("Cross-Origin-Resource-Policy", "same-origin");
            headers.set("Cross-Origin-Opener-Policy", "same-origin");
            Optional<String> name = Stream.of("", PARTS, EVENTS)
                    .filter(one -> access.isFor(request, one))
                    .findFirst();
            if (name.isEmpty() || !access.isFromHere(request)) {
                // one answer for all of it: who does not know the address learns nothing about it
                request.sendResponseHeaders(404, -1);
            } else if (!request.getRequestMethod().equals("GET")) {
                headers.set("Allow", "GET");
                request.sendResponseHeaders(405, -1);
            } else if (name.get().equals(EVENTS)) {
                stream(request);
            } else {
                LatestPicture.Shown shown = latest.shown();
                boolean page = name.get().isEmpty();
                send(
                        request,
                        page ? "text/html" : "application/json",
                        page
                                ? shown.picture().document(shown.version())
                                : shown.picture().exchange(shown.version()));
            }
        }
    }

    private static void send(HttpExchange request, String type, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        request.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
        request.sendResponseHeaders(200, bytes.length);
        request.getResponseBody().write(bytes);
    }

    private void stream(HttpExchange request) throws IOException {
        if (!streams.tryAcquire()) {
            request.sendResponseHeaders(503, -1);
            return;
        }
        try {
            versions(request);
        } finally {
            streams.release();
        }
    }

    private void versions(HttpExchange request) throws IOException {
        request.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
        request.sendResponseHeaders(200, 0);
        OutputStream out = request.getResponseBody();
        long known = 0;
        try {
            while (true) {
                long version = latest.awaitOther(known, HEARTBEAT_MS).version();
                out.write(("data: " + version + "\n\n").getBytes(StandardCharsets.UTF_8));
                out.flush();
                known = version;
            }
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        }
    }
}

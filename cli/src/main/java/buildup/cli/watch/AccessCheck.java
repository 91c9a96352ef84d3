package buildup.cli.watch;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;

/**
 * Says who is let in: a browser on this machine that was given the address, and that no page from elsewhere has sent.
 * Every site that the user has open can send requests to this machine; it can neither know the token nor hide where it
 * comes from (Fetch Metadata, W3C; Origin, RFC 6454), and a name that was made to point here arrives in Host.
 */
record AccessCheck(int port, String token) {
    private static final int TOKEN_BYTES = 16;

    private static final Set<String> FROM_HERE = Set.of("same-origin", "none");

    static String freshToken() {
        byte[] bytes = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    String address() {
        return "http://127.0.0.1:" + port + path();
    }

    /** The path under which everything lies. */
    private String path() {
        return "/" + token + "/";
    }

    /** Whether the request is for what lies under that name, {@code ""} for the page itself; told in constant time. */
    boolean isFor(HttpExchange request, String name) {
        String asked = request.getRequestURI().toString();
        return MessageDigest.isEqual(
                asked.getBytes(StandardCharsets.UTF_8), (path() + name).getBytes(StandardCharsets.UTF_8));
    }

    /** Whether it was sent to this very place, by the page itself or by the user. */
    boolean isFromHere(HttpExchange request) {
        Headers headers = request.getRequestHeaders();
        List<String> hosts = all(headers, "Host");
        return hosts.size() == 1
                && isHere(hosts.get(0))
                && all(headers, "Origin").stream().allMatch(this::isOwn)
                && FROM_HERE.containsAll(all(headers, "Sec-Fetch-Site"));
    }

    private boolean isOwn(String origin) {
        return origin.startsWith("http://") && isHere(origin.substring("http://".length()));
    }

    private boolean isHere(String host) {
        return host.equals("127.0.0.1:" + port) || host.equals("localhost:" + port);
    }

    private static List<String> all(Headers headers, String name) {
        return headers.containsKey(name) ? headers.get(name) : List.of();
    }
}

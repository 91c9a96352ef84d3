package buildup.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A style or script that stands in the page itself.
 *
 * @param hash by which a content security policy (W3C, Content Security Policy Level 3, section 2.3.1) names it
 */
record Inline(String text, String hash) {
    /** In the order in which one builds on another. */
    private static final List<String> SCRIPTS =
            List.of("segments.js", "view.js", "light.js", "section.js", "front.js", "curve.js", "stack.js", "page.js");

    private static final List<String> STYLES =
            List.of("base.css", "drawing.css", "table.css", "width.css", "print.css");

    static Inline of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new Inline(text, "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'");
        } catch (NoSuchAlgorithmException e) {
            // every Java platform has it
            throw new IllegalStateException(e);
        }
    }

    static Inline style() {
        return of(STYLES.stream().map(Inline::resource).collect(Collectors.joining("\n", "\n", "")));
    }

    /** All of it in one function, so that nothing of it is seen from outside. */
    static Inline script() {
        return of(SCRIPTS.stream()
                .map(Inline::resource)
                .collect(Collectors.joining("\n", "\n(() => {\n'use strict';\n\n", "})();\n")));
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Inline.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read: " + name, e);
        }
    }
}

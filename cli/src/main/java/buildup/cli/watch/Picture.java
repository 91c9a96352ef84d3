package buildup.cli.watch;

import buildup.cli.page.Page;
import buildup.cli.page.PageParts;
import buildup.cli.tell.Json;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the browser is to show: as a document for one that opens it, as parts for one that shows an older one. */
record Picture(List<PageParts> parts, Page.Above above) {
    Picture {
        parts = List.copyOf(parts);
    }

    /** The document; its script knows which version it is. */
    String document(long version) {
        return Page.of(parts, above, Optional.of(script().replace("0 /* version */", Long.toString(version))));
    }

    /** The parts, as the detail of {@link Page#EXCHANGE}. */
    String exchange(long version) {
        return new Json()
                        .put("version", (double) version)
                        .put("title", parts.stream().map(PageParts::title).collect(Collectors.joining(" | ")))
                        .put("stacks", parts.stream().map(PageParts::html).collect(Collectors.joining()))
                        .put("changed", above.changed())
                        .texts("stale", above.stale())
                        .written()
                + "\n";
    }

    private static String script() {
        try (InputStream in = Objects.requireNonNull(Picture.class.getResourceAsStream("watch.js"), "watch.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}

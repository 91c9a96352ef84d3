package buildup.catalog;

import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Mapping;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The entries of a list that comes with the program, by key and name, as text: a run reads the few that it asks for and
 * need not wait for the rest. Such a list is laid out plainly: a key at the margin, under it entries that begin with a
 * dash and, in the same line, their name.
 */
final class Chapters {
    private static final Pattern KEY = Pattern.compile("([a-z]+):\\s*(?:#.*)?");
    private static final Pattern ENTRY = Pattern.compile("  - \\{? ?name: \"?([^,}\"#]+?)\"?\\s*(?:[,}#].*)?");

    private final String file;
    private final Map<String, Map<String, StringBuilder>> texts = new LinkedHashMap<>();

    private Chapters(String file) {
        this.file = file;
    }

    static Chapters of(String file, String text) {
        Chapters chapters = new Chapters(file);
        Map<String, StringBuilder> key = new LinkedHashMap<>();
        StringBuilder entry = new StringBuilder();
        for (String line : text.lines().toList()) {
            Matcher head = KEY.matcher(line);
            Matcher start = ENTRY.matcher(line);
            if (head.matches()) {
                key = new LinkedHashMap<>();
                chapters.texts.put(head.group(1), key);
                entry = new StringBuilder();
            } else if (start.matches()) {
                entry = new StringBuilder();
                key.put(start.group(1), entry);
            }
            entry.append(line).append('\n');
        }
        return chapters;
    }

    /** The entries under a key, in their order, each read when it is asked for. */
    Map<String, Supplier<Document>> under(String key) {
        Map<String, Supplier<Document>> entries = new LinkedHashMap<>();
        texts.getOrDefault(key, Map.of()).forEach((name, text) -> entries.put(name, () -> read(text.toString())));
        return entries;
    }

    private Document read(String text) {
        byte[] bytes = ("entry:\n" + text).getBytes(StandardCharsets.UTF_8);
        return DocumentReader.read(file, bytes, new Notices())
                .flatMap(document -> document.root().get("entry"))
                .filter(Sequence.class::isInstance)
                .map(entry ->
                        new Document(file, (Mapping) ((Sequence) entry).items().get(0)))
                .orElseThrow();
    }
}

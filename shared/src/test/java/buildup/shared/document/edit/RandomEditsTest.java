package buildup.shared.document.edit;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Random edits of random documents: what is not touched stays as it is, the rest is read as it is meant. */
@Tag("sampled")
class RandomEditsTest {

    /** Five tests make one random edit of each document, so that 2,000 documents are 10,000 edits. */
    private static final int DOCUMENTS = Integer.getInteger("buildup.random.documents", 40);

    private static final List<String> VALUES = List.of(
            "3/8",
            "wall",
            "frieze.top - 1/4",
            "3,5",
            "a: b",
            "# x",
            "- y",
            "it's",
            "say \"x\"",
            "",
            " ",
            "🪚",
            "[x",
            "x]",
            "&a",
            "*b",
            "!c",
            "%d",
            "@e",
            "`f",
            "key:",
            "a, b",
            "{ x: y }",
            "line\nbreak",
            "back\\slash \"q\"",
            "?",
            "? z",
            "---",
            "...",
            "true",
            "=",
            "<<",
            "|",
            ">",
            "1: 2",
            "\ttab",
            "'",
            "\"",
            "''",
            "x #y",
            "x#y",
            "\u00A0");

    /** The value with the text in place of another. */
    @Test
    void a_value_that_is_set() {
        for (int seed = 0; seed < DOCUMENTS; seed++) {
            RandomDocument document = RandomDocument.of(seed);
            Random dice = new Random(seed);
            RandomDocument.Value value =
                    document.values().get(dice.nextInt(document.values().size()));
            String text = VALUES.get(dice.nextInt(VALUES.size()));
            String edited = done(seed, document.text(), new Edit.Set(value.place(), new Content.Text(text)));

            String head = document.text().substring(0, value.from());
            String tail = document.text().substring(value.to());
            assertThat(edited).as("seed %d", seed).startsWith(head).endsWith(tail);
            put(document.says(), value.path(), text);
            assertThat(says(edited)).as("seed %d: %s", seed, edited).isEqualTo(document.says());

            String old = document.text().substring(value.from(), value.to());
            if (value.lines()) {
                continue;
            }
            assertThat(done(seed, edited, new Edit.Set(value.place(), new Content.Yaml(old))))
                    .as("seed %d", seed)
                    .isEqualTo(document.text());
        }
    }

    /** A key that was absent, and one that is taken out again. */
    @Test
    void a_key_that_comes_and_goes() {
        for (int seed = 0; seed < DOCUMENTS; seed++) {
            RandomDocument document = RandomDocument.of(seed);
            Random dice = new Random(seed);
            List<Object> mapping = anyPath(document.says(), dice, Map.class);
            String place = place(document.says(), mapping) + "new key";
            String text = VALUES.get(dice.nextInt(VALUES.size()));
            String edited = done(seed, document.text(), new Edit.Set(place, new Content.Text(text)));

            put(document.says(), with(mapping, "new key"), text);
            assertThat(says(edited)).as("seed %d: %s", seed, edited).isEqualTo(document.says());
            assertThat(isPartOf(document.text(), edited)).as("seed %d", seed).isTrue();
            assertThat(done(seed, edited, new Edit.Remove(place)))
                    .as("seed %d", seed)
                    .isEqualTo(document.text());
        }
    }

    /** An entry of a list, put in anywhere and taken out again. */
    @Test
    void an_entry_that_comes_and_goes() {
        for (int seed = 0; seed < DOCUMENTS; seed++) {
            RandomDocument document = RandomDocument.of(seed);
            Random dice = new Random(seed);
            List<Object> path = anyPath(document.says(), dice, List.class);
            String list = place(document.says(), path).replaceAll("\\.$", "");
            List<Object> entries = at(document.says(), path);
            int index = dice.nextInt(entries.size() + 1);
            String edited = done(
                    seed,
                    document.text(),
                    new Edit.Add(list, index + 1, new Content.Yaml("{ name: fresh, of: 'x, y' }")));

            entries.add(index, Map.of("name", "fresh", "of", "x, y"));
            assertThat(says(edited)).as("seed %d: %s", seed, edited).isEqualTo(document.says());
            assertThat(isPartOf(document.text(), edited)).as("seed %d", seed).isTrue();
            assertThat(done(seed, edited, new Edit.Remove(list + ".fresh")))
                    .as("seed %d: %s", seed, edited)
                    .isEqualTo(document.text());
        }
    }

    /** An entry or a key that is taken out: nothing comes in its place, and no comment above it is lost. */
    @Test
    void an_entry_that_goes() {
        for (int seed = 0; seed < DOCUMENTS; seed++) {
            RandomDocument document = RandomDocument.of(seed);
            Random dice = new Random(seed);
            List<Object> path = anyPath(document.says(), dice, Object.class);
            String edited = done(
                    seed,
                    document.text(),
                    new Edit.Remove(place(document.says(), path).replaceAll("\\.$", "")));

            assertThat(isPartOf(edited, document.text())).as("seed %d", seed).isTrue();
            Object holder = at(document.says(), path.subList(0, path.size() - 1));
            Object step = path.get(path.size() - 1);
            if (holder instanceof List<?> list) {
                list.remove((int) (Integer) step);
            } else {
                ((Map<?, ?>) holder).remove(step);
            }
            emptied(document.says(), path.subList(0, path.size() - 1), edited);
            assertThat(says(edited)).as("seed %d: %s", seed, edited).isEqualTo(document.says());
        }
    }

    /** A list in lines whose last entry goes is a key that holds nothing. */
    private static void emptied(Map<String, Object> says, List<Object> path, String edited) {
        Object holder = at(says, path);
        boolean empty =
                holder instanceof List<?> list && list.isEmpty() || holder instanceof Map<?, ?> map && map.isEmpty();
        if (empty && !path.isEmpty() && at(says(edited), path) instanceof String) {
            put(says, path, "");
        }
    }

    /** An entry that is moved, and moved back. */
    @Test
    void an_entry_that_moves() {
        for (int seed = 0; seed < DOCUMENTS; seed++) {
            RandomDocument document = RandomDocument.of(seed);
            Random dice = new Random(seed);
            List<Object> path = anyPath(document.says(), dice, List.class);
            List<Object> entries = at(document.says(), path);
            if (entries.isEmpty()) {
                continue;
            }
            String list = place(document.says(), path);
            int from = dice.nextInt(entries.size());
            int to = dice.nextInt(entries.size());
            String edited = done(seed, document.text(), new Edit.Move(list + (from + 1), to + 1));

            entries.add(to, entries.remove(from));
            assertThat(says(edited)).as("seed %d: %s", seed, edited).isEqualTo(document.says());
            assertThat(sorted(edited)).as("seed %d", seed).isEqualTo(sorted(document.text()));
            assertThat(done(seed, edited, new Edit.Move(list + (to + 1), from + 1)))
                    .as("seed %d: %s", seed, edited)
                    .isEqualTo(document.text());
        }
    }

    /** A document laid out anew says what it said, with every comment, and is not laid out twice. */
    @Test
    void a_layout() {
        for (int seed = 0; seed < DOCUMENTS; seed++) {
            RandomDocument document = RandomDocument.of(seed);
            String tidy = tidied(seed, document.text());
            assertThat(says(tidy)).as("seed %d: %s", seed, tidy).isEqualTo(document.says());
            assertThat(letters(tidy)).as("seed %d", seed).isEqualTo(letters(document.text()));
            assertThat(tidied(seed, tidy)).as("seed %d", seed).isEqualTo(tidy);
            assertThat(tidy.lines()).as("seed %d", seed).allMatch(line -> line.equals(line.stripTrailing()));
        }
    }

    private static String tidied(int seed, String text) {
        Notices notices = new Notices();
        String tidy = Tidying.layOut("random.yaml", text, notices).orElse("");
        assertThat(notices.sorted()).as("seed %d: %s", seed, text).isEmpty();
        return tidy;
    }

    private static String done(int seed, String text, Edit edit) {
        Notices notices = new Notices();
        String edited = Editor.edit("random.yaml", text, List.of(edit), notices).orElse("");
        assertThat(notices.sorted().stream().map(NoticeWords.INCHES::message))
                .as("seed %d, %s: %s", seed, edit, text)
                .isEmpty();
        return edited;
    }

    /** The characters without blanks and line ends, in order. */
    private static String letters(String text) {
        return text.replaceAll("[ \\t\\r\\n]", "");
    }

    private static String sorted(String text) {
        char[] signs = text.toCharArray();
        java.util.Arrays.sort(signs);
        return new String(signs);
    }

    /** Whether the whole is the part with characters put in. */
    private static boolean isPartOf(String part, String whole) {
        int at = 0;
        for (int i = 0; i < whole.length() && at < part.length(); i++) {
            at += whole.charAt(i) == part.charAt(at) ? 1 : 0;
        }
        return at == part.length();
    }

    /** The path of some mapping, list or value below the top. */
    private static List<Object> anyPath(Object says, Random dice, Class<?> sort) {
        List<List<Object>> paths = new ArrayList<>();
        collect(says, List.of(), sort, paths);
        return paths.get(dice.nextInt(paths.size()));
    }

    private static void collect(Object says, List<Object> path, Class<?> sort, List<List<Object>> found) {
        if (!path.isEmpty() && sort.isInstance(says)) {
            found.add(path);
        }
        if (says instanceof Map<?, ?> map) {
            map.forEach((key, value) -> collect(value, with(path, key), sort, found));
        } else if (says instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(list.get(i), with(path, i), sort, found);
            }
        }
    }

    /** The words of an edit for a path, a dot behind each. */
    private static String place(Object says, List<Object> path) {
        StringBuilder place = new StringBuilder();
        Object at = says;
        for (Object step : path) {
            at = at instanceof Map<?, ?> map ? map.get(step) : ((List<?>) at).get((Integer) step);
            String name = at instanceof Map<?, ?> map ? String.valueOf(map.get("name")) : "null";
            boolean entry = step instanceof Integer;
            place.append(!entry ? step : name.equals("null") ? (Integer) step + 1 : name)
                    .append('.');
        }
        return place.toString();
    }

    private static List<Object> with(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }

    @SuppressWarnings("unchecked")
    private static <T> T at(Object says, List<Object> path) {
        Object at = says;
        for (Object step : path) {
            at = at instanceof Map<?, ?> map ? map.get(step) : ((List<?>) at).get((Integer) step);
        }
        return (T) at;
    }

    @SuppressWarnings("unchecked")
    private static void put(Object says, List<Object> path, Object value) {
        Object holder = at(says, path.subList(0, path.size() - 1));
        Object step = path.get(path.size() - 1);
        if (holder instanceof Map<?, ?> map) {
            ((Map<Object, Object>) map).put(step, value);
        } else {
            ((List<Object>) holder).set((Integer) step, value);
        }
    }

    private static Object says(String text) {
        Notices notices = new Notices();
        Document document = DocumentReader.read("random.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow(() -> new AssertionError(notices.sorted() + text));
        assertThat(notices.sorted()).isEmpty();
        return plain(document.root());
    }

    private static Object plain(Node node) {
        if (node instanceof Mapping mapping) {
            Map<String, Object> all = new LinkedHashMap<>();
            for (Entry entry : mapping.entries()) {
                all.put(entry.key().text(), plain(entry.value()));
            }
            return all;
        }
        return node instanceof Sequence list
                ? list.items().stream().map(RandomEditsTest::plain).toList()
                : ((Scalar) node).text();
    }
}

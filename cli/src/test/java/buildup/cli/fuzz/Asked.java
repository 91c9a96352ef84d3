package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One question to the program: the words of the command line, standard input, and the files that lie in the folder. In the
 * words, {@code @/} stands for that folder.
 */
record Asked(List<String> words, byte[] input, Map<String, byte[]> files) {
    static final String FOLDER = "@/";

    private static final String PART = "== ";
    private static final String INPUT = "standard input";

    Asked {
        words = List.copyOf(words);
        files = new TreeMap<>(files);
    }

    /** The same with another document: standard input or a file. */
    Asked with(String part, byte[] bytes) {
        if (part.equals(INPUT)) {
            return new Asked(words, bytes, files);
        }
        Map<String, byte[]> others = new TreeMap<>(files);
        others.put(part, bytes);
        return new Asked(words, input, others);
    }

    /** What it reads, by name. */
    Map<String, byte[]> parts() {
        Map<String, byte[]> parts = new TreeMap<>(files);
        parts.put(INPUT, input);
        return parts;
    }

    /** Without one of its words. */
    Asked without(int word) {
        List<String> fewer = new ArrayList<>(words);
        fewer.remove(word);
        return new Asked(fewer, input, files);
    }

    /** As text that a person can read and {@link #read} reads: a word a line, then each document; odd bytes as \xNN. */
    String written() {
        StringBuilder text = new StringBuilder();
        words.forEach(word -> text.append(escaped(word.getBytes(UTF_8)).replace("\n", "\\x0A"))
                .append('\n'));
        parts().forEach((name, bytes) -> {
            if (bytes.length > 0 || !name.equals(INPUT)) {
                text.append(PART)
                        .append(name)
                        .append('\n')
                        .append(escaped(bytes))
                        .append('\n');
            }
        });
        return text.toString();
    }

    /** What {@link #written} wrote; lines that begin with # before the first document are comments. */
    static Asked read(String text) {
        List<String> words = new ArrayList<>();
        Map<String, StringBuilder> parts = new TreeMap<>();
        StringBuilder open = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            if (line.startsWith(PART)) {
                open = new StringBuilder();
                parts.put(line.substring(PART.length()), open);
            } else if (!parts.isEmpty()) {
                open.append(line).append('\n');
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                words.add(new String(bytes(line), UTF_8));
            }
        }
        Map<String, byte[]> files = new TreeMap<>();
        // the line end before the next part belongs to the notation; the last one stands before the end of the text
        parts.values().forEach(part -> part.setLength(part.length() - 1));
        open.setLength(parts.isEmpty() ? 0 : Math.max(0, open.length() - 1));
        parts.forEach((name, part) -> files.put(name, bytes(part.toString())));
        byte[] input = files.getOrDefault(INPUT, new byte[0]);
        files.remove(INPUT);
        return new Asked(words, input, files);
    }

    private static String escaped(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        for (byte one : bytes) {
            int value = one & 0xFF;
            boolean part = value == '=' && (text.isEmpty() || text.charAt(text.length() - 1) == '\n');
            if (value != '\n' && (value < 0x20 || value > 0x7E || value == '\\' || part)) {
                text.append(String.format("\\x%02X", value));
            } else {
                text.append((char) value);
            }
        }
        return text.toString();
    }

    private static byte[] bytes(String escaped) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < escaped.length(); i++) {
            if (escaped.startsWith("\\x", i)) {
                text.append((char) Integer.parseInt(escaped.substring(i + 2, i + 4), 16));
                i += 3;
            } else {
                text.append(escaped.charAt(i));
            }
        }
        return text.toString().getBytes(text.chars().allMatch(c -> c < 0x80) ? US_ASCII : ISO_8859_1);
    }
}

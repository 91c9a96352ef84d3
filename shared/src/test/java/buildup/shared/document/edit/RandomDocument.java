package buildup.shared.document.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A made-up stack in a made-up layout: lines or brackets, deep or flat, with comments, blank lines, quotes and line ends
 * of every sort. It knows what it says, and between which characters each of its values is written.
 *
 * @param text as in a file
 * @param says mappings, lists and texts, as a reader is to find them
 * @param values where single values are written, by their places
 */
record RandomDocument(String text, Map<String, Object> says, List<Value> values) {

    /**
     * A single value of the document.
     *
     * @param place in the words of an edit
     * @param path keys, and numbers of entries from 0, from the top down
     * @param lines whether it is written in several lines
     */
    record Value(String place, List<Object> path, int from, int to, boolean lines) {}

    static RandomDocument of(long seed) {
        return new Writer(new Random(seed)).document();
    }

    /** Writes one document; each choice of layout is a throw of the dice. */
    private static final class Writer {
        private static final List<String> TEXTS = List.of(
                "3/4",
                "1-3/8",
                "wall",
                "board 3/4 x 5-1/2",
                "frieze.top + 1/4",
                "5'-6 1/2\"",
                "½",
                "yes",
                "~",
                "a#b",
                "38 mm",
                "http://x",
                "it's so",
                "back\\slash",
                "🪚 saw",
                "-1/2",
                "21 June");
        private static final List<String> QUOTED = List.of(
                "3,5", "a: b", "x # y", "[z", "", " led", "- dash", "\"q\"", "*star", "{ k: v }", "tab\tbed", "@at");
        private static final List<String> KEYS =
                List.of("top", "kind", "back", "rip", "face", "at", "flip", "wood", "lay", "half round", "key-2");

        private final Random dice;
        private final StringBuilder out = new StringBuilder();
        private final List<Value> values = new ArrayList<>();
        private final String lineEnd;
        private boolean holdsLines;

        Writer(Random dice) {
            this.dice = dice;
            this.lineEnd = one(3) ? "\r\n" : "\n";
        }

        private boolean one(int in) {
            return dice.nextInt(in) == 0;
        }

        private <T> T pick(List<T> from) {
            return from.get(dice.nextInt(from.size()));
        }

        RandomDocument document() {
            String mark = one(6) ? "\uFEFF" : "";
            out.append(mark);
            if (one(3)) {
                out.append("# head of the file").append(lineEnd).append(one(2) ? lineEnd : "");
            }
            Map<String, Object> says = new LinkedHashMap<>();
            for (String key : List.of("title", "sizes", "space", "eyes", "pieces", "words")) {
                comments(0);
                out.append(key).append(':');
                Object value = switch (key) {
                    case "title" -> line(List.of("title"), "title");
                    case "sizes", "space" -> mapping(1 + dice.nextInt(4), List.of(key), key, 0, 1);
                    case "words" -> list(1 + dice.nextInt(4), List.of(key), key, 0, 2, false);
                    default -> list(1 + dice.nextInt(5), List.of(key), key, 0, 1, true);
                };
                says.put(key, value);
            }
            if (!holdsLines && one(3)) {
                out.setLength(out.length() - lineEnd.length());
            }
            return new RandomDocument(out.toString(), says, List.copyOf(values));
        }

        /** A value behind a key or a dash, to the end of its line. */
        private String line(List<Object> path, String place) {
            out.append(one(4) ? "  " : " ");
            if (one(8)) {
                return lines(path, place);
            }
            String text = scalar(path, place);
            endLine();
            return text;
        }

        /** A value in several lines, further in than anything else. */
        private String lines(List<Object> path, String place) {
            String in = lineEnd + " ".repeat(40);
            String comment = one(2) ? " # c" + dice.nextInt(1000) : "";
            int sort = dice.nextInt(4);
            int from = out.length();
            out.append(
                    switch (sort) {
                        case 0 -> "|" + comment + in + "one" + in + "  two # no comment" + lineEnd + in + "three";
                        case 1 -> ">-" + comment + in + "one" + in + "two";
                        case 2 -> "\"one" + in + "two\"";
                        default -> "one" + in + "two";
                    });
            values.add(new Value(place, path, from, out.length(), true));
            if (sort > 1) {
                endLine();
            } else {
                out.append(lineEnd);
            }
            holdsLines |= sort <= 1;
            return sort == 0 ? "one\n  two # no comment\n\nthree\n" : "one two";
        }

        private void endLine() {
            if (one(5)) {
                out.append(one(2) ? " " : "    ").append("# c").append(dice.nextInt(1000));
            } else if (one(12)) {
                out.append("  ");
            }
            out.append(lineEnd);
        }

        private void comments(int column) {
            if (one(6)) {
                out.append(lineEnd);
            }
            if (one(6)) {
                out.append(" ".repeat(one(4) ? dice.nextInt(8) : column))
                        .append("# about")
                        .append(dice.nextInt(1000));
                out.append(lineEnd).append(one(4) ? lineEnd : "");
            }
        }

        private String scalar(List<Object> path, String place) {
            boolean hard = one(4);
            String text = hard ? pick(QUOTED) : pick(TEXTS);
            boolean plain = !hard && !one(5);
            int from = out.length();
            out.append(plain ? text : one(2) || text.indexOf('\t') >= 0 ? inDouble(text) : inSingle(text));
            values.add(new Value(place, path, from, out.length(), false));
            return text;
        }

        private static String inDouble(String text) {
            return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\t", "\\t") + "\"";
        }

        private static String inSingle(String text) {
            return "'" + text.replace("'", "''") + "'";
        }

        private Map<String, Object> mapping(int size, List<Object> path, String place, int column, int depth) {
            boolean flow = one(2);
            if (flow) {
                out.append(' ');
                Map<String, Object> says = flowMapping(size, path, place, column + 2, Map.of());
                endLine();
                return says;
            }
            endLine();
            int inner = column + 1 + dice.nextInt(4);
            return blockMapping(size, path, place, inner, depth, true, Map.of());
        }

        private Map<String, Object> blockMapping(
                int size,
                List<Object> path,
                String place,
                int column,
                int depth,
                boolean firstIndented,
                Map<String, String> first) {
            Map<String, Object> says = new LinkedHashMap<>();
            for (int i = 0; i < size; i++) {
                String key = i == 0 && !first.isEmpty() ? "name" : pick(KEYS);
                if (says.containsKey(key)) {
                    continue;
                }
                if (!says.isEmpty() || firstIndented) {
                    comments(column);
                    out.append(" ".repeat(column));
                }
                out.append(key).append(one(8) ? " :" : ":");
                List<Object> below = with(path, key);
                String at = place + "." + key;
                if (key.equals("name")) {
                    out.append(' ').append(first.get("name"));
                    endLine();
                    says.put(key, first.get("name"));
                } else if (depth < 4 && one(4)) {
                    says.put(
                            key,
                            one(2)
                                    ? mapping(1 + dice.nextInt(3), below, at, column, depth + 1)
                                    : list(1 + dice.nextInt(3), below, at, column, depth + 1, false));
                } else {
                    says.put(key, line(below, at));
                }
            }
            return says;
        }

        private List<Object> list(int size, List<Object> path, String place, int column, int depth, boolean named) {
            if (one(2)) {
                out.append(' ');
                List<Object> says = flowList(size, path, place, column + 2, named);
                endLine();
                return says;
            }
            endLine();
            int inner = one(4) ? column : column + 1 + dice.nextInt(3);
            List<Object> says = new ArrayList<>();
            boolean apart = one(3);
            for (int i = 0; i < size; i++) {
                if (apart && i > 0) {
                    out.append(lineEnd);
                } else {
                    comments(inner);
                }
                out.append(" ".repeat(inner)).append('-');
                Map<String, String> name = named ? Map.of("name", "entry " + (i + 1)) : Map.of();
                String at = place + "." + (named ? "entry " + (i + 1) : i + 1);
                List<Object> below = with(path, i);
                if (!named && !one(4)) {
                    says.add(line(below, at));
                } else if (one(2)) {
                    out.append(' ');
                    says.add(flowMapping(1 + dice.nextInt(4), below, at, inner + 4, name));
                    endLine();
                } else {
                    int blanks = 1 + dice.nextInt(2);
                    out.append(" ".repeat(blanks));
                    says.add(blockMapping(1 + dice.nextInt(4), below, at, inner + 1 + blanks, depth + 1, false, name));
                }
            }
            return says;
        }

        private Map<String, Object> flowMapping(
                int size, List<Object> path, String place, int column, Map<String, String> first) {
            Map<String, Object> says = new LinkedHashMap<>();
            boolean lines = one(5);
            out.append('{');
            for (int i = 0; i < size; i++) {
                String key = i == 0 && !first.isEmpty() ? "name" : pick(KEYS);
                if (says.containsKey(key)) {
                    continue;
                }
                between(says.isEmpty(), lines, column, one(3));
                out.append(key).append(one(8) ? " : " : ": ");
                List<Object> below = with(path, key);
                String at = place + "." + key;
                if (key.equals("name")) {
                    out.append(first.get("name"));
                    says.put(key, first.get("name"));
                } else if (path.size() < 4 && one(5)) {
                    says.put(key, flowList(dice.nextInt(3), below, at, column + 2, false));
                } else {
                    says.put(key, scalar(below, at));
                }
            }
            close(says.isEmpty(), lines, column, "}");
            return says;
        }

        private List<Object> flowList(int size, List<Object> path, String place, int column, boolean named) {
            List<Object> says = new ArrayList<>();
            boolean lines = one(5);
            out.append('[');
            for (int i = 0; i < size; i++) {
                between(i == 0, lines, column, false);
                String at = place + "." + (named ? "entry " + (i + 1) : i + 1);
                if (named) {
                    says.add(flowMapping(
                            1 + dice.nextInt(3), with(path, i), at, column + 2, Map.of("name", "entry " + (i + 1))));
                } else {
                    says.add(scalar(with(path, i), at));
                }
            }
            close(says.isEmpty(), lines, column, "]");
            return says;
        }

        private void between(boolean first, boolean lines, int column, boolean loose) {
            out.append(first ? "" : loose ? " ," : ",");
            if (lines) {
                out.append(one(6) ? "  # f" + dice.nextInt(1000) : "")
                        .append(lineEnd)
                        .append(" ".repeat(column));
            } else {
                out.append(first && one(2) ? "" : one(8) ? "  " : " ");
            }
        }

        private void close(boolean empty, boolean lines, int column, String bracket) {
            if (!empty) {
                out.append(one(8) ? "," : "");
                out.append(lines && one(2) ? lineEnd + " ".repeat(column) : one(2) ? " " : "");
            }
            out.append(bracket);
        }

        private static List<Object> with(List<Object> path, Object step) {
            List<Object> longer = new ArrayList<>(path);
            longer.add(step);
            return longer;
        }
    }
}

package buildup.cli.tell;

import buildup.profiles.outline.Point;
import buildup.shared.text.Marks;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A JSON object (RFC 8259) under construction. Keys stay in the order in which they were put; a key whose value is
 * absent is left out, so nothing is ever null. Numbers have at most six decimals, rounded half away from zero, and no
 * zeros behind.
 */
public final class Json {
    private static final int DECIMALS = 6;

    /** Values as written, nested objects and lists already indented for this object. */
    private final Map<String, String> values = new LinkedHashMap<>();

    /** Adds a text. */
    public Json put(String key, String text) {
        return raw(key, quoted(text));
    }

    /** Adds true or false. */
    public Json put(String key, boolean truth) {
        return raw(key, Boolean.toString(truth));
    }

    /** Adds a number of at most six decimals. */
    public Json put(String key, double number) {
        return raw(key, number(number));
    }

    /** Adds a number of at most six decimals, or nothing where there is none. */
    public Json put(String key, OptionalDouble number) {
        return number.isPresent() ? put(key, number.getAsDouble()) : this;
    }

    /** Adds a text, or nothing where there is none. */
    public Json put(String key, Optional<String> text) {
        return text.map(there -> put(key, there)).orElse(this);
    }

    /** A point, as {@code [x, y]}. */
    public Json put(String key, Point point) {
        return raw(key, "[" + number(point.x()) + ", " + number(point.y()) + "]");
    }

    /** Adds an object. */
    public Json put(String key, Json object) {
        return raw(key, object.written());
    }

    /** Adds a list of objects; an empty one is written too. */
    public Json put(String key, List<Json> objects) {
        return raw(key, block("[", objects.stream().map(Json::written).toList(), "]"));
    }

    /** Adds a list of texts. */
    public Json texts(String key, List<String> texts) {
        return raw(key, texts.stream().map(Json::quoted).collect(Collectors.joining(", ", "[", "]")));
    }

    /** Adds a list of numbers of at most six decimals each. */
    public Json numbers(String key, List<Double> numbers) {
        return raw(key, numbers.stream().map(Json::number).collect(Collectors.joining(", ", "[", "]")));
    }

    /** All that the other holds, behind what is there. */
    public Json putAll(Json other) {
        values.putAll(other.values);
        return this;
    }

    private Json raw(String key, String written) {
        values.put(key, written);
        return this;
    }

    /** The object over several lines, two blanks deeper for each level, without a line break at the end. */
    public String written() {
        return block(
                "{",
                values.entrySet().stream()
                        .map(entry -> quoted(entry.getKey()) + ": " + entry.getValue())
                        .toList(),
                "}");
    }

    private static String block(String open, List<String> items, String close) {
        return items.isEmpty()
                ? open + close
                : items.stream()
                        .map(item -> "\n  " + item.replace("\n", "\n  "))
                        .collect(Collectors.joining(",", open, "\n" + close));
    }

    /** A list of objects, as a document of its own. */
    public static String list(List<Json> objects) {
        return block("[", objects.stream().map(Json::written).toList(), "]");
    }

    /** A number of at most six decimals, halves away from 0, without an exponent. */
    public static String number(double number) {
        return new BigDecimal(number)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> quoted.append(escaped(letter)));
        return quoted.append('"').toString();
    }

    /** Quote and backslash; control characters, as the standard asks; whatever else is not seen, or is half a letter. */
    private static String escaped(int letter) {
        return switch (letter) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            case '\t' -> "\\t";
            default ->
                Marks.unseen(letter)
                        ? Character.toString(letter)
                                .chars()
                                .mapToObj(half -> "\\u" + hex(half))
                                .collect(Collectors.joining())
                        : Character.toString(letter);
        };
    }

    private static String hex(int letter) {
        String hex = Integer.toHexString(letter);
        return "0".repeat(4 - hex.length()) + hex;
    }
}

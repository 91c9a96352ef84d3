package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Style;
import buildup.shared.document.edit.TextPart.Word;
import java.util.List;
import java.util.Optional;

/** Writes single values so that they are read as they are meant: plain where that is enough, else with quotes. */
final class Scribe {

    private Scribe() {}

    /**
     * A value as it is to stand in the file.
     *
     * @param flow whether it stands in braces or brackets
     * @param before how the value was written that it takes the place of; its quotes are kept
     */
    static String value(String text, boolean flow, Style before) {
        return before != Style.SINGLE && before != Style.DOUBLE && isPlainValue(text, flow)
                ? text
                : quoted(text, before);
    }

    /** A key as it is to stand in the file. */
    static String key(String text, boolean flow, Style before) {
        return before != Style.SINGLE && before != Style.DOUBLE && isPlainKey(text, flow) ? text : quoted(text, before);
    }

    private static boolean isPlainValue(String text, boolean flow) {
        return flow
                ? holds("{ k: " + text + " }", text, true) && holds("[" + text + "]", text, true)
                : holds("k: " + text, text, true) && holds("- " + text, text, true);
    }

    private static boolean isPlainKey(String text, boolean flow) {
        return holds(flow ? "{ " + text + ": v }" : text + ": v", text, false);
    }

    /** Whether a text is one list or mapping of one entry whose value, or key, is the word, written plain. */
    private static boolean holds(String yaml, String word, boolean asValue) {
        if (word.isEmpty() || word.indexOf('\n') >= 0 || word.indexOf('\r') >= 0) {
            return false;
        }
        Optional<TextPart> part = PartReader.read(yaml);
        if (part.isEmpty()
                || !(part.get() instanceof Group group)
                || group.items().size() != 1) {
            return false;
        }
        TextPart.Item item = group.items().get(0);
        TextPart found =
                asValue ? item.value() : item.key().map(TextPart.class::cast).orElse(item.value());
        return found instanceof Word read
                && read.style() == Style.PLAIN
                && read.text().equals(word)
                && read.end() - read.start() == word.length()
                && read.anchor().isEmpty();
    }

    private static String quoted(String text, Style before) {
        boolean unprintable = text.chars().anyMatch(c -> needsEscape((char) c));
        boolean single = before == Style.SINGLE
                || (before != Style.DOUBLE && (text.indexOf('"') >= 0 || text.indexOf('\\') >= 0));
        return single && !unprintable ? "'" + text.replace("'", "''") + "'" : inDouble(text);
    }

    private static boolean needsEscape(char c) {
        return Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || c == '\uFEFF' || c >= '\uFFFE';
    }

    private static String inDouble(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"', '\\' -> quoted.append('\\').append(c);
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> {
                    String code = Integer.toHexString(0x10000 | c).substring(1);
                    quoted.append(needsEscape(c) ? "\\u" + code : String.valueOf(c));
                }
            }
        }
        return quoted.append('"').toString();
    }

    /** The part that a text in YAML is, if it is one value in one line without marks, so that it may stand anywhere. */
    static Optional<TextPart> single(String yaml) {
        String text = yaml.strip();
        List<TextPart.Item> items = PartReader.read("[" + text + "]")
                .filter(Group.class::isInstance)
                .map(part -> ((Group) part).items())
                .orElse(List.of());
        boolean oneLine = text.indexOf('\n') < 0 && text.indexOf('\r') < 0;
        if (!oneLine || items.size() != 1) {
            return Optional.empty();
        }
        TextPart part = items.get(0).value();
        boolean whole = part.start() == 1 && part.end() == text.length() + 1;
        boolean unmarked = part.all()
                .allMatch(inner ->
                        !(inner instanceof TextPart.Repeat) && inner.anchor().isEmpty());
        boolean bare = part instanceof Group group && group.form() == TextPart.Form.BARE;
        return whole && unmarked && !bare ? Optional.of(part) : Optional.empty();
    }
}

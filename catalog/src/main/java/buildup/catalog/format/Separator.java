package buildup.catalog.format;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What parts the fields of a line. A file keeps to the one of its first line. */
enum Separator {
    SEMICOLON(";", true),
    TAB("\t", true),
    COMMA(",", false),
    BLANKS("\\s+", true);

    /** Two numbers, perhaps with decimal commas, and blanks between: the commas part nothing. */
    private static final Pattern COMMAS_WITHIN =
            Pattern.compile("[+-]?(\\d++(,\\d++)?|,\\d++)\\s+[+-]?(\\d++(,\\d++)?|,\\d++)");

    private final Pattern pattern;
    private final boolean commaIsDecimal;

    Separator(String pattern, boolean commaIsDecimal) {
        this.pattern = Pattern.compile(pattern);
        this.commaIsDecimal = commaIsDecimal;
    }

    /** That of a line; empty for a line of one field. */
    static Optional<Separator> of(String line) {
        return Stream.of(values())
                .filter(one -> one.pattern.matcher(line).find())
                .filter(one -> one != COMMA || !COMMAS_WITHIN.matcher(line).matches())
                .findFirst();
    }

    boolean commaIsDecimal() {
        return commaIsDecimal;
    }

    /** The fields, without blanks and quotes round them; an empty one at the end is none. */
    List<String> fields(String line) {
        List<String> fields = Stream.of(pattern.split(line, -1))
                .map(String::strip)
                .map(field -> field.length() > 1 && field.startsWith("\"") && field.endsWith("\"")
                        ? field.substring(1, field.length() - 1).strip()
                        : field)
                .toList();
        int last = fields.size() - 1;
        return last > 0 && fields.get(last).isEmpty() ? fields.subList(0, last) : fields;
    }
}

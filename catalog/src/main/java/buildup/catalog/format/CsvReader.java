package buildup.catalog.format;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Points as a contour gauge or a digitizer lists them: x and y on a line, x to the right, y up. A header may name the
 * columns and their unit; blank lines part trails; lines that begin with # or // are remarks, and may state the unit.
 */
final class CsvReader {
    private static final Pattern REMARK = Pattern.compile("(#|//).*");
    private static final Pattern STATED_UNIT =
            Pattern.compile("(?:#|//)?\\s*+units?(?:\\s*+[:=,;]\\s*+|\\s++)([\\p{L}.\"']++)", Pattern.CASE_INSENSITIVE);
    private static final Pattern COLUMN_UNIT = Pattern.compile("[(\\[]\\s*([^)\\]]*?)\\s*[)\\]]");
    private static final Pattern HEADING = Pattern.compile("(?i)(?!(nan|inf|infinity)\\b)[\\p{L}\"'(_].*");
    private static final int LONGEST_LINE = 1_000;

    private final Source source;
    private final List<Trail> trails = new ArrayList<>();
    private final List<Point> run = new ArrayList<>();
    private Optional<Separator> separator = Optional.empty();
    private Optional<LengthUnit> unit = Optional.empty();
    private int columns = 2;
    private int x;
    private int y = 1;
    private boolean begun;
    private int points;
    private int runLine;
    private final List<Integer> alone = new ArrayList<>();

    CsvReader(Source source) {
        this.source = source;
    }

    Drawn drawn() throws FileRefused {
        int line = 0;
        for (String text : (Iterable<String>) source.text().lines()::iterator) {
            line++;
            String plain = text.strip();
            if (plain.isEmpty()) {
                endRun();
            } else if (plain.length() > LONGEST_LINE) {
                source.tell(FormatNotices.LONG_LINE.with("letters", Figure.count(plain.length())), line);
            } else if (STATED_UNIT.matcher(plain).matches()) {
                Matcher stated = STATED_UNIT.matcher(plain);
                unit(stated.matches() ? stated.group(1) : "", line);
            } else if (!REMARK.matcher(plain).matches()) {
                data(plain, line);
            }
        }
        endRun();
        if (trails.isEmpty()) {
            throw source.refused(source.named(points > 0 ? FormatNotices.SINGLE_POINTS : FormatNotices.NO_POINT), 1);
        }
        alone.forEach(lone -> source.tell(FormatNotices.LONE_POINT, lone));
        return new Drawn(trails, unit);
    }

    private void data(String text, int line) throws FileRefused {
        boolean first = !begun;
        begun = true;
        Optional<Separator> parted = separator.or(() -> Separator.of(text));
        List<String> fields = parted.map(one -> one.fields(text)).orElse(List.of(text));
        if (first && isHeader(text)) {
            header(fields, line);
            return;
        }
        if (fields.size() != columns) {
            Phrase found = fields.size() == 1 ? FormatNotices.ONE_FIELD : FormatNotices.SEVERAL_FIELDS;
            source.tell(
                    FormatNotices.FIELDS
                            .with("text", Numerals.shown(text))
                            .with("found", found.with("fields", Figure.count(fields.size())))
                            .with("columns", Figure.count(columns)),
                    line);
            return;
        }
        OptionalDouble right = number(fields.get(x), parted);
        OptionalDouble up = number(fields.get(y), parted);
        if (right.isEmpty() || up.isEmpty()) {
            Phrase fault = Numerals.fault(right.isEmpty() ? fields.get(x) : fields.get(y));
            source.tell(FormatNotices.NO_NUMBER.with("fault", fault), line);
            return;
        }
        // of a line that was read: one that was not may hold anything
        separator = parted;
        point(new Point(right.getAsDouble(), up.getAsDouble()), line);
    }

    private static OptionalDouble number(String field, Optional<Separator> parted) {
        return Numerals.number(parted.filter(Separator::commaIsDecimal).isPresent() ? field.replace(',', '.') : field);
    }

    private void point(Point point, int line) throws FileRefused {
        points++;
        if (points > Limits.MOST_POINTS) {
            throw Plot.tooMany(source);
        }
        if (run.isEmpty()) {
            runLine = line;
        }
        run.add(point);
    }

    private void endRun() {
        if (run.size() > 1) {
            trails.add(new Trail(run, false));
        } else if (run.size() == 1) {
            alone.add(runLine);
        }
        run.clear();
    }

    /** A first line of names only; what computers write for no number is no name. */
    private static boolean isHeader(String text) {
        return Stream.of(text.split("[;,\\t]"))
                .allMatch(field -> HEADING.matcher(field.strip()).matches());
    }

    private void header(List<String> fields, int line) throws FileRefused {
        List<String> names =
                fields.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
        List<String> bare = names.stream()
                .map(name -> COLUMN_UNIT.matcher(name).replaceAll("").strip())
                .toList();
        if (bare.contains("x") && bare.contains("y")) {
            x = bare.indexOf("x");
            y = bare.indexOf("y");
            columns = bare.size();
        }
        List<String> units = Stream.of(x, y)
                .filter(column -> column < names.size())
                .flatMap(column -> COLUMN_UNIT.matcher(names.get(column)).results())
                .map(found -> found.group(1))
                .distinct()
                .toList();
        for (String one : units) {
            unit(one, line);
        }
    }

    private void unit(String name, int line) throws FileRefused {
        Optional<LengthUnit> stated = LengthUnit.named(name);
        if (stated.isEmpty()) {
            source.tell(FormatNotices.NO_UNIT.with("text", Numerals.shown(name)), line);
        } else if (unit.isPresent() && !unit.equals(stated)) {
            throw source.refused(
                    FormatNotices.UNITS_DIFFER
                            .with("first", unit.get().symbol())
                            .with("second", stated.get().symbol()),
                    line);
        } else {
            unit = stated;
        }
    }

    /** What parts the fields of a line. A file keeps to the one of its first line. */
    private enum Separator {
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
}

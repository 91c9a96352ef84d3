package buildup.shared.document.edit;

import buildup.shared.edit.Naming;
import buildup.shared.length.LengthReader;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds a name in texts that mention it. Blanks and dashes count as their reader counts them: any number of blanks is
 * one, every dash a minus sign.
 *
 * @param known all names of the kind: where two fit, the longer one is meant
 */
record Finder(Naming kind, String name, Collection<String> known) {

    /** The characters of a mention, the first and the one after the last. */
    record Range(int from, int to) {}

    private static final String BLANK = "[\\s\\u00A0\\u2007\\u2009\\u200A\\u202F]+";
    private static final String SIGN = BLANK + "[+\\-\\u2010-\\u2013\\u2212]" + BLANK;
    private static final Pattern JOINT = Pattern.compile(SIGN);
    private static final Pattern TIMES = Pattern.compile(BLANK + "x" + BLANK);
    private static final Pattern COMPARISON = Pattern.compile("[<>=\\u2264\\u2265]|\\snear\\s");
    private static final Pattern MEMBER_NAME = Pattern.compile("\\sas\\s+[^,]*");
    private static final Pattern WORD = Pattern.compile("[^\\s,]+");

    /** The mentions in a text, in order. */
    List<Range> in(String text, Mentions.Form form) {
        return switch (form) {
            case ALONE -> same(text) ? List.of(strip(text, 0, text.length())) : List.of();
            case PLACE -> inPlace(text);
            case WORDS -> inWords(text);
            case SENTENCE -> inSentence(text);
        };
    }

    /** The text with another name in place of this one. */
    String replaced(String text, Mentions.Form form, String other) {
        StringBuilder replaced = new StringBuilder();
        int at = 0;
        for (Range range : in(text, form)) {
            replaced.append(text, at, range.from()).append(other);
            at = range.to();
        }
        return replaced.append(text.substring(at)).toString();
    }

    private boolean same(String text) {
        return LengthReader.terms(text).equals(LengthReader.terms(name));
    }

    private static Range strip(String text, int from, int to) {
        String part = text.substring(from, to);
        int start = from + part.length() - part.stripLeading().length();
        return new Range(start, start + part.strip().length());
    }

    private List<Range> inPlace(String text) {
        List<Range> found = new ArrayList<>();
        parts(text, new Range(0, text.length()), JOINT).forEach(term -> inTerm(text, term, found));
        return found;
    }

    private static List<Range> parts(String text, Range range, Pattern joint) {
        List<Range> parts = new ArrayList<>();
        Matcher matcher = joint.matcher(text).region(range.from(), range.to());
        int from = range.from();
        while (matcher.find()) {
            parts.add(strip(text, from, matcher.start()));
            from = matcher.end();
        }
        parts.add(strip(text, from, range.to()));
        return parts;
    }

    private void inTerm(String text, Range range, List<Range> found) {
        String term = text.substring(range.from(), range.to());
        if (kind == Naming.PIECE) {
            int dot = term.lastIndexOf('.');
            boolean edge = dot > 0 && dot < term.length() - 1 && Character.isLetter(term.codePointAt(dot + 1));
            if (edge && same(term.substring(0, dot))) {
                found.add(new Range(range.from(), range.from() + dot));
            }
        } else if (same(term)) {
            found.add(range);
        } else if (term.startsWith("-") || term.startsWith("+")) {
            inTerm(text, strip(text, range.from() + 1, range.to()), found);
        } else if (term.contains(" of ")) {
            inTerm(text, strip(text, range.from() + term.indexOf(" of ") + 4, range.to()), found);
        } else if (TIMES.matcher(term).find()) {
            parts(text, range, TIMES).forEach(part -> inTerm(text, part, found));
        }
    }

    /** All but the first word of each part between commas, the {@code x} between sizes and the name behind {@code as}. */
    private List<Range> inWords(String text) {
        StringBuilder sizes = new StringBuilder(text);
        MEMBER_NAME.matcher(text).results().forEach(match -> blank(sizes, match.start(), match.end()));
        TIMES.matcher(text).results().forEach(match -> blank(sizes, match.start(), match.end()));
        int from = 0;
        for (String part : text.split(",", -1)) {
            Matcher first = WORD.matcher(part);
            if (first.find()) {
                blank(sizes, from + first.start(), from + first.end());
            }
            from += part.length() + 1;
        }
        return loose(sizes.toString(), "(?:^|[\\s,]|(?<=[\\s,])[+-])");
    }

    private static void blank(StringBuilder text, int from, int to) {
        for (int i = from; i < to; i++) {
            text.setCharAt(i, ' ');
        }
    }

    private List<Range> inSentence(String text) {
        return switch (kind) {
            case PIECE -> loose(text, "(?:^|\\s)(?:of|over)\\s+[\"']?");
            case LIGHT -> loose(text, "(?:^|\\s)in\\s+[\"']?");
            case EYE -> loose(text, "(?:^|\\s)from\\s+[\"']?");
            case SIZE -> {
                Matcher comparison = COMPARISON.matcher(text);
                StringBuilder values = new StringBuilder(text);
                blank(values, 0, comparison.find() ? comparison.end() : text.length());
                yield loose(values.toString(), "(?:^|\\s|(?<=\\s)[+-])");
            }
        };
    }

    /** Every place behind such a beginning where the name stands whole and is no part of a longer one. */
    private List<Range> loose(String text, String beginning) {
        List<Range> found = new ArrayList<>();
        if (!text.contains(name)) {
            return found;
        }
        String any = known.stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        Matcher match =
                Pattern.compile(beginning + "(" + any + ")(?=[.,\\s\"']|$)").matcher(text);
        while (match.find()) {
            if (match.group(1).equals(name)) {
                found.add(new Range(match.start(1), match.end(1)));
            }
        }
        return found;
    }
}

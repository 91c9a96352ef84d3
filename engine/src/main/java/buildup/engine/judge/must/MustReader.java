package buildup.engine.judge.must;

import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Quantity;
import buildup.shared.length.LengthReader;
import buildup.shared.length.Reading;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the lines under {@code must:} in the words of the sheets. */
final class MustReader {
    private static final int LONGEST = 300;

    /** What a line without {@code within} allows a share to be off. */
    private static final double SHARE_WITHIN = 0.01;

    private static final Pattern COMPARISON = Pattern.compile("(<=|>=|=<|=>|<|>|==|=|\u2264|\u2265)");
    private static final Pattern WITHIN = Pattern.compile("(.*) within (.*)");
    private static final Pattern NUMBER = Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{0,9})?|\\.[0-9]{1,9}) *(.*)");

    private final KnownFigures known;
    private final LengthReader lengths;
    private final Optional<Notices> notices;

    MustReader(KnownFigures known, LengthReader lengths, Notices notices) {
        this(known, lengths, Optional.of(notices));
    }

    private MustReader(KnownFigures known, LengthReader lengths, Optional<Notices> notices) {
        this.known = known;
        this.lengths = lengths;
        this.notices = notices;
    }

    /** One that passes over what is wrong, for where not all sheets are known. */
    static MustReader silent(List<Sheet> sheets, LengthReader lengths) {
        return new MustReader(new KnownFigures(sheets), lengths, Optional.empty());
    }

    /** Names like the one that was mistyped are looked for only when somebody hears of them. */
    private void say(Supplier<Notice> notice) {
        notices.ifPresent(all -> all.add(notice.get()));
    }

    Optional<MustRule> read(Scalar line) {
        String text = line.text().strip();
        Matcher sign = COMPARISON.matcher(unquoted(text));
        if (text.length() > LONGEST || !sign.find()) {
            say(() -> MustNotices.NOT_A_RULE.with("rule", shortened(text)).at(line.mark()));
            return Optional.empty();
        }
        Optional<Asked> asked = asked(text.substring(0, sign.start()).strip(), line.mark());
        return asked.flatMap(found -> compared(
                found,
                text,
                comparison(sign.group(1)),
                text.substring(sign.end()).strip(),
                line.mark()));
    }

    /** Whether a sheet of that key holds any row. */
    boolean holds(String sheet) {
        return known.sources().stream()
                .map(KnownFigures.Source::sheet)
                .anyMatch(one -> one.key().equals(sheet) && !one.rows().isEmpty());
    }

    /** A figure by itself, as {@code reveal of bead over frieze}. */
    Optional<AskedFigure> figure(String text, Mark mark) {
        return asked(text, mark).map(found -> new AskedFigure(found.sources().subList(0, 1), found.names()));
    }

    /** A figure and what narrows it down, as written. */
    private record Asked(String word, List<KnownFigures.Source> sources, Map<Role, String> names) {}

    /** What stands between quotes holds no sign and no word. */
    private static String unquoted(String text) {
        StringBuilder plain = new StringBuilder(text);
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\'' || text.charAt(i) == '"') {
                quoted = !quoted;
            } else if (quoted) {
                plain.setCharAt(i, '_');
            }
        }
        return plain.toString();
    }

    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "...";
    }

    private static MustRule.Relation comparison(String sign) {
        return switch (sign) {
            case "<=", "=<", "\u2264" -> MustRule.Relation.AT_MOST;
            case ">=", "=>", "\u2265" -> MustRule.Relation.AT_LEAST;
            case "<" -> MustRule.Relation.LESS;
            case ">" -> MustRule.Relation.MORE;
            default -> MustRule.Relation.EQUAL;
        };
    }

    private Optional<Asked> asked(String text, Mark mark) {
        String low = text.toLowerCase(Locale.ROOT);
        Optional<String> word = longest(low, known.callable());
        if (word.isEmpty()) {
            String first = low.split(" (?:of|over|in|from) ", 2)[0];
            say(() -> MustNotices.UNKNOWN_FIGURE
                    .with("figure", shortened(first))
                    .with("nearest", Suggestion.cure(first, known.words()))
                    .at(mark));
            return Optional.empty();
        }
        Optional<Map<Role, String>> names =
                names(word.get(), text.substring(word.get().length()).strip(), mark);
        return names.flatMap(
                found -> sources(word.get(), found, mark).map(sources -> new Asked(word.get(), sources, found)));
    }

    /** The longest of these that the text begins with, a blank or the end behind it. */
    private static Optional<String> longest(String text, Collection<String> words) {
        return words.stream()
                .filter(word -> text.equals(word) || text.startsWith(word + " "))
                .max(Comparator.comparingInt(String::length));
    }

    private Optional<Map<Role, String>> names(String word, String text, Mark mark) {
        Map<Role, String> names = new EnumMap<>(Role.class);
        String rest = text;
        while (!rest.isEmpty()) {
            Optional<Role> role = role(rest);
            if (role.isEmpty()) {
                String left = rest;
                say(() -> MustNotices.NOT_UNDERSTOOD
                        .with("words", shortened(left))
                        .at(mark));
                return Optional.empty();
            }
            String after = rest.substring(role.get().word().length()).strip();
            Optional<Name> name = name(word, role.get(), after, mark);
            if (name.isEmpty()) {
                return Optional.empty();
            }
            names.put(role.get(), name.get().name());
            name.get().member().ifPresent(member -> names.put(Role.MEMBER, member));
            rest = name.get().rest();
        }
        return Optional.of(names);
    }

    private static Optional<Role> role(String text) {
        String low = text.toLowerCase(Locale.ROOT);
        return List.of(Role.OF, Role.OVER, Role.IN, Role.FROM).stream()
                .filter(role -> low.startsWith(role.word() + " "))
                .findFirst();
    }

    /** A name read, the member behind it, and what is left of the line. */
    private record Name(String name, Optional<String> member, String rest) {}

    private Optional<Name> name(String word, Role role, String text, Mark mark) {
        Set<String> all = known.names(role);
        if (!text.isEmpty() && (text.charAt(0) == '\'' || text.charAt(0) == '"')) {
            int end = text.indexOf(text.charAt(0), 1);
            if (end > 0 && all.contains(text.substring(1, end))) {
                return member(role, text.substring(1, end), text.substring(end + 1), mark);
            }
        }
        Optional<String> longest = all.stream()
                .filter(name -> text.equals(name) || text.startsWith(name + " ") || text.startsWith(name + "."))
                .max(Comparator.comparingInt(String::length));
        if (longest.isEmpty()) {
            String asked = text.split(" (?:of|over|in|from) ", 2)[0];
            say(() -> MustNotices.UNKNOWN_NAME
                    .with("role", role.word())
                    .with("name", shortened(asked))
                    .with("nearest", Suggestion.cure(asked, known.names(role, word)))
                    .at(mark));
            return Optional.empty();
        }
        return member(role, longest.get(), text.substring(longest.get().length()), mark);
    }

    private Optional<Name> member(Role role, String name, String rest, Mark mark) {
        if (role != Role.OF || !rest.startsWith(".")) {
            return Optional.of(new Name(name, Optional.empty(), rest.strip()));
        }
        String text = rest.substring(1);
        Set<String> members = known.members(name);
        Optional<String> longest = members.stream()
                .filter(member -> text.equals(member) || text.startsWith(member + " "))
                .max(Comparator.comparingInt(String::length));
        if (longest.isEmpty()) {
            say(() -> MustNotices.UNKNOWN_MEMBER
                    .with("piece", name)
                    .with("name", shortened(text.split(" ", 2)[0]))
                    .with("nearest", Suggestion.cure(text.split(" ", 2)[0], members))
                    .at(mark));
            return Optional.empty();
        }
        return Optional.of(
                new Name(name, longest, text.substring(longest.get().length()).strip()));
    }

    /**
     * The columns that have an identity column for each name given. What stands in the stack goes before what the report
     * only offers, a sheet that knows the names before one that does not, a heading before a key, and the sheet first in
     * which least is left open.
     */
    private Optional<List<KnownFigures.Source>> sources(String word, Map<Role, String> names, Mark mark) {
        List<KnownFigures.Source> fitting = new ArrayList<>(known.named(word).stream()
                .filter(source -> source.takes(names.keySet()))
                .toList());
        if (fitting.isEmpty()) {
            say(() -> MustNotices.NOT_OF_THAT.with("figure", word).at(mark));
            return Optional.empty();
        }
        Predicate<KnownFigures.Source> named = source -> names.isEmpty() || source.has(names);
        boolean there = fitting.stream().anyMatch(source -> !source.isOffered() && named.test(source));
        fitting.sort(Comparator.<KnownFigures.Source, Boolean>comparing(
                        source -> source.isOffered() && (there || names.isEmpty()))
                .thenComparing(source -> !named.test(source))
                .thenComparing(source -> !source.isHeaded(word))
                .thenComparingInt(source -> source.open(names.keySet())));
        return Optional.of(fitting);
    }

    /**
     * Of these the first that counts what a value is given in. Where it leaves open which row is meant, the line asks for the
     * worst, and so for the same word in other sheets too, but for those that only tell more finely of the same rows.
     */
    private List<KnownFigures.Source> meant(Asked asked, String value) {
        boolean share = value.endsWith("%");
        List<KnownFigures.Source> fitting = asked.sources().stream()
                .map(source -> share ? shareOf(source) : source)
                .toList();
        KnownFigures.Source first = fitting.stream()
                .filter(source -> amount(value, source.quantity()).isPresent())
                .findFirst()
                .orElse(fitting.get(0));
        List<KnownFigures.Source> meant = new ArrayList<>(List.of(first));
        for (KnownFigures.Source source : first.open(asked.names().keySet()) == 0 ? meant.subList(0, 0) : fitting) {
            boolean alike = source.quantity() == first.quantity()
                    && source.isOffered() == first.isOffered()
                    && source.isHeaded(asked.word()) == first.isHeaded(asked.word());
            boolean known = source.has(asked.names())
                    || (asked.names().isEmpty() && source.sheet().asked());
            if (alike && known && meant.stream().noneMatch(source::isFinerThan)) {
                meant.add(source);
            }
        }
        return List.copyOf(meant);
    }

    private Optional<MustRule> compared(
            Asked asked, String text, MustRule.Relation comparison, String right, Mark mark) {
        Matcher within = WITHIN.matcher(right);
        boolean given = within.matches();
        String value = given ? within.group(1).strip() : right;
        List<KnownFigures.Source> sources = meant(asked, value);
        Quantity quantity = sources.get(0).quantity();
        OptionalDouble amount = amount(value, quantity);
        OptionalDouble off = given
                ? amount(within.group(2).strip(), quantity)
                : OptionalDouble.of(comparison == MustRule.Relation.EQUAL ? usual(quantity) : 0);
        if (amount.isEmpty() || off.isEmpty() || off.getAsDouble() < 0) {
            say(() -> MustNotices.notAValue(amount.isEmpty() ? value : within.group(2), quantity, asked.word())
                    .at(mark));
            return Optional.empty();
        }
        if (given && comparison != MustRule.Relation.EQUAL) {
            say(() -> MustNotices.WITHIN_WITHOUT_EQUAL
                    .with("rule", shortened(text))
                    .at(mark));
            return Optional.empty();
        }
        return Optional.of(new MustRule(
                text,
                mark,
                new AskedFigure(sources, asked.names()),
                comparison,
                amount.getAsDouble(),
                off.getAsDouble()));
    }

    /** A length that is held against a percentage is meant as its share, where the sheet tells one. */
    private KnownFigures.Source shareOf(KnownFigures.Source source) {
        return source.quantity() == Quantity.SHARE
                ? source
                : known.sources().stream()
                        .filter(other -> other.sheet().equals(source.sheet()) && other.quantity() == Quantity.SHARE)
                        .findFirst()
                        .orElse(source);
    }

    private static double usual(Quantity quantity) {
        return switch (quantity) {
            case LENGTH -> Tolerance.TOUCHING;
            case SHARE -> SHARE_WITHIN;
            default -> Math.pow(10, -quantity.places(false)) / 2;
        };
    }

    /** A value as it is typed for a figure, in the unit in which the figure is held. */
    OptionalDouble amount(String text, Quantity quantity) {
        if (quantity == Quantity.LENGTH || quantity == Quantity.RUN) {
            OptionalDouble inches = lengths.read(text) instanceof Reading.Good good
                    ? OptionalDouble.of(good.length().toInches())
                    : OptionalDouble.empty();
            return quantity == Quantity.RUN && inches.isPresent()
                    ? OptionalDouble.of(inches.getAsDouble() / 12)
                    : inches;
        }
        Matcher number = NUMBER.matcher(text);
        if (!number.matches()) {
            return OptionalDouble.empty();
        }
        double amount = Double.parseDouble(number.group(1));
        String unit = number.group(2).strip();
        boolean metric = unit.isEmpty() ? lengths.bareUnit().isMetric() : isUnit(unit, quantity, true);
        // shares are printed in percent: of half a percent that names none, a half may be meant
        boolean doubtful = unit.isEmpty() && quantity == Quantity.SHARE && amount > 0 && amount <= 1;
        boolean fits = !doubtful && (unit.isEmpty() || metric || isUnit(unit, quantity, false));
        return fits ? OptionalDouble.of(quantity.held(amount, metric)) : OptionalDouble.empty();
    }

    /** As printed, or with a stroke: {@code lb a foot} or {@code lb/ft}. */
    private static boolean isUnit(String unit, Quantity quantity, boolean metric) {
        String word = quantity.unit(metric);
        String stroke = word.replace(" a foot", "/ft").replace(" a meter", "/m").replace(" an inch", "/in");
        return unit.equals(word) || unit.equals(stroke) || (quantity == Quantity.ANGLE && unit.equals("\u00b0"));
    }
}

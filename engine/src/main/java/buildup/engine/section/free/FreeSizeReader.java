package buildup.engine.section.free;

import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a value that is left free. */
final class FreeSizeReader {
    /** More steps than any size of trim has. */
    private static final int MOST_STEPS = 10_000;

    private static final Pattern FREE = Pattern.compile("(between|one of|any)\\b.*", Pattern.DOTALL);
    private static final Pattern BETWEEN =
            Pattern.compile("between +(\\S.*?) +and +(\\S.*?) +by +(\\S.*?)(?: *, *now +(\\S.*))?");
    private static final Pattern ONE_OF = Pattern.compile("one of +\\[(.*)](?: *, *now +(\\S.*))?");
    private static final Pattern ANY = Pattern.compile("any +([^,]*[^, ])(?: *, *now +(\\S.*))?");
    private static final Pattern NOW = Pattern.compile(".*, *now +(\\S.*)", Pattern.DOTALL);
    private static final Pattern QUOTES = Pattern.compile("^[\"']|[\"']$");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,9}(\\.[0-9]{1,9})?");

    private final LengthUnit unit;
    private final BiFunction<String, LengthUnit, List<String>> families;
    private final Notices notices;

    FreeSizeReader(LengthUnit unit, BiFunction<String, LengthUnit, List<String>> families, Notices notices) {
        this.unit = unit;
        this.families = families;
        this.notices = notices;
    }

    /** Whether a text may be meant as a free size; titles, names and notes are not asked. */
    static boolean isMeant(String text) {
        return FREE.matcher(text.strip()).matches();
    }

    Optional<FreeSize> read(String place, Scalar scalar) {
        String text = scalar.text().strip();
        Matcher between = BETWEEN.matcher(text);
        if (between.matches()) {
            return range(place, scalar, between);
        }
        Matcher oneOf = ONE_OF.matcher(text);
        if (oneOf.matches()) {
            List<String> choices = choices(oneOf.group(1)).distinct().toList();
            return choices.isEmpty()
                    ? refused(FreeNotices.EMPTY_LIST, place, scalar)
                    : chosen(place, scalar, choices, Optional.ofNullable(oneOf.group(2)));
        }
        Matcher any = ANY.matcher(text);
        if (any.matches() && place.endsWith("profile")) {
            List<String> choices = families.apply(any.group(1).strip(), unit);
            if (choices.isEmpty()) {
                notices.add(
                        FreeNotices.NO_FAMILY.with("name", any.group(1).strip()).at(scalar.mark()));
                return Optional.empty();
            }
            Optional<String> now = Optional.ofNullable(any.group(2)).map(String::strip);
            // what stands there today need not be a usual size
            List<String> all =
                    Stream.concat(now.stream(), choices.stream()).distinct().toList();
            return chosen(place, scalar, all, now);
        }
        return refused(FreeNotices.NOT_UNDERSTOOD, place, scalar);
    }

    /**
     * What was refused as a free size, as what it says that it is now, or else as the first of its values that can be read
     * or the first of its choices: so nothing follows from it.
     */
    Optional<FreeSize> asItIs(String place, Scalar scalar) {
        String text = scalar.text().strip();
        return now(text)
                .or(() -> value(place, text))
                .map(one ->
                        new FreeSize(place, scalar.mark(), List.of(one), List.of(), 0, spelling(place, one, false)));
    }

    private static Optional<String> now(String text) {
        Matcher now = NOW.matcher(text);
        return now.matches() ? Optional.of(now.group(1).strip()) : Optional.empty();
    }

    private Optional<String> value(String place, String text) {
        Matcher between = BETWEEN.matcher(text);
        Matcher oneOf = ONE_OF.matcher(text);
        if (between.matches()) {
            return Stream.of(between.group(1), between.group(2))
                    .filter(end -> spelling(place, end, false).read(end).isPresent())
                    .findFirst();
        }
        return oneOf.matches() ? choices(oneOf.group(1)).findFirst() : Optional.empty();
    }

    private static Stream<String> choices(String list) {
        return Stream.of(list.split(","))
                .map(choice -> QUOTES.matcher(choice.strip()).replaceAll(""))
                .filter(choice -> !choice.isEmpty());
    }

    private Optional<FreeSize> refused(Kind kind, String place, Scalar scalar) {
        notices.add(kind.with("text", shortened(scalar.text().strip()))
                .with("place", place)
                .at(scalar.mark()));
        return Optional.empty();
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "...";
    }

    private Optional<FreeSize> chosen(String place, Scalar scalar, List<String> choices, Optional<String> now) {
        List<String> all = new ArrayList<>(choices);
        List<Double> amounts = new ArrayList<>();
        SizeSpelling spelling = spelling(place, choices.get(0), false);
        choices.forEach(choice -> spelling.read(choice).ifPresent(amounts::add));
        String today = now.map(String::strip).orElse(choices.get(0));
        int at = all.indexOf(today);
        if (at < 0) {
            notices.add(FreeNotices.NOW_OUTSIDE
                    .with("place", place)
                    .with("now", shortened(today))
                    .at(scalar.mark()));
            return Optional.empty();
        }
        return Optional.of(new FreeSize(
                place, scalar.mark(), all, amounts.size() == all.size() ? amounts : List.of(), at, spelling));
    }

    private SizeSpelling spelling(String place, String text, boolean bare) {
        return SizeSpelling.like(text, FreeKeys.quantity(place), unit, bare);
    }

    private Optional<FreeSize> range(String place, Scalar scalar, Matcher words) {
        boolean bare = NUMBER.matcher(words.group(1)).matches()
                && NUMBER.matcher(words.group(2)).matches()
                && NUMBER.matcher(words.group(3)).matches();
        SizeSpelling spelling = spelling(place, words.group(1), bare);
        double[] ends = new double[3];
        for (int i = 0; i < 3; i++) {
            OptionalDouble amount = spelling.read(words.group(i + 1));
            if (amount.isEmpty()) {
                notices.add(FreeNotices.NO_VALUE
                        .with("value", shortened(words.group(i + 1)))
                        .with("text", shortened(scalar.text()))
                        .at(scalar.mark()));
                return Optional.empty();
            }
            ends[i] = amount.getAsDouble();
        }
        if (ends[1] <= ends[0] + Tolerance.COINCIDENT) {
            return refused(FreeNotices.EMPTY, place, scalar);
        }
        if (ends[2] <= Tolerance.COINCIDENT) {
            return refused(FreeNotices.NO_STEP, place, scalar);
        }
        double steps = (ends[1] - ends[0]) / ends[2];
        if (steps > MOST_STEPS) {
            notices.add(FreeNotices.TOO_FINE
                    .with("text", shortened(scalar.text()))
                    .with("most", Figure.count(MOST_STEPS))
                    .at(scalar.mark()));
            return Optional.empty();
        }
        return stepped(
                place,
                scalar,
                ends,
                (int) Math.floor(steps + Tolerance.COINCIDENT),
                spelling,
                Optional.ofNullable(words.group(4)));
    }

    private Optional<FreeSize> stepped(
            String place, Scalar scalar, double[] ends, int steps, SizeSpelling spelling, Optional<String> now) {
        List<Double> amounts = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            amounts.add(spelling.rounded(ends[0] + i * ends[2]));
        }
        if (ends[1] - amounts.get(steps) > Tolerance.COINCIDENT) {
            amounts.add(ends[1]);
            notices.add(FreeNotices.STEP_MISSES_END
                    .with("place", place)
                    .with("last", Figure.of(spelling.quantity(), ends[1]))
                    .at(scalar.mark()));
        }
        double today = amounts.get(0);
        if (now.isPresent()) {
            OptionalDouble given = spelling.read(now.get());
            if (given.isEmpty()
                    || given.getAsDouble() < ends[0] - Tolerance.COINCIDENT
                    || given.getAsDouble() > ends[1] + Tolerance.COINCIDENT) {
                notices.add(FreeNotices.NOW_BEYOND
                        .with("place", place)
                        .with("now", shortened(now.get()))
                        .at(scalar.mark()));
                return Optional.empty();
            }
            today = given.getAsDouble();
        }
        int at = put(amounts, today);
        List<String> choices =
                new ArrayList<>(amounts.stream().map(spelling::typed).toList());
        now.filter(spelling::isTyped).ifPresent(words -> choices.set(at, words.strip()));
        return Optional.of(new FreeSize(place, scalar.mark(), choices, amounts, at, spelling));
    }

    /** Where today's size stands among the steps; it is put among them if it is none. */
    private static int put(List<Double> amounts, double today) {
        int at = 0;
        while (at < amounts.size() && amounts.get(at) < today - Tolerance.COINCIDENT) {
            at++;
        }
        if (at == amounts.size() || amounts.get(at) > today + Tolerance.COINCIDENT) {
            amounts.add(at, today);
        }
        return at;
    }
}

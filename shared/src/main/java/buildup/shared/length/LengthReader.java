package buildup.shared.length;

import buildup.shared.length.Reading.Bad;
import buildup.shared.length.Reading.Echo;
import buildup.shared.length.Reading.Fault;
import buildup.shared.length.Reading.Good;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads sizes as a shop writes them. A text is terms joined by {@code +} or {@code -} between blanks; a term is a size
 * ({@code 1-3/8}, {@code 5'-6 1/2"}, {@code 38 mm}), a named length, or a share of a term ({@code 1/3 of height}).
 */
public final class LengthReader {

    /** The longest thing that can be meant in a building; beyond it a figure is a slip. 10,000 ft. */
    public static final Length GREATEST = Length.inches(120_000);

    /** Longer texts are not sizes; keeps every later step short and every number a finite double. */
    private static final int LONGEST_TEXT = 200;

    private static final Pattern JOINT = Pattern.compile(" ([+-]) ");
    private static final Pattern SHARE = Pattern.compile("([+-]?)(\\d+\\.?\\d*|\\.\\d+)(?:/(\\d+))?");

    /** {@code 5' - 6"} and {@code 1 - 3/8}: often written for one size, yet here a difference. */
    private static final Pattern SPACED_HYPHEN = Pattern.compile("\\d+ ?(?:'|ft) - \\d[^+]*|\\d+ - \\d+/\\d+[^+]*");

    private static final Set<String> NO_NUMBERS = Set.of("nan", "inf", "infinity");

    private final LengthUnit bareUnit;
    private final SortedMap<String, Length> names;
    private final SortedMap<String, Length> namesInFeet;

    /**
     * @param bareUnit the unit of a number that names none
     * @param names lengths that may be called by name
     */
    public LengthReader(LengthUnit bareUnit, Map<String, Length> names) {
        this(bareUnit, names, names);
    }

    /** @param namesInFeet the same lengths by name, as they would be if bare numbers were feet */
    public LengthReader(LengthUnit bareUnit, Map<String, Length> names, Map<String, Length> namesInFeet) {
        this.bareUnit = bareUnit;
        this.names = new TreeMap<>(names);
        this.namesInFeet = new TreeMap<>(namesInFeet);
    }

    /** The unit of a number that names none. */
    public LengthUnit bareUnit() {
        return bareUnit;
    }

    /** The same, to which bare numbers are feet, behind names too: what reads alike to both has its unit written. */
    public LengthReader inFeet() {
        return new LengthReader(LengthUnit.FOOT, namesInFeet);
    }

    /** Whether a text is a length that no unit of bare numbers changes. */
    public boolean unitWritten(String text) {
        return read(text) instanceof Good here
                && inFeet().read(text) instanceof Good there
                && here.length().equals(there.length());
    }

    /** One term of a sum, as written. */
    public record Term(boolean minus, String text) {}

    /** The terms of a sum, in order; blanks are brought to one and dashes to plain minus signs. */
    public static List<Term> terms(String text) {
        String tidy = Spelling.tidy(text);
        List<Term> terms = new ArrayList<>();
        Matcher joint = JOINT.matcher(tidy);
        boolean minus = false;
        int from = 0;
        while (joint.find()) {
            terms.add(new Term(minus, tidy.substring(from, joint.start())));
            minus = joint.group(1).equals("-");
            from = joint.end();
        }
        terms.add(new Term(minus, tidy.substring(from)));
        return List.copyOf(terms);
    }

    /** Reads a whole text; finite and at most 10,000 ft either way. */
    public Reading read(String text) {
        if (text.length() > LONGEST_TEXT) {
            return bad(Fault.LONG_TEXT, text);
        }
        List<Term> terms = terms(text);
        Length sum = Length.ZERO;
        Optional<Echo> echo = Optional.empty();
        for (Term term : terms) {
            Reading reading = term(term.text());
            if (!(reading instanceof Good good)) {
                return reading;
            }
            sum = term.minus() ? sum.minus(good.length()) : sum.plus(good.length());
            echo = echo.or(good::echo);
        }
        if (terms.size() == 2
                && SPACED_HYPHEN.matcher(Spelling.plain(Spelling.tidy(text))).matches()) {
            echo = Optional.of(Literal.slip(Spelling.tidy(text), sum));
        }
        return Literal.bounded(sum.toInches(), Spelling.tidy(text), echo, bareUnit);
    }

    private Reading term(String term) {
        if (term.isEmpty()) {
            return bad(Fault.NOTHING, "");
        }
        if (term.equals("+") || term.equals("-") || term.endsWith(" +") || term.endsWith(" -")) {
            return bad(Fault.ENDS_IN_A_SIGN, term);
        }
        return named(term)
                .or(() -> share(term))
                .or(() -> Literal.read(term, bareUnit))
                .orElseGet(() -> unknown(term));
    }

    private Optional<Reading> named(String term) {
        Optional<Length> whole = Optional.ofNullable(names.get(term));
        Optional<Length> signed =
                Optional.ofNullable(names.get(term.substring(1).strip()));
        return whole.or(() -> switch (term.charAt(0)) {
                    case '-' -> signed.map(Length::negated);
                    case '+' -> signed;
                    default -> Optional.empty();
                })
                .map(length -> new Good(length, Optional.empty()));
    }

    private Optional<Reading> share(String term) {
        int of = term.indexOf(" of ");
        Matcher share = SHARE.matcher(of < 0 ? "" : Spelling.plain(term.substring(0, of)));
        if (!share.matches()) {
            return Optional.empty();
        }
        double divisor = share.group(3) == null ? 1 : Double.parseDouble(share.group(3));
        if (divisor == 0) {
            return Optional.of(bad(Fault.DIVIDES_BY_ZERO, term));
        }
        double ratio = Double.parseDouble(share.group(1) + share.group(2)) / divisor;
        Reading whole = term(term.substring(of + " of ".length()));
        return Optional.of(
                whole instanceof Good good
                        ? Literal.bounded(good.length().toInches() * ratio, term, good.echo(), bareUnit)
                        : whole);
    }

    private Reading unknown(String term) {
        boolean isName = Character.isLetter(term.codePointAt(0)) && !NO_NUMBERS.contains(term.toLowerCase(Locale.ROOT));
        if (!isName) {
            return bad(Fault.NO_SIZE, term);
        }
        return new Bad(Fault.UNKNOWN_NAME, term, List.copyOf(names.keySet()), bareUnit);
    }

    private Bad bad(Fault fault, String written) {
        return new Bad(fault, written, List.of(), bareUnit);
    }
}

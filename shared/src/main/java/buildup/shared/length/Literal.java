package buildup.shared.length;

import buildup.shared.length.Reading.Bad;
import buildup.shared.length.Reading.Doubt;
import buildup.shared.length.Reading.Echo;
import buildup.shared.length.Reading.Fault;
import buildup.shared.length.Reading.Good;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One size as written, without names and joining signs: a quantity with or without a unit, or feet and inches.
 *
 * <p>A quantity is {@code 0.75}, {@code 3/4}, {@code 1-3/8} or {@code 1 3/8}. The caller bounds the number of digits,
 * so that no double overflows.
 */
final class Literal {

    private static final String DECIMAL = "(?:\\d+\\.?\\d*|\\.\\d+)";
    private static final String QUANTITY =
            "(?:(?:(?<whole>\\d+)(?<join>[ -]))?(?<num>\\d+)/(?<den>\\d+)|(?<decimal>" + DECIMAL + "))";
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "(?<sign>[+-]?)(?<feet>" + DECIMAL + ") ?(?:'|ft\\.?|foot|feet) ?-? ?" + QUANTITY
                    + " ?(?<unit>\"|in\\.?|inch|inches)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SINGLE =
            Pattern.compile("(?<sign>[+-]?)" + QUANTITY + " ?(?<unit>'|\"|[A-Za-z]+\\.?)?");
    private static final Pattern TRAILING_MARK = Pattern.compile("[+-]?[\\d.].*(?<! )[+-]");
    /** Metric sizes are printed with the mark of the number before their unit. */
    private static final Pattern MARK_BEFORE_UNIT = Pattern.compile("(?<=[\\d.])[+-](?= ?(?:['\"]|[A-Za-z]+\\.?)$)");

    private final String written;
    private final boolean withComma;
    private final boolean marked;
    private final Matcher parts;
    private final boolean withFeet;
    private final Optional<LengthUnit> ownUnit;
    private final LengthUnit unit;

    private Literal(String written, boolean marked, Matcher parts, boolean withFeet, LengthUnit bareUnit) {
        this.written = written;
        this.withComma = written.indexOf(',') >= 0;
        this.marked = marked;
        this.parts = parts;
        this.withFeet = withFeet;
        this.ownUnit = Optional.ofNullable(parts.group("unit")).flatMap(LengthUnit::named);
        this.unit = withFeet ? LengthUnit.INCH : ownUnit.orElse(bareUnit);
    }

    /** The reading of a tidy text, or nothing when it is not shaped like a size at all. */
    static Optional<Reading> read(String tidy, LengthUnit bareUnit) {
        String plain = Spelling.plain(tidy);
        boolean trails = TRAILING_MARK.matcher(plain).matches();
        Matcher before = MARK_BEFORE_UNIT.matcher(plain);
        boolean marked = trails || before.find();
        String size = trails ? plain.substring(0, plain.length() - 1) : marked ? before.replaceFirst("") : plain;
        Matcher feet = FEET_AND_INCHES.matcher(size);
        if (feet.matches()) {
            return Optional.of(new Literal(tidy, marked, feet, true, bareUnit).reading());
        }
        Matcher single = SINGLE.matcher(size);
        if (!single.matches() || (single.group("unit") != null && unknownUnit(single.group("unit")))) {
            return Optional.empty();
        }
        return Optional.of(new Literal(tidy, marked, single, false, bareUnit).reading());
    }

    private static boolean unknownUnit(String name) {
        return LengthUnit.named(name).isEmpty();
    }

    /** The length, unless it is further than any building reaches. */
    static Reading bounded(double inches, String written, Optional<Echo> echo, LengthUnit bareUnit) {
        return Math.abs(inches) <= LengthReader.GREATEST.toInches()
                ? new Good(Length.inches(inches), echo)
                : new Bad(Fault.BEYOND_ANY_BUILDING, written, List.of(), bareUnit);
    }

    private Reading reading() {
        String denominator = parts.group("den");
        if (denominator != null && Double.parseDouble(denominator) == 0) {
            return new Bad(Fault.DIVIDES_BY_ZERO, written, List.of(), unit);
        }
        if (denominator != null && !ShopFraction.isShop(denominator)) {
            return ShopFraction.mistyped(parts.group("num"), denominator, isFractionOfMetric(), unit);
        }
        if (isFractionOfMetric()) {
            String size = marked ? written.substring(0, written.length() - 1) : written;
            return new Bad(Fault.INCHES_OR_METRIC, size, List.of(LengthPrinter.trimmed(signed(quantity()), 6)), unit);
        }
        double magnitude = quantity() + (withFeet ? 12 * Double.parseDouble(parts.group("feet")) : 0);
        double amount = signed(magnitude);
        return bounded(unit.of(amount).toInches(), written, echo(amount), unit);
    }

    private double signed(double magnitude) {
        return parts.group("sign").equals("-") ? -magnitude : magnitude;
    }

    private double quantity() {
        if (parts.group("decimal") != null) {
            return Double.parseDouble(parts.group("decimal"));
        }
        double fraction = Double.parseDouble(parts.group("num")) / Double.parseDouble(parts.group("den"));
        return parts.group("whole") == null ? fraction : Double.parseDouble(parts.group("whole")) + fraction;
    }

    private Optional<Echo> echo(double amount) {
        String number = LengthPrinter.trimmed(amount, 6);
        String readAs = unit == LengthUnit.INCH ? number : number + " " + unit.symbol();
        if (isImproper() || hasTooManyInches()) {
            return Optional.of(new Echo(Doubt.SLIP, written, readAs));
        }
        if (withFeet && ownUnit.isEmpty()) {
            return Optional.of(new Echo(
                    Doubt.BARE_INCHES, written, parts.group("feet") + " ft " + inchesAsPrinted() + " in = " + number));
        }
        if (marked) {
            return Optional.of(new Echo(Doubt.MARK_DROPPED, written, readAs));
        }
        return withComma ? Optional.of(new Echo(Doubt.COMMA, written, readAs)) : Optional.empty();
    }

    private boolean isImproper() {
        return parts.group("num") != null
                && Double.parseDouble(parts.group("num")) >= Double.parseDouble(parts.group("den"));
    }

    /** A fraction without a unit in a metric file: in inches, as on a tape, or in the unit of the file? */
    private boolean isFractionOfMetric() {
        return parts.group("num") != null && ownUnit.isEmpty() && unit.isMetric();
    }

    private boolean hasTooManyInches() {
        return withFeet && quantity() >= 12;
    }

    private String inchesAsPrinted() {
        String decimal = parts.group("decimal");
        return decimal != null ? decimal : LengthPrinter.fraction(Length.inches(quantity()), 64);
    }

    static Echo slip(String written, Length length) {
        return new Echo(Doubt.SLIP, written, LengthPrinter.trimmed(length.toInches(), 6));
    }
}

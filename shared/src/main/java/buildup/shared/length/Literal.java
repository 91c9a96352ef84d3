package buildup.shared.length;

import buildup.shared.length.Reading.Bad;
import buildup.shared.length.Reading.Echo;
import buildup.shared.length.Reading.Good;
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

    static final String NOT_A_LENGTH = "not-a-length";
    static final String HOW_TO_WRITE = "Write it as 3/4, 1-3/8, 5'-6 1/2\", 38 mm or 0.75.";

    /** The longest thing that can be meant in a building; beyond it a figure is a slip. 10,000 ft. */
    private static final double GREATEST_INCHES = 120_000;

    private static final String AMBIGUOUS = "ambiguous";
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

    private final String written;
    private final boolean respelled;
    private final boolean marked;
    private final Matcher parts;
    private final boolean withFeet;
    private final Optional<LengthUnit> ownUnit;
    private final LengthUnit unit;

    private Literal(
            String written, String plain, boolean marked, Matcher parts, boolean withFeet, LengthUnit bareUnit) {
        this.written = written;
        this.respelled = !plain.equals(written);
        this.marked = marked;
        this.parts = parts;
        this.withFeet = withFeet;
        this.ownUnit = Optional.ofNullable(parts.group("unit")).flatMap(LengthUnit::named);
        this.unit = withFeet ? LengthUnit.INCH : ownUnit.orElse(bareUnit);
    }

    /** The reading of a tidy text, or nothing when it is not shaped like a size at all. */
    static Optional<Reading> read(String tidy, LengthUnit bareUnit) {
        String plain = Spelling.plain(tidy);
        boolean marked = TRAILING_MARK.matcher(plain).matches();
        String size = marked ? plain.substring(0, plain.length() - 1) : plain;
        Matcher feet = FEET_AND_INCHES.matcher(size);
        if (feet.matches()) {
            return Optional.of(new Literal(tidy, plain, marked, feet, true, bareUnit).reading());
        }
        Matcher single = SINGLE.matcher(size);
        if (!single.matches() || (single.group("unit") != null && unknownUnit(single.group("unit")))) {
            return Optional.empty();
        }
        return Optional.of(new Literal(tidy, plain, marked, single, false, bareUnit).reading());
    }

    private static boolean unknownUnit(String name) {
        return LengthUnit.named(name).isEmpty();
    }

    /** The length, unless it is further than any building reaches. */
    static Reading bounded(double inches, String written, Optional<Echo> echo) {
        return Math.abs(inches) <= GREATEST_INCHES
                ? new Good(Length.inches(inches), echo)
                : new Bad(
                        NOT_A_LENGTH, "'" + written + "' is longer than 10,000 ft.", "Check the figure and its unit.");
    }

    private Reading reading() {
        String denominator = parts.group("den");
        if (denominator != null && Double.parseDouble(denominator) == 0) {
            return new Bad(NOT_A_LENGTH, "'" + written + "' divides by zero.", HOW_TO_WRITE);
        }
        if (denominator != null && !ShopFraction.isShop(denominator)) {
            return ShopFraction.mistyped(parts.group("num"), denominator);
        }
        double magnitude = quantity() + (withFeet ? 12 * Double.parseDouble(parts.group("feet")) : 0);
        double amount = parts.group("sign").equals("-") ? -magnitude : magnitude;
        return bounded(unit.of(amount).toInches(), written, echo(amount));
    }

    private double quantity() {
        if (parts.group("decimal") != null) {
            return Double.parseDouble(parts.group("decimal"));
        }
        double fraction = Double.parseDouble(parts.group("num")) / Double.parseDouble(parts.group("den"));
        return parts.group("whole") == null ? fraction : Double.parseDouble(parts.group("whole")) + fraction;
    }

    private Optional<Echo> echo(double amount) {
        String readAs = written + " read as " + LengthPrinter.trimmed(amount, 6)
                + (unit == LengthUnit.INCH ? "" : " " + unit.symbol());
        if (isImproper() || isFractionOfMetric() || hasTooManyInches()) {
            return Optional.of(new Echo(AMBIGUOUS, readAs + ": is that meant?", false));
        }
        if (withFeet && ownUnit.isEmpty()) {
            return Optional.of(new Echo(
                    "mixed-marks",
                    written + " read as " + parts.group("feet") + " ft " + inchesAsPrinted() + " in = "
                            + LengthPrinter.trimmed(amount, 6) + ".",
                    false));
        }
        if (marked) {
            return Optional.of(
                    new Echo("trailing-mark", readAs + ": the mark behind a printed size was dropped", false));
        }
        if (respelled) {
            return Optional.of(new Echo("reading-echo", readAs, false));
        }
        return !withFeet && "-".equals(parts.group("join"))
                ? Optional.of(new Echo(AMBIGUOUS, readAs, true))
                : Optional.empty();
    }

    private boolean isImproper() {
        return parts.group("num") != null
                && Double.parseDouble(parts.group("num")) >= Double.parseDouble(parts.group("den"));
    }

    /** A fraction without a unit in a metric file takes the file's unit, and may have been meant in inches. */
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

    static Echo ambiguous(String written, Length length) {
        return new Echo(
                AMBIGUOUS,
                written + " read as " + LengthPrinter.trimmed(length.toInches(), 6) + ": is that meant?",
                false);
    }
}

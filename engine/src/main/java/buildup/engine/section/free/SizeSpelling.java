package buildup.engine.section.free;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Quantity;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import buildup.shared.length.Reading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How the sizes of one place are read and typed. What is typed is read back as the same: whoever reads that place takes
 * plain decimals of so many digits, and fractions only where it is a length.
 *
 * @param quantity a length, an angle, or what else the place counts
 * @param unit of bare lengths
 * @param bare whether its sizes are bare numbers, without a unit or a fraction
 * @param suffix unit behind each number that is neither a length nor an angle, as {@code lb/ft}; may be empty
 */
public record SizeSpelling(Quantity quantity, LengthUnit unit, boolean bare, String suffix) {
    private static final int SIXTEENTHS = 16;

    private static final int MINUTES = 60;

    /** A time of day, or how far two of them lie apart. */
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):([0-5]\\d)");

    /** As many decimals as a value can be typed with. */
    private static final int DECIMALS = 9;

    /** The same of a price. */
    private static final int MONEY_DECIMALS = 4;

    /** A number as people write it, and the unit behind it. */
    private static final Pattern NUMBER =
            Pattern.compile("(-?)(?:(?:(\\d{1,9})[- ])?(\\d{1,9})/(\\d{1,9})|(\\d{1,9}(?:\\.\\d{1,9})?|\\.\\d{1,9}))"
                    + "(?: *([^\\d\\s.,/-].*))?");

    /** A load in newtons along a meter; in any other words it is in pounds along a foot. */
    private static final String NEWTONS = "N/m";

    /** How a text spells a size of a place. */
    static SizeSpelling like(String text, Quantity quantity, LengthUnit unit, boolean bare) {
        Matcher number = NUMBER.matcher(text.strip());
        boolean bareNumber = isMeasured(quantity) || quantity == Quantity.CLOCK;
        boolean suffixed = !bareNumber && number.matches() && number.group(6) != null;
        return new SizeSpelling(quantity, unit, bare, suffixed ? number.group(6).strip() : "");
    }

    private static boolean isMeasured(Quantity quantity) {
        return quantity == Quantity.LENGTH || quantity == Quantity.ANGLE;
    }

    /** What a text comes to, in, or in degrees, or in the unit of the quantity; absent where it is not spelled so. */
    OptionalDouble read(String text) {
        if (quantity == Quantity.LENGTH) {
            return new LengthReader(unit, Map.of()).read(text) instanceof Reading.Good good
                    ? OptionalDouble.of(good.length().toInches())
                    : OptionalDouble.empty();
        }
        if (quantity == Quantity.ANGLE) {
            return Angle.read(text)
                    .map(angle -> OptionalDouble.of(angle.toDegrees()))
                    .orElse(OptionalDouble.empty());
        }
        Matcher clock = CLOCK.matcher(text.strip());
        if (quantity == Quantity.CLOCK && clock.matches()) {
            return OptionalDouble.of(
                    Integer.parseInt(clock.group(1)) + (double) Integer.parseInt(clock.group(2)) / MINUTES);
        }
        Matcher number = NUMBER.matcher(text.strip());
        if (!number.matches()
                || !suffix.equals(number.group(6) == null ? "" : number.group(6).strip())) {
            return OptionalDouble.empty();
        }
        boolean fraction = number.group(5) == null;
        double below = fraction ? Double.parseDouble(number.group(4)) : 1;
        double above = Double.parseDouble(fraction ? number.group(3) : number.group(5));
        double whole = number.group(2) == null ? 0 : Double.parseDouble(number.group(2));
        double amount = quantity.held((whole + above / below) * (number.group(1).isEmpty() ? 1 : -1), isMetric());
        boolean written = below > 0 && (quantity != Quantity.COUNT || amount == Math.rint(amount));
        return written ? OptionalDouble.of(amount) : OptionalDouble.empty();
    }

    private boolean isMetric() {
        return quantity == Quantity.LINE_FORCE && suffix.equals(NEWTONS);
    }

    /** Whether a text is spelled as {@link #typed} spells: another spelling of a number may not be read at its place. */
    boolean isTyped(String text) {
        return isMeasured(quantity)
                || (quantity == Quantity.CLOCK && CLOCK.matcher(text.strip()).matches())
                || text.strip().matches("-?\\d+(\\.\\d+)?( *[^\\d\\s/-].*)?");
    }

    /** The nearest amount that can be typed. */
    double rounded(double amount) {
        return isMeasured(quantity) ? amount : read(typed(amount)).orElse(amount);
    }

    /** Whether only so few sizes can be typed that between two of them there is none. */
    public boolean coarse() {
        return places() < DECIMALS;
    }

    private int places() {
        return switch (quantity) {
            case COUNT -> 0;
            case MONEY -> MONEY_DECIMALS;
            default -> DECIMALS;
        };
    }

    /** @param amount in, or in degrees, or in the unit of the quantity */
    String typed(double amount) {
        if (quantity == Quantity.ANGLE) {
            return decimal(amount);
        }
        if (quantity == Quantity.CLOCK && isWhole(amount * MINUTES)) {
            int minutes = (int) Math.rint(amount * MINUTES);
            return minutes / MINUTES + (minutes % MINUTES < 10 ? ":0" : ":") + minutes % MINUTES;
        }
        if (quantity != Quantity.LENGTH) {
            return (decimal(quantity.shown(amount, isMetric())) + " " + suffix).strip();
        }
        if (bare) {
            return decimal(amount / unit.of(1).toInches());
        }
        if (unit.isMetric()) {
            return decimal(amount / unit.of(1).toInches()) + " " + unit.symbol();
        }
        String fraction = LengthWriter.inches(Length.inches(amount));
        boolean exact = !fraction.endsWith("+") && !fraction.endsWith("-");
        if (!exact) {
            return decimal(amount) + " in";
        }
        return unit == LengthUnit.INCH ? fraction : fraction + " in";
    }

    /** The same for sizes near it, the shortest first. */
    List<String> typedNear(double amount) {
        boolean inches = quantity == Quantity.LENGTH && !unit.isMetric();
        double one = quantity == Quantity.LENGTH ? unit.of(1).toInches() : quantity.held(1, isMetric());
        int parts = inches ? SIXTEENTHS : quantity == Quantity.CLOCK ? MINUTES : 0;
        Stream<Double> shop = parts > 0 ? Stream.of(Math.rint(amount * parts) / parts) : Stream.of();
        Stream<Double> decimals = IntStream.rangeClosed(inches ? 2 : 0, places())
                .mapToObj(places -> {
                    double scale = Math.pow(10, places);
                    return Math.rint(amount / one * scale) / scale * one;
                });
        return Stream.of(shop, decimals, Stream.of(amount))
                .flatMap(some -> some)
                .map(this::typed)
                .distinct()
                .toList();
    }

    private static boolean isWhole(double number) {
        return Math.abs(number - Math.rint(number)) < Tolerance.COINCIDENT;
    }

    private String decimal(double number) {
        BigDecimal decimal = BigDecimal.valueOf(number)
                .setScale(places(), RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return decimal.toPlainString();
    }
}

package buildup.shared.figure;

import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.PrintTolerance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Figures and phrases as people read them, in the unit of the document: metric where it counts in millimeters or
 * centimeters, else inches, feet and pounds. This is the one place where a figure becomes words; only the edge of the
 * program calls it.
 *
 * @param unit of the document
 */
public record FigurePrinter(LengthUnit unit) {
    /** Prints in inches. */
    public static final FigurePrinter INCHES = new FigurePrinter(LengthUnit.INCH);

    /** Prints in millimeters. */
    public static final FigurePrinter MILLIMETERS = new FigurePrinter(LengthUnit.MILLIMETER);

    /** Decimals of an inch that whoever grinds steel reads. */
    public static final int FINE_PLACES = 3;

    private static final int FINE_METRIC_PLACES = 2;

    /** Digits of a printed figure that computing does not blur. */
    private static final int COMPUTED = 9;

    /** Steps in an inch of the sizes in lists. */
    private static final int LISTED = 64;

    private static final int INCHES_PER_FOOT = 12;

    private static final int MINUTES = 60;

    /** People set and name these by the whole where they can, unless so many decimals were asked for: 45°, 16 ft. */
    private static final Set<Quantity> WHOLE = Set.of(Quantity.ANGLE, Quantity.RUN);

    /** What computing may add to or take from a figure before its safe side is chosen. */
    private static final BigDecimal COMPUTING = BigDecimal.valueOf(PrintTolerance.ON_A_STEP);

    private static final int THUMB_MILLIMETERS = 5;

    /** Whether figures are told in metric units. */
    public boolean metric() {
        return unit.isMetric();
    }

    /** How the bare sizes of tables are to be read. */
    public String legend() {
        return metric()
                ? "Sizes in millimeters; + or - behind one: truly a little more or less."
                : "Sizes in inches to the nearest 1/16; + or - behind one: truly a little more or less.";
    }

    /** With its unit, as in a sentence; inches stay bare, as people write them, unless the document counts in feet. */
    public String print(Figure figure) {
        String bare = bare(figure);
        if (figure.rounding().step() == Rounding.Step.SHOP && WHOLE.contains(figure.quantity())) {
            bare = bare.replaceFirst("\\.0+$", "");
        }
        if (figure.quantity() == Quantity.ANGLE) {
            return bare + "\u00b0";
        }
        String sign = sign(figure);
        if (sign.isEmpty()) {
            boolean asFeet = unit == LengthUnit.FOOT && figure.quantity() == Quantity.LENGTH;
            return asFeet && !bare.endsWith("ft") ? bare + "\"" : bare;
        }
        return sign.equals("%") ? bare + " %" : bare + " " + sign;
    }

    private String sign(Figure figure) {
        return figure.quantity() == Quantity.LENGTH && !metric()
                ? ""
                : figure.quantity().unit(metric());
    }

    /** Without its unit, as in a table whose heading names it. */
    public String bare(Figure figure) {
        if (!Double.isFinite(figure.amount())) {
            return figure.amount() > 0 ? "any" : "none";
        }
        return switch (figure.quantity()) {
            case LENGTH -> length(figure);
            case CLOCK -> clock(figure);
            default -> number(figure);
        };
    }

    /** A time of day to the minute, on the side to which it may err. */
    private static String clock(Figure figure) {
        BigDecimal minutes = BigDecimal.valueOf(figure.amount() * MINUTES);
        int minute = stepped(minutes, 0, figure.rounding().side()).intValue();
        return minute / MINUTES + (minute % MINUTES < 10 ? ":0" : ":") + minute % MINUTES;
    }

    private String length(Figure figure) {
        Length length = Length.inches(figure.amount());
        return switch (figure.rounding().step()) {
            case FINE -> decimal(figure, metric() ? FINE_METRIC_PLACES : FINE_PLACES);
            case DECIMALS -> decimal(figure, figure.rounding().places());
            case LISTED -> metric() ? LengthPrinter.tenths(length) : LengthPrinter.fraction(length, LISTED);
            case STICK -> metric() ? LengthPrinter.tenths(length) : stick(length);
            case THUMB ->
                metric()
                        ? String.valueOf(THUMB_MILLIMETERS * Math.round(length.toMillimeters() / THUMB_MILLIMETERS))
                        : LengthPrinter.sixteenths(length);
            case CONTACT -> metric() ? decimal(figure, 1) : LengthPrinter.toContact(length);
            case SHOP ->
                switch (figure.rounding().side()) {
                    case NEAREST -> metric() ? LengthPrinter.tenths(length) : LengthPrinter.sixteenths(length);
                    case UP, DOWN -> safe(length, figure.rounding().side());
                };
        };
    }

    /** Whole feet where it is so. */
    private static String stick(Length length) {
        double feet = length.toInches() / INCHES_PER_FOOT;
        boolean whole = feet >= 1 && Math.abs(feet - Math.rint(feet)) < PrintTolerance.ON_A_STEP;
        return whole ? Math.round(feet) + " ft" : LengthPrinter.sixteenths(length);
    }

    private String safe(Length length, Rounding.Side side) {
        if (metric()) {
            return stepped(BigDecimal.valueOf(length.toMillimeters()), 0, side).toPlainString();
        }
        return LengthPrinter.sixteenths(
                side == Rounding.Side.UP ? LengthPrinter.roundUp(length, 16) : LengthPrinter.roundDown(length, 16));
    }

    private String number(Figure figure) {
        Rounding rounding = figure.rounding();
        return decimal(
                figure,
                rounding.step() == Rounding.Step.DECIMALS
                        ? rounding.places()
                        : figure.quantity().places(metric()));
    }

    /** Digits past the ninth are those of computing: a half that misses by so little is a half. */
    private String decimal(Figure figure, int places) {
        BigDecimal shown = BigDecimal.valueOf(figure.quantity().shown(figure.amount(), metric()));
        return stepped(shown, places, figure.rounding().side()).toPlainString();
    }

    private static BigDecimal stepped(BigDecimal shown, int places, Rounding.Side side) {
        BigDecimal clean = shown.setScale(Math.max(places, COMPUTED), RoundingMode.HALF_UP);
        return switch (side) {
            case NEAREST -> clean.setScale(places, RoundingMode.HALF_UP);
            case UP -> clean.subtract(COMPUTING).setScale(places, RoundingMode.CEILING);
            case DOWN -> clean.add(COMPUTING).setScale(places, RoundingMode.FLOOR);
        };
    }

    /** A value as words. */
    public String print(Value value) {
        return print(value, this::print);
    }

    private String print(Value value, Function<Figure, String> figures) {
        if (value instanceof Figure figure) {
            return figures.apply(figure);
        }
        if (value instanceof Text text) {
            return text.words();
        }
        return value instanceof Phrase phrase ? print(phrase, figures) : listed((Listing) value, figures);
    }

    private String listed(Listing listing, Function<Figure, String> figures) {
        List<String> each =
                listing.values().stream().map(value -> print(value, figures)).toList();
        if (listing.last().isEmpty() || each.size() < 2) {
            return String.join(", ", each);
        }
        return String.join(", ", each.subList(0, each.size() - 1)) + " " + listing.last() + " "
                + each.get(each.size() - 1);
    }

    /** The words with what stands in their places; a place that nothing fills shows its name. */
    public String print(Phrase phrase) {
        return print(phrase, this::print);
    }

    /** The same with lengths without their unit, as in a table of bare sizes. */
    public String bare(Phrase phrase) {
        return print(phrase, figure -> figure.quantity() == Quantity.LENGTH ? bare(figure) : print(figure));
    }

    private String print(Phrase phrase, Function<Figure, String> figures) {
        StringBuilder text = new StringBuilder();
        String template = phrase.template();
        int at = 0;
        while (at < template.length()) {
            char c = template.charAt(at);
            int end = template.indexOf('}', at);
            if (c == '{' && template.startsWith("{{", at)) {
                text.append('{');
                at += 2;
            } else if (c == '{' && end > at) {
                String name = template.substring(at + 1, end);
                text.append(
                        value(phrase, name).map(value -> print(value, figures)).orElse(name));
                at = end + 1;
            } else {
                text.append(c);
                at++;
            }
        }
        return text.toString();
    }

    private static Optional<Value> value(Phrase phrase, String name) {
        return phrase.values().stream()
                .filter(named -> named.name().equals(name))
                .map(Named::value)
                .findFirst();
    }
}

package buildup.cli;

import buildup.shared.figure.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether a text in inches and pounds and one in metric units say the same: the same words, and figures that are one size
 * within what their printed forms leave open.
 */
public final class Agreement {
    private static final double MILLIMETERS = 25.4;

    /** Computing and six printed decimals. */
    private static final double CLOSE = 2e-6;

    /** A number of either system; a mark behind it, or a dash within a mixed number. */
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\w.])-?(?:\\d+-\\d+/\\d+|\\d+/\\d+|\\d+\\.\\d+|\\d+)(?:[+-](?!\\w|\\.\\d))?(?![\\w/])");

    private static final List<String> CUSTOMARY = units(false);

    private static final List<String> METRIC = units(true);

    /** A piece of a text: words, or a figure with its unit. */
    private sealed interface Part {}

    private record Words(String words) implements Part {}

    /** A figure that lies between two bounds; the unit is empty where none is said. */
    private record Number(String text, double least, double most, String unit) implements Part {}

    private Agreement() {}

    private static List<String> units(boolean metric) {
        return Arrays.stream(Quantity.values())
                .map(quantity -> quantity.unit(metric))
                // inches stay bare where they are told
                .filter(unit -> !unit.isEmpty() && !unit.equals("in"))
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    /** What does not agree, in words; nothing when all does. */
    public static Optional<String> fault(String inches, String metric) {
        return fault(inches, metric, Bare.SENTENCE);
    }

    /** How figures that say no unit are read. */
    public enum Bare {
        /** As lengths to the nearest step. */
        LENGTHS,
        /** As lengths, some of them rounded to the safe side, or as plain numbers. */
        SENTENCE,
        /** As figures whose unit stands elsewhere. */
        ANY
    }

    /** The same. */
    public static Optional<String> fault(String inches, String metric, Bare bare) {
        List<Part> one = parts(inches.replaceAll("\\s+", " "), CUSTOMARY, false, bare);
        List<Part> other = parts(metric.replaceAll("\\s+", " "), METRIC, true, bare);
        String both = "'" + inches + "' and '" + metric + "'";
        if (one.size() != other.size()) {
            return Optional.of(both + " have " + one.size() + " and " + other.size() + " parts");
        }
        for (int i = 0; i < one.size(); i++) {
            if (!agree(one.get(i), other.get(i), bare)) {
                return Optional.of(one.get(i) + " and " + other.get(i) + " in " + both);
            }
        }
        return Optional.empty();
    }

    private static boolean agree(Part one, Part other, Bare bare) {
        if (one instanceof Number a && other instanceof Number b) {
            return factors(a.unit(), b.unit(), bare).anyMatch(factor -> {
                // a size in a sentence may stand on the safe side
                double safe = bare == Bare.SENTENCE && factor == MILLIMETERS && unmarked(a, b) ? 1 + factor / 16 : 0;
                return a.least() * factor - safe <= b.most() + CLOSE * factor
                        && b.least() - safe <= a.most() * factor + CLOSE * factor;
            });
        }
        return one.equals(other) || one instanceof Words a && other instanceof Words b && sameBut(a.words(), b.words());
    }

    /** Neither says that it is more or less, nor a part of a millimeter. */
    private static boolean unmarked(Number inches, Number metric) {
        return !inches.text().matches(".*[+-]") && metric.text().matches("-?\\d+");
    }

    /** The same words about another unit, as over a column. */
    private static boolean sameBut(String inches, String metric) {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> !quantity.unit(false).isEmpty())
                .anyMatch(quantity -> inches.replace(quantity.unit(false), quantity.unit(true))
                        .equals(metric));
    }

    /** By what a figure in one unit may be multiplied to be one in the other. */
    private static Stream<Double> factors(String customary, String metric, Bare bare) {
        if (customary.isEmpty() && metric.isEmpty()) {
            return switch (bare) {
                case LENGTHS -> Stream.of(MILLIMETERS);
                case SENTENCE -> Stream.of(1.0, MILLIMETERS);
                case ANY ->
                    Arrays.stream(Quantity.values())
                            .map(quantity -> quantity.shown(1, true) / quantity.shown(1, false));
            };
        }
        // a lumberyard names a stick by its feet
        if (customary.equals("ft") && metric.isEmpty()) {
            return Stream.of(12 * MILLIMETERS);
        }
        if (customary.isEmpty()) {
            return metric.equals("mm") ? Stream.of(MILLIMETERS) : Stream.empty();
        }
        return Arrays.stream(Quantity.values())
                .filter(quantity -> quantity.unit(false).equals(customary)
                        && quantity.unit(true).equals(metric))
                .map(quantity -> quantity.shown(1, true) / quantity.shown(1, false));
    }

    private static List<Part> parts(String text, List<String> units, boolean metric, Bare bare) {
        List<Part> parts = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        int at = 0;
        while (number.find(at)) {
            words(parts, text.substring(at, number.start()));
            String behind = text.substring(number.end());
            String unit = units.stream()
                    .filter(one -> behind.matches("(?s) " + Pattern.quote(one) + "(?!\\w).*"))
                    .findFirst()
                    .orElse("");
            // no metric shop has fractions; quarters of rough boards are names in either
            parts.add(
                    metric && number.group().contains("/") || number.group().matches("[4-8]/4")
                            ? new Words(number.group())
                            : number(number.group(), unit, metric, bare));
            at = number.end() + (unit.isEmpty() ? 0 : unit.length() + 1);
        }
        words(parts, text.substring(at));
        return parts;
    }

    private static void words(List<Part> parts, String words) {
        String plain = Arrays.stream(words.split("\\s+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" "));
        if (!plain.isEmpty()) {
            parts.add(new Words(plain));
        }
    }

    /** A fraction is a sixteenth unless it is marked; a decimal is one half of its last place up or down. */
    private static Number number(String text, String unit, boolean metric, Bare read) {
        boolean more = text.endsWith("+");
        boolean less = text.endsWith("-");
        String bare = more || less ? text.substring(0, text.length() - 1) : text;
        double value = value(bare);
        int dot = bare.indexOf('.');
        int places = dot < 0 ? 0 : bare.length() - dot - 1;
        boolean length = unit.isEmpty() || unit.equals("mm");
        double open = length && (metric || dot < 0)
                ? metric ? (more || less ? 0.05 : 0) : more || less ? 1.0 / 32 : 0
                : 0.5 * Math.pow(10, -places);
        // what a row holds stands on the safe side
        if (!length && read == Bare.SENTENCE && unit.matches("lb a foot|N a meter")) {
            open *= 2;
        }
        // a length of two or more decimals says all of them
        if (length && metric && (places > 1 || read == Bare.ANY && !more && !less)) {
            open = 0.5 * Math.pow(10, -places);
        }
        return new Number(text, value - (more ? 0 : open), value + (less ? 0 : open), unit);
    }

    private static double value(String text) {
        boolean negative = text.startsWith("-");
        String rest = negative ? text.substring(1) : text;
        double value = 0;
        for (String part : rest.split("-")) {
            int slash = part.indexOf('/');
            value += slash < 0
                    ? Double.parseDouble(part)
                    : Double.parseDouble(part.substring(0, slash)) / Double.parseDouble(part.substring(slash + 1));
        }
        return negative ? -value : value;
    }
}

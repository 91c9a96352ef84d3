package buildup.cli.fuzz;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Choices by chance; the same for the same seed. */
final class Chance {
    private static final List<String> ODD = List.of(
            "0",
            "-1",
            "1e308",
            "-1e308",
            "1e-8",
            "1e-300",
            "NaN",
            "Infinity",
            "1000",
            "100000",
            "1/0",
            "3/43",
            "13/8",
            "5'-6 1/2\\\"",
            "5'6",
            "½",
            "'1,5'",
            "38 mm",
            "1e",
            "--1",
            "wall",
            "p0.top",
            "p1.face",
            "touch",
            "0.0039",
            "1/256",
            "1/257",
            "0.001",
            "99999999999999999999",
            "1-",
            "lip * 2",
            "~",
            "null",
            "yes",
            "no",
            "[1, 2]",
            "{ a: 1 }",
            "\"\\u0000\"",
            "&a 1",
            "*a",
            "!!int 3",
            "between 3 and 5 by 1/8, now 3-1/2",
            "one of [1x4, 1x6], now 1x4",
            "50 %",
            "20 lb/ft",
            "20 N/m",
            "floor",
            "ceiling",
            "datum",
            "''",
            "[]",
            "{}",
            "-0",
            "0.003906",
            "1e-16",
            "360",
            "180",
            "90",
            "89.999",
            "p0.top - p0.top",
            "\u202E",
            "0x10",
            "12 ft 3",
            "1 1/2",
            "1-1/2 in",
            "600",
            "2400",
            "-96",
            "1/2 of lip",
            "as drawn",
            "a.b.c",
            "(1 + 2)",
            "1/3",
            "0.3333");

    private final SplittableRandom random;

    /** How often a value is odd. */
    private final double oddness;

    Chance(long seed) {
        this.random = new SplittableRandom(seed);
        double kind = random.nextDouble();
        this.oddness = kind < 0.5 ? 0 : kind < 0.85 ? 0.02 : 0.2;
    }

    /** Whether every value is as somebody would mean it. */
    boolean sound() {
        return oddness == 0;
    }

    boolean of(double share) {
        return random.nextDouble() < share;
    }

    /** From 0, below so much. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    String any(String... words) {
        return words[random.nextInt(words.length)];
    }

    /** The words; now and then something else in their place. */
    String odd(String usual) {
        return oddness > 0 && of(oddness) ? any(ODD) : usual;
    }

    /** A size as somebody would write it, in the whole inches given, or what nobody would. */
    String size(double least, double most) {
        double inches = least + (most - least) * random.nextDouble();
        return odd(
                switch (random.nextInt(8)) {
                    case 0 -> number(inches, 3);
                    case 1 ->
                        random.nextInt(4) == 0
                                ? number(inches * 25.4, 1) + " mm"
                                : fraction(Math.round(inches * 8) * 2);
                    // a size of something stays more than 0
                    case 2 -> number(least > 0 ? Math.ceil(inches) : Math.rint(inches), 0);
                    case 3 -> number((least > 0 ? Math.ceil(inches * 4) : Math.rint(inches * 4)) / 4, 2);
                    default -> fraction(least > 0 ? (long) Math.ceil(inches * 16) : Math.round(inches * 16));
                });
    }

    /** A plain number. */
    String number(double least, double most, int places) {
        return odd(number(least + (most - least) * random.nextDouble(), places));
    }

    private static String number(double amount, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", amount);
    }

    private static String fraction(long sixteenths) {
        String sign = sixteenths < 0 ? "-" : "";
        long all = Math.abs(sixteenths);
        String part = all % 16 == 0 ? "" : reduced(all % 16);
        long whole = all / 16;
        return sign + (whole == 0 && !part.isEmpty() ? part : whole + (part.isEmpty() ? "" : "-" + part));
    }

    private static String reduced(long over) {
        long bottom = 16;
        long top = over;
        while (top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        return top + "/" + bottom;
    }
}

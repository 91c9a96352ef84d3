package buildup.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A random stack as text, drawn with a careless hand: pieces that lap, hang in the air, stand out too far, are ripped away
 * or cut from boards too small. Half of them count in millimeters.
 */
final class FaultyStack {
    private static final List<String> MOLDINGS = List.of("quarter-round", "cove", "ogee-bed", "cove-bed");

    private static final List<String> NAILS = List.of(
            "15 ga x 2-1/2 in", "16 ga x 2 in", "18 ga x 1-1/2 in", "23 ga x 1 in", "screw 8 x 2 in", "8d finish");

    private final Random random;
    private int pieces;
    private final boolean metric;
    private final List<String> lines = new ArrayList<>();

    private FaultyStack(long seed) {
        random = new Random(seed);
        metric = seed % 2 == 0;
    }

    static boolean isMetric(long seed) {
        return seed % 2 == 0;
    }

    static String text(long seed) {
        return new FaultyStack(seed).text();
    }

    /** The same with rows of nails and screws driven as carelessly, and now and then a load. */
    static String nailed(long seed) {
        FaultyStack stack = new FaultyStack(seed);
        return stack.text() + stack.fastenings();
    }

    private String fastenings() {
        int rows = random.nextInt(5);
        StringBuilder text = new StringBuilder(rows == 0 ? "" : "fastenings:\n");
        for (int i = 0; i < rows; i++) {
            text.append("  - { ")
                    .append(random.nextInt(3) == 0 ? "" : "name: row " + i + ", ")
                    .append("piece: p")
                    .append(random.nextInt(pieces))
                    .append(", use: ")
                    .append(NAILS.get(random.nextInt(NAILS.size())))
                    .append(", at: { ")
                    .append(random.nextBoolean() ? "up: " + size(0, 6) : "out: " + size(0, 5))
                    .append(" }")
                    .append(random.nextInt(3) == 0 ? ", angle: " + (15 * (random.nextInt(5) - 2)) : "")
                    .append(random.nextInt(3) == 0 ? ", spacing: " + size(4, 16) : "")
                    .append(" }\n");
        }
        if (random.nextInt(3) == 0) {
            text.append("loads: [{ name: hand, on: p")
                    .append(random.nextInt(pieces))
                    .append(", out: ")
                    .append(size(0, 4))
                    .append(", load: ")
                    .append(1 + random.nextInt(20))
                    .append(" lb/ft }]\n");
        }
        return text.toString();
    }

    private String text() {
        lines.add("units: " + (metric ? "mm" : "in"));
        lines.add("wood: check-wood");
        lines.add("space: { floor: " + size(-30, -20) + ", ceiling: " + size(4, 12) + ", projection: " + size(2, 6)
                + ", wall: { solid: " + (random.nextBoolean() ? "yes" : "no") + " } }");
        lines.add("eyes: [{ name: seated, distance: " + size(60, 80) + ", height: " + size(-12, -2) + " }]");
        lines.add("pieces:");
        lines.add("  - { name: case, kind: framing, section: [out " + size(6, 8) + ", up " + size(8, 10)
                + "], face: wall, top: " + size(-1, 0) + " }");
        pieces = 2 + random.nextInt(4);
        for (int i = 0; i < pieces; i++) {
            lines.add("  - { name: p" + i + ", " + what() + ", " + out(i) + ", " + up(i) + " }");
        }
        return String.join("\n", lines) + "\n";
    }

    private String what() {
        String rip = random.nextInt(12) == 0 ? ", rip: { top: " + size(0.25, 3) + " }" : "";
        return switch (random.nextInt(8)) {
            case 0, 1 -> board(3, 7) + rip;
            case 2, 3, 4 -> board(2, 7) + ", lay: flat";
            case 5 -> "kind: nailer, section: [out " + size(0.5, 3) + ", up " + size(0.5, 2) + "]";
            default ->
                "profile: " + MOLDINGS.get(random.nextInt(MOLDINGS.size())) + " " + size(0.75, 1.5) + " x "
                        + size(0.75, 1.5) + rip;
        };
    }

    private String board(double least, double most) {
        return random.nextInt(6) == 0
                ? "profile: 1x" + (2 + 2 * random.nextInt(3))
                : "profile: board " + size(0.5, 1) + " x " + size(least, most);
    }

    private String out(int i) {
        String face = random.nextInt(5) == 0 ? ", face: " + size(2.5, 7) : "";
        return switch (i == 0 ? 0 : random.nextInt(4)) {
            case 0 -> "back: wall" + face;
            case 1 -> "back: p" + random.nextInt(i) + ".face" + slip();
            case 2 -> "face: p" + random.nextInt(i) + ".face" + slip();
            default -> "back: " + size(0, 3);
        };
    }

    private String up(int i) {
        return switch (i == 0 ? 0 : random.nextInt(5)) {
            case 0 -> "bottom: " + size(0, 2) + (random.nextInt(5) == 0 ? ", top: " + size(3, 8) : "");
            case 1, 2 -> "bottom: p" + random.nextInt(i) + ".top" + slip();
            case 3 -> "top: p" + random.nextInt(i) + ".top" + slip();
            default -> "bottom: " + size(0, 8);
        };
    }

    /** Often nothing, often a little too much or too little, now and then far off. */
    private String slip() {
        return switch (random.nextInt(4)) {
            case 0, 1 -> "";
            case 2 -> (random.nextBoolean() ? " + " : " - ") + size(0.0625, 0.5);
            default -> (random.nextBoolean() ? " + " : " - ") + size(0.5, 4);
        };
    }

    /** A size between two, inches, as somebody would write it: on a rule, or as a decimal of a drawing. */
    private String size(double least, double most) {
        double inches = least + (most - least) * random.nextDouble();
        if (metric) {
            double steps = random.nextInt(3) == 0 ? 10 : 1;
            return plain(Math.rint(inches * 25.4 * steps) / steps, 1);
        }
        double steps = random.nextInt(3) == 0 ? 1000 : 16;
        return plain(Math.rint(inches * steps) / steps, 4);
    }

    private static String plain(double number, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", number);
    }
}

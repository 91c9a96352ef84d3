package buildup.engine.hold.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A random stack as a carpenter might build one: boards, moldings and blocks on a wall, one on the next. */
final class BuiltUp {
    private static final List<String> MOLDINGS = List.of(
            "check-bed 1-1/4 x 1-3/8",
            "check-crown 9/16 x 3-1/4",
            "quarter-round 3/4 x 3/4",
            "ogee-bed 1 x 1-1/4",
            "cove-bed 1-1/4 x 1-1/4",
            "cyma-crown 9/16 x 2-3/4",
            "plain-crown 3-1/4");

    private final Random random;
    private final List<String> pieces = new ArrayList<>();
    private final String space;

    BuiltUp(long seed) {
        random = new Random(seed);
        String covering = random.nextBoolean() ? ", covering: 1/2" : "";
        String ceiling = random.nextInt(3) == 0 ? "ceiling: 30, " : "";
        space = "{ " + ceiling + "wall: { solid: " + (random.nextInt(4) > 0 ? "yes" : "no") + covering + " } }";
        int count = 3 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            pieces.add("name: p" + i + ", " + what(i) + ", " + place(i));
        }
    }

    private String what(int i) {
        int kind = random.nextInt(8);
        if (kind < 3 || i == 0) {
            String lay = random.nextBoolean() ? ", lay: flat" : "";
            return "profile: board " + eighths(4, 12) + " x " + eighths(12, 48) + lay;
        }
        if (kind < 5) {
            return "profile: " + MOLDINGS.get(random.nextInt(MOLDINGS.size()));
        }
        String grain = random.nextInt(3) == 0 ? ", grain: " + (random.nextBoolean() ? "out" : "up") : "";
        return "kind: nailer" + grain + ", section: [out " + eighths(6, 20) + ", up " + eighths(6, 20) + "]";
    }

    private String place(int i) {
        if (i == 0) {
            return "back: wall, bottom: 0";
        }
        String other = "p" + random.nextInt(i);
        return switch (random.nextInt(4)) {
            case 0 -> "back: wall, bottom: " + other + ".top";
            case 1 -> "back: " + other + ".face, bottom: " + other + ".bottom + " + eighths(0, 8);
            case 2 -> "back: " + other + ".face, top: " + other + ".top";
            default -> "back: " + other + ".back + " + eighths(0, 8) + ", bottom: " + other + ".top";
        };
    }

    private String eighths(int least, int most) {
        return String.format(Locale.ROOT, "%.3f", (least + random.nextInt(most - least)) / 8.0);
    }

    String text() {
        return Driven.text("space: " + space + "\n", pieces);
    }
}

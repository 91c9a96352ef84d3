package buildup.engine.hold.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Random pieces packed on each other: boards, hooks, troughs, rounds and hollows, in sixteenths. */
final class RandomOrder {
    private static final List<String> SHAPES = List.of(
            "section: [out 2, up 1]",
            "section: [out 1, up 2]",
            "section: [out 3, up 3/4]",
            "section: [out 1, up 1/2, out 2, up 1]",
            "section: [out 3, up 1, in 1, down 1/2, in 1, up 1/2]",
            "section: [out 1-1/2, up 1/4, cove 3/4, up 1/4]",
            "section: [out 1-1/2, ovolo 1, up 1/4]",
            "section: [out 2, chamfer in 1 x 1]",
            "section: [out 1, chamfer 1 x 1/2, up 1/2]",
            "section: [out 2, up 1-1/2, in 3/4, down 3/4, in 1/2]");

    private RandomOrder() {}

    static Ordered of(long seed) {
        Random random = new Random(seed);
        int count = 3 + random.nextInt(4);
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String rules = i == 0
                    ? String.format(Locale.ROOT, "back: %s, bottom: 0", sixteenth(random, 32))
                    : random.nextBoolean()
                            ? String.format(Locale.ROOT, "back: %s, bottom: touch", sixteenth(random, 64))
                            : random.nextBoolean()
                                    ? String.format(Locale.ROOT, "bottom: %s, back: touch", sixteenth(random, 64))
                                    : String.format(Locale.ROOT, "back: %s, top: touch", sixteenth(random, 64));
            pieces.add("name: p" + i + ", " + SHAPES.get(random.nextInt(SHAPES.size())) + ", " + rules);
        }
        String space = random.nextBoolean()
                ? "{ wall: { solid: yes }, floor: 0, ceiling: " + (6 + random.nextInt(3)) + " }"
                : "{ wall: { solid: yes }, floor: 0, ceiling: 40 }";
        return Ordered.in(space, pieces.toArray(String[]::new));
    }

    private static String sixteenth(Random random, int most) {
        return random.nextInt(most) + "/16";
    }
}

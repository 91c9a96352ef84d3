package buildup.engine.hold.support;

import buildup.engine.Bench;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Two random piles of blocks on one base, each block on the one below it, with a load on the last. */
final class RandomPile {
    private RandomPile() {}

    static Held of(long seed) {
        Random random = new Random(seed);
        List<String> pieces =
                new ArrayList<>(List.of("name: base, kind: framing, section: [out 24, up 1], back: 0, top: 0"));
        for (double middle : List.of(4.0, 18.0)) {
            double level = 0;
            double at = middle;
            for (int i = 0; i < 3; i++) {
                double width = 0.5 + 3 * random.nextDouble();
                double height = 0.5 + random.nextDouble();
                pieces.add(String.format(
                        Locale.ROOT,
                        "name: p%d, section: [out %.4f, up %.4f], back: %.4f, bottom: %.4f",
                        pieces.size(),
                        width,
                        height,
                        at - width / 2,
                        level));
                at += (random.nextDouble() - 0.5) * width;
                level = Math.rint((level + Math.rint(height * 1e4) / 1e4) * 1e4) / 1e4;
            }
        }
        Held held = Held.of(Bench.loose(pieces.toArray(String[]::new)));
        return held.load("p6", held.section().body(6).outline().box().face(), 3);
    }
}

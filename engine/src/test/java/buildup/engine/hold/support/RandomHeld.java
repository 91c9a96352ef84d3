package buildup.engine.hold.support;

import buildup.engine.Bench;
import buildup.engine.section.compose.Contact;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A random stack: courses of blocks on a base and against a post, some side by side, some overhanging, nailed to one
 * another at random and loaded at random.
 */
final class RandomHeld {
    private final Random random;
    private final List<String> pieces = new ArrayList<>(List.of(
            "name: base, kind: framing, section: [out 4, up 1], back: 0, top: 0",
            "name: post, kind: framing, section: [out 1, up 13], face: 0, top: 12"));

    private RandomHeld(long seed) {
        random = new Random(seed);
    }

    static Held of(long seed) {
        return new RandomHeld(seed).held();
    }

    private Held held() {
        int courses = 1 + random.nextInt(3);
        double level = 0;
        for (int course = 0; course < courses; course++) {
            double height = between(0.4, 2);
            course(level, height);
            level += height;
        }
        Held held = Held.of(Bench.loose(pieces.toArray(String[]::new)));
        for (Contact contact : held.section().contacts()) {
            if (contact.stretch().isPresent() && random.nextInt(10) < 8) {
                held = nailed(held, contact, contact.stretch().get());
            }
        }
        int loads = 1 + random.nextInt(2);
        for (int i = 0; i < loads; i++) {
            int body = 2 + random.nextInt(pieces.size() - 2);
            Box box = held.section().body(body).outline().box();
            double out = between((box.back() + box.face()) / 2, box.face());
            held = held.load(held.section().name(body), out, between(5, 40));
        }
        return held;
    }

    private void course(double level, double height) {
        double at = random.nextBoolean() ? 0 : between(0.2, 3);
        int blocks = 1 + random.nextInt(2);
        for (int i = 0; i < blocks; i++) {
            double width = between(1.5, 8);
            pieces.add(String.format(
                    Locale.ROOT,
                    "name: p%d, kind: nailer, section: [out %.4f, up %.4f], back: %.4f, bottom: %.4f",
                    pieces.size(),
                    width,
                    height,
                    at,
                    level));
            at += width + (random.nextBoolean() ? 0 : between(0.1, 1.5));
        }
    }

    private Held nailed(Held held, Contact contact, Segment stretch) {
        Point square = stretch.direction(0.5).right();
        boolean outward = random.nextBoolean();
        double degrees = Math.toDegrees(square.times(outward ? 1 : -1).angle()) + between(-30, 30);
        return held.nail(
                "nail " + held.joints().size(),
                held.section().name(outward ? contact.a() : contact.b()),
                held.section().name(outward ? contact.b() : contact.a()),
                stretch.at(random.nextDouble()),
                degrees,
                between(0.5, 20),
                between(0.5, 20));
    }

    private double between(double least, double most) {
        return Math.rint((least + (most - least) * random.nextDouble()) * 1e4) / 1e4;
    }
}

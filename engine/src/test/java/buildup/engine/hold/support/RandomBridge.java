package buildup.engine.hold.support;

import buildup.engine.Bench;
import buildup.engine.hold.statics.Tie;
import buildup.engine.section.compose.Contact;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A random stack on one to four carriers: boards across posts, some of them framing and some blocks that stand loose, some
 * a little too short, with a wall now and then a little behind. Nails pull and shear at random, heads give at random.
 */
final class RandomBridge {
    private final Random random;
    private final List<String> pieces = new ArrayList<>();

    private RandomBridge(long seed) {
        random = new Random(seed);
    }

    static Held of(long seed) {
        return new RandomBridge(seed).held();
    }

    private Held held() {
        pieces.add("name: base, kind: framing, section: [out 40, up 1], back: -10, top: 0");
        int carriers = 1 + random.nextInt(4);
        double at = between(0, 1);
        double back = at;
        for (int i = 0; i < carriers; i++) {
            double width = between(0.5, 2);
            piece("carrier " + i, random.nextInt(3) == 0 ? "trim" : "framing", width, 4 - gap(i == 0 ? 0 : 1), at, 0);
            at += width + between(0.5, 3);
        }
        double start = back + between(-5, 1);
        double length = Math.max(1, at - start + between(-6, 3));
        if (random.nextInt(3) == 0) {
            pieces.add(String.format(
                    Locale.ROOT,
                    "name: wall piece, kind: framing, section: [out 1, up 8], face: %.4f, bottom: 2",
                    start - gap(2)));
        }
        piece("board", "trim", length, between(0.5, 1.5), start, 4);
        double level = number(pieces.get(pieces.size() - 1));
        piece("upper", "trim", between(1, length + 1), 1, start + between(0, length / 2), level);
        Held held = Held.of(Bench.loose(pieces.toArray(String[]::new)));
        for (Contact contact : held.section().contacts()) {
            if (contact.stretch().isPresent() && random.nextInt(10) < 4) {
                held = nailed(held, contact, contact.stretch().get());
            }
        }
        return loaded(held);
    }

    /** The top of the piece just written. */
    private static double number(String piece) {
        String up = piece.replaceAll(".*up ([0-9.]+).*", "$1");
        return 4 + Double.parseDouble(up);
    }

    private void piece(String name, String kind, double width, double height, double back, double bottom) {
        pieces.add(String.format(
                Locale.ROOT,
                "name: %s, kind: %s, section: [out %.4f, up %.4f], back: %.4f, bottom: %.4f",
                name,
                kind,
                width,
                height,
                back,
                bottom));
    }

    /** No gap, or with so many chances in four one of 1/64 to 1/8. */
    private double gap(int chances) {
        return random.nextInt(4) < chances ? (1 + random.nextInt(8)) / 64.0 : 0;
    }

    private Held loaded(Held held) {
        Held loaded = held;
        int loads = 1 + random.nextInt(2);
        for (int i = 0; i < loads; i++) {
            String on = random.nextBoolean() ? "board" : "upper";
            Box box = held.section().body(held.number(on)).outline().box();
            loaded = loaded.load(on, between(box.back(), box.face()), between(1, 20));
        }
        return loaded;
    }

    private Held nailed(Held held, Contact contact, Segment stretch) {
        Point square = stretch.direction(0.5).right();
        boolean outward = random.nextBoolean();
        double degrees = Math.toDegrees(square.times(outward ? 1 : -1).angle()) + between(-30, 30);
        Held nailed = held.nail(
                "nail " + held.joints().size(),
                held.section().name(outward ? contact.a() : contact.b()),
                held.section().name(outward ? contact.b() : contact.a()),
                stretch.at(random.nextDouble()),
                degrees,
                between(0.2, 12),
                between(0.2, 12));
        double head = between(0.2, 12);
        return nailed.joints(
                joint -> joint.name().equals("nail " + held.joints().size())
                        ? new Tie(
                                joint.name(),
                                joint.outer(),
                                joint.inner(),
                                joint.at(),
                                joint.axis(),
                                joint.withdrawal(),
                                head,
                                joint.lateral())
                        : joint);
    }

    private double between(double least, double most) {
        return Math.rint((least + (most - least) * random.nextDouble()) * 1e4) / 1e4;
    }
}

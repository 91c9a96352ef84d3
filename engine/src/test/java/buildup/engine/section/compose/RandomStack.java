package buildup.engine.section.compose;

import buildup.engine.Bench;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A random stack as text: boards, moldings, blocking and framing, some turned, some touching, some overlapping. */
final class RandomStack {
    private static final List<String> MOLDINGS = List.of(
            "check-bed 1-1/4 x 1-3/8",
            "check-crown-edged 9/16 x 3-1/4",
            "check-backband 1-5/8 x 1-1/2",
            "quarter-round 3/4 x 3/4",
            "ogee-bed 1 x 1-1/4",
            "cyma-crown 9/16 x 2-3/4",
            "bead-strip 1/2 x 1",
            "wainscot-cap 1-1/16 x 2");

    private final Random random;
    private final boolean slips;
    private final int count;
    private final boolean wall;
    private final boolean floor;
    private final boolean ceiling;
    private final List<Entry> entries = new ArrayList<>();

    /** One piece: what it is, and its rules as a place plus a plain length, or touch. */
    private record Entry(String name, String what, Place x, Place y) {
        boolean touches() {
            return x.touch() || y.touch();
        }
    }

    /** A rule; {@code at} is the plain length, moved with the stack when nothing else is named. */
    private record Place(String key, String edge, double at) {
        boolean touch() {
            return edge.equals("touch");
        }

        String text(double shift) {
            if (touch()) {
                return key + ": touch";
            }
            return edge.isEmpty()
                    ? key + ": " + decimal(at + shift)
                    : key + ": " + edge + (at < 0 ? " - " : " + ") + decimal(Math.abs(at));
        }
    }

    RandomStack(long seed) {
        this(seed, false);
    }

    /** @param slips whether some pieces sit a few thousandths off, by less or a little more than touching */
    RandomStack(long seed, boolean slips) {
        random = new Random(seed);
        this.slips = slips;
        count = 3 + random.nextInt(6);
        wall = random.nextBoolean();
        floor = random.nextInt(3) == 0;
        ceiling = random.nextInt(3) == 0;
        for (int i = 0; i < count; i++) {
            entries.add(entry(i));
        }
    }

    boolean hasWall() {
        return wall;
    }

    private Entry entry(int i) {
        String what = what(i);
        String turned = turned(what.contains("lay:"));
        return new Entry("p" + i, what + turned, x(i), random.nextInt(8) == 0 && i > 0 ? touch() : y(i));
    }

    private String what(int i) {
        int kind = random.nextInt(10);
        if (kind < 4) {
            String board = "profile: board " + eighths(4, 12) + " x " + eighths(8, 48);
            return board + (random.nextBoolean() ? ", lay: flat" : "");
        }
        if (kind < 7) {
            return "profile: " + MOLDINGS.get(random.nextInt(MOLDINGS.size()));
        }
        String section = "section: [out " + eighths(4, 24) + ", up " + eighths(4, 24) + "]";
        return (kind < 9 || i == 0 ? "kind: nailer, " : "kind: framing, ") + section;
    }

    private String turned(boolean laid) {
        return switch (random.nextInt(laid ? 8 : 12)) {
            case 0 -> ", flip: over";
            case 1 -> ", flip: ends";
            case 8, 9 -> ", turn: " + 90 * (1 + random.nextInt(3));
            case 10 -> ", turn: " + random.nextInt(360);
            default -> "";
        };
    }

    private Place x(int i) {
        boolean back = random.nextBoolean();
        String key = back ? "back" : "face";
        if (i > 0 && random.nextInt(3) > 0) {
            String edge = "p" + random.nextInt(i) + (random.nextBoolean() ? ".back" : ".face");
            return new Place(key, edge, (random.nextInt(3) == 0 ? random.nextInt(9) / 8.0 - 0.5 : 0) + slip());
        }
        return new Place("back", "", random.nextInt(24) / 8.0 + slip());
    }

    private Place y(int i) {
        String key = random.nextBoolean() ? "bottom" : "top";
        if (i > 0 && random.nextInt(4) > 0) {
            String edge = "p" + random.nextInt(i) + (random.nextBoolean() ? ".bottom" : ".top");
            return new Place(key, edge, (random.nextInt(4) == 0 ? random.nextInt(9) / 8.0 - 0.5 : 0) + slip());
        }
        return new Place(key, "", random.nextInt(64) / 8.0 + slip());
    }

    private double slip() {
        return slips && random.nextInt(4) == 0 ? (random.nextInt(21) - 10) / 2000.0 : 0;
    }

    private Place touch() {
        return new Place(random.nextBoolean() ? "bottom" : "top", "touch", 0);
    }

    private String eighths(int least, int most) {
        return decimal((least + random.nextInt(most - least)) / 8.0);
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    String text(double dx, double dy) {
        return text(dx, dy, entries);
    }

    private String text(double dx, double dy, List<Entry> order) {
        StringBuilder space = new StringBuilder("space: { wall: { solid: " + (wall ? "yes" : "no") + " }");
        if (floor) {
            space.append(", floor: ").append(decimal(-2 + dy));
        }
        if (ceiling) {
            space.append(", ceiling: ").append(decimal(14 + dy));
        }
        String[] pieces = order.stream()
                .map(entry -> "name: " + entry.name() + ", " + entry.what() + ", "
                        + entry.x().text(dx) + ", " + entry.y().text(dy))
                .toArray(String[]::new);
        return Bench.head(space + " }") + Bench.list(pieces);
    }

    /** The text with two neighbors in the order exchanged, for each pair of which neither touches. */
    List<String> exchanged(Bench bench) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i + 1 < entries.size(); i++) {
            Entry one = entries.get(i);
            Entry other = entries.get(i + 1);
            boolean apart = !bench.box(one.name()).near(bench.box(other.name()), 0.01);
            if (apart && !one.touches() && !other.touches()) {
                List<Entry> order = new ArrayList<>(entries);
                order.set(i, other);
                order.set(i + 1, one);
                texts.add(text(0, 0, order));
            }
        }
        return texts;
    }
}

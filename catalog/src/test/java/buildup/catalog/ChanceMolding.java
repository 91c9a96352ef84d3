package buildup.catalog;

import buildup.profiles.member.Sprung;
import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Moldings that no catalog holds: members of the trade in any order and size, on bases, casings, caps and sprung sticks.
 * What they are drawn from is common practice, no source.
 */
final class ChanceMolding {
    /** Sizes of members are whole steps of this, but in an old molding, in. */
    private static final double STEP = 1.0 / 16;

    private static final double LEAST = 1.0 / 16;

    private final Random random;
    private final boolean old;
    private final Walk walk = new Walk();

    private ChanceMolding(Random random) {
        this.random = random;
        this.old = random.nextInt(4) == 0;
    }

    /** The molding of a seed. */
    static Outline of(long seed) {
        Random random = new Random(seed * 6151 + 5);
        // an order of members that runs out of its stick is drawn again
        return Stream.generate(() -> new ChanceMolding(random).drawn())
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow();
    }

    private Optional<Outline> drawn() {
        return switch (random.nextInt(5)) {
            case 0 -> sprung();
            case 1 -> standing(size(2, 5), size(0.5, 1.25));
            case 2 -> standing(size(0.75, 2), size(0.75, 2.5));
            case 3 -> backed(size(2, 4.5), size(0.5, 1.25));
            default -> standing(size(1, 3.5), size(0.75, 2));
        };
    }

    private double size(double least, double most) {
        double size = least + (most - least) * random.nextDouble();
        return old ? size : Math.max(STEP, Math.rint(size / STEP) * STEP);
    }

    /** Members from the foot up, on a flat back. */
    private Optional<Outline> standing(double height, double stands) {
        walk.straight(Way.OUT, stands, "bottom");
        members(height, 0.125, 3.5);
        walk.levelToBack();
        return closed(walk.close());
    }

    /** The same with a relief or a rabbet behind. */
    private Optional<Outline> backed(double height, double stands) {
        walk.straight(Way.OUT, stands, "bottom");
        members(height, 0.3, 3);
        walk.levelToBack();
        double top = walk.at().y();
        double clear = Math.max(0.25, size(0.1 * top, 0.2 * top));
        if (top < 4 * clear) {
            return Optional.empty();
        }
        walk.straight(Way.DOWN, clear, "back");
        walk.groove(top - 2 * clear, random.nextBoolean() ? 0.0625 : 0.09375, "relief");
        return closed(walk.close());
    }

    private Optional<Outline> sprung() {
        double spring = List.of(38.0, 45.0, 52.0, 30.0).get(random.nextInt(4));
        double thickness = random.nextBoolean() ? 9.0 / 16 : 11.0 / 16;
        double edge = random.nextBoolean() ? 0.25 : 0.3125;
        double width = size(2, 5);
        if (Sprung.fault(spring, width, thickness, edge, edge).isPresent()) {
            return Optional.empty();
        }
        walk.straight(Way.UP, size(0.125, 0.4), "lower-fillet");
        members(width - 0.25, -0.3, 0);
        return new Sprung(spring, width, thickness, edge, edge)
                .sound(walk.strokes())
                .filter(outline -> Soundness.faults(outline.strokes()).isEmpty());
    }

    private Optional<Outline> closed(List<Stroke> strokes) {
        return Optional.of(strokes)
                .filter(all -> Soundness.faults(all).isEmpty())
                .map(Outline::closed)
                .filter(outline -> outline.box().width() > 0.3);
    }

    /** Members one on the next up to a height, between two projections. */
    private void members(double height, double least, double most) {
        int calls = 2 + random.nextInt(7);
        for (int i = 0; i < calls && height - walk.at().y() > 2 * LEAST; i++) {
            member(Math.min(height - walk.at().y(), Math.max(0.15, height / calls * 1.6)), least, most);
        }
        if (height - walk.at().y() > LEAST) {
            walk.straightTo(Way.UP, height, "fillet");
        }
    }

    private void member(double room, double least, double most) {
        Way way = random.nextInt(3) > 0 ? Way.OUT : Way.IN;
        double wide =
                Math.min(0.8, way == Way.OUT ? most - walk.at().x() : walk.at().x() - least);
        double high = size(Math.min(0.125, room), room);
        double across = size(LEAST, Math.max(LEAST, Math.min(wide, 1.5 * high)));
        if (wide < across || across < LEAST || high < LEAST || high > room) {
            return;
        }
        switch (random.nextInt(11)) {
            case 0, 1 -> walk.straight(Way.UP, high, "fillet");
            case 2 -> walk.straight(way, size(LEAST, Math.min(wide, 0.25)), "step");
            case 3, 4 -> walk.cove(Way.UP, high, way, across, "cove");
            case 5, 6 -> walk.ovolo(Way.UP, high, way, across, "ovolo");
            case 7 -> walk.cymaRecta(Way.UP, high, way, across, "cyma");
            case 8 -> walk.cymaReversa(Way.UP, high, way, across, "ogee");
            case 9 -> {
                if (most - walk.at().x() > high / 2) {
                    walk.halfRound(Way.UP, high, "bead");
                }
            }
            default -> walk.chamfer(Way.UP, high, way, across, "chamfer");
        }
    }
}

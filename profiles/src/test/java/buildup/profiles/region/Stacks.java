package buildup.profiles.region;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Seeded stacks whose true union is known: twelve moldings in two columns that stand back to back, one on the next, so
 * that every contact is edge on edge and often meets another contact in a T. Sizes are such that the same place comes
 * out of different sums, which leaves contacts that differ in the last digits, as they do in real stacks.
 */
final class Stacks {
    /** What makes a set hard. */
    enum Kind {
        /** Sizes in tenths, which are not binary fractions. */
        TENTHS,
        /** Sizes in thirtieths. */
        THIRDS,
        /** Tenths, each piece turned by itself by the same odd angle. */
        TURNED,
        /** Turned, and each piece off by up to 1e-7. */
        JITTERED,
        /** Turned, and each piece off by up to 1/600, so that neighbors gape or lap by up to 1/300. */
        NEARLY,
        /** Thirds, each piece sunk into the one below by 0.01 to 0.05. */
        OVERLAPPING
    }

    /** An overlap that was built in: of pieces {@code first} and {@code second}, {@code width} by {@code depth}. */
    record Sunk(int first, int second, double width, double depth) {}

    record Stack(List<Outline> pieces, double area, double perimeter, List<Sunk> sunk) {}

    static final int PER_COLUMN = 6;
    static final double JITTER = 1e-7;
    static final double NEAR = 1.0 / 600;

    private final Random random;

    Stacks(long seed) {
        this.random = new Random(seed);
    }

    List<Stack> many(Kind kind, int count) {
        List<Stack> stacks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            stacks.add(stack(kind));
        }
        return stacks;
    }

    private Stack stack(Kind kind) {
        double unit = kind == Kind.THIRDS || kind == Kind.OVERLAPPING ? 1.0 / 30 : 0.1;
        boolean turned = kind == Kind.TURNED || kind == Kind.JITTERED || kind == Kind.NEARLY;
        Motion turn = turned ? Motion.turn(random.nextDouble() * 360) : Motion.NONE;
        double line = steps(unit, 1, 20);
        List<Outline> pieces = new ArrayList<>();
        List<Sunk> sunk = new ArrayList<>();
        double perimeter = 0;
        double[] heights = new double[2];
        for (int column = 0; column < 2; column++) {
            for (int i = 0; i < PER_COLUMN; i++) {
                Outline drawn = molding(unit);
                int number = pieces.size();
                double depth = kind == Kind.OVERLAPPING && i > 0 ? 0.01 + 0.04 * random.nextDouble() : 0;
                pieces.add(drawn.moved(column == 0 ? Motion.NONE : back(drawn))
                        .moved(Motion.shift(line, heights[column] - depth)
                                .then(turn)
                                .then(jitter(kind))));
                perimeter += drawn.perimeter();
                if (i > 0) {
                    double width = Math.min(topWidth(pieces, number - 1, turn), bottomWidth(drawn));
                    sunk.add(new Sunk(number - 1, number, width, depth));
                }
                heights[column] += drawn.box().height() - depth;
            }
        }
        if (Math.abs(heights[0] - heights[1]) < 0.01) {
            // two tops nearer than touching would be welded level, and the perimeter no longer be the one built in
            return stack(kind);
        }
        double overlap = sunk.stream().mapToDouble(s -> s.width() * s.depth()).sum();
        double inner =
                sunk.stream().mapToDouble(s -> 2 * (s.width() + s.depth())).sum();
        return new Stack(
                pieces,
                pieces.stream().mapToDouble(Outline::area).sum() - overlap,
                perimeter - inner - 2 * Math.min(heights[0], heights[1]),
                sunk);
    }

    /** End for end, its back where it was but for the last digits. */
    private static Motion back(Outline drawn) {
        double width = drawn.box().face();
        return Motion.ENDS
                .then(Motion.shift(width / 3, 0))
                .then(Motion.shift(0.1 - width / 3, 0))
                .then(Motion.shift(-0.1, 0));
    }

    private static double bottomWidth(Outline drawn) {
        return drawn.straights("bottom").get(0).length();
    }

    private static double topWidth(List<Outline> pieces, int number, Motion turn) {
        return pieces.get(number).straights("top").get(0).length();
    }

    private Motion jitter(Kind kind) {
        double most = kind == Kind.JITTERED ? JITTER : kind == Kind.NEARLY ? NEAR : 0;
        Point off = Point.towards(2 * Math.PI * random.nextDouble()).times(most * random.nextDouble());
        return Motion.shift(off.x(), off.y());
    }

    private double steps(double unit, int least, int most) {
        return (least + random.nextInt(most - least + 1)) * unit;
    }

    /** Eight straight strokes and two or three curves; back, bottom and top flat, the first and last of the face too. */
    Outline molding(double unit) {
        int fine = (int) Math.round(0.1 / unit);
        Walk walk = new Walk();
        walk.straight(Way.OUT, steps(unit, 12 * fine, 30 * fine), "bottom");
        walk.straight(Way.UP, steps(unit, fine, 6 * fine), "face");
        walk.straight(Way.IN, steps(unit, 1, 2 * fine), "step");
        curve(walk, unit, fine);
        walk.straight(Way.UP, steps(unit, 1, 4 * fine), "fillet");
        walk.straight(Way.OUT, steps(unit, 1, 3 * fine), "ledge");
        curve(walk, unit, fine);
        walk.straight(Way.UP, steps(unit, fine, 5 * fine), "crown");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    private void curve(Walk walk, double unit, int fine) {
        double height = steps(unit, 2 * fine, 9 * fine);
        double width = random.nextBoolean() ? height : steps(unit, 2 * fine, 5 * fine);
        width = Math.min(width, 5 * fine * unit);
        Way level = random.nextBoolean() && walk.at().x() > 6.5 * fine * unit ? Way.IN : Way.OUT;
        switch (random.nextInt(5)) {
            case 0 -> walk.cove(Way.UP, height, level, width, "cove");
            case 1 -> walk.ovolo(Way.UP, height, level, width, "ovolo");
            case 2 -> walk.cymaRecta(Way.UP, height, level, width, "recta");
            case 3 -> walk.cymaReversa(Way.UP, height, level, width, "reversa");
            default -> walk.halfRound(Way.UP, height, "torus");
        }
    }

    /** Boxes and moldings thrown together: some turned, some upside down, many overlapping, nothing known. */
    List<Outline> thrown() {
        List<Outline> pieces = new ArrayList<>();
        int count = 2 + random.nextInt(9);
        for (int i = 0; i < count; i++) {
            Motion place = Motion.shift(random.nextInt(64) / 16.0, random.nextInt(96) / 16.0);
            if (random.nextInt(4) == 0) {
                place = Motion.shift(random.nextDouble() / 256, random.nextDouble() / 256)
                        .then(place);
            }
            double[] angles = {0, 0, 0, 90, 180, 7.3, 45, 360 * random.nextDouble()};
            Motion turn = Motion.turn(angles[random.nextInt(angles.length)]);
            Motion flip = random.nextInt(4) == 0 ? Motion.OVER : Motion.NONE;
            pieces.add(piece().moved(flip.then(turn).then(place)));
        }
        if (random.nextInt(10) == 0) {
            pieces.add(pieces.get(0));
        }
        return pieces;
    }

    private Outline piece() {
        return switch (random.nextInt(3)) {
            case 0 -> Outline.rectangle(new Box(0, 0, steps(1.0 / 16, 1, 48), steps(1.0 / 16, 1, 48)));
            case 1 -> molding(0.1);
            default -> molding(1.0 / 16);
        };
    }
}

package buildup.engine.look.view;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random bodies: zigzags, boxes and molded sections, some touching, some crossing. The same seed gives the same. */
public final class RandomScene {
    private final Random random;

    public RandomScene(long seed) {
        this.random = new Random(seed);
    }

    public List<Outline> bodies() {
        List<Outline> bodies = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            Outline own = switch (random.nextInt(4)) {
                case 0 -> zigzag();
                case 1 -> box();
                default -> molding();
            };
            bodies.add(moved(own, i == 0 ? own : bodies.get(i - 1)));
        }
        return bodies;
    }

    /** Anywhere near; or on the top of the one before, the two touching. */
    private Outline moved(Outline own, Outline before) {
        if (random.nextInt(3) == 0) {
            Box box = before.box();
            return own.moved(Motion.shift(
                    box.back() - own.box().back(), box.top() - own.box().bottom()));
        }
        return own.moved(Motion.shift(between(-4, 4), between(-4, 4)));
    }

    Viewpoint parallel() {
        return Viewpoint.FarAway.at(between(-Math.PI, Math.PI));
    }

    /** A place outside all bodies. */
    Viewpoint near(List<Outline> bodies) {
        while (true) {
            Point at = new Point(between(-12, 12), between(-12, 12));
            boolean free = bodies.stream()
                    .allMatch(body -> !body.holds(at)
                            && body.strokes().stream()
                                    .allMatch(stroke -> stroke.segment().distance(at) > 0.01));
            if (free) {
                return new Viewpoint.Near(at);
            }
        }
    }

    private Outline box() {
        return Outline.rectangle(new Box(0, 0, between(0.2, 4), between(0.2, 4)));
    }

    private Outline zigzag() {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
        int teeth = 2 + random.nextInt(6);
        double y = 0;
        for (int i = 0; i < teeth; i++) {
            points.add(new Point(between(1, 3), y += between(0, 0.4)));
            points.add(new Point(between(0.3, 1), y += between(0, 0.4)));
        }
        points.add(new Point(0, y + 0.1));
        return Drawn.polygon(points.toArray(Point[]::new));
    }

    private Outline molding() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, between(1, 2), "base");
        int members = 2 + random.nextInt(5);
        for (int i = 0; i < members; i++) {
            double size = between(0.1, 0.5);
            Way level = walk.at().x() > 1 && random.nextBoolean() ? Way.IN : Way.OUT;
            switch (random.nextInt(7)) {
                case 0 -> walk.straight(Way.UP, size, "fillet");
                case 1 -> walk.cove(Way.UP, size, level, size * between(0.5, 1.5), "cove");
                case 2 -> walk.ovolo(Way.UP, size, level, size * between(0.5, 1.5), "ovolo");
                case 3 -> walk.halfRound(Way.UP, size, "bead");
                case 4 -> walk.cymaRecta(Way.UP, size, level, size, "recta");
                case 5 -> walk.cymaReversa(Way.UP, size, level, size, "reversa");
                default -> walk.scotia(Way.UP, size, level, size / 3, "scotia");
            }
            if (random.nextBoolean()) {
                walk.straight(Way.OUT, between(0.05, 0.4), "step");
            }
        }
        walk.straight(Way.UP, between(0.05, 0.4), "last");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}

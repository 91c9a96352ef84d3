package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.fastener.Tool;
import buildup.engine.hold.nail.Reach;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Sets the outline of a tool on a head and looks what is in its way. */
final class Reaching {
    /** What lies over a spot nearer than this covers it, in: common practice, no source. */
    static final double OVER = 1.0 / 64;

    private final Timber timber;
    private final Catalog catalog;
    private final Map<String, Optional<Tool>> tools = new HashMap<>();

    Reaching(Timber timber, Catalog catalog) {
        this.timber = timber;
        this.catalog = catalog;
    }

    Reach of(Spot spot, Point way, Fastener.Cut use, int step) {
        // a list reads its entries anew each time
        Optional<Tool> tool = tools.computeIfAbsent(use.fastener().tool(), name -> catalog.tool(use.fastener()));
        OptionalInt over = covering(spot, step);
        if (over.isPresent() || tool.isEmpty()) {
            return new Reach(tool, over);
        }
        OptionalInt left =
                inTheWay(spot.at(), way, tool.get(), use, tool.get().lean().toDegrees(), step);
        return new Reach(
                tool,
                left.isEmpty()
                        ? left
                        : inTheWay(
                                spot.at(),
                                way,
                                tool.get(),
                                use,
                                -tool.get().lean().toDegrees(),
                                step));
    }

    /** What stands over the spot in a step. */
    OptionalInt covering(Spot spot, int step) {
        for (int i = 0; i < timber.count(); i++) {
            if (i != spot.body() && timber.up(i, step) && timber.solid(i).holds(spot.outside(OVER))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private OptionalInt inTheWay(Point head, Point way, Tool tool, Fastener.Cut use, double lean, int step) {
        double ahead = tool.ahead() ? use.length().toInches() : 0;
        Point back = way.times(-1);
        List<Convex> outline = outline(head.plus(back.times(ahead)), back, tool, lean);
        for (int i = 0; i < timber.count(); i++) {
            Timber.Solid body = timber.solid(i);
            if (timber.up(i, step) && outline.stream().anyMatch(part -> part.meets(body))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static List<Convex> outline(Point tip, Point back, Tool tool, double lean) {
        double nose = tool.noseLength().toInches();
        double half = tool.noseWidth().toInches() / 2;
        double pointed = Math.min(half, nose);
        Point aside = back.left();
        Point shoulder = tip.plus(back.times(pointed));
        Point end = tip.plus(back.times(nose));
        double turn = Math.toRadians(lean);
        Point along = back.times(Math.cos(turn)).plus(aside.times(Math.sin(turn)));
        double wide = tool.bodyWidth().toInches() / 2;
        Point far = end.plus(along.times(tool.bodyLength().toInches()));
        Point across = along.left();
        return List.of(
                new Convex(List.of(
                        tip,
                        shoulder.minus(aside.times(half)),
                        end.minus(aside.times(half)),
                        end.plus(aside.times(half)),
                        shoulder.plus(aside.times(half)))),
                new Convex(List.of(
                        end.minus(across.times(wide)),
                        far.minus(across.times(wide)),
                        far.plus(across.times(wide)),
                        end.plus(across.times(wide)))));
    }

    /** A convex part of a tool, in either sense of walk. */
    private static final class Convex {
        private final Box box;
        private final Point middle;
        private final List<Point> corners;
        /** Square to each side, into the part; the side begins at the corner of that number. */
        private final List<Point> inward = new ArrayList<>();

        Convex(List<Point> corners) {
            this.corners = corners;
            this.box = corners.stream().map(p -> Box.of(p, p)).reduce(Box::with).orElseThrow();
            this.middle = corners.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / corners.size());
            for (int i = 0; i < corners.size(); i++) {
                Point corner = corners.get(i);
                Point side = corners.get((i + 1) % corners.size()).minus(corner).unit();
                inward.add(side.left().dot(middle.minus(corner)) > 0 ? side.left() : side.right());
            }
        }

        boolean meets(Timber.Solid body) {
            if (!box.near(body.outline().box(), 0)) {
                return false;
            }
            List<Point> ring = body.ring();
            for (int i = 0; i < ring.size(); i++) {
                if (inside(ring.get(i), ring.get((i + 1) % ring.size())) > Tolerance.TOUCHING) {
                    return true;
                }
            }
            return body.holds(middle);
        }

        /** How much of the step from {@code a} to {@code b} lies inside by more than touching (Cyrus and Beck). */
        private double inside(Point a, Point b) {
            Point step = b.minus(a);
            double from = 0;
            double to = 1;
            for (int i = 0; i < corners.size(); i++) {
                Point normal = inward.get(i);
                double start = a.minus(corners.get(i)).dot(normal) - Tolerance.TOUCHING;
                double rate = step.dot(normal);
                if (Math.abs(rate) < Tolerance.COINCIDENT) {
                    if (start < 0) {
                        return 0;
                    }
                } else if (rate > 0) {
                    from = Math.max(from, -start / rate);
                } else {
                    to = Math.min(to, -start / rate);
                }
            }
            return Math.max(0, to - from) * step.length();
        }
    }
}

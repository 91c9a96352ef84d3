package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.fastener.Tool;
import buildup.engine.hold.nail.Reach;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;

/** Sets the outline of a tool on a head and looks what is in its way. */
final class Reaching {
    /** What lies over a spot nearer than this covers it, in: common practice, no source. */
    static final double OVER = 1.0 / 64;

    private final Timber timber;
    private final Catalog catalog;
    private final Map<String, Optional<Tool>> tools = new ConcurrentHashMap<>();

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
        Point over = spot.outside(OVER);
        for (int i = 0; i < timber.count(); i++) {
            if (i != spot.body() && timber.up(i, step) && timber.solid(i).holds(over)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private OptionalInt inTheWay(Point head, Point way, Tool tool, Fastener.Cut use, double lean, int step) {
        double ahead = tool.ahead() ? use.length().toInches() : 0;
        Point back = way.times(-1);
        Point tip = head.plus(back.times(ahead));
        List<Convex> outline = new ArrayList<>(outline(tip, back, tool, lean));
        if (ahead > 0) {
            // what stands out before it is driven wants its room too: beyond something thin a tool would find its own
            outline.add(pointed(
                    /* tip= */ head, /* end= */ tip, use.fastener().diameter().toInches() / 2));
        }
        for (int i = 0; i < timber.count(); i++) {
            if (timber.up(i, step)) {
                for (Convex part : outline) {
                    if (part.meets(timber.solid(i))) {
                        return OptionalInt.of(i);
                    }
                }
            }
        }
        return OptionalInt.empty();
    }

    private static List<Convex> outline(Point tip, Point back, Tool tool, double lean) {
        Point end = tip.plus(back.times(tool.noseLength().toInches()));
        double turn = Math.toRadians(lean);
        Point along = back.times(Math.cos(turn)).plus(back.left().times(Math.sin(turn)));
        double wide = tool.bodyWidth().toInches() / 2;
        Point far = end.plus(along.times(tool.bodyLength().toInches()));
        Point across = along.left();
        return List.of(
                pointed(tip, end, tool.noseWidth().toInches() / 2),
                new Convex(List.of(
                        end.minus(across.times(wide)),
                        far.minus(across.times(wide)),
                        far.plus(across.times(wide)),
                        end.plus(across.times(wide)))));
    }

    /** From a tip that is as steep as a slant may be to an end so wide to either side. */
    private static Convex pointed(Point tip, Point end, double half) {
        Point step = end.minus(tip);
        Point back = step.unit();
        Point aside = back.left().times(half);
        Point shoulder = tip.plus(back.times(Math.min(half, step.length())));
        return new Convex(List.of(tip, shoulder.minus(aside), end.minus(aside), end.plus(aside), shoulder.plus(aside)));
    }

    /** A convex part of a tool, in either sense of walk; in plain numbers. */
    private static final class Convex {
        private final Box box;
        private final Point middle;
        private final double[] x;
        private final double[] y;
        /** Square to each side, into the part; the side begins at the corner of that number. */
        private final double[] inwardX;

        private final double[] inwardY;

        Convex(List<Point> corners) {
            int count = corners.size();
            this.x = new double[count];
            this.y = new double[count];
            this.inwardX = new double[count];
            this.inwardY = new double[count];
            Box around = Box.of(corners.get(0), corners.get(0));
            Point sum = Point.ORIGIN;
            for (Point corner : corners) {
                around = around.with(Box.of(corner, corner));
                sum = sum.plus(corner);
            }
            this.box = around;
            this.middle = sum.times(1.0 / count);
            for (int i = 0; i < count; i++) {
                Point corner = corners.get(i);
                Point side = corners.get((i + 1) % count).minus(corner).unit();
                Point inward = side.left().dot(middle.minus(corner)) > 0 ? side.left() : side.right();
                x[i] = corner.x();
                y[i] = corner.y();
                inwardX[i] = inward.x();
                inwardY[i] = inward.y();
            }
        }

        boolean meets(Timber.Solid body) {
            if (!box.near(body.outline().box(), 0)) {
                return false;
            }
            List<Point> ring = body.ring();
            Point a = ring.get(ring.size() - 1);
            for (Point b : ring) {
                if (inside(a, b) > Tolerance.TOUCHING) {
                    return true;
                }
                a = b;
            }
            return body.holds(middle);
        }

        /** How much of the step from {@code a} to {@code b} lies inside by more than touching (Cyrus and Beck). */
        private double inside(Point a, Point b) {
            double stepX = b.x() - a.x();
            double stepY = b.y() - a.y();
            double from = 0;
            double to = 1;
            for (int i = 0; i < x.length; i++) {
                double start = (a.x() - x[i]) * inwardX[i] + (a.y() - y[i]) * inwardY[i] - Tolerance.TOUCHING;
                double rate = stepX * inwardX[i] + stepY * inwardY[i];
                if (Math.abs(rate) < Tolerance.COINCIDENT) {
                    if (start < 0) {
                        return 0;
                    }
                } else if (rate > 0) {
                    from = Math.max(from, -start / rate);
                } else {
                    to = Math.min(to, -start / rate);
                }
                if (to <= from) {
                    return 0;
                }
            }
            return (to - from) * Math.sqrt(stepX * stepX + stepY * stepY);
        }
    }
}

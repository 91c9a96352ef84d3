package buildup.engine.mill.milling;

import buildup.catalog.mill.Cutter;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Carving;
import buildup.profiles.travel.Access;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every way in which a listed cutter makes some of the outline without biting into the rest. A cutter fits where its edge
 * runs on the outline within touching: an arc by radius and center, a flat by the end and the side of a square cutter.
 */
final class CutterFitting {
    private static final Phrase THROUGH = Phrase.of("{blade} through");
    private static final Phrase THROUGH_TILTED = Phrase.of("{blade} through, tilted {tilt}");
    private static final int MOST_SAW_KERFS = 4;
    private final MillStick stick;
    private final List<Cutter.Sized> cutters;
    private final double far;
    private final List<Pass> passes = new ArrayList<>();

    private CutterFitting(MillStick stick, List<Cutter> cutters) {
        this.stick = stick;
        this.cutters =
                cutters.stream().flatMap(cutter -> cutter.sized().stream()).toList();
        this.far = 4 * (stick.box().width() + stick.box().height());
    }

    static List<Pass> all(MillStick stick, List<Cutter> cutters) {
        CutterFitting fitting = new CutterFitting(stick, cutters);
        for (int i = 0; i < stick.count(); i++) {
            if (stick.segment(i) instanceof Arc arc) {
                fitting.round(arc);
            } else if (stick.segment(i) instanceof Line line && !stick.isPlaned(line)) {
                fitting.slope(line);
                fitting.rip(line);
                for (Side side : Side.SQUARE) {
                    fitting.flat(i, line, side);
                }
            }
        }
        return List.copyOf(fitting.passes);
    }

    /** Bits whose edge holds an arc of the same radius, the other way round. */
    private void round(Arc arc) {
        for (Cutter.Sized sized : cutters) {
            for (Side side : Side.SQUARE) {
                Outline turned = Bit.of(sized, far).moved(Motion.turn(side.degrees() - 90));
                for (Segment edge : Bit.edges(turned)) {
                    if (edge instanceof Arc own
                            && own.counterclockwise() != arc.counterclockwise()
                            && Math.abs(own.radius() - arc.radius()) <= Tolerance.TOUCHING) {
                        put(sized, side, turned, arc.center().minus(own.center()));
                    }
                }
            }
        }
    }

    /** Chamfer bits whose edge runs along a slope, from its deeper end. */
    private void slope(Line line) {
        for (Cutter.Sized sized : cutters) {
            if (sized.cutter().kind() != Cutter.Kind.CHAMFER) {
                continue;
            }
            for (Side side : Side.SQUARE) {
                Point up = Point.towards(Math.toRadians(side.degrees()));
                Outline turned = Bit.of(sized, far).moved(Motion.turn(side.degrees() - 90));
                for (Segment edge : Bit.edges(turned)) {
                    boolean along = edge instanceof Line
                            && edge.direction(0).dot(line.direction(0)) < -1 + Tolerance.SAME_DIRECTION / 2
                            && Math.abs(edge.direction(0).cross(up)) > Tolerance.SAME_SHARE
                            && Math.abs(edge.direction(0).dot(up)) > Tolerance.SAME_SHARE;
                    if (along) {
                        boolean rises = line.direction(0).dot(up) > 0;
                        put(
                                sized,
                                side,
                                turned,
                                rises ? line.from().minus(edge.to()) : line.to().minus(edge.from()));
                    }
                }
            }
        }
    }

    private void put(Cutter.Sized sized, Side side, Outline turned, Point shift) {
        Outline placed = turned.moved(Motion.shift(shift.x(), shift.y()));
        double depth = depth(side, Bit.edges(placed));
        if (depth > sized.cutter().depth().toInches() + Tolerance.TOUCHING) {
            return;
        }
        List<Access.Stretch> makes = makes(Bit.edges(placed));
        if (!makes.isEmpty() && !Carving.bites(placed, stick.outline())) {
            passes.add(new Pass(sized, sized.phrase(), side, 1, depth, fence(side, shift), false, placed, makes));
        }
    }

    /** The blade through and through along a line that has all the wood on one side. */
    private void rip(Line line) {
        Point along = line.direction(0);
        Point out = along.right();
        Point middle = line.at(0.5);
        List<Segment> ring = new ArrayList<>();
        List<Point> corners = List.of(
                middle.minus(along.times(far)),
                middle.minus(along.times(far)).plus(out.times(far)),
                middle.plus(along.times(far)).plus(out.times(far)),
                middle.plus(along.times(far)));
        for (int k = 0; k < 4; k++) {
            ring.add(new Line(corners.get(k), corners.get((k + 1) % 4)));
        }
        Outline off = Outline.closed(
                ring.stream().map(segment -> new Stroke(segment, Bit.EDGE)).toList());
        Optional<Cutter.Sized> blade = saws().stream().findFirst();
        double through = through(line);
        if (blade.isEmpty()
                || through > blade.get().cutter().depth().toInches()
                || Carving.bites(off, stick.outline())) {
            return;
        }
        Side side = Side.SQUARE.stream()
                .min(Comparator.comparingDouble(one -> -out.dot(Point.towards(Math.toRadians(one.degrees())))))
                .orElseThrow();
        double steep = Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x())));
        double tilt = Math.min(steep, 90 - steep);
        passes.add(new Pass(
                blade.get(),
                (tilt > 0.01 ? THROUGH_TILTED : THROUGH)
                        .with("blade", blade.get().cutter().name())
                        .with("tilt", Figure.angle(tilt)),
                side,
                1,
                through,
                fence(side, middle),
                true,
                off,
                makes(List.of(off.strokes().get(3).segment()))));
    }

    /** Length of a line that lies in the blank. */
    private double through(Line line) {
        Point along = line.direction(0);
        Line whole = new Line(line.from().minus(along.times(far)), line.to().plus(along.times(far)));
        List<Double> places = new ArrayList<>();
        for (Stroke side : Outline.rectangle(stick.box()).strokes()) {
            Crossings.of(whole, side.segment(), Tolerance.SNAP)
                    .forEach(p -> places.add(p.minus(line.from()).dot(along)));
        }
        double least = places.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most = places.stream().mapToDouble(Double::doubleValue).max().orElse(line.length());
        return most - least;
    }

    private List<Cutter.Sized> saws() {
        return cutters.stream()
                .filter(sized -> sized.cutter().kind() == Cutter.Kind.SAW)
                .toList();
    }

    /** A flat that faces a side, or lies along it: square cutters, moved over as often as the flat is wide. */
    private void flat(int stroke, Line line, Side side) {
        Motion level = Motion.turn(90 - side.degrees());
        Line laid = line.moved(level);
        Outline wood = stick.outline().moved(level);
        boolean floor = Math.abs(laid.direction(0).y()) < Tolerance.SAME_SHARE
                && laid.direction(0).x() < 0;
        boolean wall = Math.abs(laid.direction(0).x()) < Tolerance.SAME_SHARE;
        if (floor) {
            rabbet(stroke, line, side);
            Lane lane = Lane.over(wood, laid.box());
            if (lane.open()) {
                square(side, lane.left(), lane.right(), lane.floor(), lane.closed(), level);
            }
        } else if (wall) {
            double toAir = laid.direction(0).y() > 0 ? 1 : -1;
            wall(side, laid, toAir, level);
        }
    }

    private void square(Side side, double left, double right, double floor, boolean closed, Motion level) {
        double width = right - left;
        double depth = top(level) - floor;
        square(Cutter.Kind.STRAIGHT, depth)
                .filter(sized -> !closed || sized.size().toInches() <= width + Tolerance.TOUCHING)
                .max(Comparator.comparing(Cutter.Sized::size))
                .ifPresent(sized -> sweep(sized, side, left, right, floor, level));
        square(Cutter.Kind.SAW, depth)
                .filter(sized -> !closed || sized.size().toInches() <= width + Tolerance.TOUCHING)
                .filter(sized -> width <= MOST_SAW_KERFS * sized.size().toInches())
                .max(Comparator.comparing(Cutter.Sized::size))
                .ifPresent(sized -> sweep(sized, side, left, right, floor, level));
    }

    private Stream<Cutter.Sized> square(Cutter.Kind kind, double depth) {
        return cutters.stream()
                .filter(sized -> sized.cutter().kind() == kind)
                .filter(sized -> sized.cutter().depth().toInches() >= depth - Tolerance.TOUCHING);
    }

    private void sweep(Cutter.Sized sized, Side side, double left, double right, double floor, Motion level) {
        double size = sized.size().toInches();
        double width = Math.max(right - left, size);
        int times = (int) Math.ceil((width - Tolerance.TOUCHING) / size);
        Box box = new Box(left, floor, left + width, floor + far);
        Motion back = Motion.turn(side.degrees() - 90);
        Outline swept = Outline.closed(Outline.rectangle(box).strokes().stream()
                .map(stroke -> stroke.moved(back).named(stroke.member().equals("top") ? "shaft" : Bit.EDGE))
                .toList());
        List<Access.Stretch> makes = makes(Bit.edges(swept));
        if (!makes.isEmpty() && !Carving.bites(swept, stick.outline())) {
            Point axis = back.apply(new Point(left + size / 2, floor));
            passes.add(new Pass(
                    sized, sized.phrase(), side, times, top(level) - floor, fence(side, axis), false, swept, makes));
        }
    }

    /** The side of a square cutter against a wall that no flat ends on. */
    private void wall(Side side, Line laid, double toAir, Motion level) {
        double foot = Math.min(laid.from().y(), laid.to().y());
        double x = laid.from().x();
        double depth = top(level) - foot;
        List<Cutter.Sized> largestFirst = square(Cutter.Kind.STRAIGHT, depth)
                .sorted(Comparator.comparing(Cutter.Sized::size).reversed())
                .toList();
        int before = passes.size();
        for (Cutter.Sized sized : largestFirst) {
            double size = sized.size().toInches();
            if (passes.size() == before) {
                sweep(sized, side, toAir > 0 ? x : x - size, toAir > 0 ? x + size : x, foot, level);
            }
        }
    }

    /** A rabbeting bit whose pilot runs on the wood below the step. */
    private void rabbet(int stroke, Line line, Side side) {
        for (Cutter.Sized sized : cutters) {
            if (sized.cutter().kind() != Cutter.Kind.RABBET
                    || Math.abs(sized.size().toInches() - line.length()) > Tolerance.TOUCHING) {
                continue;
            }
            Outline turned = Bit.of(sized, far).moved(Motion.turn(side.degrees() - 90));
            for (Segment edge : Bit.edges(turned)) {
                if (edge instanceof Line && edge.direction(0).dot(line.direction(0)) < -1 + Tolerance.SAME_SHARE) {
                    put(sized, side, turned, stick.segment(stroke).from().minus(edge.to()));
                }
            }
        }
    }

    private List<Access.Stretch> makes(List<Segment> edges) {
        List<Access.Stretch> makes = new ArrayList<>();
        for (int i = 0; i < stick.count(); i++) {
            Segment segment = stick.segment(i);
            for (Segment edge : edges) {
                if (stick.isPlaned(segment) || edge instanceof Arc != segment instanceof Arc) {
                    continue;
                }
                double a = segment.nearest(edge.from());
                double b = segment.nearest(edge.to());
                Access.Stretch stretch = new Access.Stretch(i, Math.min(a, b), Math.max(a, b));
                if (runsOn(edge, segment, stretch)) {
                    makes.add(stretch);
                }
            }
        }
        return makes;
    }

    private static boolean runsOn(Segment edge, Segment segment, Access.Stretch stretch) {
        double share = stretch.to() - stretch.from();
        if (share * segment.length() <= Tolerance.TOUCHING) {
            return false;
        }
        for (double part : new double[] {0.02, 0.25, 0.5, 0.75, 0.98}) {
            if (edge.distance(segment.at(stretch.from() + part * share)) > Tolerance.TOUCHING) {
                return false;
            }
        }
        return true;
    }

    /** How far the deepest of some edges lies below a side of the blank. */
    private double depth(Side side, List<Segment> edges) {
        Motion level = Motion.turn(90 - side.degrees());
        double tip = edges.stream()
                .mapToDouble(edge -> edge.moved(level).box().bottom())
                .min()
                .orElse(0);
        return top(level) - tip;
    }

    /** The upper side of the blank, turned so. */
    private double top(Motion level) {
        return stick.outline().moved(level).box().top();
    }

    private static double fence(Side side, Point axis) {
        return side.equals(Side.ABOVE) || side.equals(Side.BELOW) ? axis.x() : axis.y();
    }
}

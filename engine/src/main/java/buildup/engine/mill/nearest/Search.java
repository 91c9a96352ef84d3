package buildup.engine.mill.nearest;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Difference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Lays one outline onto another so that the area in one of the two alone is least: from the best of a few plain places
 * (edges flush, middles together) downhill by ever smaller steps.
 *
 * @param spring turns between lying flat and standing where one of the two outlines is sprung and the other may stand,
 *     degrees; none else
 */
record Search(Outline outline, Difference wanted, Outline stick, Freedom freedom, List<Double> spring) {
    /** How far the angle is stepped where any turn may be. */
    private static final int DEGREES = 10;

    /** Poses whose plain place is worse than the best, or than the limit, by this factor are not followed. */
    private static final double WORTH = 2;

    private static final int MOST_FOLLOWED = 3;

    /**
     * One step moves the outline by so much all round, and the halved steps behind it by as much together: a place farther
     * beyond the limit than twice that is not followed to its end.
     */
    private static final double HOPE = 2;

    /** The greatest side of a molding of usual size, in. */
    private static final double USUAL = 8;

    /** Moves after which a descent ends where it is: a dozen comparisons each, and no catalog shape needs half of them. */
    private static final int MOST_MOVES = 300;

    /** A place and the area that lies in one of the two alone there. */
    record Laid(Pose pose, double apart) {}

    /**
     * The plain places, the best first; those that cannot be followed to anything within a limit are told as farther apart
     * than all, and not looked at.
     *
     * @param limit what is farther apart is not asked for, sq in
     */
    List<Laid> starts(double limit) {
        return poses().map(pose -> start(pose, WORTH * limit))
                .sorted(Comparator.comparingDouble(Laid::apart))
                .toList();
    }

    /**
     * The best place to be found from the plain ones.
     *
     * @param starts the plain places, the best first
     * @param limit what is farther apart is not asked for, sq in
     */
    Laid best(List<Laid> starts, double limit) {
        double follow = WORTH * Math.min(limit, starts.get(0).apart());
        Laid best = starts.get(0);
        for (Laid start : starts.subList(0, Math.min(MOST_FOLLOWED, starts.size()))) {
            if (start.apart() <= follow && start.apart() > gain()) {
                Laid found = downhill(start, limit);
                best = found.apart() < best.apart() - gain() ? found : best;
            }
        }
        return best;
    }

    private Stream<Pose> poses() {
        Stream<Pose> turned = freedom.anyTurn()
                ? Stream.concat(
                        Pose.quarters().stream(),
                        Stream.of(false, true)
                                .flatMap(over -> DoubleStream.iterate(
                                                DEGREES, turn -> turn < 360, turn -> turn + DEGREES)
                                        .filter(turn -> turn % 90 != 0)
                                        .mapToObj(turn -> Pose.of(over, turn))))
                : Stream.concat(Pose.quarters().stream(), standing());
        return freedom.scale() ? turned.flatMap(this::sizes) : turned;
    }

    /** Quarter turns of a stick that is turned by its spring first: as it stands on the wall, or back from there. */
    private Stream<Pose> standing() {
        return Stream.of(false, true)
                .flatMap(over -> spring.stream()
                        .flatMap(turn -> Stream.of(0, 90, 180, 270).map(quarter -> Pose.of(over, quarter + turn))));
    }

    /** So large that the areas are the same, the widths, the heights; and as it is. */
    private Stream<Pose> sizes(Pose pose) {
        Box own = pose.apply(stick).box();
        Box asked = wanted.box();
        if (pose.turn() % 90 != 0) {
            return Stream.of(new Pose(pose.over(), pose.turn(), Math.sqrt(wanted.area() / stick.area()), pose.shift()));
        }
        return DoubleStream.of(
                        1,
                        Math.sqrt(wanted.area() / stick.area()),
                        asked.width() / own.width(),
                        asked.height() / own.height())
                .mapToObj(scale -> new Pose(pose.over(), pose.turn(), scale, pose.shift()));
    }

    /** The best of the plain places; the earlier one where two are as good. */
    private Laid start(Pose pose, double limit) {
        Laid best = new Laid(pose, Double.POSITIVE_INFINITY);
        double own = stick.area() * pose.scale() * pose.scale();
        if (Math.abs(own - wanted.area()) > limit) {
            return best;
        }
        Outline there = pose.apply(stick);
        List<Point> steps =
                pose.turn() % 90 == 0 || !freedom.anyTurn() ? plain(outline, there) : middle(outline, there);
        Optional<Difference> laid = Optional.empty();
        for (Point step : steps) {
            // what is shared lies in both boxes
            Box box = there.box();
            double across = overlap(
                    box.back() + step.x(),
                    box.face() + step.x(),
                    wanted.box().back(),
                    wanted.box().face());
            double up = overlap(
                    box.bottom() + step.y(),
                    box.top() + step.y(),
                    wanted.box().bottom(),
                    wanted.box().top());
            if (own + wanted.area() - 2 * across * up > limit) {
                continue;
            }
            laid = laid.or(() -> Optional.of(Difference.from(there)));
            double apart = wanted.to(laid.get().shifted(step.x(), step.y()));
            if (apart < best.apart() - gain()) {
                best = new Laid(pose.shifted(step), apart);
            }
        }
        return best;
    }

    private static List<Point> plain(Outline wanted, Outline laid) {
        Box a = wanted.box();
        Box b = laid.box();
        double out = (a.back() + a.face() - b.back() - b.face()) / 2;
        double up = (a.bottom() + a.top() - b.bottom() - b.top()) / 2;
        List<Point> places = new ArrayList<>();
        for (double dx : List.of(a.back() - b.back(), a.face() - b.face(), out)) {
            for (double dy : List.of(a.bottom() - b.bottom(), a.top() - b.top(), up)) {
                places.add(new Point(dx, dy));
            }
        }
        // last, so that of two places as good the one with flush edges is taken
        places.addAll(middle(wanted, laid));
        return apart(places);
    }

    /** Without those that lie on one before them: of boxes as wide or as high, edges and middles are flush together. */
    private static List<Point> apart(List<Point> places) {
        List<Point> apart = new ArrayList<>();
        for (Point place : places) {
            if (apart.stream().noneMatch(other -> other.near(place, Tolerance.COINCIDENT))) {
                apart.add(place);
            }
        }
        return apart;
    }

    private static double overlap(double low, double high, double otherLow, double otherHigh) {
        return Math.max(0, Math.min(high, otherHigh) - Math.max(low, otherLow));
    }

    private static List<Point> middle(Outline wanted, Outline laid) {
        return List.of(wanted.centroid().minus(laid.centroid()));
    }

    private Laid downhill(Laid start, double limit) {
        Laid best = start;
        Box box = wanted.box();
        double step = Math.min(box.width(), box.height()) / 8;
        double around = 2 * (box.width() + box.height());
        Pose still = start.pose();
        Difference laid = Difference.from(still.apply(stick));
        double finest = (freedom.anyTurn() || freedom.scale() ? Tolerance.FREE_STEP : Tolerance.FINEST_STEP)
                * Math.max(1, size() / USUAL);
        for (int moves = 0; step > finest && moves < MOST_MOVES; moves++) {
            Laid from = best;
            if (!from.pose().sameBut(still)) {
                still = from.pose();
                laid = Difference.from(still.apply(stick));
            }
            for (Pose next : beside(from.pose(), step)) {
                Point way = next.shift().minus(still.shift());
                double apart = wanted.to(
                        next.sameBut(still) ? laid.shifted(way.x(), way.y()) : Difference.from(next.apply(stick)));
                if (apart < best.apart() - gain()) {
                    best = new Laid(next, apart);
                }
            }
            step = best.equals(from) ? step / 2 : step;
            if (best.apart() - limit > HOPE * step * around) {
                return best;
            }
        }
        return best;
    }

    /** The greatest side of what is wanted, in. */
    private double size() {
        return Math.max(wanted.box().width(), wanted.box().height());
    }

    private double gain() {
        return Tolerance.GAIN * Math.max(1, wanted.area());
    }

    private List<Pose> beside(Pose pose, double step) {
        List<Pose> near = new ArrayList<>();
        for (int right = -1; right <= 1; right++) {
            for (int up = -1; up <= 1; up++) {
                if (right != 0 || up != 0) {
                    near.add(pose.shifted(new Point(right * step, up * step)));
                }
            }
        }
        for (double way : List.of(-1.0, 1.0)) {
            if (freedom.anyTurn()) {
                near.add(about(pose, pose.turn() + way * Math.toDegrees(step / size()), pose.scale()));
            }
            if (freedom.scale()) {
                near.add(about(pose, pose.turn(), pose.scale() * (1 + way * step / size())));
            }
        }
        return near;
    }

    /** Turned and sized about its own middle, which stays where it is. */
    private Pose about(Pose pose, double turn, double scale) {
        Pose next = new Pose(pose.over(), turn, scale, Point.ORIGIN);
        return next.shifted(pose.apply(stick).centroid().minus(next.apply(stick).centroid()));
    }
}

package buildup.profiles.trace;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns a fitted ring so that its back is upright, and binds what is level or upright to be so. */
final class Squaring {
    /** A tracing lies no more askew than this, else its longest flat is the back. */
    private static final double ASKEW = Math.toRadians(25);

    /** A line this near to level or upright is looked at. */
    private static final double NEARLY = Math.toRadians(15);

    /** Standard deviations within which a line may be level or upright. */
    private static final double WITHIN = 3.5;

    /** Points so many standard deviations in front of a line still lie on it. */
    private static final double FRONT = 4.5;

    /** Angles at which sprung moldings commonly stand, degrees; common practice, no source. */
    private static final List<Double> SPRINGS = List.of(30.0, 38.0, 45.0, 52.0, 60.0);

    private static final double QUARTER = Math.PI / 2;

    private Squaring() {}

    /**
     * A flat on which the piece can lie: no point of the ring lies beyond it.
     *
     * @param span from its first to its last point, hollows between them included, in
     */
    private record Flat(int curve, double angle, double span) {
        /** How far it is turned from looking straight at the wall, radians. */
        double fromBack() {
            return Math.abs(Math.IEEEremainder(angle - Math.PI, 2 * Math.PI));
        }

        double fromFace() {
            return Math.abs(Math.IEEEremainder(angle, 2 * Math.PI));
        }
    }

    /** Whether the room side is flatter than the back: the tracing is mirrored. */
    static boolean mirrored(Fitting fitting) {
        List<Flat> flats = flats(fitting);
        double back = longest(
                        flats.stream().filter(flat -> flat.fromBack() < ASKEW).toList())
                .map(Flat::span)
                .orElse(0.0);
        double face = longest(
                        flats.stream().filter(flat -> flat.fromFace() < ASKEW).toList())
                .map(Flat::span)
                .orElse(0.0);
        return face > 1.25 * back;
    }

    /** The turn that brings the back upright; none when nothing is flat. */
    static Motion turn(Fitting fitting) {
        Motion flat = flatTurn(fitting);
        return flat.then(springTurn(fitting.moved(flat)));
    }

    /** The turn by everything that is level or upright. */
    private static Motion flatTurn(Fitting fitting) {
        List<Flat> flats = flats(fitting);
        Optional<Flat> back = longest(
                        flats.stream().filter(flat -> flat.fromBack() < ASKEW).toList())
                .or(() -> longest(flats));
        if (back.isEmpty()) {
            return Motion.NONE;
        }
        double askew = Math.IEEEremainder(back.get().angle() - Math.PI, 2 * Math.PI);
        double own = slack(fitting, back.get().curve());
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < fitting.curves().size(); i++) {
            if (fitting.curves().get(i) instanceof Curve.Straight line) {
                double off = Math.IEEEremainder(line.angle() - askew, QUARTER);
                double slack = slack(fitting, i);
                if (Math.abs(off) < Math.min(NEARLY, WITHIN * Math.hypot(slack, own))) {
                    sum += off / (slack * slack);
                    weight += 1 / (slack * slack);
                }
            }
        }
        return Motion.turn(-Math.toDegrees(askew + (weight > 0 ? sum / weight : 0)));
    }

    /**
     * A sprung molding bears on short flats, which say little of its turn; its long faces say all once one knows at
     * which of the trade's angles they stand.
     */
    private static Motion springTurn(Fitting fitting) {
        int longest = -1;
        double flats = 0;
        for (int i = 0; i < fitting.curves().size(); i++) {
            if (fitting.curves().get(i) instanceof Curve.Straight line) {
                double slack = slack(fitting, i);
                if (Math.abs(Math.IEEEremainder(line.angle(), QUARTER)) < NEARLY) {
                    flats += 1 / (slack * slack);
                } else if (longest < 0 || slack < slack(fitting, longest)) {
                    longest = i;
                }
            }
        }
        if (longest < 0 || flats <= 0) {
            return Motion.NONE;
        }
        double own = slack(fitting, longest);
        double known = 1 / Math.sqrt(flats);
        double lean = Math.toDegrees(((Curve.Straight) fitting.curves().get(longest)).angle());
        double off = SPRINGS.stream()
                .map(spring -> Math.IEEEremainder(lean - spring, 90))
                .min(Comparator.comparingDouble(Math::abs))
                .orElse(0.0);
        // worth it only where the faces know better than the flats
        return own * 2 < known && Math.abs(Math.toRadians(off)) < WITHIN * Math.hypot(own, known)
                ? Motion.turn(-off)
                : Motion.NONE;
    }

    /** Lines that are level or upright within what the points allow, exactly so. */
    static Fitting squared(Fitting fitting) {
        Fitting squared = fitting;
        List<Integer> longestFirst = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            longestFirst.add(i);
        }
        longestFirst.sort(Comparator.comparingDouble(i -> slack(fitting, i)));
        for (int i : longestFirst) {
            if (fitting.curves().get(i) instanceof Curve.Straight line) {
                double off = Math.IEEEremainder(line.angle(), QUARTER);
                if (Math.abs(off) < NEARLY) {
                    squared = squared.tried(new Bond.Angle(i, line.angle() - off), Fitting.MEANT);
                }
            }
        }
        return squared;
    }

    /** Standard deviation of a line's angle: noise sqrt(12 / n) / length, of n points evenly along it. */
    private static double slack(Fitting fitting, int curve) {
        List<Point> on = fitting.points().get(curve);
        double length = Math.max(on.get(0).distance(on.get(on.size() - 1)), fitting.noise());
        return fitting.noise() * Math.sqrt(12.0 / on.size()) / length;
    }

    private static Optional<Flat> longest(List<Flat> flats) {
        return flats.stream().max(Comparator.comparingDouble(Flat::span));
    }

    private static List<Flat> flats(Fitting fitting) {
        List<Flat> flats = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            if (fitting.curves().get(i) instanceof Curve.Straight line) {
                span(fitting, line, i).ifPresent(flats::add);
            }
        }
        return flats;
    }

    private static Optional<Flat> span(Fitting fitting, Curve.Straight line, int curve) {
        double near = FRONT * fitting.noise();
        // a short line's own angle is not known better than to this, seen from the far end of the piece
        double reach = WITHIN * slack(fitting, curve);
        Point way = line.normal().left();
        Point middle = line.foot(
                fitting.points().get(curve).get(fitting.points().get(curve).size() / 2));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (List<Point> on : fitting.points()) {
            for (Point p : on) {
                double off = line.off(p);
                double along = p.minus(middle).dot(way);
                double slack = near + reach * Math.abs(along);
                if (off > slack) {
                    return Optional.empty();
                }
                if (off > -slack) {
                    least = Math.min(least, along);
                    most = Math.max(most, along);
                }
            }
        }
        return Optional.of(new Flat(curve, line.angle(), most - least));
    }
}

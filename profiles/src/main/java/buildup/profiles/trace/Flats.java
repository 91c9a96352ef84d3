package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The flats of a ring on which the piece can lie: no point of it lies beyond one of them. */
final class Flats {
    /** Points so many standard deviations in front of a line still lie on it. */
    private static final double FRONT = 4.5;

    /** Standard deviations within which a line's own angle is known. */
    private static final double WITHIN = 3.5;

    /** A round of so many times the size of the piece is a straight side that was not drawn quite straight. */
    private static final double NEARLY_STRAIGHT = 3;

    /** Flats of one side differ by no more, degrees. */
    private static final double ONE_SIDE = 5;

    private final Fitting fitting;
    private final List<Point> all;
    private final List<Flat> flats = new ArrayList<>();

    Flats(Fitting fitting) {
        this.fitting = fitting;
        this.all = fitting.points().stream().flatMap(List::stream).toList();
        double size = size();
        for (int i = 0; i < fitting.curves().size(); i++) {
            if (fitting.curves().get(i) instanceof Curve.Straight line) {
                span(line, i, 0).ifPresent(flats::add);
            } else if (fitting.curves().get(i) instanceof Curve.Round round
                    && round.radius() > NEARLY_STRAIGHT * size) {
                List<Point> on = fitting.points().get(i);
                Point from = on.get(0);
                Point way = on.get(on.size() - 1).minus(from);
                double bow = way.length() * way.length() / 8 / round.radius();
                span(Curve.Straight.through(from, way.unit()), i, bow).ifPresent(flats::add);
            }
        }
    }

    /**
     * A flat.
     *
     * @param angle of its normal, radians
     * @param span from its first to its last point, hollows between them included, in
     */
    record Flat(int curve, double angle, double span) {
        /** How far it is turned from looking in a direction, radians, 0 to pi. */
        double from(Point direction) {
            return Math.abs(Math.IEEEremainder(angle - direction.angle(), 2 * Math.PI));
        }
    }

    /** The longest that looks about in a direction. */
    Optional<Flat> towards(Point direction, double within) {
        return flats.stream().filter(flat -> flat.from(direction) < within).max(Comparator.comparingDouble(Flat::span));
    }

    Optional<Flat> longest() {
        return flats.stream().max(Comparator.comparingDouble(Flat::span));
    }

    /** Length of the flat that looks in a direction, 0 without one. */
    double length(Point direction) {
        return towards(direction, Math.toRadians(ONE_SIDE)).map(Flat::span).orElse(0.0);
    }

    /** Greatest distance of two points of the ring, nearly. */
    double size() {
        Point first = all.get(0);
        Point far =
                all.stream().max(Comparator.comparingDouble(first::distance)).orElse(first);
        return all.stream().mapToDouble(far::distance).max().orElse(0);
    }

    private Optional<Flat> span(Curve.Straight line, int curve, double bow) {
        double near = FRONT * fitting.noise().scatter() + bow;
        // a short line's own angle is not known better than to this, seen from the far end of the piece
        double reach = WITHIN * slack(fitting, curve);
        Point way = line.normal().left();
        Point middle = line.foot(
                fitting.points().get(curve).get(fitting.points().get(curve).size() / 2));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point p : all) {
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
        return Optional.of(new Flat(curve, line.angle(), most - least));
    }

    /** Standard deviation of a line's angle: noise sqrt(12 / n) / length, of n points evenly along it. */
    static double slack(Fitting fitting, int curve) {
        List<Point> on = fitting.points().get(curve);
        double scatter = fitting.noise().scatter();
        double length = Math.max(fitting.span(curve), scatter);
        return fitting.noise().weighed() * Math.sqrt(12.0 / on.size()) / length;
    }
}

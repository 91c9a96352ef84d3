package buildup.engine.judge.clearance;

import buildup.catalog.fire.FireBand;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far trim may project at each distance from an opening, as one rule says it: {@code x <= share * d + plus} in each
 * band of the distance {@code d}, and nothing nearer than the first band. Inches; x out from the wall plane, d from the
 * opening. What it says of an outline is exact: the bounds are straight between the bands, so only ends of segments, their
 * crossings with the bands' limits and the places of an arc that face a bound can decide.
 */
public final class FireEnvelope {
    private final List<Band> bands;

    /**
     * One stretch of distance.
     *
     * @param plus infinite where nothing bounds the projection
     */
    private record Band(double from, boolean past, double share, double plus) {
        double allowed(double distance) {
            return share * distance + plus;
        }

        boolean begun(double distance) {
            return past ? distance > from + Tolerance.SAME_SIZE : distance > from - Tolerance.SAME_SIZE;
        }
    }

    /**
     * What decides: the point of an outline that has the least to spare.
     *
     * @param distance of that point from the opening, in
     * @param has how far it projects, in
     * @param allowed how far it may, in
     */
    public record Tightest(double distance, double has, double allowed) {
        /** What is left of the projection that is allowed, in; negative when it projects too far. */
        public double margin() {
            return allowed - has;
        }
    }

    /**
     * How much farther away an outline has to be.
     *
     * @param more in; negative is what there is to spare, infinite when no distance is enough
     * @param past whether just so much is not yet enough
     */
    public record Need(double more, boolean past) {}

    private FireEnvelope(List<Band> bands) {
        this.bands = List.copyOf(bands);
    }

    /** The envelope of a rule's bands, the nearest first. */
    public static FireEnvelope of(List<FireBand> bands) {
        return new FireEnvelope(bands.stream()
                .map(band -> new Band(
                        band.from().toInches(),
                        band.past(),
                        band.any() ? 0 : band.share().doubleValue(),
                        band.any() ? Double.POSITIVE_INFINITY : band.plus().toInches()))
                .toList());
    }

    /** How far trim may project at a distance, in; 0 nearer than the first band, absent where nothing bounds it. */
    public OptionalDouble allowed(double distance) {
        double allowed = band(distance).map(band -> band.allowed(distance)).orElse(0.0);
        return Double.isInfinite(allowed) ? OptionalDouble.empty() : OptionalDouble.of(allowed);
    }

    private Optional<Band> band(double distance) {
        Optional<Band> found = Optional.empty();
        for (Band band : bands) {
            found = band.begun(distance) ? Optional.of(band) : found;
        }
        return found;
    }

    /** The least distance of any trim, in. */
    public double nearest() {
        return bands.get(0).from();
    }

    /**
     * The point of an outline that has the least to spare; absent when nothing bounds it anywhere.
     *
     * @param outline out from the wall plane and away from the opening
     * @param opening where the distance is counted from
     */
    public Optional<Tightest> tightest(Outline outline, double opening) {
        List<Double> levels = bands.stream().map(band -> opening + band.from()).toList();
        List<Point> slopes =
                bands.stream().map(band -> new Point(-1, band.share())).toList();
        List<Tightest> ends = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            List<Double> cuts = cuts(segment, levels, false, slopes);
            for (int i = 0; i + 1 < cuts.size(); i++) {
                Point middle = segment.at((cuts.get(i) + cuts.get(i + 1)) / 2);
                Optional<Band> band = band(middle.y() - opening);
                if (band.filter(free -> Double.isInfinite(free.plus())).isEmpty()) {
                    ends.add(tightest(segment.at(cuts.get(i)), opening, band));
                    ends.add(tightest(segment.at(cuts.get(i + 1)), opening, band));
                }
            }
        }
        return ends.stream().min(Comparator.comparingDouble(Tightest::margin));
    }

    private static Tightest tightest(Point p, double opening, Optional<Band> band) {
        double distance = p.y() - opening;
        return new Tightest(
                distance, p.x(), band.map(in -> in.allowed(distance)).orElse(0.0));
    }

    /** How much farther from the opening the whole outline has to be to keep within the envelope. */
    public Need needed(Outline outline, double opening) {
        List<Double> limits = new ArrayList<>();
        List<Point> slopes = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            limits.add(bands.get(i).allowed(bands.get(i).from()));
            limits.add(most(i));
            if (bands.get(i).share() > 0) {
                slopes.add(new Point(1 / bands.get(i).share(), -1));
            }
        }
        List<Double> levels = limits.stream().filter(Double::isFinite).toList();
        Need worst = new Need(Double.NEGATIVE_INFINITY, false);
        for (Segment segment : outline.segments()) {
            List<Double> cuts = cuts(segment, levels, true, slopes);
            for (int i = 0; i + 1 < cuts.size(); i++) {
                double projects =
                        segment.at((cuts.get(i) + cuts.get(i + 1)) / 2).x();
                if (projects <= Tolerance.SAME_SIZE) {
                    continue;
                }
                for (double t : List.of(cuts.get(i), cuts.get(i + 1))) {
                    Point p = segment.at(t);
                    Need found = needed(projects, p.x(), p.y() - opening);
                    worst = found.more() > worst.more() + Tolerance.COINCIDENT
                                    || (found.past() && found.more() > worst.more() - Tolerance.COINCIDENT)
                            ? found
                            : worst;
                }
            }
        }
        return worst;
    }

    /** The greatest projection that is allowed before the next band begins. */
    private double most(int number) {
        Band band = bands.get(number);
        if (number + 1 < bands.size()) {
            return band.allowed(bands.get(number + 1).from());
        }
        return band.share() > 0 ? Double.POSITIVE_INFINITY : band.plus();
    }

    /**
     * Of one point.
     *
     * @param stretch a projection in the midst of the stretch that the point ends
     */
    private Need needed(double stretch, double projects, double distance) {
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            if (stretch <= band.allowed(band.from()) + Tolerance.SAME_SIZE) {
                return new Need(band.from() - distance, band.past());
            }
            if (stretch <= most(i) + Tolerance.SAME_SIZE) {
                return new Need((projects - band.plus()) / band.share() - distance, false);
            }
        }
        return new Need(Double.POSITIVE_INFINITY, false);
    }

    /**
     * Places along a segment, 0 and 1 among them, between which a straight bound has no extreme.
     *
     * @param levels coordinates at which the bound changes
     * @param upright whether they are projections, else distances
     * @param slopes directions in which bounds are measured; an arc has its extremes there
     */
    private static List<Double> cuts(Segment segment, List<Double> levels, boolean upright, List<Point> slopes) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        levels.forEach(level -> cuts.addAll(crossings(segment, level, upright)));
        if (segment instanceof Arc arc) {
            slopes.forEach(slope -> {
                cuts.add(arc.atAngle(slope.angle()));
                cuts.add(arc.atAngle(slope.angle() + Math.PI));
            });
        }
        return cuts.stream().filter(t -> t >= 0 && t <= 1).distinct().sorted().toList();
    }

    private static List<Double> crossings(Segment segment, double level, boolean upright) {
        if (segment instanceof Line line) {
            double from = upright ? line.from().x() : line.from().y();
            double to = upright ? line.to().x() : line.to().y();
            return Math.abs(to - from) > Tolerance.COINCIDENT ? List.of((level - from) / (to - from)) : List.of();
        }
        Arc arc = (Arc) segment;
        double share = (level - (upright ? arc.center().x() : arc.center().y())) / arc.radius();
        if (Math.abs(share) > 1) {
            return List.of();
        }
        double angle = upright ? Math.acos(share) : Math.asin(share);
        return List.of(arc.atAngle(angle), arc.atAngle(upright ? -angle : Math.PI - angle));
    }

    /**
     * The edge of what is allowed, from the wall plane at the opening outward: out and away.
     *
     * @param widest how far out it is followed where nothing bounds it
     * @param farthest how far away it is followed where it goes on
     */
    public List<Point> edge(double widest, double farthest) {
        List<Point> edge = new ArrayList<>(List.of(new Point(0, 0)));
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            double end = i + 1 < bands.size() ? bands.get(i + 1).from() : Math.max(farthest, band.from());
            edge.add(new Point(edge.get(edge.size() - 1).x(), band.from()));
            edge.add(new Point(Math.min(widest, band.allowed(band.from())), band.from()));
            if (Double.isFinite(band.plus())) {
                edge.add(new Point(Math.min(widest, band.allowed(end)), end));
            }
        }
        return List.copyOf(edge);
    }
}

package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.fit.Fitting;
import buildup.profiles.trace.fit.Noise;
import buildup.profiles.trace.ring.Dot;
import buildup.profiles.trace.ring.Joining;
import buildup.profiles.trace.ring.RingSizes;
import buildup.profiles.trace.ring.Stepping;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What was drawn when a tracing had come round: as good as the first round, where it lies along it. */
final class SecondRound {
    private static final int LOOKED_AT = 200;

    /** The second round lies no farther from the outline than so many times the noise of the first. */
    private static final double SAME_AGAIN = 2.5;

    /** No farther than this it was drawn by the same hand on the same sheet, and both rounds are off by chance alone. */
    private static final double BY_CHANCE = 1.3;

    private final Joining.Ring ring;
    private final double square;
    private final double most;

    private SecondRound(Joining.Ring ring, double square, double most) {
        this.ring = ring;
        this.square = square;
        this.most = most;
    }

    static SecondRound of(Joining.Ring ring) {
        int step = Math.max(1, ring.again().size() / LOOKED_AT);
        double sum = 0;
        double most = 0;
        int seen = 0;
        for (int i = 0; i < ring.again().size(); i += step) {
            double off = RingSizes.distance(ring.again().get(i).at(), ring.dots());
            sum += off * off;
            most = Math.max(most, off);
            seen++;
        }
        return new SecondRound(ring, sum / Math.max(1, seen), most);
    }

    /** How far it lies from the first round at most, in. */
    double most() {
        return most;
    }

    /** Whether it does not lie where the first round does. */
    boolean elsewhere(Noise noise) {
        return beyond(SAME_AGAIN, noise);
    }

    private boolean beyond(double times, Noise noise) {
        return Math.sqrt(square) > times * Math.sqrt(2) * noise.scatter();
    }

    /** A reading of the first round, fitted to the points of both where both tell the same. */
    Fitting joined(Fitting reading) {
        if (ring.again().isEmpty() || beyond(BY_CHANCE, reading.noise())) {
            return reading;
        }
        List<List<List<Point>>> beside = new ArrayList<>();
        reading.points().forEach(on -> {
            List<List<Point>> empty = new ArrayList<>();
            on.forEach(p -> empty.add(new ArrayList<>(List.of(p))));
            beside.add(empty);
        });
        for (Dot dot : Stepping.averaged(ring.again())) {
            nearest(dot.at(), reading.points(), beside).add(dot.at());
        }
        List<List<Point>> both = new ArrayList<>();
        for (int i = 0; i < beside.size(); i++) {
            int curve = i;
            both.add(beside.get(i).stream()
                    .flatMap(near -> {
                        Point way = reading.curves().get(curve).heading(near.get(0));
                        return near.stream().sorted(Comparator.comparingDouble(way::dot));
                    })
                    .toList());
        }
        return Fitting.solved(reading.curves(), both, reading.bonds(), reading.noise())
                .reassigned();
    }

    /** The points that stand beside that point of the first round which is nearest. */
    private static List<Point> nearest(Point p, List<List<Point>> points, List<List<List<Point>>> beside) {
        List<Point> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            List<Point> on = points.get(i);
            for (int k = 0; k < on.size(); k++) {
                double x = on.get(k).x() - p.x();
                double y = on.get(k).y() - p.y();
                if (x * x + y * y < least) {
                    least = x * x + y * y;
                    best = beside.get(i).get(k);
                }
            }
        }
        return best;
    }
}

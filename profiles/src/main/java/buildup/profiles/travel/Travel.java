package buildup.profiles.travel;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Finds where an outline that travels straight comes to rest on others. Inches. */
public final class Travel {
    private record Stretch(double from, double to) {
        boolean holds(double start, double end) {
            return from <= start && end <= to;
        }
    }

    private Travel() {}

    /**
     * The dy by which {@code moving} must be shifted so that, coming down from far above at its own x, it stops at its
     * first meeting with {@code obstacle}; empty when it passes by. An upright side that overlaps the path of another
     * by less than {@link Tolerance#TOUCHING} does not stop it.
     */
    public static OptionalDouble down(Outline moving, Outline obstacle) {
        return pass(moving, obstacle) ? OptionalDouble.empty() : down(Envelope.lower(moving), Envelope.upper(obstacle));
    }

    private static boolean pass(Outline moving, Outline obstacle) {
        return moving.box().back() > obstacle.box().face()
                || obstacle.box().back() > moving.box().face();
    }

    private static OptionalDouble down(Envelope over, Envelope under) {
        List<Stretch> grazed = grazed(over, under);
        OptionalDouble highest = OptionalDouble.empty();
        for (Envelope.Span low : under.spans()) {
            for (Envelope.Span high : over.spans()) {
                double from = Math.max(low.from(), high.from());
                double to = Math.min(low.to(), high.to());
                if (from < to && grazed.stream().noneMatch(stretch -> stretch.holds(from, to))) {
                    // so far it must rise to clear what is under it
                    double lift = low.piece().over(high.piece(), from, to);
                    highest = OptionalDouble.of(Math.max(lift, highest.orElse(lift)));
                }
            }
        }
        return highest;
    }

    /** The shift along the axis of {@code way} (along y, for BACK along x) to the first meeting with any obstacle. */
    public static OptionalDouble meeting(Outline moving, List<Outline> obstacles, Direction way) {
        Motion turn = way.turn();
        Outline turned = moving.moved(turn);
        Envelope over = Envelope.lower(turned);
        OptionalDouble highest = OptionalDouble.empty();
        List<Outline> inTheWay = obstacles.stream()
                .map(obstacle -> obstacle.moved(turn))
                .filter(under -> !pass(turned, under))
                .sorted(Comparator.comparingDouble(under -> -under.box().top()))
                .toList();
        for (Outline under : inTheWay) {
            if (highest.isPresent() && lies(under, highest.getAsDouble(), turned)) {
                break;
            }
            OptionalDouble lift = down(over, Envelope.upper(under));
            if (lift.isPresent()) {
                highest = OptionalDouble.of(Math.max(lift.getAsDouble(), highest.orElse(Double.NEGATIVE_INFINITY)));
            }
        }
        // adding 0.0 turns -0.0 into 0.0
        return highest.isPresent() ? OptionalDouble.of(way.sign() * highest.getAsDouble() + 0.0) : highest;
    }

    /** Whether all of an obstacle lies under what has been lifted so far: what is lower still need not be looked at. */
    private static boolean lies(Outline under, double lift, Outline moving) {
        return under.box().top() + Tolerance.COINCIDENT < moving.box().bottom() + lift;
    }

    /** Between an upright side of the one and an upright side of the other nearer than touching. */
    private static List<Stretch> grazed(Envelope over, Envelope under) {
        List<Stretch> stretches = new ArrayList<>();
        for (double a : over.jumps()) {
            for (double b : under.jumps()) {
                if (Math.abs(a - b) < Tolerance.TOUCHING) {
                    stretches.add(new Stretch(Math.min(a, b), Math.max(a, b)));
                }
            }
        }
        return stretches;
    }
}

package buildup.profiles.travel;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
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
        if (moving.box().back() > obstacle.box().face()
                || obstacle.box().back() > moving.box().face()) {
            return OptionalDouble.empty();
        }
        Envelope over = Envelope.lower(moving);
        Envelope under = Envelope.upper(obstacle);
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
        return obstacles.stream()
                .map(obstacle -> down(turned, obstacle.moved(turn)))
                .flatMapToDouble(OptionalDouble::stream)
                .max()
                .stream()
                // adding 0.0 turns -0.0 into 0.0
                .map(shift -> way.sign() * shift + 0.0)
                .findFirst();
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

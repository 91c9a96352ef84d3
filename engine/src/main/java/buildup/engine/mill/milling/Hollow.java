package buildup.engine.mill.milling;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.rolling.Rolling;
import java.util.ArrayList;
import java.util.List;

/**
 * A hollow member and the round cutters that can follow it.
 *
 * @param radius of the hollow itself, in
 * @param largest radius of a round cutter that touches all of it; 0 when none does
 */
public record Hollow(int stroke, String member, double radius, double largest) {
    /** Halvings of the radius: to 1/1000 of it. */
    private static final int HALVINGS = 10;

    static List<Hollow> of(MillStick stick) {
        List<Hollow> hollows = new ArrayList<>();
        for (int i = 0; i < stick.count(); i++) {
            if (stick.segment(i) instanceof Arc arc && !arc.counterclockwise()) {
                hollows.add(new Hollow(i, stick.member(i), arc.radius(), largest(stick, i, arc)));
            }
        }
        return List.copyOf(hollows);
    }

    /** What a disc touches only shrinks as the disc grows, so halving finds the largest. */
    private static double largest(MillStick stick, int stroke, Arc arc) {
        if (follows(stick, stroke, arc, arc.radius())) {
            return arc.radius();
        }
        double low = 0;
        double high = arc.radius();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean follows = follows(stick, stroke, arc, middle);
            low = follows ? middle : low;
            high = follows ? high : middle;
        }
        return low;
    }

    private static boolean follows(MillStick stick, int stroke, Arc arc, double radius) {
        return Rolling.of(stick.outline(), radius).touched(stroke) >= arc.length() - Tolerance.TOUCHING;
    }
}

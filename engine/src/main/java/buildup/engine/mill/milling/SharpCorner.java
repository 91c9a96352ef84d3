package buildup.engine.mill.milling;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.rolling.Pocket;
import buildup.profiles.rolling.Rolling;
import java.util.ArrayList;
import java.util.List;

/**
 * A sharp inside corner.
 *
 * @param before the stroke that ends in it
 * @param degrees between its sides, through the air
 * @param radius that a round-edged cutter leaves, in
 * @param left wood that it leaves, sq in
 */
public record SharpCorner(int before, Point at, double degrees, double radius, double left) {
    private static final double SQUARE = 0.5;

    /** Whether it is square, to half a degree. */
    public boolean square() {
        return Math.abs(degrees - 90) < SQUARE;
    }

    /** In walking order. */
    static List<SharpCorner> of(MillStick stick, double radius) {
        List<Pocket> pockets = Rolling.of(stick.outline(), radius).pockets();
        List<SharpCorner> corners = new ArrayList<>();
        for (int i = 0; i < stick.count(); i++) {
            Segment in = stick.segment(i);
            Segment out = stick.segment((i + 1) % stick.count());
            double turn = turn(in.direction(1), out.direction(0));
            if (turn < -Tolerance.SAME_DIRECTION) {
                Point at = in.to();
                double left = pockets.stream()
                        .filter(pocket -> pocket.ring().stream()
                                .anyMatch(segment -> segment.from().near(at, Tolerance.SNAP)))
                        .mapToDouble(Pocket::area)
                        .sum();
                corners.add(new SharpCorner(i, at, 180 + Math.toDegrees(turn), radius, left));
            }
        }
        return List.copyOf(corners);
    }

    /** Radians, right turns negative; straight back is a crevice, which a sound outline may have where it may no spike. */
    private static double turn(Point in, Point out) {
        double turn = Math.atan2(in.cross(out), in.dot(out));
        return turn > Math.PI - Tolerance.SAME_DIRECTION ? -turn : turn;
    }
}

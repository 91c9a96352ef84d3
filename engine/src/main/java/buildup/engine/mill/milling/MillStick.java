package buildup.engine.mill.milling;

import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;

/**
 * The stick as it is run: square to the heads, a sprung molding flat on its back, lower left corner of its box at 0, 0.
 *
 * @param box the blank, finished in thickness and width
 */
public record MillStick(Outline outline, Box box) {
    static MillStick of(Profile profile) {
        Outline run = profile.asRun();
        Outline home = run.moved(Motion.shift(-run.box().back(), -run.box().bottom()));
        return new MillStick(home, home.box());
    }

    Segment segment(int stroke) {
        return outline.strokes().get(stroke).segment();
    }

    String member(int stroke) {
        return outline.strokes().get(stroke).member();
    }

    int count() {
        return outline.strokes().size();
    }

    /** Whether a segment lies in a side of the blank, so that nothing needs to make it. */
    public boolean isPlaned(Segment segment) {
        if (!(segment instanceof Line)) {
            return false;
        }
        Point a = segment.from();
        Point b = segment.to();
        return both(a.x(), b.x(), box.back())
                || both(a.x(), b.x(), box.face())
                || both(a.y(), b.y(), box.bottom())
                || both(a.y(), b.y(), box.top());
    }

    private static boolean both(double a, double b, double side) {
        return Math.abs(a - side) <= Tolerance.SNAP && Math.abs(b - side) <= Tolerance.SNAP;
    }
}

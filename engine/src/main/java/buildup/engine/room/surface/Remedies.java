package buildup.engine.room.surface;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** The ways to take what a surface is out of line. */
final class Remedies {
    /** What is farther off than this, in, is not closed: a wider strip is a board; shop practice, no source. */
    static final double NEAR = 3;

    private Remedies() {}

    /** None where the surface is straight and clear, or so far off that it is left alone. */
    static List<Remedy> of(GapAlong gap) {
        if (!gap.near() || (gap.even() && !gap.clashes())) {
            return List.of();
        }
        double least = gap.least().amount();
        double most = gap.most().amount();
        double clear = Math.max(0, -least);
        List<Remedy> ways = new ArrayList<>();
        if (gap.surface() == Surface.WALL) {
            // a straight piece lies on the highest hump, wherever it was drawn
            ways.add(new Remedy(gap, Remedy.Kind.SHIM, -least, 0, most - least));
            ways.add(new Remedy(gap, Remedy.Kind.SCRIBE, -most, 0, most - least));
        } else {
            ways.add(new Remedy(gap, Remedy.Kind.REVEAL, clear, least + clear, most + clear));
            ways.add(new Remedy(gap, Remedy.Kind.SCRIBE, -most, 0, most - least));
        }
        if (gap.leftOver() < gap.gap().variation() - Tolerance.SAW_CUT) {
            Remedy.Kind kind = gap.surface() == Surface.WALL ? Remedy.Kind.TURN : Remedy.Kind.FOLLOW;
            ways.add(new Remedy(gap, kind, gap.outOfLine(), 0, gap.leftOver()));
        }
        return ways;
    }
}

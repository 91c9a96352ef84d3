package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Area;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;

/** Lines from a text to the place that it speaks of. */
public final class Leaders {
    /** Radius of the dot at the place, in. */
    private static final double DOT = 0.022;

    private Leaders() {}

    /** The leader from the edge of a text, and the air round it, toward its middle's other end at a place. */
    public static Line to(Box text, Point place) {
        Point middle = text.middle();
        Point step = place.minus(middle);
        double inside = Math.min(
                share(text.width() / 2 + Drafting.AIR, step.x()), share(text.height() / 2 + Drafting.AIR, step.y()));
        return new Line(middle.plus(step.times(Math.min(1, inside))), place);
    }

    private static double share(double half, double step) {
        return half / Math.max(Tolerance.COINCIDENT, Math.abs(step));
    }

    /** The leader on paper that is seen on hatch too, with a dot at the place. */
    public static List<SceneItem> drawn(Line leader) {
        return List.of(
                new Path(List.of(leader), false, LineStyle.CASING),
                new Path(List.of(leader), false, LineStyle.LEADER),
                new Area(Optional.empty(), Optional.empty(), Caption.circle(leader.to(), DOT), Tone.INK));
    }
}

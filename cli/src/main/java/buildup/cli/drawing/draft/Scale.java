package buildup.cli.drawing.draft;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import java.util.List;

/** Makes what is drawn larger or smaller, seen from the origin. */
public final class Scale {
    private Scale() {}

    /** A box so much larger about the origin; {@code by} above 0. */
    public static Box of(Box box, double by) {
        return new Box(box.back() * by, box.bottom() * by, box.face() * by, box.top() * by);
    }

    /** A line so much larger about the origin; {@code by} above 0. */
    public static Line of(Line line, double by) {
        return line.scaled(by);
    }

    /** Segments so much larger about the origin; {@code by} above 0. */
    public static List<Segment> of(List<Segment> segments, double by) {
        return segments.stream().map(segment -> segment.scaled(by)).toList();
    }
}

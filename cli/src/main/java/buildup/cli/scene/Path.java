package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Segment;
import java.util.List;

/**
 * Drawn lines of one style. Segments that begin where the one before ends are drawn in one go.
 *
 * @param closed whether the last segment is joined to the first
 */
public record Path(List<Segment> segments, boolean closed, LineStyle style) implements SceneItem {
    public Path {
        segments = List.copyOf(segments);
    }

    @Override
    public Path moved(double right, double up) {
        return new Path(moved(segments, Motion.shift(right, up)), closed, style);
    }

    @Override
    public Box box() {
        return box(segments);
    }

    static List<Segment> moved(List<Segment> segments, Motion motion) {
        return segments.stream().map(segment -> segment.moved(motion)).toList();
    }

    static Box box(List<Segment> segments) {
        return Box.around(segments.stream().map(Segment::box).toList());
    }
}

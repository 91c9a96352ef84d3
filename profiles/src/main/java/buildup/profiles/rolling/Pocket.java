package buildup.profiles.rolling;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;

/** Air that the disc leaves, walked with it on the right: stretches of the outline, then the fillet, back to the start. */
public record Pocket(List<Segment> ring) {
    public Pocket {
        ring = List.copyOf(ring);
    }

    /** Exact area in square inches. */
    public double area() {
        Point home = ring.get(0).from();
        Motion shift = Motion.shift(-home.x(), -home.y());
        return Math.abs(ring.stream()
                        .mapToDouble(segment -> segment.moved(shift).twiceArea())
                        .sum())
                / 2;
    }
}

package buildup.profiles.rolling;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * The line inside an outline at one distance from it: the edge of its erosion by a disc (J. Serra, Image Analysis and
 * Mathematical Morphology, 1982, ch. II), true lines and arcs.
 */
public final class Inset {
    private Inset() {}

    /**
     * The line, stretch by stretch.
     *
     * @param distance from the outline, in; above 0
     * @return nothing when no place inside is so far from the outline
     */
    public static List<Segment> of(Outline outline, double distance) {
        List<Segment> walk = new ArrayList<>();
        List<Segment> segments = outline.segments();
        for (int i = segments.size() - 1; i >= 0; i--) {
            walk.add(segments.get(i).reversed());
        }
        List<Locus> loci = Locus.all(walk, distance);
        List<Box> boxes = loci.stream().map(locus -> locus.path().box()).toList();
        List<Segment> line = new ArrayList<>();
        for (int i = 0; i < loci.size(); i++) {
            Segment path = loci.get(i).path();
            if (path.length() <= Tolerance.SNAP) {
                continue;
            }
            List<Double> cuts = Rolling.cuts(i, loci, boxes);
            for (int k = 0; k + 1 < cuts.size(); k++) {
                double a = cuts.get(k);
                double b = cuts.get(k + 1);
                Point middle = path.at((a + b) / 2);
                boolean free = outline.holds(middle)
                        && segments.stream().allMatch(one -> one.distance(middle) >= distance - Tolerance.SNAP);
                if (free && path.length() * (b - a) > Tolerance.SNAP) {
                    line.add(path.part(a, b));
                }
            }
        }
        return List.copyOf(line);
    }
}

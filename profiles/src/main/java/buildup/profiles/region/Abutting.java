package buildup.profiles.region;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * The union of outlines that only lie against each other. Where two of them share a stretch, both walk it, one each way;
 * with these stretches taken out of all the walks, what is left is the boundary of the union: it winds once round every
 * place that lies in one of them, as their walks together do. No overlay is needed, and nothing is chorded or welded.
 *
 * <p>Where outlines lie in each other, nearly touch, or meet at a bare corner, there is no answer here.
 */
public final class Abutting {
    /** Corners of several outlines nearer than this are one, in. */
    private static final double SAME_CORNER = 10 * Tolerance.COINCIDENT;

    private final List<Outline> outlines;
    private final List<Bound> left = new ArrayList<>();

    private Abutting(List<Outline> outlines) {
        this.outlines = outlines;
    }

    /** How outlines meet, by their numbers. */
    @FunctionalInterface
    public interface Meetings {
        /** How the first meets the second, which has the greater number; nothing where that is in doubt. */
        Optional<Abutment> of(int first, int second);
    }

    /**
     * The parts of the union, as {@link WeldedOutlines#union} tells them; nothing where only an overlay can say. The air
     * that they enclose is in their holes, and nowhere else.
     */
    public static Optional<List<Part>> union(List<Outline> outlines, Meetings meetings) {
        List<List<Abutment.Covered>> covered = new ArrayList<>();
        outlines.forEach(outline -> covered.add(new ArrayList<>()));
        for (int i = 0; i < outlines.size(); i++) {
            for (int j = i + 1; j < outlines.size(); j++) {
                if (outlines.get(i).box().near(outlines.get(j).box(), 2 * Tolerance.TOUCHING)) {
                    Optional<Abutment> meeting = meetings.of(i, j);
                    if (meeting.isEmpty()) {
                        return Optional.empty();
                    }
                    covered.get(i).addAll(meeting.get().ofFirst());
                    covered.get(j).addAll(meeting.get().ofSecond());
                }
            }
        }
        Abutting abutting = new Abutting(outlines);
        for (int i = 0; i < outlines.size(); i++) {
            if (!abutting.leave(i, covered.get(i))) {
                return Optional.empty();
            }
        }
        return abutting.parts();
    }

    /** Keeps what of an outline no other lies against; false where two lie against one stretch, or a scrap is left. */
    private boolean leave(int outline, List<Abutment.Covered> covered) {
        covered.sort(Comparator.comparingInt(Abutment.Covered::stroke).thenComparingDouble(Abutment.Covered::start));
        List<Stroke> strokes = outlines.get(outline).strokes();
        int next = 0;
        for (int stroke = 0; stroke < strokes.size(); stroke++) {
            Segment whole = strokes.get(stroke).segment();
            double at = 0;
            for (; next < covered.size() && covered.get(next).stroke() == stroke; next++) {
                Abutment.Covered one = covered.get(next);
                double length = whole.length();
                boolean corner = one.end() <= one.start();
                if (!corner && (at - one.start()) * length > SAME_CORNER) {
                    return false;
                }
                if (!keep(outline, stroke, whole, at, one.start(), length)) {
                    return false;
                }
                at = Math.max(at, one.end());
            }
            if (!keep(outline, stroke, whole, at, 1, whole.length())) {
                return false;
            }
        }
        return true;
    }

    private boolean keep(int outline, int stroke, Segment whole, double from, double to, double length) {
        double kept = (to - from) * length;
        if (kept <= SAME_CORNER) {
            return true;
        }
        left.add(new Bound(outline, stroke, from <= 0 && to >= 1 ? whole : whole.part(from, to)));
        // a scrap of a longer stroke is where a union by chords would weld
        return kept >= Tolerance.TOUCHING || length < 2 * Tolerance.TOUCHING;
    }

    /** Joins what is left into rings; nothing where more than one walk goes on from a corner. */
    private Optional<List<Part>> parts() {
        int[] next = new int[left.size()];
        boolean[] reached = new boolean[left.size()];
        for (int i = 0; i < next.length; i++) {
            next[i] = next(i);
            if (next[i] < 0 || reached[next[i]]) {
                return Optional.empty();
            }
            reached[next[i]] = true;
        }
        List<Ring> outer = new ArrayList<>();
        List<Ring> holes = new ArrayList<>();
        boolean[] walked = new boolean[next.length];
        for (int i = 0; i < next.length; i++) {
            if (!walked[i]) {
                List<Bound> ring = new ArrayList<>();
                for (int k = i; !walked[k]; k = next[k]) {
                    walked[k] = true;
                    ring.add(left.get(k));
                }
                sort(joined(ring), outer, holes);
            }
        }
        return grouped(outer, holes);
    }

    /** The one that begins where this one ends; -1 where none does, or two do. */
    private int next(int i) {
        Point end = left.get(i).segment().to();
        int found = -1;
        for (int k = 0; k < left.size(); k++) {
            Point from = left.get(k).segment().from();
            if (Math.abs(from.x() - end.x()) <= SAME_CORNER && Math.abs(from.y() - end.y()) <= SAME_CORNER) {
                if (found >= 0) {
                    return -1;
                }
                found = k;
            }
        }
        return found;
    }

    /** Neighbors from one stroke as one. */
    private List<Bound> joined(List<Bound> ring) {
        List<Bound> joined = new ArrayList<>();
        for (Bound bound : ring) {
            int last = joined.size() - 1;
            if (last >= 0 && sameStroke(joined.get(last), bound)) {
                joined.set(last, across(joined.get(last), bound));
            } else {
                joined.add(bound);
            }
        }
        int last = joined.size() - 1;
        if (last > 0 && sameStroke(joined.get(last), joined.get(0))) {
            joined.set(0, across(joined.remove(last), joined.get(0)));
        }
        return joined;
    }

    private static boolean sameStroke(Bound one, Bound other) {
        return one.outline() == other.outline() && one.stroke() == other.stroke();
    }

    private Bound across(Bound before, Bound after) {
        Segment whole =
                outlines.get(before.outline()).strokes().get(before.stroke()).segment();
        double from = whole.nearest(before.segment().from());
        double to = whole.nearest(after.segment().to());
        return new Bound(before.outline(), before.stroke(), whole.part(from, to));
    }

    private static void sort(List<Bound> bounds, List<Ring> outer, List<Ring> holes) {
        Point home = bounds.get(0).segment().from();
        double twice = 0;
        for (Bound bound : bounds) {
            Point from = bound.segment().from().minus(home);
            Point to = bound.segment().to().minus(home);
            // what an arc bulges beyond its chord does not depend on where it is measured from
            twice += from.cross(to)
                    + (bound.segment() instanceof Line
                            ? 0
                            : bound.segment().twiceArea()
                                    - bound.segment()
                                            .from()
                                            .cross(bound.segment().to()));
        }
        Ring ring = new Ring(bounds, inside(bounds));
        (twice > 0 ? outer : holes).add(ring);
    }

    /** The air that such parts enclose, from lowest to highest. */
    public static List<Cavity> cavities(List<Part> parts) {
        return Cavities.in(parts);
    }

    private static Point inside(List<Bound> bounds) {
        List<Coordinate> around = new ArrayList<>();
        corners(bounds).forEach(corner -> around.add(new Coordinate(corner.x(), corner.y())));
        around.add(around.get(0).copy());
        return WeldedOutlines.inside(Chords.FACTORY.createPolygon(around.toArray(new Coordinate[0])));
    }

    /** The corners of a walk, arcs by chords. */
    static List<Point> corners(List<Bound> bounds) {
        List<Point> corners = new ArrayList<>();
        for (Bound bound : bounds) {
            List<Point> chords = bound.segment().flattened(Tolerance.CHORD);
            corners.addAll(chords.subList(0, chords.size() - 1));
        }
        return corners;
    }

    /** Each hole with the least ring round it; parts from lowest to highest. */
    private static Optional<List<Part>> grouped(List<Ring> outer, List<Ring> holes) {
        List<List<Ring>> own = new ArrayList<>();
        outer.forEach(ring -> own.add(new ArrayList<>()));
        holes.sort(Comparator.comparingDouble((Ring hole) -> hole.inside().y())
                .thenComparingDouble(hole -> hole.inside().x()));
        for (Ring hole : holes) {
            int around = -1;
            for (int i = 0; i < outer.size(); i++) {
                boolean round = outer.get(i).box().holds(hole.inside(), 0) && holds(outer.get(i), hole.inside());
                if (round
                        && (around < 0
                                || outer.get(i).area() < outer.get(around).area())) {
                    around = i;
                }
            }
            if (around < 0) {
                return Optional.empty();
            }
            own.get(around).add(hole);
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < outer.size(); i++) {
            parts.add(new Part(outer.get(i), own.get(i)));
        }
        parts.sort(Comparator.comparingDouble((Part part) -> part.outer().box().bottom())
                .thenComparingDouble(part -> part.outer().box().back()));
        return Optional.of(parts);
    }

    private static boolean holds(Ring ring, Point p) {
        return Outline.isInside(corners(ring.bounds()), p);
    }
}

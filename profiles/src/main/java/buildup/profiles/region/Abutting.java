package buildup.profiles.region;

import buildup.profiles.outline.Box;
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

    /** Two outlines that are near each other, by their numbers, the lesser first, and how they meet. */
    public record Neighbors(int first, int second, Abutment meeting) {}

    /** All that are near each other, by their numbers; absent where it is in doubt how two of them meet. */
    public static Optional<List<Neighbors>> neighbors(List<Outline> outlines, Meetings meetings) {
        List<Neighbors> all = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            Box box = outlines.get(i).box();
            for (int j = i + 1; j < outlines.size(); j++) {
                if (box.near(outlines.get(j).box(), 2 * Tolerance.TOUCHING)) {
                    Optional<Abutment> meeting = meetings.of(i, j);
                    if (meeting.isEmpty()) {
                        return Optional.empty();
                    }
                    all.add(new Neighbors(i, j, meeting.get()));
                }
            }
        }
        return Optional.of(all);
    }

    /**
     * The parts of the union, as {@link WeldedOutlines#union} tells them; nothing where only an overlay can say. The air
     * that they enclose is in their holes, and nowhere else.
     */
    public static Optional<List<Part>> union(List<Outline> outlines, Meetings meetings) {
        return neighbors(outlines, meetings)
                .flatMap(all -> left(outlines, all, new Memory()).parts(true));
    }

    /**
     * The same parts without their holes, for whoever asks for the outside alone.
     *
     * @param neighbors all outlines that are near each other
     * @param memory of the outlines that were asked about last
     */
    public static Optional<List<Part>> outside(List<Outline> outlines, List<Neighbors> neighbors, Memory memory) {
        return left(outlines, neighbors, memory).parts(false);
    }

    /**
     * What was left of each outline, by its number, when it was asked about last: stacks beside each other in a search
     * share most of their outlines with all that lies against them. One thread asks.
     */
    public static final class Memory {
        private final List<Optional<Left>> last = new ArrayList<>();

        private Optional<Left> of(int number, Outline outline, List<Abutment> meetings) {
            return number < last.size()
                    ? last.get(number).filter(left -> left.isOf(outline, meetings))
                    : Optional.empty();
        }

        private void put(int number, Left left) {
            while (last.size() <= number) {
                last.add(Optional.empty());
            }
            last.set(number, Optional.of(left));
        }
    }

    /** What no other outline lies against of one; the outline and its meetings are known again only as the same. */
    private record Left(Outline outline, List<Abutment> meetings, List<Bound> bounds) {
        @SuppressWarnings("ReferenceEquality") // what is alike but not the same is worked out again: that is cheaper
        boolean isOf(Outline other, List<Abutment> its) {
            boolean same = outline == other && meetings.size() == its.size();
            for (int i = 0; same && i < its.size(); i++) {
                same = meetings.get(i) == its.get(i);
            }
            return same;
        }
    }

    private static Abutting left(List<Outline> outlines, List<Neighbors> neighbors, Memory memory) {
        List<List<Abutment>> meetings = new ArrayList<>(outlines.size());
        for (int i = 0; i < outlines.size(); i++) {
            meetings.add(new ArrayList<>());
        }
        for (Neighbors two : neighbors) {
            meetings.get(two.first).add(two.meeting);
            meetings.get(two.second).add(two.meeting);
        }
        Abutting abutting = new Abutting(outlines);
        for (int i = 0; i < outlines.size(); i++) {
            Optional<Left> known = memory.of(i, outlines.get(i), meetings.get(i));
            if (known.isPresent()) {
                abutting.left.addAll(known.get().bounds);
                continue;
            }
            int before = abutting.left.size();
            abutting.leave(i, covered(i, neighbors));
            List<Bound> own = List.copyOf(abutting.left.subList(before, abutting.left.size()));
            memory.put(i, new Left(outlines.get(i), meetings.get(i), own));
        }
        return abutting;
    }

    private static List<Abutment.Covered> covered(int outline, List<Neighbors> neighbors) {
        List<Abutment.Covered> covered = new ArrayList<>();
        for (Neighbors two : neighbors) {
            if (two.first == outline) {
                covered.addAll(two.meeting.ofFirst());
            } else if (two.second == outline) {
                covered.addAll(two.meeting.ofSecond());
            }
        }
        return covered;
    }

    /**
     * Keeps what of an outline no other lies against. No two lie against one stretch, since they would lie in each other,
     * and no scrap is left between two, since they would nearly touch: of both there is no {@link Abutment}.
     */
    private void leave(int outline, List<Abutment.Covered> covered) {
        if (covered.size() > 1) {
            covered.sort(Abutting::inOrder);
        }
        List<Stroke> strokes = outlines.get(outline).strokes();
        int next = 0;
        for (int stroke = 0; stroke < strokes.size(); stroke++) {
            Segment whole = strokes.get(stroke).segment();
            double at = 0;
            for (; next < covered.size() && covered.get(next).stroke() == stroke; next++) {
                Abutment.Covered one = covered.get(next);
                keep(outline, stroke, whole, at, one.start());
                at = Math.max(at, one.end());
            }
            keep(outline, stroke, whole, at, 1);
        }
    }

    private static int inOrder(Abutment.Covered one, Abutment.Covered other) {
        int strokes = Integer.compare(one.stroke(), other.stroke());
        return strokes != 0 ? strokes : Double.compare(one.start(), other.start());
    }

    private void keep(int outline, int stroke, Segment whole, double from, double to) {
        if ((to - from) * whole.length() > SAME_CORNER) {
            left.add(new Bound(outline, stroke, from <= 0 && to >= 1 ? whole : whole.part(from, to)));
        }
    }

    /**
     * Joins what is left into rings; nothing where more than one walk goes on from a corner.
     *
     * @param holed whether the holes are asked for
     */
    private Optional<List<Part>> parts(boolean holed) {
        int[] next = new int[left.size()];
        boolean[] reached = new boolean[left.size()];
        double[] x = new double[left.size()];
        double[] y = new double[left.size()];
        for (int i = 0; i < next.length; i++) {
            Point from = left.get(i).segment().from();
            x[i] = from.x();
            y[i] = from.y();
        }
        for (int i = 0; i < next.length; i++) {
            next[i] = next(left.get(i).segment().to(), x, y);
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
                sort(ring, outer, holes);
            }
        }
        return holed ? grouped(outer, holes) : alone(outer);
    }

    private static Optional<List<Part>> alone(List<Ring> outer) {
        List<Part> parts = new ArrayList<>(outer.size());
        outer.forEach(ring -> parts.add(new Part(ring, List.of())));
        sort(parts);
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts);
    }

    private static void sort(List<Part> parts) {
        if (parts.size() > 1) {
            parts.sort(
                    Comparator.comparingDouble((Part part) -> part.outer().box().bottom())
                            .thenComparingDouble(part -> part.outer().box().back()));
        }
    }

    /** The one that begins at the end of another, by where each begins; -1 where none does, or two do. */
    private static int next(Point end, double[] x, double[] y) {
        int found = -1;
        for (int k = 0; k < x.length; k++) {
            if (Math.abs(x[k] - end.x()) <= SAME_CORNER && Math.abs(y[k] - end.y()) <= SAME_CORNER) {
                if (found >= 0) {
                    return -1;
                }
                found = k;
            }
        }
        return found;
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
        Ring ring = new Ring(bounds, () -> inside(bounds));
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
                // what stands in the hole may lie round that place too
                boolean round = outer.get(i).area() > hole.area()
                        && outer.get(i).box().holds(hole.inside(), 0)
                        && holds(outer.get(i), hole.inside());
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
        sort(parts);
        return Optional.of(parts);
    }

    private static boolean holds(Ring ring, Point p) {
        return Outline.isInside(corners(ring.bounds()), p);
    }
}

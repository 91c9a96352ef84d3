package buildup.profiles.region;

import buildup.profiles.outline.NearPoints;
import buildup.profiles.outline.NearPoints.NearPoint;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The places at which outlines touch, told from the outlines as given, and what closes them: a sliver of a bar from the
 * one to the other, wherever a corner or a tangent curve of one comes within touching of the other. Nothing is moved, so
 * no joint opens or closes another.
 *
 * @param chords of the outlines, with a vertex at each place of a curve at which it touches
 * @param all every approach, several at a place too
 */
record Closures(List<Outline> outlines, List<Chords> chords, List<Closure> all) {
    /** Half the width of a bar that has no length: more than the noder snaps, in. */
    private static final double LEAST = 4 * Tolerance.SNAP;

    /** An approach of two outlines, by their numbers. */
    record Closure(int first, int second, NearPoint near) {
        /** Whether another approach of the same two belongs to this place: the two share no stretch between. */
        boolean isAt(Closure other) {
            return first == other.first
                    && second == other.second
                    && near.onFirst().near(other.near.onFirst(), Tolerance.TOUCHING);
        }
    }

    Closures {
        outlines = List.copyOf(outlines);
        chords = List.copyOf(chords);
        all = List.copyOf(all);
    }

    static Closures of(List<Outline> outlines) {
        List<Closure> all = new ArrayList<>();
        List<List<Point>> met = new ArrayList<>();
        outlines.forEach(outline -> met.add(new ArrayList<>()));
        for (Pairs.Pair pair : Pairs.near(outlines.stream().map(Outline::box).toList(), Tolerance.TOUCHING)) {
            Outline first = outlines.get(pair.first());
            Outline second = outlines.get(pair.second());
            for (NearPoint near : distinct(NearPoints.all(first, second, Tolerance.TOUCHING))) {
                all.add(new Closure(pair.first(), pair.second(), near));
                met.get(pair.first()).add(near.onFirst());
                met.get(pair.second()).add(near.onSecond());
            }
        }
        List<Chords> chords = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            chords.add(Chords.of(i, outlines.get(i), met.get(i)));
        }
        return new Closures(outlines, chords, all);
    }

    /** A corner approaches both strokes that meet in another. */
    private static List<NearPoint> distinct(List<NearPoint> all) {
        List<NearPoint> distinct = new ArrayList<>();
        for (NearPoint near : all) {
            if (distinct.stream()
                    .noneMatch(other -> other.onFirst().near(near.onFirst(), Tolerance.SNAP)
                            && other.onSecond().near(near.onSecond(), Tolerance.SNAP))) {
                distinct.add(near);
            }
        }
        return distinct;
    }

    /** What is solid: the outlines in chords, and the bars. */
    List<Polygon> solid() {
        List<Polygon> solid = new ArrayList<>();
        chords.forEach(one -> solid.add(one.polygon()));
        for (Closure joint : all) {
            if (joint.near.distance() > Tolerance.SNAP / 2 && !isInWood(joint, solid)) {
                solid.add(bar(joint.near));
            }
        }
        return solid;
    }

    /** Whether the one lies in the other there, so that nothing is left to be closed. */
    private static boolean isInWood(Closure joint, List<Polygon> outlines) {
        Coordinate middle =
                coordinate(joint.near.onFirst().plus(joint.near.onSecond()).times(0.5));
        return Stream.of(joint.first, joint.second)
                .anyMatch(outline -> PointLocation.isInRing(
                        middle, outlines.get(outline).getExteriorRing().getCoordinates()));
    }

    /** A rhombus with its tips on the two outlines. */
    private static Polygon bar(NearPoint near) {
        Point from = near.onFirst();
        Point to = near.onSecond();
        Point middle = from.plus(to).times(0.5);
        Point side = to.minus(from).unit().left().times(Math.max(LEAST, near.distance() / 4));
        Coordinate start = coordinate(from);
        return Chords.FACTORY.createPolygon(new Coordinate[] {
            start, coordinate(middle.minus(side)), coordinate(to), coordinate(middle.plus(side)), start.copy()
        });
    }

    private static Coordinate coordinate(Point p) {
        return new Coordinate(p.x(), p.y());
    }
}

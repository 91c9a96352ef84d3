package buildup.engine.look.joint;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.NearPoints;
import buildup.profiles.outline.NearPoints.NearPoint;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds where two bodies nearly meet: lines through air from the one to the other, square to a face of either. Faces that
 * run side by side have one at each end of the stretch that they share.
 */
final class Throats {
    /** Two bodies this far apart are not meant to meet, in. */
    static final double WIDEST = 0.5;

    /** How far off square a line may be to the face that it ends on: the sine of a degree. */
    private static final double SQUARE = Math.sin(Math.toRadians(1));

    /** How far beside a line it is asked whether both go on, in. */
    private static final double BESIDE = 2 * Tolerance.TOUCHING;

    /** What falls off steeper than this, to the distance beside the line, does not go on: the sine of 45 degrees or so. */
    private static final double FALLS_OFF = 0.75;

    private final Section section;

    Throats(Section section) {
        this.section = section;
    }

    /** Those from one body to another, the narrowest first. */
    List<Line> between(int from, int to) {
        Outline first = section.body(from).outline();
        Outline second = section.body(to).outline();
        List<Line> throats = new ArrayList<>();
        for (NearPoint near : NearPoints.of(first, second, WIDEST - Tolerance.SNAP)) {
            Line throat = new Line(near.onFirst(), near.onSecond());
            if (near.distance() > Tolerance.TOUCHING
                    && (leaves(first, throat) || leaves(second, throat.reversed()))
                    && faceEachOther(first, second, throat)
                    && throughAir(throat)) {
                throats.add(throat);
            }
        }
        // of those that are equally narrow the lowest comes first, whatever computing does to their last digits
        throats.sort(Comparator.comparingDouble((Line throat) -> steps(throat.length()))
                .thenComparingDouble(throat -> steps(throat.from().y()))
                .thenComparingDouble(throat -> steps(throat.from().x())));
        return throats;
    }

    private static double steps(double inches) {
        return Math.rint(inches / Tolerance.SNAP);
    }

    /** Whether a line leaves a face of the outline squarely, outward. */
    private static boolean leaves(Outline outline, Line line) {
        for (Stroke stroke : outline.strokes()) {
            Segment segment = stroke.segment();
            double t = segment.nearest(line.from());
            if (segment.at(t).near(line.from(), Tolerance.SNAP)) {
                Point along = segment.direction(t);
                Point way = line.direction(0);
                if (Math.abs(along.dot(way)) <= SQUARE && along.right().dot(way) > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether both go on beside a line to one side of it, and do not only pass each other at their corners there. */
    private static boolean faceEachOther(Outline first, Outline second, Line line) {
        Point aside = line.direction(0).left().times(BESIDE);
        return List.of(aside, aside.times(-1)).stream()
                .anyMatch(step -> first.distance(line.from().plus(step)) <= FALLS_OFF * BESIDE
                        && second.distance(line.to().plus(step)) <= FALLS_OFF * BESIDE);
    }

    private boolean throughAir(Line line) {
        Point middle = line.at(0.5);
        for (Body body : section.bodies()) {
            Outline outline = body.outline();
            if (outline.box().near(line.box(), 0) && (within(outline, middle) || crossed(outline, line))) {
                return false;
            }
        }
        return true;
    }

    /** Whether a place is inside, and not on the edge as near as computing comes to it. */
    private static boolean within(Outline outline, Point p) {
        return outline.holds(p) && outline.distance(p) > Tolerance.SNAP;
    }

    /** Whether an outline crosses a line between its ends. */
    private static boolean crossed(Outline outline, Line line) {
        return outline.strokes().stream()
                .flatMap(stroke -> Crossings.of(stroke.segment(), line, 0).stream())
                .anyMatch(p ->
                        !p.near(line.from(), Tolerance.TOUCHING / 2) && !p.near(line.to(), Tolerance.TOUCHING / 2));
    }
}

package buildup.engine.compose;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Points at which two outlines come within touching of each other: at a corner of one, or where an arc is tangent. */
final class Approaches {
    private Approaches() {}

    /** One point for each place of approach, the nearest first taken. */
    static List<Point> of(Outline a, Outline b) {
        List<Meeting> meetings = new ArrayList<>();
        for (Stroke first : a.strokes()) {
            if (!first.segment().box().near(b.box(), Tolerance.TOUCHING)) {
                continue;
            }
            for (Stroke second : b.strokes()) {
                if (first.segment().box().near(second.segment().box(), Tolerance.TOUCHING)) {
                    meet(first.segment(), second.segment(), meetings);
                }
            }
        }
        meetings.sort(Comparator.comparingDouble((Meeting meeting) -> Math.rint(meeting.distance / Tolerance.SNAP))
                .thenComparingDouble(meeting -> meeting.at.y())
                .thenComparingDouble(meeting -> meeting.at.x()));
        List<Point> kept = new ArrayList<>();
        for (Meeting meeting : meetings) {
            if (kept.stream().noneMatch(p -> p.near(meeting.at, 4 * Tolerance.TOUCHING))) {
                kept.add(meeting.at);
            }
        }
        return kept;
    }

    private record Meeting(Point at, double distance) {}

    private static void meet(Segment a, Segment b, List<Meeting> out) {
        add(a.from(), b, out);
        add(b.from(), a, out);
        if (a instanceof Arc arc) {
            foot(arc, b).forEach(p -> add(p, b, out));
        } else if (b instanceof Arc arc) {
            foot(arc, a).forEach(p -> add(p, a, out));
        }
    }

    private static void add(Point p, Segment other, List<Meeting> out) {
        double distance = other.distance(p);
        if (distance < Tolerance.TOUCHING) {
            out.add(new Meeting(p, distance));
        }
    }

    /** The points of an arc at which its normal goes through the nearest of the other segment. */
    private static List<Point> foot(Arc arc, Segment other) {
        Point way;
        if (other instanceof Line line) {
            way = line.direction(0).left();
        } else {
            way = ((Arc) other).center().minus(arc.center()).unit();
        }
        List<Point> feet = new ArrayList<>();
        if (way.length() > 0) {
            for (Point spoke : List.of(way, way.times(-1))) {
                double t = arc.atAngle(spoke.angle());
                if (t > 0 && t < 1) {
                    feet.add(arc.at(t));
                }
            }
        }
        return feet;
    }
}

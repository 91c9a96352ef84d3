package buildup.engine.judge.bound;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One member of an outline, from where its name begins on the walk to where it ends; in a frame in which the box of the
 * outline begins at 0.
 *
 * @param segments in walking order, wood on their left
 * @param box true for arcs
 * @param normal the unit normal of the line from its start to its end, away from the wood
 * @param least no place of it lies less far along that normal, in
 * @param looking places of it from which a level line to the room meets no more of its own outline
 * @param outline of which it is a member, in that frame
 */
record OwnMember(
        String name,
        List<Segment> segments,
        double length,
        Box box,
        Point normal,
        double least,
        List<Point> looking,
        Outline outline) {
    /** Places along each segment from which a level line is drawn. */
    private static final int LOOKS = 8;

    /** How steep a place may lie at most to look level into the room: the sine of its normal's angle off upright. */
    private static final double LOOKING = 0.3;

    /** What lies so near in front of a place is the place itself, in: some times what a chord is off its arc. */
    private static final double ITSELF = 0.005;

    OwnMember {
        segments = List.copyOf(segments);
        looking = List.copyOf(looking);
    }

    /** The members of an outline; none of one whose whole walk is of one name. */
    static List<OwnMember> of(Outline outline) {
        Box box = outline.box();
        Outline own = outline.moved(Motion.shift(-box.back(), -box.bottom()));
        List<Stroke> strokes = own.strokes();
        int count = strokes.size();
        int start = 0;
        while (start < count
                && strokes.get(start)
                        .member()
                        .equals(strokes.get((start + count - 1) % count).member())) {
            start++;
        }
        List<OwnMember> members = new ArrayList<>();
        for (int i = 0; i < count && start < count; ) {
            String name = strokes.get((start + i) % count).member();
            List<Segment> segments = new ArrayList<>();
            while (i < count && strokes.get((start + i) % count).member().equals(name)) {
                segments.add(strokes.get((start + i) % count).segment());
                i++;
            }
            member(name, segments, own).ifPresent(members::add);
        }
        return members;
    }

    private static Optional<OwnMember> member(String name, List<Segment> segments, Outline own) {
        Line chord = new Line(
                segments.get(0).from(), segments.get(segments.size() - 1).to());
        double length = segments.stream().mapToDouble(Segment::length).sum();
        if (chord.length() < UprightFace.SLACK) {
            return Optional.empty();
        }
        Point normal = normal(chord, 0);
        double turn = -Math.toDegrees(Math.atan2(normal.y(), normal.x()));
        double least = segments.stream()
                .mapToDouble(segment -> segment.moved(Motion.turn(turn)).box().back())
                .min()
                .orElseThrow();
        List<Line> ring = Line.ring(own.chords());
        List<Point> looking = new ArrayList<>();
        for (Segment segment : segments) {
            for (int i = 0; i < LOOKS; i++) {
                double at = (i + 0.5) / LOOKS;
                Point place = segment.at(at);
                if (normal(segment, at).x() > LOOKING && isFree(place, ring)) {
                    looking.add(place);
                }
            }
        }
        Box box = Box.around(segments.stream().map(Segment::box).toList());
        return Optional.of(new OwnMember(name, segments, length, box, normal, least, looking, own));
    }

    /** The unit normal of a walk that has the wood on its left, away from the wood. */
    static Point normal(Segment segment, double at) {
        Point along = segment.direction(at);
        return new Point(along.y(), -along.x());
    }

    /** How far an outline reaches along a direction, in the same kind of frame. */
    static double reach(Outline outline, Point direction) {
        Box box = outline.box();
        double turn = -Math.toDegrees(Math.atan2(direction.y(), direction.x()));
        return outline.moved(Motion.shift(-box.back(), -box.bottom()))
                .moved(Motion.turn(turn))
                .box()
                .face();
    }

    private static boolean isFree(Point place, List<Line> ring) {
        for (Line line : ring) {
            double low = Math.min(line.from().y(), line.to().y());
            double high = Math.max(line.from().y(), line.to().y());
            if (low <= place.y() && place.y() <= high) {
                double share = high > low
                        ? (place.y() - line.from().y())
                                / (line.to().y() - line.from().y())
                        : 0;
                double crossing = high > low
                        ? line.from().x() + share * (line.to().x() - line.from().x())
                        : Math.max(line.from().x(), line.to().x());
                if (crossing > place.x() + ITSELF) {
                    return false;
                }
            }
        }
        return true;
    }
}

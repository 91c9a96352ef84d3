package buildup.profiles.travel;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How one outline gets away from another that stays where it is, by straight moves in the plane. Exact on true segments:
 * what bars a move is found from ends, crossings and tangents, not from samples. Ends that overlap a way by less than
 * {@link Tolerance#TOUCHING} bar nothing. Inches; directions in degrees counterclockwise from straight out.
 */
public final class Parting {
    /**
     * Shifts that do not do.
     *
     * @param from, to the shift itself at either end does
     */
    public record Stretch(double from, double to) {
        /** Whether a shift lies between the ends by more than touching. */
        public boolean bars(double shift) {
            return from + Tolerance.TOUCHING < shift && shift < to - Tolerance.TOUCHING;
        }
    }

    private Parting() {}

    /**
     * How far {@code moving} may go straight in a direction before {@code staying} stops it; infinite when that never
     * does. The two do not overlap where they are, or only by touching.
     */
    public static double room(Outline moving, Outline staying, double degrees) {
        Motion up = Motion.turn(90 - degrees);
        double room = Double.POSITIVE_INFINITY;
        List<SegmentPart> staysDown = facing(staying.moved(up), false);
        for (SegmentPart goes : facing(moving.moved(up), true)) {
            for (SegmentPart stays : staysDown) {
                double from = Math.max(goes.left().x(), stays.left().x());
                double to = Math.min(goes.right().x(), stays.right().x());
                double middle = (from + to) / 2;
                if (to - from > Tolerance.TOUCHING && goes.height(middle) < stays.height(middle) + Tolerance.TOUCHING) {
                    room = Math.min(room, Math.max(0, -goes.over(stays, from, to)));
                }
            }
        }
        return room;
    }

    /** Stretches of an outline with its wood below them (or above), each with one height at each x. */
    private static List<SegmentPart> facing(Outline outline, boolean up) {
        return outline.strokes().stream()
                .flatMap(stroke -> SegmentPart.of(stroke.segment()).stream())
                // wood lies on the left of the walk
                .filter(piece ->
                        (piece.segment().from().x() > piece.segment().to().x()) == up)
                .toList();
    }

    /**
     * The shifts of {@code moving} in the direction {@code first} from which it could not go on without end in the
     * direction {@code then}, since {@code staying} is in the way; in order, none meeting the next. Whether the shift
     * itself is free is another question: {@link #room}.
     */
    public static List<Stretch> barred(Outline moving, Outline staying, double first, double then) {
        Motion up = Motion.turn(90 - then);
        Point step = Point.towards(Math.toRadians(first + 90 - then));
        List<Stretch> all = new ArrayList<>();
        for (Envelope.Span goes : Envelope.lower(moving.moved(up)).spans()) {
            for (Envelope.Span stays : Envelope.upper(staying.moved(up)).spans()) {
                all.addAll(new Meeting(goes, stays, step).barred());
            }
        }
        return joined(all);
    }

    /** Whether {@code moving} can go without end in a direction from where it is. */
    public static boolean away(Outline moving, Outline staying, double degrees) {
        Motion up = Motion.turn(90 - degrees);
        for (Envelope.Span goes : Envelope.lower(moving.moved(up)).spans()) {
            for (Envelope.Span stays : Envelope.upper(staying.moved(up)).spans()) {
                if (new Meeting(goes, stays, Point.ORIGIN).bars(0)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Stretches that meet become one; a single free shift between two stays free. */
    private static List<Stretch> joined(List<Stretch> all) {
        List<Stretch> sorted =
                all.stream().sorted((a, b) -> Double.compare(a.from, b.from)).toList();
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : sorted) {
            Stretch last = joined.isEmpty() ? next : joined.get(joined.size() - 1);
            if (joined.isEmpty() || next.from >= last.to - Tolerance.TOUCHING) {
                joined.add(next);
            } else {
                joined.set(joined.size() - 1, new Stretch(last.from, Math.max(last.to, next.to)));
            }
        }
        return joined;
    }

    /** Two stretches of outlines, the way of both turned so that they part upward; the one shifts by steps first. */
    private record Meeting(Envelope.Span goes, Envelope.Span stays, Point step) {
        /** Stretches between places where something begins or ends; within each the answer is one. */
        List<Stretch> barred() {
            double[] turns = DoubleStream.concat(
                            DoubleStream.of(0), turns().stream().mapToDouble(turn -> turn))
                    .filter(turn -> turn >= 0)
                    .sorted()
                    .toArray();
            List<Stretch> all = new ArrayList<>();
            for (int i = 0; i < turns.length; i++) {
                boolean last = i + 1 == turns.length;
                double to = last ? Double.POSITIVE_INFINITY : turns[i + 1];
                if (to - turns[i] > Tolerance.COINCIDENT && bars(last ? turns[i] + 1 : (turns[i] + to) / 2)) {
                    boolean goesOn = !all.isEmpty()
                            && all.get(all.size() - 1).to() >= turns[i] - Tolerance.COINCIDENT
                            && bars(turns[i]);
                    all.add(new Stretch(goesOn ? all.remove(all.size() - 1).from() : turns[i], to));
                }
            }
            return all;
        }

        /** Whether the one stands over some of the other, with its lowest wood below the other's highest. */
        boolean bars(double shift) {
            double dx = step.x() * shift;
            double dy = step.y() * shift;
            double from = Math.max(goes.from() + dx, stays.from());
            double to = Math.min(goes.to() + dx, stays.to());
            if (to - from <= Tolerance.TOUCHING) {
                return false;
            }
            Motion motion = Motion.shift(dx, dy);
            SegmentPart piece = goes.piece();
            SegmentPart shifted = new SegmentPart(
                    piece.segment().moved(motion), motion.apply(piece.left()), motion.apply(piece.right()));
            return stays.piece().over(shifted, from, to) > Tolerance.TOUCHING;
        }

        /** Shifts at which the two may begin or cease to be in each other's way; too many of them do no harm. */
        private List<Double> turns() {
            List<Double> turns = new ArrayList<>();
            double[] ends = {goes.from(), goes.to()};
            double[] marks = {stays.from(), stays.to()};
            for (double end : ends) {
                for (double mark : marks) {
                    if (Math.abs(step.x()) > Tolerance.COINCIDENT) {
                        turns.add((mark - end) / step.x());
                    }
                }
                ray(new Point(end, goes.piece().height(end)), stays.piece().segment(), 1, turns);
            }
            for (double mark : marks) {
                ray(new Point(mark, stays.piece().height(mark)), goes.piece().segment(), -1, turns);
            }
            tangents(goes.piece().segment(), stays.piece().segment(), turns);
            return turns;
        }

        private void ray(Point from, Segment segment, int sign, List<Double> turns) {
            for (Point met : Crossings.ofCurves(new Line(from, from.plus(step)), segment)) {
                turns.add(sign * met.minus(from).dot(step));
            }
        }

        private void tangents(Segment a, Segment b, List<Double> turns) {
            if (a instanceof Arc round && b instanceof Arc other) {
                centered(round, other.center(), round.radius() + other.radius(), turns);
                centered(round, other.center(), Math.abs(round.radius() - other.radius()), turns);
            } else if (a instanceof Arc round) {
                beside(round.center(), round.radius(), b, 1, turns);
            } else if (b instanceof Arc round) {
                beside(round.center(), round.radius(), a, -1, turns);
            }
        }

        /** Where the centre of a round, shifted, is so far from a point. */
        private void centered(Arc round, Point about, double far, List<Double> turns) {
            Point off = round.center().minus(about);
            double along = off.dot(step);
            double aside = off.cross(step);
            if (Math.abs(aside) <= far) {
                double half = Math.sqrt((far - aside) * (far + aside));
                turns.add(-along - half);
                turns.add(-along + half);
            }
        }

        /** Where a centre, shifted (or the line against it), is a radius away from the line of a segment. */
        private void beside(Point center, double radius, Segment line, int sign, List<Double> turns) {
            Point normal = line.direction(0).left();
            double rate = sign * step.dot(normal);
            if (Math.abs(rate) > Tolerance.COINCIDENT) {
                double off = line.from().minus(center).dot(normal);
                turns.add((off - radius) / rate);
                turns.add((off + radius) / rate);
            }
        }
    }
}

package buildup.engine.hold.nail;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A nail in the section, from head to point.
 *
 * @param way unit step from head to point
 * @param length of the nail, in
 * @param crossings all it goes through, in order, without gaps under touching
 * @param breakOut where it leaves the last thing it was in; absent when its point ends inside something
 */
public record Drive(Point head, Point way, double length, List<Crossing> crossings, Optional<BreakOut> breakOut) {
    /**
     * The point of a nail in the open.
     *
     * @param body what it comes out of
     * @param by how far it stands out, in
     * @param at where it comes out
     * @param side back, front, bottom or top of that body
     * @param hidden whether it ends in a closed hollow of the finished section, and not in the room
     */
    public record BreakOut(int body, double by, Point at, String side, boolean hidden) {}

    public Drive {
        crossings = List.copyOf(crossings);
    }

    /** The place so many inches from the head toward the point. */
    public Point at(double inches) {
        return head.plus(way.times(inches));
    }

    /** Where its point ends, in. */
    public Point point() {
        return at(length);
    }

    /**
     * The same of a shorter one.
     *
     * @param shorter its length, in; no more than this one's, and its point in one of the crossings
     */
    public Drive endingAt(double shorter) {
        List<Crossing> met = new ArrayList<>();
        for (Crossing crossing : crossings) {
            if (shorter - crossing.from() > Tolerance.TOUCHING) {
                met.add(new Crossing(
                        crossing.body(), crossing.stuff(), crossing.from(), Math.min(crossing.to(), shorter)));
            }
        }
        return new Drive(head, way, shorter, met, Optional.empty());
    }

    /** The same where one body holds nothing: a nail through a wall between its studs. */
    public Drive looseIn(int body) {
        List<Crossing> met = crossings.stream()
                .map(crossing -> crossing.body().orElse(-1) == body
                        ? new Crossing(crossing.body(), Crossing.Stuff.COVERING, crossing.from(), crossing.to())
                        : crossing)
                .toList();
        return new Drive(head, way, length, met, breakOut);
    }

    /** What the point ends in; absent when it ends in the open. */
    public Optional<Crossing> last() {
        return breakOut.isPresent() || crossings.isEmpty()
                ? Optional.empty()
                : Optional.of(crossings.get(crossings.size() - 1));
    }

    /** Inches in one body, in order of the crossings. */
    public double in(int body) {
        double inches = 0;
        for (Crossing crossing : crossings) {
            inches += crossing.holds() && crossing.in(body) ? crossing.length() : 0;
        }
        return inches;
    }

    /** The bodies that hold it, in the order in which it meets them. */
    public List<Integer> held() {
        List<Integer> held = new ArrayList<>(4);
        for (Crossing crossing : crossings) {
            if (crossing.holds() && !held.contains(crossing.body().orElseThrow())) {
                held.add(crossing.body().orElseThrow());
            }
        }
        return List.copyOf(held);
    }

    /** Inches of air between head and the last thing crossed; what stands out past it is not counted. */
    public double air() {
        return crossings.stream()
                .filter(crossing -> crossing.stuff() == Crossing.Stuff.AIR)
                .mapToDouble(Crossing::length)
                .sum();
    }
}

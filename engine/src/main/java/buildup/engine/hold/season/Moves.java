package buildup.engine.hold.season;

import buildup.engine.hold.season.Held.Hold;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** How every body of a section moves from one season to another. Wall, floor, ceiling and framing stand still. */
final class Moves {
    private final Section section;
    private final Map<Integer, Held> held = new HashMap<>();
    private final Season from;
    private final Season to;
    private final Map<Integer, Moved> found = new HashMap<>();
    private final Set<Integer> underWay = new HashSet<>();

    private Moves(Section section, List<Held> all, Season from, Season to) {
        this.section = section;
        all.forEach(one -> held.put(one.body(), one));
        this.from = from;
        this.to = to;
    }

    /** One for each body, in order. */
    static List<Moved> of(Section section, List<Held> held, Season from, Season to) {
        Moves moves = new Moves(section, held, from, to);
        for (int i = 0; i < section.bodies().size(); i++) {
            moves.moved(i);
        }
        return IntStream.range(0, section.bodies().size())
                .mapToObj(moves::moved)
                .toList();
    }

    private Moved moved(int body) {
        if (found.containsKey(body)) {
            return found.get(body);
        }
        Held own = held.get(body);
        // two that hold each other and nothing else: the one asked first stays where it is
        if (own == null || !underWay.add(body)) {
            return Moved.NOT;
        }
        Point middle = section.body(body).outline().centroid();
        Moved moved = new Moved(
                place(own.out(), middle),
                place(own.up(), middle),
                new Point(carried(own.out()).x(), carried(own.up()).y()),
                section.body(body)
                        .placed()
                        .flatMap(placed -> Growth.of(placed, from, to))
                        .orElse(Strain.NONE));
        underWay.remove(body);
        found.put(body, moved);
        return moved;
    }

    private static Point place(List<Hold> holds, Point middle) {
        return holds.isEmpty() ? middle : mean(holds.stream().map(Hold::at).toList());
    }

    private Point carried(List<Hold> holds) {
        return holds.isEmpty()
                ? Point.ORIGIN
                : mean(holds.stream()
                        .map(hold -> moved(hold.body()).at(hold.at()))
                        .toList());
    }

    private static Point mean(List<Point> points) {
        return points.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / points.size());
    }
}

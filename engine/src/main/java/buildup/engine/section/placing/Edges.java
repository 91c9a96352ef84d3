package buildup.engine.section.placing;

import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The edges of an outline that a rule may name: its four extremes and its straight members. */
public final class Edges {
    private Edges() {}

    /** A level or upright edge: the axis it is measured on and its coordinate there. */
    public record Straight(Axis axis, double coordinate) {}

    /**
     * The edge of that name; back, face, bottom and top always mean the extremes. Nothing when there is no such member,
     * or it is not on one level or upright line.
     */
    public static Optional<Straight> straight(Outline shape, String edge) {
        Box box = shape.box();
        return switch (edge) {
            case "back" -> Optional.of(new Straight(Axis.OUT, box.back()));
            case "face" -> Optional.of(new Straight(Axis.OUT, box.face()));
            case "bottom" -> Optional.of(new Straight(Axis.UP, box.bottom()));
            case "top" -> Optional.of(new Straight(Axis.UP, box.top()));
            default -> member(shape.straights(edge));
        };
    }

    private static Optional<Straight> member(List<Line> lines) {
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        Optional<Straight> first = axis(lines.get(0));
        boolean oneLine = lines.stream()
                .allMatch(line -> first.equals(axis(line))
                        || (axis(line).isPresent()
                                && first.isPresent()
                                && axis(line).get().axis() == first.get().axis()
                                && Tolerance.same(
                                        axis(line).get().coordinate(),
                                        first.get().coordinate())));
        return oneLine ? first : Optional.empty();
    }

    private static Optional<Straight> axis(Line line) {
        Point way = line.direction(0);
        if (Math.abs(way.x()) <= Tolerance.SAME_DIRECTION) {
            return Optional.of(new Straight(Axis.OUT, line.from().x()));
        }
        return Math.abs(way.y()) <= Tolerance.SAME_DIRECTION
                ? Optional.of(new Straight(Axis.UP, line.from().y()))
                : Optional.empty();
    }

    /** The names that {@link #straight} answers to. */
    public static List<String> names(Outline shape) {
        List<String> names = new ArrayList<>(List.of("back", "face", "bottom", "top"));
        shape.members().stream()
                .filter(member ->
                        !names.contains(member) && straight(shape, member).isPresent())
                .forEach(names::add);
        return names;
    }
}

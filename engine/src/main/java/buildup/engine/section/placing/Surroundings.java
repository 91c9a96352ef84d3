package buildup.engine.section.placing;

import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The solid wall, the floor and the ceiling as outlines that run on far beyond any stack. */
public record Surroundings(Optional<Outline> wall, Optional<Outline> floor, Optional<Outline> ceiling) {
    /** Farther than any length that can be written: the reader refuses lengths of 10,000 ft and more. */
    static final double BEYOND_ALL = 1 << 20;

    /** A sloped ceiling falls by this share of its height over the floor and no farther. */
    private static final double SLOPE_ENDS = 0.9;

    /**
     * The surroundings of a space; what it lacks is absent.
     *
     * @param far how far they run, in; must be more than any coordinate that matters
     */
    public static Surroundings of(Space space, double far) {
        Space.Wall wall = space.wall();
        return new Surroundings(
                wall.solid()
                        ? Optional.of(
                                box(-far, wall.from().orElse(-far), 0, wall.to().orElse(far)))
                        : Optional.empty(),
                space.floor().isPresent()
                        ? Optional.of(box(-far, -far, far, space.floor().getAsDouble()))
                        : Optional.empty(),
                space.ceiling().isPresent() ? Optional.of(ceiling(space, far, far)) : Optional.empty());
    }

    /**
     * All above the ceiling of a space, as it is near the stack: one that falls into the room goes on level from there.
     *
     * @param far how far it runs, in
     * @param face where its fall ends, x, in
     */
    public static Outline ceilingNear(Space space, double far, double face) {
        return ceiling(space, far, face);
    }

    /**
     * All above the ceiling. A slope goes on as far as the room does: it ends before it meets the floor, and at the
     * wall plane where the wall is solid, for nothing behind it is part of the room.
     */
    private static Outline ceiling(Space space, double far, double fallsTo) {
        double height = space.ceiling().orElseThrow();
        double slope = space.slope();
        if (!(Math.abs(slope) > 0)) {
            return box(-far, height, far, far);
        }
        double least = space.floor().isPresent()
                ? Math.min(far, SLOPE_ENDS * (height - space.floor().getAsDouble()) / Math.abs(slope))
                : far;
        double back = space.wall().solid() ? 0 : slope > 0 ? least : far;
        double face = slope < 0 ? Math.min(least, fallsTo) : far;
        double top = 4 * far;
        List<Point> points = new ArrayList<>(List.of(new Point(-far, height - slope * back)));
        if (back < far) {
            points.add(new Point(-back, height - slope * back));
        }
        points.add(new Point(face, height + slope * face));
        if (face < far) {
            points.add(new Point(far, height + slope * face));
        }
        points.add(new Point(far, top));
        points.add(new Point(-far, top));
        List<Stroke> walk = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            String member = i < points.size() - 3 ? "bottom" : i == points.size() - 2 ? "top" : "face";
            walk.add(new Stroke(new Line(points.get(i), points.get((i + 1) % points.size())), member));
        }
        return Outline.closed(walk);
    }

    private static Outline box(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }
}

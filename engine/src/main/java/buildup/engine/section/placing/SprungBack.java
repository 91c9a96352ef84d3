package buildup.engine.section.placing;

import buildup.engine.section.stack.PieceKind;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.Comparator;
import java.util.Optional;

/** The back of a sprung molding, a crown, bed or cove that stands across a corner on two edges: its foot and its upper edge. */
public final class SprungBack {
    /** A back that leans less than this, or more than the rest of a right angle, is no sprung one, degrees. */
    private static final double LEAST_SPRING = 15;

    private SprungBack() {}

    /** The back of a sprung molding, from its foot up; nothing when the piece is none. */
    public static Optional<Line> of(Placed placed) {
        if (placed.piece().kind() != PieceKind.TRIM
                || placed.piece().stock().downIsNarrow().isEmpty()) {
            return Optional.empty();
        }
        return placed.outline().strokes().stream()
                .filter(stroke -> stroke.member().equals("back"))
                .map(Stroke::segment)
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .max(Comparator.comparingDouble(Line::length))
                .map(line -> line.from().y() < line.to().y() ? line : line.reversed())
                .filter(line -> spring(line) >= LEAST_SPRING && spring(line) <= 90 - LEAST_SPRING);
    }

    /** Degrees off plumb. */
    public static double spring(Line back) {
        Point way = back.direction(0);
        return Math.toDegrees(Math.atan2(Math.abs(way.x()), Math.abs(way.y())));
    }
}

package buildup.cli.drawing.hold;

import buildup.engine.hold.nail.Fixed;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;

/** SectionMarks on a section: nails and the ends of arrows. */
final class SectionMarks {
    private SectionMarks() {}

    /**
     * A nail with its head.
     *
     * @param head half its width, in of paper
     * @param scale inches of the picture to an inch of wood
     */
    static List<Segment> nail(Fixed fixed, double head, double scale) {
        Point at = fixed.head().times(scale);
        Point across = fixed.way().left().times(head);
        return List.of(
                new Line(at.minus(across), at.plus(across)),
                new Line(at, fixed.point().times(scale)));
    }

    /**
     * The end of an arrow, twice as long as it is wide to each side.
     *
     * @param along the way of the arrow, 1 in long
     * @param wide to each side, in of paper
     */
    static List<Segment> barbs(Point end, Point along, double wide) {
        Point back = end.minus(along.times(2 * wide));
        Point aside = along.left().times(wide);
        return List.of(new Line(back.plus(aside), end), new Line(end, back.minus(aside)));
    }
}

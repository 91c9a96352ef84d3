package buildup.engine.mill.milling;

import buildup.catalog.mill.Cutter;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Access;
import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * One cutter at one height, run along the stick.
 *
 * @param sized the cutter
 * @param cutter as the shop calls it
 * @param side from which its shaft comes
 * @param times how often the stick is run, the fence moved over between
 * @param depth of its longest point below that side of the blank, in
 * @param fence from the reference side (the bottom edge, or the back for cuts from above or below) to the middle of the
 *     cutter, or of its first run, in; below 0 beyond it
 * @param through whether a blade parts off all that lies beyond a line
 * @param swept what it clears, its shaft with it
 * @param makes stretches of the outline
 */
public record Pass(
        Cutter.Sized sized,
        Phrase cutter,
        Side side,
        int times,
        double depth,
        double fence,
        boolean through,
        Outline swept,
        List<Access.Stretch> makes) {
    public Pass {
        makes = List.copyOf(makes);
    }

    /** Whether the fence bears on the back of the stick, and not on its bottom edge. */
    public boolean fencedByBack() {
        return side.equals(Side.ABOVE) || side.equals(Side.BELOW);
    }

    /** Whether it makes a square groove or rabbet, for which shops keep cutters. */
    boolean isSquare() {
        return !through
                && switch (sized.cutter().kind()) {
                    case SAW, STRAIGHT, RABBET -> true;
                    default -> false;
                };
    }

    /** Whether it makes all of a stretch. */
    boolean makes(Reached part) {
        return makes.stream()
                .anyMatch(stretch -> stretch.stroke() == part.stroke()
                        && (Math.max(0, stretch.from() - part.from()) + Math.max(0, part.to() - stretch.to()))
                                        * sizeOf(part)
                                <= Tolerance.TOUCHING);
    }

    /** Length of the whole stroke that a stretch lies on, in. */
    private static double sizeOf(Reached part) {
        return part.segment().length() / Math.max(part.to() - part.from(), Tolerance.SNAP);
    }

    /** Whether it cuts into the sides that the stick bears on while it is worked. */
    boolean takesBearing() {
        return side.equals(Side.BELOW) || side.equals(Side.BACK);
    }
}

package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The lines of a piece that look up, on which another may bear, or those that look down, by which it may bear: level ones, and
 * for safety some that lean. A bearing is a contact of two straight lines, so that no curve has one.
 *
 * @param width of all these lines together, level, in
 * @param out from where to where they lie
 * @param up from the lowest place of them to the highest
 */
record LevelSide(SizeSum width, Extent out, Extent up) {
    /** What leans more is none of these lines, degrees off level; a bearing itself leans by 5 at most. */
    private static final double LEVEL = 30;

    /**
     * How much a line that leans more may bear at most, in: both ends of the bearing lie within touching of the line, which
     * goes off it by the tangent of 25 degrees.
     */
    static final double OF_STEEP_LINES = 2 * Tolerance.TOUCHING / Math.tan(Math.toRadians(LEVEL - 5));

    static LevelSide of(PlacedForms piece, boolean upper) {
        if (piece.box()) {
            SizeSum level = piece.side(Axis.UP, upper);
            return new LevelSide(piece.out().high().minus(piece.out().low()), piece.out(), new Extent(level, level));
        }
        SizeSum width = piece.own(reading ->
                lines(reading, upper).stream().mapToDouble(Box::width).sum());
        return new LevelSide(
                width,
                new Extent(
                        piece.out().low().plus(least(piece, upper, Box::back)),
                        piece.out().low().plus(most(piece, upper, Box::face))),
                new Extent(
                        piece.up().low().plus(least(piece, upper, Box::bottom)),
                        piece.up().low().plus(most(piece, upper, Box::top))));
    }

    private static SizeSum least(PlacedForms piece, boolean upper, ToDoubleFunction<Box> of) {
        return piece.own(
                reading -> lines(reading, upper).stream().mapToDouble(of).min().orElse(0));
    }

    private static SizeSum most(PlacedForms piece, boolean upper, ToDoubleFunction<Box> of) {
        return piece.own(
                reading -> lines(reading, upper).stream().mapToDouble(of).max().orElse(0));
    }

    /** The boxes of these lines, in a frame in which the box of the outline begins at 0. */
    private static List<Box> lines(Piece reading, boolean upper) {
        Outline outline = reading.shape();
        double sine = Math.cos(Math.toRadians(LEVEL));
        Point corner = new Point(outline.box().back(), outline.box().bottom());
        return outline.strokes().stream()
                .filter(stroke -> stroke.segment() instanceof Line line
                        && (upper ? 1 : -1) * OwnMember.normal(line, 0).y() >= sine)
                .map(stroke -> Box.of(
                        stroke.segment().from().minus(corner),
                        stroke.segment().to().minus(corner)))
                .toList();
    }
}

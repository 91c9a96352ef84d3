package buildup.engine.judge.bound.form;

import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A piece and where it sits.
 *
 * @param box whether its outline is the box of its extents, whatever the sizes are
 */
public record PlacedForms(PieceForms piece, PieceKind kind, Extent out, Extent up, boolean box) {
    /** Its name in the document. */
    public String name() {
        return piece.name();
    }

    /** Whether it is a piece of the stack: framing is none. */
    public boolean inStack() {
        return kind != PieceKind.FRAMING;
    }

    /** From where to where it reaches along an axis. */
    public Extent extent(Axis axis) {
        return axis == Axis.OUT ? out : up;
    }

    /** One side of its box: the coordinate on an axis. */
    public SizeSum side(Axis axis, boolean high) {
        return high ? extent(axis).high() : extent(axis).low();
    }

    /** A number that moves with it, as it is in the frame of its own shape whose box begins at 0. */
    public SizeSum own(ToDoubleFunction<Piece> of) {
        return piece.shape().sum(of);
    }

    /**
     * The one straight edge that lies along a side of its box, along the other axis; absent where there is none or more,
     * or where another line comes so near to that side that it may touch what lies there too.
     */
    public Optional<Extent> flat(Axis axis, boolean high) {
        if (box) {
            return Optional.of(extent(axis.other()));
        }
        boolean one = piece.shape().pieces().stream()
                .flatMap(Optional::stream)
                .allMatch(reading -> flats(reading, axis, high).size() == 1);
        if (!one) {
            return Optional.empty();
        }
        SizeSum from = extent(axis.other()).low();
        return Optional.of(new Extent(
                from.plus(own(reading -> along(reading, axis, high, true))),
                from.plus(own(reading -> along(reading, axis, high, false)))));
    }

    /** The name of the member that is the one straight edge along a side; absent where there is none that is always so. */
    public Optional<String> member(Axis axis, boolean high) {
        return piece.shape()
                .same(reading -> {
                    List<Stroke> flats = flats(reading, axis, high);
                    String name = flats.size() == 1 ? flats.get(0).member() : "";
                    long strokes = reading.shape().strokes().stream()
                            .filter(stroke -> stroke.member().equals(name))
                            .count();
                    return strokes == 1 ? name : "";
                })
                .filter(name -> !name.isEmpty());
    }

    private static double along(Piece reading, Axis axis, boolean high, boolean low) {
        Box edge = flats(reading, axis, high).get(0).segment().box();
        double from = axis.other().low(reading.shape().box());
        return (low ? axis.other().low(edge) : axis.other().high(edge)) - from;
    }

    /** The lines of a shape that lie within touching of a side of its box. */
    private static List<Stroke> flats(Piece reading, Axis axis, boolean high) {
        Box box = reading.shape().box();
        double side = high ? axis.high(box) : axis.low(box);
        return reading.shape().strokes().stream()
                .filter(stroke -> stroke.segment() instanceof Line line
                        && Math.abs(coordinate(axis, line.from()) - side) <= 2 * Tolerance.TOUCHING
                        && Math.abs(coordinate(axis, line.to()) - side) <= 2 * Tolerance.TOUCHING)
                .toList();
    }

    private static double coordinate(Axis axis, Point point) {
        return axis == Axis.OUT ? point.x() : point.y();
    }

    /**
     * From where to where a piece reaches along one axis, or a straight edge of it.
     *
     * @param low the lesser coordinate, in
     * @param high the greater one, in
     */
    public record Extent(SizeSum low, SizeSum high) {}
}

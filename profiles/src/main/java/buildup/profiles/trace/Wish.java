package buildup.profiles.trace;

import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * How a tracing is to be read.
 *
 * @param unit of the tracing; not stated, it is inches and the size is tested
 * @param calipers sizes measured on the piece: the first gives the scale, others check it
 * @param deviation how far the outline may stay from the tracing beside the scatter of its points, in
 * @param usual sizes commonly run of this kind of molding
 * @param arris arcs and flats up to this size between two straight members are wear, and are made sharp; 0 for none
 * @param paint thickness of paint to be taken off all but the back, in; 0 for none
 * @param flip whether the tracing is to be turned end for end
 */
public record Wish(
        Optional<LengthUnit> unit,
        List<Caliper> calipers,
        double deviation,
        Optional<Usual> usual,
        double arris,
        double paint,
        boolean flip) {
    /** A good contour gauge and a steady hand, in. */
    public static final double USUAL_DEVIATION = 0.004;

    /** Read as inches, nothing restored. */
    public static final Wish PLAIN =
            new Wish(Optional.empty(), List.of(), USUAL_DEVIATION, Optional.empty(), 0, 0, false);

    /**
     * Sizes commonly run.
     *
     * @param kind the trade's word
     * @param largest greatest width or height, in
     */
    public record Usual(String kind, double largest) {}

    public Wish {
        calipers = List.copyOf(calipers);
    }

    public Wish in(LengthUnit stated) {
        return new Wish(Optional.of(stated), calipers, deviation, usual, arris, paint, flip);
    }

    public Wish measured(List<Caliper> sizes) {
        return new Wish(unit, sizes, deviation, usual, arris, paint, flip);
    }

    public Wish within(double inches) {
        return new Wish(unit, calipers, inches, usual, arris, paint, flip);
    }

    public Wish of(Usual kind) {
        return new Wish(unit, calipers, deviation, Optional.of(kind), arris, paint, flip);
    }

    public Wish restored(double sharpened, double stripped) {
        return new Wish(unit, calipers, deviation, usual, sharpened, stripped, flip);
    }

    public Wish flipped() {
        return new Wish(unit, calipers, deviation, usual, arris, paint, true);
    }
}

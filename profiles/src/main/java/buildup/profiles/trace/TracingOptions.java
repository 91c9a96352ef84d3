package buildup.profiles.trace;

import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * How a tracing is to be read.
 *
 * @param unit of the tracing; not stated, it is inches and the size is tested
 * @param calipers sizes measured on the piece: the largest of the whole gives the scale, else the first, and others check it
 * @param deviation how far the outline may stay from the tracing, in; not stated, it follows from how the points scatter
 * @param usual sizes commonly run of this kind of molding
 * @param pose how the tracing lies
 * @param restoring what wear and paint are to be taken off
 * @param metric whether the molding may have been drawn in millimeters, else it was in inches
 */
public record TracingOptions(
        Optional<LengthUnit> unit,
        List<Caliper> calipers,
        Optional<Double> deviation,
        Optional<Usual> usual,
        Pose pose,
        Wear restoring,
        boolean metric) {
    /** Read as inches and as drawn, nothing restored. */
    public static final TracingOptions PLAIN = new TracingOptions(
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            new Pose(0, false, Optional.empty()),
            new Wear(0, 0),
            false);

    /**
     * Sizes commonly run.
     *
     * @param kind the trade's word
     * @param largest greatest width or height, in
     */
    public record Usual(String kind, double largest) {}

    /**
     * How a tracing lies.
     *
     * @param turn by which it is to be turned before it is read, degrees counterclockwise
     * @param flip whether it is then to be turned end for end
     * @param back the side on which its back then lies; not said, it is found
     */
    public record Pose(double turn, boolean flip, Optional<TracedSide> back) {}

    /**
     * What has become of a piece since it was made.
     *
     * @param edge arcs and flats up to this size between two straight members are wear, and are made sharp; 0 for none
     * @param paint thickness of paint to be taken off all but the back, in; 0 for none
     */
    public record Wear(double edge, double paint) {}

    /** Copies the list. */
    public TracingOptions {
        calipers = List.copyOf(calipers);
    }

    /** Those on which its sizes may be. */
    List<ShopRule> rules() {
        return metric ? List.of(ShopRule.MILLIMETERS, ShopRule.INCHES) : List.of(ShopRule.INCHES);
    }

    /** The same of a molding that is told in that unit, and perhaps drawn in it. */
    public TracingOptions drawnIn(LengthUnit shop) {
        return new TracingOptions(unit, calipers, deviation, usual, pose, restoring, shop.isMetric());
    }

    /** The side of the back, if it was said. */
    Optional<TracedSide> back() {
        return pose.back();
    }

    /** The same in a unit. */
    public TracingOptions in(LengthUnit stated) {
        return new TracingOptions(Optional.of(stated), calipers, deviation, usual, pose, restoring, metric);
    }

    /** The same with sizes measured on the piece. */
    public TracingOptions measured(List<Caliper> sizes) {
        return new TracingOptions(unit, sizes, deviation, usual, pose, restoring, metric);
    }

    /** The same within a deviation. */
    public TracingOptions within(double inches) {
        return new TracingOptions(unit, calipers, Optional.of(inches), usual, pose, restoring, metric);
    }

    /** The same for a kind of molding. */
    public TracingOptions of(Usual kind) {
        return new TracingOptions(unit, calipers, deviation, Optional.of(kind), pose, restoring, metric);
    }

    /** The same with edges up to a size made sharp and so much paint taken off. */
    public TracingOptions restored(double sharpened, double stripped) {
        return new TracingOptions(unit, calipers, deviation, usual, pose, new Wear(sharpened, stripped), metric);
    }

    /** The same of a tracing that lies otherwise. */
    public TracingOptions lying(Pose other) {
        return new TracingOptions(unit, calipers, deviation, usual, other, restoring, metric);
    }

    /** The same of a tracing that is drawn end for end. */
    public TracingOptions flipped() {
        return lying(new Pose(pose.turn(), true, pose.back()));
    }

    /** The same with the back on a side. */
    public TracingOptions back(TracedSide side) {
        return lying(new Pose(pose.turn(), pose.flip(), Optional.of(side)));
    }
}

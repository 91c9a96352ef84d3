package buildup.engine.hold.framing;

import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.room.run.Fit;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the nails or screws of a row stand along one stick, in inches along its stretch. A stick is as long as it is where
 * the heads sit.
 *
 * @param left, right ends of the stick, in
 */
public record RowPlaces(Fastening row, double left, double right) {
    /** Nearer to the end of a stick than this, in, no nail is driven: common practice, no source. */
    static final double FROM_END = 1;

    /** Those of a row on a stick of its piece. */
    public static RowPlaces of(Fit fit, Fixed fixed) {
        Point head = fixed.drive().head();
        double across = fit.course().turned() ? head.y() : head.x();
        double left = fit.start() - fit.past(across);
        return new RowPlaces(fixed.fastening(), left, left + fit.at(across));
    }

    /**
     * Where the wall takes a nail anywhere. A row that says where its first stands goes on from there; any other has one near
     * either end and none farther apart than its spacing, so that n = ceil((length - 2 ends) / spacing) + 1. A stick that is
     * shorter than both ends has one in its middle.
     */
    public List<Double> anywhere() {
        return row.first() > 0 ? from(row.first(), row.spacing()) : evenly();
    }

    private List<Double> evenly() {
        double between = right - left - 2 * FROM_END;
        if (between <= 0) {
            return List.of((left + right) / 2);
        }
        int spaces = (int) Math.ceil(between / row.spacing() - Tolerance.COINCIDENT);
        List<Double> places = new ArrayList<>();
        for (int i = 0; i <= spaces; i++) {
            places.add(left + FROM_END + between * i / spaces);
        }
        return List.copyOf(places);
    }

    /** How far apart those of a row really stand: evenly between both ends, no farther than it asks; it alone where one stands. */
    double spacing(List<Double> places) {
        return places.size() > 1 ? places.get(1) - places.get(0) : row.spacing();
    }

    /** Those at even spaces from one that stands somewhere along the stretch. */
    List<Double> from(double first, double spacing) {
        double begin = first + Math.ceil((left + FROM_END - first) / spacing - Tolerance.COINCIDENT) * spacing;
        List<Double> places = new ArrayList<>();
        for (int i = 0; begin + i * spacing <= right - FROM_END + Tolerance.COINCIDENT; i++) {
            places.add(begin + i * spacing);
        }
        return List.copyOf(places);
    }

    /** The longest stretch of the stick without one that lands, in. */
    double without(List<Double> landed) {
        double before = left;
        double most = 0;
        for (double place : landed) {
            most = Math.max(most, place - before);
            before = place;
        }
        return Math.max(most, right - before);
    }
}

package buildup.engine.mill.milling;

import buildup.catalog.mill.Cutter;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;

/**
 * The air that a turning bit takes up in the section: its outline through the shaft, which stands on the line x = 0, the
 * cutting part from y = 0 up. The shaft is drawn as wide as the widest cut, which is on the safe side.
 */
final class Bit {
    static final String EDGE = "edge";
    private static final String PILOT = "pilot";
    private static final String SHAFT = "shaft";

    /** Length of a pilot under the cut, in; common practice, no source. */
    private static final double PILOT_LENGTH = 0.375;

    /** What a beading bit leaves on either side of its round, in; common practice, no source. */
    private static final double BEAD_FILLET = 1.0 / 16;

    private final double shaft;
    private final List<Stroke> half = new ArrayList<>();
    private Point at;

    private Bit(double below, double shaft) {
        this.at = new Point(0, -below);
        this.shaft = shaft;
    }

    /** @param shaft how far up it goes, in */
    static Outline of(Cutter.Sized sized, double shaft) {
        double size = sized.size().toInches();
        Cutter cutter = sized.cutter();
        double pilot = cutter.pilot().map(d -> d.toInches() / 2).orElse(0.0);
        Bit bit = new Bit(pilot > 0 ? PILOT_LENGTH : 0, shaft);
        if (pilot > 0) {
            bit.line(pilot, -PILOT_LENGTH, PILOT).line(pilot, 0, PILOT);
        }
        switch (cutter.kind()) {
            case ROUND_OVER -> bit.arc(pilot + size, size, new Point(pilot + size, 0), false);
            case BEADING ->
                bit.line(pilot + BEAD_FILLET, 0, EDGE)
                        .arc(pilot + BEAD_FILLET + size, size, new Point(pilot + BEAD_FILLET + size, 0), false)
                        .line(pilot + BEAD_FILLET + size, size + BEAD_FILLET, EDGE);
            case COVE -> bit.arc(pilot + size, size, new Point(pilot, size), true);
            case CORE_BOX -> bit.arc(size / 2, size / 2, new Point(0, size / 2), true);
            case OGEE ->
                bit.arc(pilot + size, size, new Point(pilot, size), true)
                        .arc(pilot + 2 * size, 2 * size, new Point(pilot + 2 * size, size), false);
            case STRAIGHT, SAW -> bit.line(size / 2, 0, EDGE);
            case RABBET -> bit.line(pilot + size, 0, EDGE);
            case CHAMFER -> bit.line(pilot + size * Math.tan(cutter.angle().toRadians()), size, EDGE);
        }
        return bit.closed();
    }

    private Bit line(double x, double y, String member) {
        Point to = new Point(x, y);
        half.add(new Stroke(new Line(at, to), member));
        at = to;
        return this;
    }

    private Bit arc(double x, double y, Point center, boolean counterclockwise) {
        Point to = new Point(x, y);
        half.add(new Stroke(new Arc(at, to, center, counterclockwise), EDGE));
        at = to;
        return this;
    }

    /** The straight side of the cut above it, the end of the shaft, and all of it mirrored. */
    private Outline closed() {
        line(at.x(), shaft, EDGE);
        List<Stroke> all = new ArrayList<>(half);
        all.add(new Stroke(new Line(at, new Point(-at.x(), at.y())), SHAFT));
        for (int i = half.size() - 1; i >= 0; i--) {
            all.add(half.get(i).moved(Motion.ENDS).reversed());
        }
        return Outline.closed(all);
    }

    /** Over its cutting edges, in. */
    static double diameter(Cutter.Sized sized) {
        return edges(of(sized, 4 * sized.size().toInches())).stream()
                .mapToDouble(edge -> 2 * edge.box().face())
                .max()
                .orElse(0);
    }

    /** The cutting edges of a bit wherever it stands. */
    static List<Segment> edges(Outline placed) {
        return placed.strokes().stream()
                .filter(stroke -> stroke.member().equals(EDGE))
                .map(Stroke::segment)
                .toList();
    }
}

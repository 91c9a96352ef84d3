package buildup.cli.write;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.Optional;

/** The {@code d} of an SVG path: y down from the top of the sheet, arcs as true arcs. */
final class PathData {
    private final double top;
    private final StringBuilder data = new StringBuilder();
    private Optional<Point> at = Optional.empty();

    /** @param top height of the sheet, in */
    PathData(double top) {
        this.top = top;
    }

    static String of(List<? extends Segment> segments, boolean closed, double top) {
        PathData path = new PathData(top);
        segments.forEach(path::add);
        return path.data + (closed ? " Z" : "");
    }

    private void add(Segment segment) {
        if (at.isEmpty() || !Joins.meet(at.get(), segment.from())) {
            word("M", segment.from());
        }
        if (segment instanceof Arc arc && Math.abs(arc.sweep()) > 0) {
            String radius = radius(arc);
            // y is turned over: counterclockwise seen from above runs against SVG's positive angles
            String flags = (Math.abs(arc.sweep()) > Math.PI ? "1" : "0") + " " + (arc.counterclockwise() ? "0" : "1");
            word("A" + radius + " " + radius + " 0 " + flags + " ", arc.to());
        } else {
            word("L", segment.to());
        }
        at = Optional.of(segment.to());
    }

    /**
     * Ends that are rounded nearer together than a half circle is wide would have it go round another center, far off for
     * so small a rounding: sqrt(2 r e), where e is the rounding. A radius that does not reach is enlarged until it does
     * (SVG 1.1, F.6.6), so the half circle is given one that is a hair short.
     */
    private String radius(Arc arc) {
        String radius = Numbers.text(arc.radius());
        double chord = written(arc.from()).distance(written(arc.to()));
        boolean half = Math.abs(Math.abs(arc.sweep()) - Math.PI) < Tolerance.SAME_SHARE;
        return half && chord < 2 * Double.parseDouble(radius) - Tolerance.ROUNDING
                ? Numbers.text(chord / 2 - Numbers.LEAST)
                : radius;
    }

    private Point written(Point at) {
        return Numbers.rounded(new Point(at.x(), top - at.y()));
    }

    private void word(String verb, Point to) {
        data.append(data.isEmpty() ? "" : " ").append(verb).append(Numbers.pair(to.x(), top - to.y()));
    }

    /** Outlines of letters: y up as they come, for a transform to turn over. */
    static String of(GeneralPath outlines) {
        StringBuilder data = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator walk = outlines.getPathIterator(null); !walk.isDone(); walk.next()) {
            int kind = walk.currentSegment(c);
            data.append(
                    switch (kind) {
                        case PathIterator.SEG_MOVETO -> "M" + Numbers.pair(c[0], c[1]);
                        case PathIterator.SEG_LINETO -> "L" + Numbers.pair(c[0], c[1]);
                        case PathIterator.SEG_QUADTO -> "Q" + Numbers.pair(c[0], c[1]) + " " + Numbers.pair(c[2], c[3]);
                        case PathIterator.SEG_CUBICTO ->
                            "C" + Numbers.pair(c[0], c[1]) + " " + Numbers.pair(c[2], c[3]) + " "
                                    + Numbers.pair(c[4], c[5]);
                        default -> "Z";
                    });
        }
        return data.toString();
    }
}

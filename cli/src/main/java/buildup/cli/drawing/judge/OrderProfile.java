package buildup.cli.drawing.judge;

import buildup.catalog.book.EntablaturePart;
import buildup.engine.judge.proportion.LaidOrder;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** The profile of an order as its numbers give it, inches: the face of the frieze at x = 0, its own underside at y = 0. */
final class OrderProfile {
    private final List<Segment> walk = new ArrayList<>();
    private Point at = Point.ORIGIN;

    private OrderProfile() {}

    /**
     * The closed profile, counterclockwise.
     *
     * @param depth of the wood behind the face of the frieze
     */
    static List<Segment> of(LaidOrder laid, double depth) {
        OrderProfile profile = new OrderProfile();
        profile.at = new Point(-depth, 0);
        profile.to(0, 0);
        double cornice = 0;
        for (EntablaturePart part : laid.parts()) {
            if (part != EntablaturePart.CORNICE) {
                cornice += laid.height(part);
            }
        }
        profile.to(0, cornice);
        if (laid.parts().contains(EntablaturePart.CORNICE)) {
            profile.cornice(laid, cornice);
        }
        profile.to(-depth, profile.at.y());
        profile.to(-depth, 0);
        return List.copyOf(profile.walk);
    }

    private void cornice(LaidOrder laid, double bottom) {
        List<LaidOrder.Row> members = laid.members();
        if (members.isEmpty()) {
            // how it goes out is not in the book as it was seen: straight to its greatest projection
            to(laid.projection().orElse(0), bottom);
            to(at.x(), bottom + laid.height(EntablaturePart.CORNICE));
        }
        members.forEach(row -> member(row, bottom));
    }

    private void member(LaidOrder.Row row, double bottom) {
        Point end = new Point(row.face(), bottom + row.running());
        switch (row.member().shape()) {
            case FLAT -> {
                to(end.x(), at.y());
                to(end.x(), end.y());
            }
            case BEVEL -> to(end.x(), end.y());
            case ROUND -> bent(end, true);
            case HOLLOW -> bent(end, false);
            case RECTA -> {
                Point middle = at.towards(end, 0.5);
                bent(middle, true);
                bent(end, false);
            }
            case REVERSA -> {
                Point middle = at.towards(end, 0.5);
                bent(middle, false);
                bent(end, true);
            }
        }
    }

    private void to(double x, double y) {
        Point end = new Point(x, y);
        if (!end.near(at, Tolerance.COINCIDENT)) {
            walk.add(new Line(at, end));
            at = end;
        }
    }

    /** One arc of a fourth of a turn where it is as high as it is wide, and tangent to the upright at one end else. */
    private void bent(Point end, boolean round) {
        Point chord = end.minus(at);
        if (Math.abs(chord.x()) < Tolerance.COINCIDENT || Math.abs(chord.y()) < Tolerance.COINCIDENT) {
            to(end.x(), end.y());
            return;
        }
        // the center is as far from both ends, and level with the end at which the arc stands upright
        double level = round ? end.y() : at.y();
        Point upright = round ? end : at;
        Point other = round ? at : end;
        double dx = other.x() - upright.x();
        double dy = other.y() - level;
        double radius = (dx * dx + dy * dy) / (2 * Math.abs(dx));
        Point center = new Point(upright.x() + Math.signum(dx) * radius, level);
        walk.add(new Arc(at, end, center, round));
        at = end;
    }
}

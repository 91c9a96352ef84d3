package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** What a nail is in, counted again from points along it and fine polygons of another library. */
final class Recount {
    private static final int POINTS = 1_000;

    /** Finer than the program's own chords. */
    private static final double CHORD = 1e-4;

    private final List<Path2D> bodies = new ArrayList<>();
    private final Section section;

    Recount(Section section) {
        this.section = section;
        section.bodies().forEach(body -> bodies.add(path(body.outline())));
    }

    private static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double();
        List<Point> ring = outline.flattened(CHORD);
        path.moveTo(ring.get(0).x(), ring.get(0).y());
        ring.forEach(p -> path.lineTo(p.x(), p.y()));
        path.closePath();
        return path;
    }

    private static Point sample(Fixed fixed, int i) {
        return fixed.head().plus(fixed.way().times(fixed.drive().length() * (i + 0.5) / POINTS));
    }

    private boolean up(int number, int step) {
        Body body = section.body(number);
        return body.standing() || number <= step;
    }

    private boolean in(int number, Point p) {
        return bodies.get(number).contains(p.x(), p.y());
    }

    /** Whether the last sixty-fourth of the nail lies in something that is up, all but a touching's width. */
    boolean endsInside(Fixed fixed) {
        int from = POINTS - (int) Math.ceil(POINTS / 64.0 / fixed.drive().length());
        int out = 0;
        for (int i = from; i < POINTS; i++) {
            Point p = sample(fixed, i);
            boolean solid = false;
            for (int b = 0; b < bodies.size(); b++) {
                solid |= up(b, fixed.after()) && in(b, p);
            }
            out += solid ? 0 : 1;
        }
        return out * fixed.drive().length() / POINTS <= 1.0 / 256 + 0.004;
    }

    /** Inches in one body. */
    double inches(Fixed fixed, int body) {
        int inside = 0;
        for (int i = 0; i < POINTS; i++) {
            inside += in(body, sample(fixed, i)) ? 1 : 0;
        }
        return inside * fixed.drive().length() / POINTS;
    }

    /** Inches in nothing that is up. */
    double air(Fixed fixed) {
        int air = 0;
        for (int i = 0; i < POINTS; i++) {
            Point p = sample(fixed, i);
            boolean solid = false;
            for (int b = 0; b < bodies.size(); b++) {
                solid |= up(b, fixed.after()) && in(b, p);
            }
            air += solid ? 0 : 1;
        }
        return air * fixed.drive().length() / POINTS;
    }

    /** Whether a piece has wood close to both sides of a nail, halfway through it. */
    boolean hasWoodBeside(Fixed fixed, Crossing crossing, double away) {
        Point middle = fixed.head().plus(fixed.way().times((crossing.from() + crossing.to()) / 2));
        int body = crossing.body().orElseThrow();
        return in(body, middle.plus(fixed.way().left().times(away)))
                && in(body, middle.plus(fixed.way().right().times(away)));
    }
}

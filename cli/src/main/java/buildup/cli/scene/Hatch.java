package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * A pattern within a closed ring.
 *
 * @param home the point from which the lines of the pattern are counted; it moves with the picture
 */
public record Hatch(List<Segment> ring, Pattern pattern, Point home) implements SceneItem {
    /** Lines in one direction, after which they stand farther apart: what is so large is no section, and yet drawn. */
    private static final int MOST_ROWS = 5_000;

    public Hatch {
        ring = List.copyOf(ring);
    }

    @Override
    public Hatch moved(double right, double up) {
        Motion shift = Motion.shift(right, up);
        return new Hatch(Path.moved(ring, shift), pattern, shift.apply(home));
    }

    @Override
    public Box box() {
        return Path.box(ring);
    }

    /** The lines of the pattern, cut to the ring. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>(lines(pattern.angle()));
        if (pattern.crossed()) {
            lines.addAll(lines(pattern.angle() + 90));
        }
        return List.copyOf(lines);
    }

    private List<Line> lines(double angle) {
        Motion level = Motion.shift(-home.x(), -home.y()).then(Motion.turn(-angle));
        Motion back = Motion.turn(angle).then(Motion.shift(home.x(), home.y()));
        ChordRing laid = ChordRing.of(Path.moved(ring, level), Tolerance.DRAWN_CHORD);
        double rows = (laid.box().top() - laid.box().bottom()) / pattern.spacing();
        double spacing = pattern.spacing() * Math.max(1, Math.ceil(rows / MOST_ROWS));
        List<Line> lines = new ArrayList<>();
        long last = (long) Math.floor(laid.box().top() / spacing);
        for (long row = (long) Math.ceil(laid.box().bottom() / spacing); row <= last; row++) {
            double y = row * spacing;
            for (ChordRing.Span span : laid.level(y)) {
                lines.add(new Line(new Point(span.from(), y), new Point(span.to(), y)).moved(back));
            }
        }
        return lines;
    }
}

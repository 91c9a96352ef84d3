package buildup.cli.drawing.draft;

import buildup.cli.scene.ChordRing;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.List;

/** How a dimension line runs; places on the picture are given as far along it and far across it. */
public enum DimensionAxis {
    LEVEL,
    UPRIGHT;

    /** How far along this axis a point lies, in. */
    public double along(Point p) {
        return this == LEVEL ? p.x() : p.y();
    }

    /** How far across this axis a point lies, in. */
    public double across(Point p) {
        return this == LEVEL ? p.y() : p.x();
    }

    /** The point so far along and so far across this axis, in. */
    public Point point(double along, double across) {
        return this == LEVEL ? new Point(along, across) : new Point(across, along);
    }

    /** A line along this axis, in. */
    public Line line(double from, double to, double across) {
        return new Line(point(from, across), point(to, across));
    }

    /** A box about a place, its length along this axis, in. */
    public Box box(double along, double across, double length, double thickness) {
        return Box.of(
                point(along - length / 2, across - thickness / 2), point(along + length / 2, across + thickness / 2));
    }

    /** The axis square to it. */
    public DimensionAxis other() {
        return this == LEVEL ? UPRIGHT : LEVEL;
    }

    /** Where a ring lies along a line of this run. */
    public List<ChordRing.Span> spans(ChordRing ring, double across) {
        return this == LEVEL ? ring.level(across) : ring.upright(across);
    }

    /** The lesser edge of a box along this axis, in. */
    public double least(Box box) {
        return this == LEVEL ? box.back() : box.bottom();
    }

    /** The greater edge of a box along this axis, in. */
    public double most(Box box) {
        return this == LEVEL ? box.face() : box.top();
    }

    /** The axis to which a line is nearer; level where it leans just as much. */
    public static DimensionAxis of(Line line) {
        Point step = line.to().minus(line.from());
        return Math.abs(step.x()) >= Math.abs(step.y()) ? LEVEL : UPRIGHT;
    }
}

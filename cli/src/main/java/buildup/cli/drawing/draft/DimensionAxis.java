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

    public double along(Point p) {
        return this == LEVEL ? p.x() : p.y();
    }

    public double across(Point p) {
        return this == LEVEL ? p.y() : p.x();
    }

    public Point point(double along, double across) {
        return this == LEVEL ? new Point(along, across) : new Point(across, along);
    }

    public Line line(double from, double to, double across) {
        return new Line(point(from, across), point(to, across));
    }

    public Box box(double along, double across, double length, double thickness) {
        return Box.of(
                point(along - length / 2, across - thickness / 2), point(along + length / 2, across + thickness / 2));
    }

    public DimensionAxis other() {
        return this == LEVEL ? UPRIGHT : LEVEL;
    }

    /** Where a ring lies along a line of this run. */
    public List<ChordRing.Span> spans(ChordRing ring, double across) {
        return this == LEVEL ? ring.level(across) : ring.upright(across);
    }

    public double least(Box box) {
        return this == LEVEL ? box.back() : box.bottom();
    }

    public double most(Box box) {
        return this == LEVEL ? box.face() : box.top();
    }

    public static DimensionAxis of(Line line) {
        Point step = line.to().minus(line.from());
        return Math.abs(step.x()) >= Math.abs(step.y()) ? LEVEL : UPRIGHT;
    }
}

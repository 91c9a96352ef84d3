package buildup.cli.drawing;

import buildup.cli.scene.Ring;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.List;

/** How a dimension line runs; places on the picture are given as far along it and far across it. */
enum Run {
    LEVEL,
    UPRIGHT;

    double along(Point p) {
        return this == LEVEL ? p.x() : p.y();
    }

    double across(Point p) {
        return this == LEVEL ? p.y() : p.x();
    }

    Point point(double along, double across) {
        return this == LEVEL ? new Point(along, across) : new Point(across, along);
    }

    Line line(double from, double to, double across) {
        return new Line(point(from, across), point(to, across));
    }

    Box box(double along, double across, double length, double thickness) {
        return Box.of(
                point(along - length / 2, across - thickness / 2), point(along + length / 2, across + thickness / 2));
    }

    Run other() {
        return this == LEVEL ? UPRIGHT : LEVEL;
    }

    /** Where a ring lies along a line of this run. */
    List<Ring.Span> spans(Ring ring, double across) {
        return this == LEVEL ? ring.level(across) : ring.upright(across);
    }

    double least(Box box) {
        return this == LEVEL ? box.back() : box.bottom();
    }

    double most(Box box) {
        return this == LEVEL ? box.face() : box.top();
    }

    static Run of(Line line) {
        Point step = line.to().minus(line.from());
        return Math.abs(step.x()) >= Math.abs(step.y()) ? LEVEL : UPRIGHT;
    }
}

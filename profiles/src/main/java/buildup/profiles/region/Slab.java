package buildup.profiles.region;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The edges of a piece of wood between two levels, from left to right, wood between the first and the second, the third
 * and the fourth: none of them bends back or crosses another within the slab.
 */
record Slab(List<Edge> edges) {
    /**
     * A stretch of an outline that only rises or only falls, so that it has one x at each height between its ends.
     *
     * @param side of an arc, 1 for the right half of its circle and -1 for the left; 0 for a line
     * @param squareRadius of an arc; 0 for a line
     */
    record Edge(Segment segment, Box box, double side, double squareRadius) {
        /** The edges of a segment; a level one has none. */
        static List<Edge> of(Segment segment) {
            List<Edge> edges = new ArrayList<>();
            if (segment instanceof Arc arc) {
                double up = arc.atAngle(Math.PI / 2);
                double down = arc.atAngle(-Math.PI / 2);
                double first = Math.min(up, down);
                double second = Math.max(up, down);
                double start = 0;
                for (double turn : List.of(first, second)) {
                    if (turn > start && turn < 1) {
                        edges.add(between(arc.part(start, turn)));
                        start = turn;
                    }
                }
                edges.add(between(arc.part(start, 1)));
            } else {
                edges.add(between(segment));
            }
            edges.removeIf(edge -> edge.high() - edge.low() <= Tolerance.COINCIDENT);
            return edges;
        }

        private static Edge between(Segment segment) {
            Box box = Box.of(segment.from(), segment.to());
            if (!(segment instanceof Arc arc)) {
                return new Edge(segment, box, 0, 0);
            }
            // where the chord, turned a quarter, points out of the circle: a half turn has its center on the chord
            double rise = arc.to().y() - arc.from().y();
            double side = Math.signum(arc.counterclockwise() ? rise : -rise);
            Point spoke = arc.from().minus(arc.center());
            double r2 = spoke.dot(spoke);
            double reach = arc.center().x() + side * Math.sqrt(r2);
            boolean bulges = (arc.from().y() - arc.center().y())
                            * (arc.to().y() - arc.center().y())
                    < 0;
            return new Edge(
                    segment, bulges ? box.with(new Point(reach, arc.center().y())) : box, side, r2);
        }

        Edge shifted(double dx, double dy) {
            return new Edge(
                    segment.moved(Motion.shift(dx, dy)),
                    new Box(box.back() + dx, box.bottom() + dy, box.face() + dx, box.top() + dy),
                    side,
                    squareRadius);
        }

        /** Whether the outline walks it downward, with its wood on the right of it. */
        boolean falls() {
            return segment.to().y() < segment.from().y();
        }

        /** The stretch of it between two heights, as vertices within {@code chordError} of it. */
        List<Point> flattened(double from, double to, double chordError) {
            Point low = new Point(x(from), from);
            Point high = new Point(x(to), to);
            return segment instanceof Arc arc
                    ? new Arc(low, high, arc.center(), side > 0).flattened(chordError)
                    : List.of(low, high);
        }

        double low() {
            return box.bottom();
        }

        double high() {
            return box.top();
        }

        double x(double y) {
            Point from = segment.from();
            if (segment instanceof Arc arc) {
                double u = y - arc.center().y();
                return arc.center().x() + side * Math.sqrt(Math.max(0, squareRadius - u * u));
            }
            Point to = segment.to();
            return from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
        }

        /** Area between the edge and x = 0 from one height to another. */
        double area(double from, double to) {
            if (!(segment instanceof Arc arc)) {
                return (x(from) + x(to)) / 2 * (to - from);
            }
            double middle = arc.center().y();
            return arc.center().x() * (to - from)
                    + side * (lobe(to - middle, squareRadius) - lobe(from - middle, squareRadius));
        }

        /** The integral of sqrt(r^2 - u^2) from 0 to u. */
        private static double lobe(double u, double r2) {
            double r = Math.sqrt(r2);
            double share = Math.max(-1, Math.min(1, u / r));
            return (u * Math.sqrt(Math.max(0, r2 - u * u)) + r2 * Math.asin(share)) / 2;
        }
    }

    /** Those of the edges that pass a height, in order. */
    static Slab at(List<Edge> edges, double y) {
        List<Edge> passing = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.low() < y && y < edge.high()) {
                passing.add(edge);
            }
        }
        passing.sort(Comparator.comparingDouble(edge -> edge.x(y)));
        return new Slab(passing);
    }

    /** What lies between two heights from one edge to the other. */
    record Cell(Edge left, Edge right, double from, double to) {
        double area() {
            return right.area(from, to) - left.area(from, to);
        }

        double middle() {
            return (from + to) / 2;
        }

        /** Whether a cell that begins where this one ends goes on with it, and not only from a corner of it. */
        boolean goesOnIn(Cell above) {
            double left = Math.max(this.left.x(to), above.left.x(above.from));
            double right = Math.min(this.right.x(to), above.right.x(above.from));
            return right - left > Tolerance.SNAP;
        }

        /** A place inside. */
        Point inside() {
            return new Point((left.x(middle()) + right.x(middle())) / 2, middle());
        }
    }

    /** The wood that this slab and another share between two heights, from left to right. */
    List<Cell> shared(Slab other, double from, double to) {
        double middle = (from + to) / 2;
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i + 1 < edges.size(); i += 2) {
            for (int j = 0; j + 1 < other.edges.size(); j += 2) {
                Edge left = farther(edges.get(i), other.edges.get(j), middle);
                Edge right = nearer(edges.get(i + 1), other.edges.get(j + 1), middle);
                if (left.x(middle) < right.x(middle)) {
                    cells.add(new Cell(left, right, from, to));
                }
            }
        }
        return cells;
    }

    /** Area of the wood between two heights, what several outlines share counted once. */
    double joined(double from, double to) {
        double area = 0;
        int deep = 0;
        for (Edge edge : edges) {
            int after = deep + (edge.falls() ? 1 : -1);
            if (deep == 0 || after == 0) {
                area += edge.falls() ? -edge.area(from, to) : edge.area(from, to);
            }
            deep = after;
        }
        return area;
    }

    private static Edge farther(Edge a, Edge b, double y) {
        return a.x(y) >= b.x(y) ? a : b;
    }

    private static Edge nearer(Edge a, Edge b, double y) {
        return a.x(y) <= b.x(y) ? a : b;
    }
}

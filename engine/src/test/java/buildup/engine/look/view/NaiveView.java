package buildup.engine.look.view;

import buildup.engine.look.view.Visibility.Surface;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * The same question answered without a sweep, each stretch against every other: a segment is cut wherever a sight line
 * by a corner or a tangent point meets it and wherever another segment crosses it; between two cuts nothing changes, so
 * the middle of each piece is asked whether anything lies on its way to the viewpoint. Shares no formula with the sweep.
 */
public final class NaiveView {
    /** Pieces and distances shorter than this, in, are left out: a sight line that leaves a surface is on it. */
    private static final double HAIR = 1e-9;

    private final Viewpoint view;
    private final List<Surface> outlines;
    private final List<Point> corners = new ArrayList<>();

    public NaiveView(Viewpoint view, List<Surface> outlines) {
        this.view = view;
        this.outlines = outlines;
        for (Surface surface : outlines) {
            corners.add(surface.segment().from());
            if (surface.segment() instanceof Arc arc) {
                tangents(arc).stream().map(arc::at).forEach(corners::add);
            }
        }
    }

    /** How much of a segment the viewpoint sees, in. */
    public double seen(Segment target) {
        double seen = 0;
        List<Double> cuts = cuts(target);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double part = (cuts.get(i + 1) - cuts.get(i)) * target.length();
            double middle = (cuts.get(i) + cuts.get(i + 1)) / 2;
            if (part > HAIR && faces(target, middle) && free(target.at(middle))) {
                seen += part;
            }
        }
        return seen;
    }

    private boolean faces(Segment target, double t) {
        Point toViewer = view instanceof Viewpoint.Near near
                ? near.at().minus(target.at(t))
                : ((Viewpoint.FarAway) view).direction();
        return target.direction(t).right().dot(toViewer) > 0;
    }

    private List<Double> cuts(Segment target) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        if (target instanceof Arc arc) {
            cuts.addAll(tangents(arc));
        }
        for (Point corner : corners) {
            meetings(corner, wayFrom(corner), target).forEach(p -> cuts.add(target.nearest(p)));
        }
        for (Surface surface : outlines) {
            crossings(surface.segment(), target).forEach(p -> cuts.add(target.nearest(p)));
        }
        return cuts.stream().filter(t -> t >= 0 && t <= 1).sorted().toList();
    }

    /** Direction of the sight line through a point, towards the viewpoint. */
    private Point wayFrom(Point p) {
        return view instanceof Viewpoint.Near near ? near.at().minus(p).unit() : ((Viewpoint.FarAway) view).direction();
    }

    /** Where a sight line only touches an arc, as t: spoke square to the sight line. */
    private List<Double> tangents(Arc arc) {
        List<Double> angles = new ArrayList<>();
        if (view instanceof Viewpoint.Near near) {
            Point to = near.at().minus(arc.center());
            double cosine = arc.radius() / to.length();
            if (cosine < 1) {
                angles.add(Math.atan2(to.y(), to.x()) + Math.acos(cosine));
                angles.add(Math.atan2(to.y(), to.x()) - Math.acos(cosine));
            }
        } else {
            Point direction = ((Viewpoint.FarAway) view).direction();
            angles.add(Math.atan2(direction.x(), -direction.y()));
            angles.add(Math.atan2(-direction.x(), direction.y()));
        }
        return angles.stream().map(arc::atAngle).filter(t -> t > 0 && t < 1).toList();
    }

    private boolean free(Point p) {
        Point way = wayFrom(p);
        double reach = view instanceof Viewpoint.Near near ? near.at().distance(p) : Double.POSITIVE_INFINITY;
        for (Surface surface : outlines) {
            for (Point hit : meetings(p, way, surface.segment())) {
                double along = hit.minus(p).dot(way);
                if (along > 1e-7 && along < reach) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Where the endless line through a point meets a segment. */
    private static List<Point> meetings(Point p, Point way, Segment segment) {
        List<Point> met = new ArrayList<>();
        if (segment instanceof Line line) {
            Point along = line.to().minus(line.from());
            double turn = along.cross(way);
            double share = p.minus(line.from()).cross(way) / turn;
            if (Math.abs(turn) > 1e-14 && share >= -HAIR && share <= 1 + HAIR) {
                met.add(line.from().plus(along.times(share)));
            }
            return met;
        }
        Arc arc = (Arc) segment;
        Point out = p.minus(arc.center());
        double half = out.dot(way);
        double square = half * half - out.dot(out) + arc.radius() * arc.radius();
        if (square >= 0) {
            for (double root : List.of(-half - Math.sqrt(square), -half + Math.sqrt(square))) {
                onArc(arc, p.plus(way.times(root)), met);
            }
        }
        return met;
    }

    private static void onArc(Arc arc, Point p, List<Point> met) {
        double t = arc.atAngle(p.minus(arc.center()).angle());
        if (t >= -HAIR && t <= 1 + HAIR) {
            met.add(p);
        }
    }

    private static List<Point> crossings(Segment a, Segment b) {
        if (a instanceof Line line) {
            List<Point> met = new ArrayList<>();
            Point way = line.to().minus(line.from()).unit();
            for (Point p : meetings(line.from(), way, b)) {
                double along = p.minus(line.from()).dot(way);
                if (along >= -HAIR && along <= line.length() + HAIR) {
                    met.add(p);
                }
            }
            return met;
        }
        return b instanceof Line ? crossings(b, a) : circles((Arc) a, (Arc) b);
    }

    /** The circles' common chord (radical line) met with one of them. */
    private static List<Point> circles(Arc a, Arc b) {
        Point between = b.center().minus(a.center());
        double d = between.length();
        List<Point> met = new ArrayList<>();
        if (d > HAIR) {
            double foot = (d * d + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * d);
            Point unit = between.times(1 / d);
            for (Point p : meetings(a.center().plus(unit.times(foot)), unit.left(), a)) {
                onArc(b, p, met);
            }
        }
        return met;
    }
}

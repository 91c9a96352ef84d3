package buildup.engine.look.view;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** A stretch of a body's segment on which the key runs one way: between its ends, seams and grazing points. */
record Sweep(Viewpoint view, Segment segment, int body, double start, double end, double low, double high) {
    /** The stretches of a segment that face the viewpoint (key falling along the walk), edge-on ones left out. */
    static List<Sweep> facing(Viewpoint view, Segment segment, int body) {
        List<Sweep> facing = new ArrayList<>();
        List<Double> cuts = cuts(view, segment);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double start = cuts.get(i);
            double end = cuts.get(i + 1);
            if (end - start <= Tolerance.EDGE_ON) {
                continue;
            }
            double first = key(view, segment, start, (start + end) / 2);
            double last = key(view, segment, end, (start + end) / 2);
            if (first - last > Tolerance.EDGE_ON) {
                facing.add(new Sweep(view, segment, body, start, end, last, first));
            }
        }
        return facing;
    }

    /** The key at an end; on the seam, the one of its two keys that is on the side of the stretch. */
    private static double key(Viewpoint view, Segment segment, double t, double inside) {
        double key = view.key(segment.at(t));
        if (view instanceof Viewpoint.Near) {
            double middle = view.key(segment.at(inside));
            if (key - middle > Math.PI) {
                return key - 2 * Math.PI;
            }
            if (middle - key > Math.PI) {
                return key + 2 * Math.PI;
            }
        }
        return key;
    }

    /** Sorted t at which the run of the key may turn, 0 and 1 included. */
    private static List<Double> cuts(Viewpoint view, Segment segment) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        cuts.addAll(view.seams(segment));
        if (segment instanceof Arc arc) {
            for (double angle : view.grazing(arc)) {
                double t = arc.atAngle(angle);
                if (t > 0 && t < 1) {
                    cuts.add(t);
                }
            }
        }
        return cuts.stream().sorted().toList();
    }

    /** The t at which the ray of a key meets this stretch. */
    double at(double key) {
        if (key >= high) {
            return start;
        }
        if (key <= low) {
            return end;
        }
        Line ray = view.ray(key);
        Point way = ray.to().minus(ray.from());
        double t = segment instanceof Line line ? onLine(line, ray.from(), way) : onArc((Arc) segment, ray.from(), way);
        return Math.max(start, Math.min(end, t));
    }

    private static double onLine(Line line, Point from, Point way) {
        Point along = line.to().minus(line.from());
        return from.minus(line.from()).cross(way) / along.cross(way);
    }

    /** Of the two meetings of ray and circle, the one nearest the stretch. */
    private double onArc(Arc arc, Point from, Point way) {
        Point toCenter = arc.center().minus(from);
        double along = toCenter.dot(way);
        double off = way.cross(toCenter);
        double half = Math.sqrt(Math.max(0, (arc.radius() - Math.abs(off)) * (arc.radius() + Math.abs(off))));
        double first = arc.atAngle(
                from.plus(way.times(along - half)).minus(arc.center()).angle());
        double second = arc.atAngle(
                from.plus(way.times(along + half)).minus(arc.center()).angle());
        return outside(first) <= outside(second) ? first : second;
    }

    private double outside(double t) {
        return Math.max(0, Math.max(start - t, t - end));
    }

    double depth(double key) {
        return view.depth(segment.at(at(key)));
    }
}

package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.profiles.curve.Bezier;
import buildup.profiles.curve.DrawnCurve;
import buildup.profiles.curve.Oval;
import buildup.profiles.curve.Spline;
import buildup.profiles.curve.Straight;
import buildup.profiles.curve.Strand;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What an entity of a DXF file draws, and what is wrong with it, in a sentence. */
record DxfShape(Optional<Strand> strand, Optional<Phrase> fault) {
    static final Affine MIRROR = Affine.scale(-1, 1);

    private static DxfShape of(DrawnCurve curve, boolean closed) {
        return new DxfShape(Optional.of(new Strand(List.of(curve), closed)), Optional.empty());
    }

    static DxfShape faulty(Phrase fault) {
        return new DxfShape(Optional.empty(), Optional.of(fault));
    }

    /**
     * The line of an entity.
     *
     * @param vertices those that follow a POLYLINE
     */
    static DxfShape of(DxfEntity entity, List<DxfEntity> vertices) {
        DxfShape shape = switch (entity.type()) {
            case "LINE" -> of(new Straight(entity.point(10), entity.point(11)), false);
            case "ARC" -> arc(entity);
            case "CIRCLE" -> round(entity, 0, 2 * Math.PI);
            case "ELLIPSE" -> ellipse(entity);
            case "LWPOLYLINE" -> light(entity);
            case "POLYLINE" -> heavy(entity, vertices);
            default -> spline(entity);
        };
        boolean ownPlane = !List.of("LINE", "ELLIPSE", "SPLINE").contains(entity.type());
        return ownPlane && entity.mirrored()
                ? new DxfShape(shape.strand.map(strand -> strand.moved(MIRROR)), shape.fault)
                : shape;
    }

    private static DxfShape arc(DxfEntity entity) {
        double degrees = (entity.number(51, 360) - entity.number(50, 0)) % 360;
        return round(entity, Math.toRadians(entity.number(50, 0)), turn(Math.toRadians(degrees)));
    }

    /** Counterclockwise from 0, and none is a whole turn. */
    private static double turn(double angle) {
        return angle > Tolerance.ROUNDING ? angle : angle + 2 * Math.PI;
    }

    private static DxfShape round(DxfEntity entity, double start, double sweep) {
        double radius = entity.number(40, 0);
        if (!(radius > 0)) {
            return faulty(FormatNotices.NO_RADIUS);
        }
        return of(Oval.circular(entity.point(10), radius, start, sweep), isWhole(sweep));
    }

    private static boolean isWhole(double sweep) {
        return sweep > 2 * Math.PI - Tolerance.COINCIDENT;
    }

    private static DxfShape ellipse(DxfEntity entity) {
        Point u = entity.point(11);
        double ratio = entity.number(40, 1);
        if (!(u.length() > 0) || !(ratio > 0)) {
            return faulty(FormatNotices.NO_AXIS);
        }
        Point v = (entity.mirrored() ? u.right() : u.left()).times(ratio);
        double start = entity.number(41, 0);
        double sweep = turn((entity.number(42, 2 * Math.PI) - start) % (2 * Math.PI));
        return of(Oval.of(entity.point(10), u, v, start, sweep), isWhole(sweep));
    }

    private static DxfShape light(DxfEntity entity) {
        List<Point> points = entity.points(10);
        List<Double> bulges = new ArrayList<>();
        for (DxfEntity.Pair pair : entity.pairs()) {
            if (pair.code() == 10) {
                bulges.add(0.0);
            } else if (pair.code() == 42 && !bulges.isEmpty()) {
                bulges.set(bulges.size() - 1, pair.number());
            }
        }
        return poly(points, bulges, entity.flag(70, 1));
    }

    private static DxfShape heavy(DxfEntity entity, List<DxfEntity> vertices) {
        if (entity.flag(70, 16 | 64)) {
            return faulty(FormatNotices.NET);
        }
        // those with bit 16 only pull at the curve, which the others follow
        List<DxfEntity> kept =
                vertices.stream().filter(vertex -> !vertex.flag(70, 16)).toList();
        return poly(
                kept.stream().map(vertex -> vertex.point(10)).toList(),
                kept.stream().map(vertex -> vertex.number(42, 0)).toList(),
                entity.flag(70, 1));
    }

    private static DxfShape poly(List<Point> points, List<Double> bulges, boolean closed) {
        if (points.size() < 2 || points.size() != bulges.size()) {
            return faulty(FormatNotices.WHOLE_POINTS.with("points", Figure.count(points.size())));
        }
        List<DrawnCurve> curves = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            boolean last = i == points.size() - 1;
            // the straight line that closes goes without saying
            if (last && (!closed || !(Math.abs(bulges.get(i)) > 0))) {
                break;
            }
            Optional<DrawnCurve> curve = Oval.bulged(points.get(i), points.get((i + 1) % points.size()), bulges.get(i));
            if (curve.isEmpty()) {
                return faulty(FormatNotices.BULGE.with("point", Figure.count(i + 1)));
            }
            curves.add(curve.get());
        }
        return new DxfShape(Optional.of(new Strand(curves, closed)), Optional.empty());
    }

    private static DxfShape spline(DxfEntity entity) {
        List<Point> controls = entity.points(10);
        if (controls.isEmpty() && entity.points(11).size() > 1) {
            boolean closed = entity.flag(70, 1);
            List<DrawnCurve> through = Bezier.through(
                    entity.points(11),
                    Optional.of(entity.point(12)).filter(way -> way.length() > 0),
                    Optional.of(entity.point(13)).filter(way -> way.length() > 0),
                    closed);
            return new DxfShape(Optional.of(new Strand(through, closed)), Optional.empty());
        }
        List<Double> weights = entity.has(41) ? entity.numbers(41) : Collections.nCopies(controls.size(), 1.0);
        int degree = entity.whole(71, 0);
        List<Phrase> faults = Spline.faults(degree, controls, weights, entity.numbers(40));
        if (!faults.isEmpty()) {
            return faulty(FormatNotices.asASpline(faults));
        }
        Spline spline = new Spline(degree, controls, weights, entity.numbers(40));
        boolean meets = spline.from()
                .near(spline.to(), Tolerance.COINCIDENT * (1 + spline.from().length()));
        return of(spline, entity.flag(70, 1) && meets);
    }
}

package buildup.engine.judge.clearance;

import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Holds every piece against every place that is kept clear. */
final class KeepClearRows {
    private static final int QUARTERS = 4;

    private KeepClearRows() {}

    /** For each place the piece that comes nearest, and before it every other that comes too near. */
    static List<KeepClearRow> of(Section section, List<KeepClear> places) {
        List<KeepClearRow> rows = new ArrayList<>();
        for (KeepClear place : places) {
            List<KeepClearRow> all = IntStream.range(0, section.bodies().size())
                    .filter(body -> section.body(body).inStack())
                    .mapToObj(body ->
                            new KeepClearRow(place, body, air(section.body(body).outline(), place)))
                    .sorted(Comparator.comparingDouble(KeepClearRow::margin))
                    .toList();
            all.stream().filter(KeepClearRows::tooNear).forEach(rows::add);
            all.stream().findFirst().filter(nearest -> !tooNear(nearest)).ifPresent(rows::add);
        }
        return List.copyOf(rows);
    }

    static boolean tooNear(KeepClearRow row) {
        return row.margin() < -Tolerance.TOUCHING;
    }

    /** Air between an outline and a place, in; negative is how far it reaches in by the shortest way out. */
    static double air(Outline outline, KeepClear place) {
        if (place.center().isPresent()) {
            Point center = place.center().get();
            return outline.holds(center) ? -outline.distance(center) : outline.distance(center);
        }
        Box region = place.region();
        List<Outline> inside = inside(outline, region);
        if (inside.isEmpty()) {
            return outline.segments().stream()
                    .mapToDouble(segment -> air(segment, region))
                    .min()
                    .orElseThrow();
        }
        Box parts = Box.around(inside.stream().map(Outline::box).toList());
        // out by the shortest way that is not barred by a side that has no end
        return -Stream.of(
                        parts.face() - region.back(),
                        region.face() - parts.back(),
                        parts.top() - region.bottom(),
                        region.top() - parts.bottom())
                .min(Double::compare)
                .orElseThrow();
    }

    private static List<Outline> inside(Outline outline, Box region) {
        return Stream.of(outline)
                .flatMap(o -> cut(o, Rip.Side.BACK, region.back() - o.box().back()).stream())
                .flatMap(o -> cut(o, Rip.Side.FACE, o.box().face() - region.face()).stream())
                .flatMap(o -> cut(o, Rip.Side.BOTTOM, region.bottom() - o.box().bottom()).stream())
                .flatMap(o -> cut(o, Rip.Side.TOP, o.box().top() - region.top()).stream())
                .toList();
    }

    private static List<Outline> cut(Outline outline, Rip.Side side, double amount) {
        // as far as it goes is enough; an endless cut leaves nothing
        return Double.isInfinite(amount) && amount > 0 ? List.of() : Rip.off(outline, side, Math.max(0, amount));
    }

    /** The least distance of a segment that stays outside of a box: at its ends, its extremes, or over a corner. */
    private static double air(Segment segment, Box region) {
        List<Double> places = new ArrayList<>(List.of(0.0, 1.0));
        if (segment instanceof Arc arc) {
            for (int quarter = 0; quarter < QUARTERS; quarter++) {
                places.add(arc.atAngle(quarter * Math.PI / 2));
            }
        }
        for (double x : List.of(region.back(), region.face())) {
            for (double y : List.of(region.bottom(), region.top())) {
                if (Double.isFinite(x) && Double.isFinite(y)) {
                    places.add(segment.nearest(new Point(x, y)));
                }
            }
        }
        return places.stream()
                .filter(t -> t >= 0 && t <= 1)
                .mapToDouble(t -> distance(segment.at(t), region))
                .min()
                .orElseThrow();
    }

    private static double distance(Point p, Box region) {
        double across = Math.max(0, Math.max(region.back() - p.x(), p.x() - region.face()));
        double along = Math.max(0, Math.max(region.bottom() - p.y(), p.y() - region.top()));
        return Math.hypot(across, along);
    }
}

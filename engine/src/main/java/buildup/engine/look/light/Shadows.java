package buildup.engine.look.light;

import buildup.engine.look.light.Band.Lit;
import buildup.engine.look.view.Arrises;
import buildup.engine.look.view.Arrises.Arris;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.section.compose.Member;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Gathers the dark bands of one member into shadows with their casters. */
record Shadows(Member member, List<Band> bands, Arrises arrises, Viewpoint viewpoint, Optional<SoftEdges> soft) {
    void addTo(List<Shadow> out) {
        int i = 0;
        while (i < bands.size()) {
            int start = i;
            Lit lit = bands.get(start).lit();
            while (i < bands.size() && bands.get(i).lit() == lit) {
                i++;
            }
            if (lit == Lit.SHADE) {
                out.add(shade(segments(start, i)));
            } else if (lit == Lit.CAST) {
                out.add(cast(start, i));
            }
        }
    }

    private List<Segment> segments(int start, int end) {
        List<Segment> segments = new ArrayList<>();
        bands.subList(start, end).forEach(band -> segments.add(band.segment()));
        return segments;
    }

    private double share(List<Segment> dark) {
        return dark.stream().mapToDouble(Segment::length).sum() / member.length();
    }

    private Shadow shade(List<Segment> dark) {
        return new Shadow(
                bands.get(0).member(),
                Lit.SHADE,
                dark,
                Optional.empty(),
                share(dark),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The edge lies where the shadow meets light; a member dark from end to end has none. */
    private Shadow cast(int start, int end) {
        List<Segment> dark = segments(start, end);
        boolean edgeAtStart = start > 0 && bands.get(start - 1).lit() == Lit.LIT;
        boolean edgeAtEnd = !edgeAtStart && end < bands.size() && bands.get(end).lit() == Lit.LIT;
        Segment first = dark.get(0);
        Segment last = dark.get(dark.size() - 1);
        boolean fromAbove = viewpoint.towards(first.from()).y() >= 0;
        // seen from the light, keys fall along the walk: the start of a run has the greatest
        boolean high = edgeAtStart || (!edgeAtEnd && fromAbove);
        Point near = high ? Lights.inside(first, true) : Lights.inside(last, false);
        Point edge = high ? first.from() : last.to();
        boolean edged = edgeAtStart || edgeAtEnd;
        Point along = high ? first.direction(0) : last.direction(1);
        Optional<Arris> arris = edged
                ? arrises.casting(near, high)
                : arrises.castingBeyond(near, new Line(near, near.plus(along)), high);
        return new Shadow(
                bands.get(0).member(),
                Lit.CAST,
                dark,
                arris.map(Arris::body),
                share(dark),
                arris.map(Arris::at),
                edged ? Optional.of(edge) : Optional.empty(),
                arris.map(found -> OptionalDouble.of(found.at().x() - edge.x())).orElse(OptionalDouble.empty()),
                arris.map(found -> reach(found.at(), near, along)).orElse(OptionalDouble.empty()),
                edged && soft.isPresent()
                        ? OptionalDouble.of(blur(soft.get(), start, end, high))
                        : OptionalDouble.empty());
    }

    /** How far below an arris its ray meets the line through a place. */
    private OptionalDouble reach(Point arris, Point place, Point along) {
        Point on = place.plus(along);
        double at = viewpoint.onLine(viewpoint.key(arris), place.x(), place.y(), on.x(), on.y());
        double reach = arris.y() - place.y() - at * along.y();
        return Double.isFinite(reach) ? OptionalDouble.of(reach) : OptionalDouble.empty();
    }

    /** @param atStart whether the edge is where the dark bands begin; else where they end */
    private double blur(SoftEdges edges, int start, int end, boolean atStart) {
        int from = atStart ? start : end;
        int to = from;
        // the lit stretch beside the edge, as far as it goes on
        while (atStart ? from > 0 && lit(from - 1) : to < bands.size() && lit(to)) {
            from -= atStart ? 1 : 0;
            to += atStart ? 0 : 1;
        }
        return edges.around(member, span(start, end), span(from, to));
    }

    private boolean lit(int band) {
        return bands.get(band).lit() == Lit.LIT;
    }

    private SoftEdges.Span span(int start, int end) {
        return new SoftEdges.Span(length(bands.subList(0, start)), length(bands.subList(0, end)));
    }

    private static double length(List<Band> bands) {
        return bands.stream().mapToDouble(band -> band.segment().length()).sum();
    }
}

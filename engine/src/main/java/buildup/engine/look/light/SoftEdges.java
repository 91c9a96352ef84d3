package buildup.engine.look.light;

import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Member;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * The blur of a shadow's edge under a lamp of some width, taken level. Along a member the blur runs from where all of the
 * lamp shines to where none of it does. In most cases its two ends decide: one that draws no edge of its own shines on
 * all of the member or on nothing. Where wood stands before the middle of the lamp alone, or light comes through a gap
 * from the middle alone, the places between do, as finely as they are spaced.
 */
record SoftEdges(List<Visibility> views) {
    /** Places of the lamp that are asked, both ends among them. */
    private static final int PLACES = 17;

    SoftEdges {
        views = List.copyOf(views);
    }

    /** A stretch of a member by inches walked along it. */
    record Span(double from, double to) {}

    static SoftEdges of(Light.Lamp lamp, List<Surface> surfaces) {
        List<Visibility> views = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            Point at = lamp.left().towards(lamp.right(), i / (PLACES - 1.0));
            views.add(Visibility.of(new Viewpoint.Near(at), surfaces));
        }
        return new SoftEdges(views);
    }

    /**
     * How much of a member is blurred at an edge, in.
     *
     * @param dark the dark stretch that ends at the edge, as the middle of the lamp casts it
     * @param light the lit stretch that begins there
     */
    double around(Member member, Span dark, Span light) {
        List<Span> all = List.of(new Span(0, member.length()));
        List<Span> none = all;
        for (Visibility view : views) {
            List<Span> lit = lit(view, member);
            all = both(all, lit);
            none = both(none, gaps(lit, member.length()));
        }
        boolean lightFirst = light.from() < dark.from();
        return Math.abs(nearest(all, light, lightFirst) - nearest(none, dark, !lightFirst));
    }

    /**
     * The place within a stretch at which one of the spans is met first, coming from the edge.
     *
     * @param backward whether the way goes against the walk: from the end of the stretch to its beginning, which is
     *     also the answer when no span is met
     */
    private static double nearest(List<Span> spans, Span within, boolean backward) {
        double best = backward ? within.from() : within.to();
        for (Span span : spans) {
            double from = Math.max(span.from(), within.from());
            double to = Math.min(span.to(), within.to());
            if (to - from > Tolerance.SNAP) {
                best = backward ? Math.max(best, to) : Math.min(best, from);
            }
        }
        return best;
    }

    private static List<Span> lit(Visibility view, Member member) {
        List<Span> lit = new ArrayList<>();
        double walked = 0;
        for (Segment segment : member.segments()) {
            for (Stretch seen : view.seen(segment)) {
                double from = walked + seen.start() * segment.length();
                double to = walked + seen.end() * segment.length();
                Span last = lit.isEmpty() ? new Span(-1, -1) : lit.get(lit.size() - 1);
                if (from - last.to() <= Tolerance.SNAP) {
                    lit.set(lit.size() - 1, new Span(last.from(), to));
                } else {
                    lit.add(new Span(from, to));
                }
            }
            walked += segment.length();
        }
        return lit;
    }

    private static List<Span> both(List<Span> a, List<Span> b) {
        List<Span> both = new ArrayList<>();
        for (Span one : a) {
            for (Span other : b) {
                double from = Math.max(one.from(), other.from());
                double to = Math.min(one.to(), other.to());
                if (from < to) {
                    both.add(new Span(from, to));
                }
            }
        }
        return both;
    }

    private static List<Span> gaps(List<Span> spans, double length) {
        List<Span> gaps = new ArrayList<>();
        double at = 0;
        for (Span span : spans) {
            if (span.from() > at) {
                gaps.add(new Span(at, span.from()));
            }
            at = span.to();
        }
        if (at < length) {
            gaps.add(new Span(at, length));
        }
        return gaps;
    }
}

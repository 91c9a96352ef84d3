package buildup.engine.look.view;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The nearest outline along every ray from a viewpoint. */
public final class Visibility {
    private static final int NO_BODY = -1;

    /** A segment of an outline and the body it belongs to. */
    public record Surface(Segment segment, int body) {}

    /** What bounds a view: the body and the place on its outline that a ray meets. */
    public record Met(int body, Point at) {}

    /** The nearest stretch for the keys from {@code low} to {@code high}. */
    private record Front(double low, double high, Sweep sweep) {}

    private final Viewpoint view;
    private final List<Front> fronts;

    private Visibility(Viewpoint view, List<Front> fronts) {
        this.view = view;
        this.fronts = fronts;
    }

    /**
     * What is seen of outlines from one place.
     *
     * @param outlines closed rings of true segments, wood on the left, in any order; they may touch and may cross
     */
    public static Visibility of(Viewpoint view, List<Surface> outlines) {
        List<List<Front>> level = new ArrayList<>();
        for (Surface surface : outlines) {
            for (Sweep sweep : Sweep.facing(view, surface.segment(), surface.body())) {
                level.add(List.of(new Front(sweep.low(), sweep.high(), sweep)));
            }
        }
        while (level.size() > 1) {
            List<List<Front>> next = new ArrayList<>((level.size() + 1) / 2);
            for (int i = 0; i + 1 < level.size(); i += 2) {
                next.add(merged(level.get(i), level.get(i + 1)));
            }
            if (level.size() % 2 == 1) {
                next.add(level.get(level.size() - 1));
            }
            level = next;
        }
        return new Visibility(view, level.isEmpty() ? List.of() : level.get(0));
    }

    /** From where it is looked. */
    public Viewpoint from() {
        return view;
    }

    /** The nearer of two fronts for every key; each list is sorted and free of overlaps. */
    private static List<Front> merged(List<Front> a, List<Front> b) {
        List<Front> out = new ArrayList<>(a.size() + b.size());
        int i = 0;
        int j = 0;
        double at = Double.NEGATIVE_INFINITY;
        while (i < a.size() || j < b.size()) {
            double lowA = i < a.size() ? Math.max(at, a.get(i).low) : Double.POSITIVE_INFINITY;
            double lowB = j < b.size() ? Math.max(at, b.get(j).low) : Double.POSITIVE_INFINITY;
            double highA = i < a.size() ? a.get(i).high : Double.POSITIVE_INFINITY;
            double highB = j < b.size() ? b.get(j).high : Double.POSITIVE_INFINITY;
            double start = Math.min(lowA, lowB);
            boolean inA = lowA <= start;
            boolean inB = lowB <= start;
            double end = Math.min(inA ? highA : lowA, inB ? highB : lowB);
            if (inA && inB) {
                nearer(a.get(i).sweep, b.get(j).sweep, start, end, out);
            } else {
                add(inA ? a.get(i).sweep : b.get(j).sweep, start, end, out);
            }
            at = end;
            if (highA <= end) {
                i++;
            }
            if (highB <= end) {
                j++;
            }
        }
        return out;
    }

    private static void nearer(Sweep a, Sweep b, double start, double end, List<Front> out) {
        if (end - start <= Tolerance.EDGE_ON) {
            return;
        }
        List<Double> cuts = cuts(a, b, start, end);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double middle = (cuts.get(i) + cuts.get(i + 1)) / 2;
            add(a.depth(middle) <= b.depth(middle) ? a : b, cuts.get(i), cuts.get(i + 1), out);
        }
    }

    /** The keys from start to end between which neither of two stretches passes the other: two arcs may do so twice. */
    private static List<Double> cuts(Sweep a, Sweep b, double start, double end) {
        List<Double> cuts = new ArrayList<>(List.of(start));
        Crossings.of(a.segment(), b.segment(), Tolerance.SNAP).stream()
                .map(a.view()::key)
                .filter(key -> key > start && key < end)
                .sorted()
                .forEach(cuts::add);
        cuts.add(end);
        return cuts;
    }

    private static void add(Sweep sweep, double start, double end, List<Front> out) {
        if (end - start <= Tolerance.EDGE_ON) {
            return;
        }
        Front last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (last != null && last.sweep.equals(sweep) && start - last.high <= Tolerance.EDGE_ON) {
            out.set(out.size() - 1, new Front(last.low, end, sweep));
        } else {
            out.add(new Front(start, end, sweep));
        }
    }

    /** A stretch of a segment, by its places t, start before end. */
    public record Stretch(double start, double end) {}

    /** The stretches of a segment that face the viewpoint, seen or not, in walking order. */
    public List<Stretch> facing(Segment target) {
        return joined(Sweep.facing(view, target, NO_BODY).stream()
                .map(sweep -> new Stretch(sweep.start(), sweep.end()))
                .toList());
    }

    /** The stretches of a segment that the viewpoint sees, in walking order. */
    public List<Stretch> seen(Segment target) {
        List<Stretch> seen = new ArrayList<>();
        for (Sweep sweep : Sweep.facing(view, target, NO_BODY)) {
            seen(sweep, seen);
        }
        return joined(seen);
    }

    private void seen(Sweep sweep, List<Stretch> out) {
        double at = sweep.high();
        // keys fall along the walk, so the fronts are taken from the highest down
        for (int i = lastFrom(sweep.high()); i >= 0 && at > sweep.low(); i--) {
            Front front = fronts.get(i);
            if (front.high < at) {
                show(sweep, Math.max(front.high, sweep.low()), at, out);
                at = Math.min(at, front.high);
            }
            double low = Math.max(front.low, sweep.low());
            if (low < at) {
                inFrontOf(sweep, front.sweep, low, at, out);
                at = low;
            }
        }
        show(sweep, sweep.low(), at, out);
    }

    /** Adds what of the sweep is not behind the front between two keys. */
    private static void inFrontOf(Sweep sweep, Sweep front, double low, double high, List<Stretch> out) {
        if (high - low <= Tolerance.EDGE_ON) {
            return;
        }
        List<Double> cuts = cuts(sweep, front, low, high);
        for (int i = cuts.size() - 2; i >= 0; i--) {
            double middle = (cuts.get(i) + cuts.get(i + 1)) / 2;
            if (sweep.depth(middle) <= front.depth(middle) + Tolerance.BESIDE) {
                show(sweep, cuts.get(i), cuts.get(i + 1), out);
            }
        }
    }

    private static void show(Sweep sweep, double low, double high, List<Stretch> out) {
        if (high - low > Tolerance.EDGE_ON) {
            out.add(new Stretch(sweep.at(high), sweep.at(low)));
        }
    }

    /** The last front that begins at a key or below it; -1 when none does. */
    private int lastFrom(double key) {
        int low = 0;
        int high = fronts.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (fronts.get(middle).low <= key) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return high;
    }

    /** Neighbors that meet are one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : stretches) {
            Stretch last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && next.start - last.end <= Tolerance.COINCIDENT) {
                joined.set(joined.size() - 1, new Stretch(last.start, next.end));
            } else {
                joined.add(next);
            }
        }
        return List.copyOf(joined);
    }

    /** What the ray through {@code p} meets first; empty when it meets nothing. */
    public Optional<Met> nearest(Point p) {
        return nearest(view.key(p));
    }

    /** What the ray of a key meets first. */
    public Optional<Met> nearest(double key) {
        int i = lastFrom(key);
        if (i < 0 || fronts.get(i).high < key) {
            return Optional.empty();
        }
        Sweep sweep = fronts.get(i).sweep;
        return Optional.of(new Met(sweep.body(), sweep.segment().at(sweep.at(key))));
    }
}

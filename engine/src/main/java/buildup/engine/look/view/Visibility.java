package buildup.engine.look.view;

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

    private final Viewpoint view;
    private final Segment[] segments;
    /** The stretches of all segments that face the viewpoint, and for each segment where its own begin. */
    private final List<Sweep> facing;

    private final int[] begins;

    private final Fronts fronts;
    /** Which of the outlines will be asked about next, if they are asked in their order; a guess, and no more. */
    private int next;

    private Visibility(Viewpoint view, Segment[] segments, List<Sweep> facing, int[] begins, Fronts fronts) {
        this.view = view;
        this.segments = segments;
        this.facing = facing;
        this.begins = begins;
        this.fronts = fronts;
    }

    /**
     * What is seen of outlines from one place.
     *
     * @param outlines closed rings of true segments, wood on the left, in any order; they may touch and may cross
     */
    public static Visibility of(Viewpoint view, List<Surface> outlines) {
        List<Sweep> facing = new ArrayList<>(outlines.size());
        int[] begins = new int[outlines.size() + 1];
        List<Fronts> level = new ArrayList<>();
        Segment[] segments = new Segment[outlines.size()];
        Chain chain = new Chain();
        for (int segment = 0; segment < segments.length; segment++) {
            Surface surface = outlines.get(segment);
            segments[segment] = surface.segment();
            Sweep.facing(view, surface.segment(), surface.body(), facing);
            begins[segment + 1] = facing.size();
            for (int i = begins[segment]; i < facing.size(); i++) {
                Sweep sweep = facing.get(i);
                if (!chain.takes(sweep)) {
                    level.add(chain.taken());
                    chain.takes(sweep);
                }
            }
        }
        level.add(chain.taken());
        while (level.size() > 1) {
            List<Fronts> next = new ArrayList<>((level.size() + 1) / 2);
            for (int i = 0; i + 1 < level.size(); i += 2) {
                next.add(Fronts.merged(level.get(i), level.get(i + 1)));
            }
            if (level.size() % 2 == 1) {
                next.add(level.get(level.size() - 1));
            }
            level = next;
        }
        level.get(0).join();
        return new Visibility(view, segments, facing, begins, level.get(0));
    }

    /** From where it is looked. */
    public Viewpoint from() {
        return view;
    }

    /** A stretch of a segment, by its places t, start before end. */
    public record Stretch(double start, double end) {}

    /** The stretches of a segment that face the viewpoint, seen or not, in walking order. */
    public List<Stretch> facing(Segment target) {
        List<Stretch> facing = new ArrayList<>(1);
        for (Sweep sweep : Sweep.facing(view, target, NO_BODY)) {
            facing.add(new Stretch(sweep.start(), sweep.end()));
        }
        return joined(facing);
    }

    /** The stretches of a segment that the viewpoint sees, in walking order. */
    public List<Stretch> seen(Segment target) {
        // known, where it is the next of the outlines
        int guess = next < segments.length ? next : 0;
        if (guess < segments.length && segments[guess] == target) {
            next = guess + 1;
            return seen(facing, begins[guess], begins[next]);
        }
        List<Sweep> own = Sweep.facing(view, target, NO_BODY);
        return seen(own, 0, own.size());
    }

    private List<Stretch> seen(List<Sweep> sweeps, int from, int to) {
        List<Stretch> seen = List.of();
        for (int i = from; i < to; i++) {
            Sweep sweep = sweeps.get(i);
            boolean plain = sweep.body() != NO_BODY && !sweep.doubtful();
            seen = plain ? own(sweep, seen) : seen(sweep, seen);
        }
        return joined(seen);
    }

    /** What is seen of a sweep of the outlines that plainly won or lost wherever it met another: its own fronts. */
    private List<Stretch> own(Sweep sweep, List<Stretch> before) {
        List<Stretch> out = before;
        for (int i = sweep.front(); i != Sweep.NONE; i = fronts.lower(i)) {
            out = show(sweep, fronts.low(i), fronts.high(i), out);
        }
        return out;
    }

    private List<Stretch> seen(Sweep sweep, List<Stretch> before) {
        List<Stretch> out = before;
        double at = sweep.high();
        // keys fall along the walk, so the fronts are taken from the highest down
        for (int i = fronts.lastFrom(sweep.high()); i >= 0 && at > sweep.low(); i--) {
            double high = fronts.high(i);
            if (high < at) {
                out = show(sweep, Math.max(high, sweep.low()), at, out);
                at = Math.min(at, high);
            }
            double low = Math.max(fronts.low(i), sweep.low());
            if (low < at) {
                out = inFrontOf(sweep, fronts.sweep(i), low, at, out);
                at = low;
            }
        }
        return show(sweep, sweep.low(), at, out);
    }

    /** Adds what of the sweep is not behind the front between two keys. */
    private static List<Stretch> inFrontOf(Sweep sweep, Sweep front, double low, double high, List<Stretch> before) {
        if (high - low <= Tolerance.EDGE_ON) {
            return before;
        }
        return switch (sweep == front ? Sweep.Order.LEVEL : sweep.against(front)) {
            case NEARER, LEVEL -> show(sweep, low, high, before);
            case FARTHER -> before;
            case UNKNOWN -> {
                List<Stretch> out = before;
                List<Double> cuts = Fronts.cuts(sweep, front, low, high);
                for (int i = cuts.size() - 2; i >= 0; i--) {
                    double middle = (cuts.get(i) + cuts.get(i + 1)) / 2;
                    if (sweep.depth(middle) <= front.depth(middle) + Tolerance.BESIDE) {
                        out = show(sweep, cuts.get(i), cuts.get(i + 1), out);
                    }
                }
                yield out;
            }
        };
    }

    /** Adds a stretch to a list; of most segments nothing is seen, or one. */
    private static List<Stretch> show(Sweep sweep, double low, double high, List<Stretch> before) {
        if (high - low <= Tolerance.EDGE_ON) {
            return before;
        }
        Stretch shown = new Stretch(sweep.at(high), sweep.at(low));
        if (before.isEmpty()) {
            return List.of(shown);
        }
        List<Stretch> out = before.size() == 1 ? new ArrayList<>(before) : before;
        out.add(shown);
        return out;
    }

    /** Neighbors that meet are one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        if (stretches.size() < 2) {
            return List.copyOf(stretches);
        }
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
        int i = fronts.lastFrom(key);
        if (i < 0 || fronts.high(i) < key) {
            return Optional.empty();
        }
        Sweep sweep = fronts.sweep(i);
        return Optional.of(new Met(sweep.body(), sweep.segment().at(sweep.at(key))));
    }
}

package buildup.profiles.rolling;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A disc rolled round an outline. What it cannot reach is what a round cutter of its radius leaves: the morphological
 * closing of the wood by the disc, less the wood (J. Serra, Image Analysis and Mathematical Morphology, 1982, ch. II:
 * closing as dilation followed by erosion).
 */
public final class Rolling {
    /**
     * A stretch that the disc touches.
     *
     * @param start, end places on the outline: the number of the stroke and, behind the point, the share of it walked
     * @param from, to where the center then is
     */
    private record Touch(double start, double end, Point from, Point to) {}

    private final Outline outline;
    private final List<Segment> segments;
    private final double radius;
    private final List<Touch> touches = new ArrayList<>();
    private final List<Pocket> pockets = new ArrayList<>();
    private final List<Segment> centers = new ArrayList<>();

    private Rolling(Outline outline, double radius) {
        this.outline = outline;
        this.segments = outline.segments();
        this.radius = radius;
        roll();
        fill();
    }

    /**
     * Rolls a disc along an outline, all round it.
     *
     * @param radius of the disc, in; above 0
     */
    public static Rolling of(Outline outline, double radius) {
        return new Rolling(outline, radius);
    }

    /** What the disc leaves, in walking order. */
    public List<Pocket> pockets() {
        return List.copyOf(pockets);
    }

    /** Where the center of the disc runs while it touches, stretch by stretch, roughly in walking order. */
    public List<Segment> centers() {
        return List.copyOf(centers);
    }

    /** Area of what the disc leaves, sq in. */
    public double left() {
        return pockets.stream().mapToDouble(Pocket::area).sum();
    }

    /** Length of a stroke that the disc touches, in. */
    public double touched(int stroke) {
        double length = segments.get(stroke).length();
        return touches.stream()
                .mapToDouble(touch -> Math.max(0, Math.min(stroke + 1.0, touch.end) - Math.max(stroke, touch.start)))
                .map(share -> share * length)
                .sum();
    }

    private void roll() {
        List<Locus> loci = Locus.all(segments, radius);
        List<Box> boxes = loci.stream().map(locus -> locus.path().box()).toList();
        for (int i = 0; i < loci.size(); i++) {
            Locus locus = loci.get(i);
            if (locus.path().length() <= Tolerance.SNAP) {
                Point seat = locus.path().from();
                if (isFree(seat)) {
                    touch(locus, 0, 1);
                }
                continue;
            }
            List<Double> cuts = cuts(i, loci, boxes);
            for (int k = 0; k + 1 < cuts.size(); k++) {
                double a = cuts.get(k);
                double b = cuts.get(k + 1);
                if (isFree(locus.path().at((a + b) / 2))) {
                    touch(locus, a, b);
                }
            }
        }
        touches.sort(Comparator.comparingDouble(Touch::start).thenComparingDouble(Touch::end));
    }

    private void touch(Locus locus, double a, double b) {
        Point from = locus.path().at(a);
        Point to = locus.path().at(b);
        if (locus.path().length() * (b - a) > Tolerance.SNAP) {
            centers.add(locus.path().part(a, b));
        }
        int last = touches.size() - 1;
        if (locus.corner()) {
            touches.add(new Touch(locus.stroke() + 1.0, locus.stroke() + 1.0, from, to));
        } else if (last >= 0 && a > 0 && touches.get(last).end >= locus.stroke() + a) {
            // goes on where another locus only grazed this one
            Touch before = touches.remove(last);
            touches.add(new Touch(before.start, locus.stroke() + b, before.from, to));
        } else {
            touches.add(new Touch(locus.stroke() + a, locus.stroke() + b, from, to));
        }
    }

    /** Shares of a locus at which it may become free or barred. */
    static List<Double> cuts(int which, List<Locus> loci, List<Box> boxes) {
        Segment path = loci.get(which).path();
        double least = Tolerance.SNAP / path.length();
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        for (int j = 0; j < loci.size(); j++) {
            Segment other = loci.get(j).path();
            if (j == which || !boxes.get(which).near(boxes.get(j), Tolerance.SNAP)) {
                continue;
            }
            if (other.length() > Tolerance.SNAP) {
                Crossings.of(path, other, Tolerance.SNAP).forEach(p -> cuts.add(path.nearest(p)));
            }
            for (Point end : List.of(other.from(), other.to())) {
                if (path.distance(end) <= Tolerance.SNAP) {
                    cuts.add(path.nearest(end));
                }
            }
        }
        cuts.sort(Comparator.naturalOrder());
        List<Double> apart = new ArrayList<>();
        for (double cut : cuts) {
            if (apart.isEmpty() || cut - apart.get(apart.size() - 1) > least) {
                apart.add(cut);
            } else if (cut >= 1) {
                apart.set(apart.size() - 1, cut);
            }
        }
        return apart;
    }

    private boolean isFree(Point center) {
        return segments.stream()
                        .filter(segment -> segment.box().holds(center, radius))
                        .allMatch(segment -> segment.distance(center) >= radius - Tolerance.SNAP)
                && !outline.holds(center);
    }

    /** Between two touches that do not meet lies air that is left, closed by the fillet. */
    private void fill() {
        int count = touches.size();
        List<Integer> open = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            if (!goesOn(k)) {
                open.add(k);
            }
        }
        Map<Integer, Integer> arriving = fillets(open);
        List<Integer> rest = new ArrayList<>(open);
        while (!rest.isEmpty()) {
            List<Segment> ring = new ArrayList<>();
            int first = rest.get(0);
            int k = first;
            do {
                rest.remove(Integer.valueOf(k));
                int next = (k + 1) % count;
                ring.addAll(walk(touches.get(k).end, touches.get(next).start));
                int from = arriving.getOrDefault(next, first);
                fillet(from, next).ifPresent(ring::add);
                k = from;
            } while (k != first && rest.contains(k));
            if (!ring.isEmpty()) {
                pockets.add(new Pocket(ring));
            }
        }
    }

    /** Whether the next touch begins where this one ends. */
    private boolean goesOn(int k) {
        double end = touches.get(k).end;
        double start = touches.get((k + 1) % touches.size()).start;
        double around = k + 1 < touches.size() ? start - end : start + segments.size() - end;
        int stroke = (int) Math.min(segments.size() - 1.0, Math.floor(end));
        return around * segments.get(stroke).length() <= 2 * Tolerance.SNAP
                && touches.get(k).to.near(touches.get((k + 1) % touches.size()).from, 4 * Tolerance.SNAP);
    }

    /** For each touch that begins after a gap, the touch from whose end the fillet comes; the center is the same. */
    private Map<Integer, Integer> fillets(List<Integer> open) {
        record Pair(int end, int start, double apart) {}
        List<Pair> pairs = new ArrayList<>();
        for (int end : open) {
            for (int before : open) {
                int start = (before + 1) % touches.size();
                pairs.add(new Pair(end, start, touches.get(end).to.distance(touches.get(start).from)));
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::apart)
                .thenComparingInt(Pair::end)
                .thenComparingInt(Pair::start));
        Map<Integer, Integer> arriving = new HashMap<>();
        List<Integer> used = new ArrayList<>();
        for (Pair pair : pairs) {
            if (!used.contains(pair.end) && !arriving.containsKey(pair.start)) {
                used.add(pair.end);
                arriving.put(pair.start, pair.end);
            }
        }
        return arriving;
    }

    /** The fillet backwards: from where a touch begins to where the one before it on the disc's way ends. */
    private Optional<Segment> fillet(int end, int start) {
        Point from = point(touches.get(start).start);
        Point to = point(touches.get(end).end);
        Point center = touches.get(end).to.towards(touches.get(start).from, 0.5);
        return from.near(to, Tolerance.SNAP) ? Optional.empty() : Optional.of(new Arc(from, to, center, true));
    }

    private Point point(double place) {
        int stroke = (int) Math.floor(place);
        return stroke >= segments.size()
                ? segments.get(0).at(place - segments.size())
                : segments.get(stroke).at(place - stroke);
    }

    private List<Segment> walk(double from, double to) {
        List<Segment> walked = new ArrayList<>();
        double stop = to < from ? to + segments.size() : to;
        for (int stroke = (int) Math.floor(from); stroke < stop; stroke++) {
            Segment segment = segments.get(stroke % segments.size());
            double a = Math.max(0, from - stroke);
            double b = Math.min(1, stop - stroke);
            if ((b - a) * segment.length() > Tolerance.COINCIDENT) {
                walked.add(segment.part(a, b));
            }
        }
        return walked;
    }
}

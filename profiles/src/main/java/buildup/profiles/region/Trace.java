package buildup.profiles.region;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds for each stretch of a ring of chords the true segment that it came from, and the true corners between them. */
final class Trace {
    /** How far a chord of a ring may lie from the chord that it came from: the noder's snap, on both ends. */
    private static final double SAME_CHORD = 4 * Tolerance.SNAP;

    /** How far welding and chords together may shift a corner. */
    private static final double CORNER = 2 * Tolerance.TOUCHING;

    private record Source(int outline, int stroke, Line chord) {}

    /** A run of chords from one stroke, by the vertices at its ends and its length. */
    private record Run(Source source, Point from, Point to, double length) {
        Run with(Run next) {
            return new Run(source, from, next.to, length + next.length);
        }

        boolean sameStroke(Run other) {
            return source.outline == other.source.outline && source.stroke == other.source.stroke;
        }
    }

    private final List<Outline> outlines;
    private final STRtree index = new STRtree();

    Trace(List<Outline> outlines, List<Chords> chords) {
        this.outlines = outlines;
        for (Chords polygon : chords) {
            for (int edge = 0; edge < polygon.size(); edge++) {
                Line chord = new Line(polygon.vertices().get(edge), polygon.end(edge));
                Source source = new Source(polygon.outline(), polygon.strokes().get(edge), chord);
                index.insert(envelope(chord, SAME_CHORD), source);
            }
        }
    }

    private static Envelope envelope(Line chord, double grown) {
        Envelope envelope = new Envelope(
                chord.from().x(), chord.to().x(), chord.from().y(), chord.to().y());
        envelope.expandBy(grown);
        return envelope;
    }

    Ring ring(LinearRing jtsRing, boolean outer, Point inside) {
        List<Point> vertices = new ArrayList<>();
        Coordinate[] coordinates = jtsRing.getCoordinates();
        for (int i = 0; i + 1 < coordinates.length; i++) {
            vertices.add(new Point(coordinates[i].getX(), coordinates[i].getY()));
        }
        if (Orientation.isCCW(coordinates) != outer) {
            Collections.reverse(vertices);
        }
        List<Run> runs = withoutSlivers(runs(vertices));
        List<Bound> bounds = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            Segment whole = stroke(run.source);
            Segment part = runs.size() == 1
                    ? whole
                    : between(
                            whole,
                            corner(runs.get(Math.floorMod(i - 1, runs.size())), run),
                            corner(run, runs.get((i + 1) % runs.size())));
            // shorter than the noder's snap it is rounding, and parts what goes on along one stroke
            if (part.length() > Tolerance.SNAP) {
                bounds.add(new Bound(run.source.outline, run.source.stroke, part));
            }
        }
        return new Ring(joined(bounds), inside);
    }

    /** Neighbors of one stroke as one: what welding put between them, as a corner that stands out by a hair, is gone. */
    private List<Bound> joined(List<Bound> bounds) {
        List<Bound> joined = new ArrayList<>();
        for (Bound bound : bounds) {
            int last = joined.size() - 1;
            if (last >= 0 && goesOn(joined.get(last), bound)) {
                joined.set(last, across(joined.get(last), bound));
            } else {
                joined.add(bound);
            }
        }
        int last = joined.size() - 1;
        if (last > 0 && goesOn(joined.get(last), joined.get(0))) {
            joined.set(0, across(joined.remove(last), joined.get(0)));
        }
        return joined;
    }

    private static boolean goesOn(Bound before, Bound after) {
        return before.outline() == after.outline()
                && before.stroke() == after.stroke()
                && before.segment().to().near(after.segment().from(), Tolerance.TOUCHING);
    }

    private Bound across(Bound before, Bound after) {
        Segment whole = stroke(before.outline(), before.stroke());
        Segment part = between(whole, before.segment().from(), after.segment().to());
        return new Bound(before.outline(), before.stroke(), part);
    }

    private static Segment between(Segment whole, Point start, Point end) {
        double a = endOr(whole.nearest(start), whole.length());
        double b = endOr(whole.nearest(end), whole.length());
        return whole.part(Math.min(a, b), b);
    }

    /** A place within the noder's snap of an end is that end, so that corners come back as they were given. */
    private static double endOr(double t, double length) {
        if (t * length <= Tolerance.SNAP) {
            return 0;
        }
        return (1 - t) * length <= Tolerance.SNAP ? 1 : t;
    }

    private List<Run> runs(List<Point> vertices) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < vertices.size(); i++) {
            Line chord = new Line(vertices.get(i), vertices.get((i + 1) % vertices.size()));
            // the side of what closes a joint is of no outline
            source(chord).ifPresent(source -> runs.add(new Run(source, chord.from(), chord.to(), chord.length())));
        }
        return merged(runs);
    }

    /** Neighbors from one stroke as one run, also across the start of the ring. */
    private static List<Run> merged(List<Run> runs) {
        List<Run> merged = new ArrayList<>();
        for (Run run : runs) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).sameStroke(run)) {
                merged.set(last, merged.get(last).with(run));
            } else {
                merged.add(run);
            }
        }
        int last = merged.size() - 1;
        if (last > 0 && merged.get(last).sameStroke(merged.get(0))) {
            merged.set(0, merged.remove(last).with(merged.get(0)));
        }
        return merged;
    }

    /** A run thinner than touching off a longer stroke is where welded chords pass each other: no stretch of its own. */
    private List<Run> withoutSlivers(List<Run> runs) {
        List<Run> kept = merged(runs.stream()
                .filter(run ->
                        run.length() >= Tolerance.TOUCHING || stroke(run.source).length() < 2 * Tolerance.TOUCHING)
                .toList());
        return kept.size() < 2 ? runs : kept;
    }

    private Optional<Source> source(Line chord) {
        Point middle = chord.at(0.5);
        Point way = chord.direction(0);
        @SuppressWarnings("unchecked")
        List<Source> near = index.query(envelope(new Line(middle, middle), SAME_CHORD));
        // a slanted chord has a large box, and need not pass there
        near.removeIf(source -> source.chord.distance(middle) > SAME_CHORD);
        near.sort(nearest(middle, way));
        return near.isEmpty() ? Optional.empty() : Optional.of(outermost(near, middle, way));
    }

    /**
     * Of outlines that welding laid on each other, the one that stands out farthest as given; of those in line, the first.
     *
     * @param near with the nearest first
     */
    private Source outermost(List<Source> near, Point middle, Point way) {
        Source best = near.get(0);
        for (Source other : near) {
            boolean same = other.chord.distance(middle) < SAME_CHORD
                    && other.chord.direction(0).dot(way) >= 0.5;
            if (same && out(other, middle, way) > out(best, middle, way) + Tolerance.SNAP) {
                best = other;
            }
        }
        return best;
    }

    /** How far a stroke as given lies to the right of a place on its chord, where the air is. */
    private double out(Source source, Point middle, Point way) {
        Segment whole = stroke(source);
        return way.cross(middle.minus(whole.at(whole.nearest(middle))));
    }

    /** A chord that passes there before others, then one walked in the same sense, the nearest, the earliest. */
    private static Comparator<Source> nearest(Point middle, Point way) {
        return Comparator.<Source>comparingDouble(source -> Math.floor(source.chord.distance(middle) / SAME_CHORD))
                .thenComparing(source -> source.chord.direction(0).dot(way) < 0.5)
                .thenComparingDouble(source -> Math.rint(source.chord.distance(middle) / Tolerance.SNAP))
                .thenComparingInt(Source::outline)
                .thenComparingInt(Source::stroke);
    }

    private Segment stroke(Source source) {
        return stroke(source.outline, source.stroke);
    }

    private Segment stroke(int outline, int number) {
        return outlines.get(outline).strokes().get(number).segment();
    }

    /** The true corner between two runs, near the vertex where their chords met. */
    private Point corner(Run before, Run after) {
        Segment a = stroke(before.source);
        Segment b = stroke(after.source);
        Point vertex = before.to;
        if (before.source.outline == after.source.outline
                && a.to().near(b.from(), Tolerance.SNAP)
                && a.to().near(vertex, CORNER)) {
            return a.to();
        }
        return Crossings.of(a, b, CORNER).stream()
                .filter(p -> p.near(vertex, CORNER) || isPassed(p, before, after))
                .min(Comparator.comparingDouble(vertex::distance))
                .orElse(vertex);
    }

    /**
     * Whether two runs pass a crossing on their way to and from the vertex where welding let them meet, and go back beside
     * each other: one that is nearly tangent to the other comes within touching long before or after it crosses.
     */
    private boolean isPassed(Point crossing, Run before, Run after) {
        Segment a = stroke(before.source);
        Segment b = stroke(after.source);
        return isBetween(a.nearest(crossing), a.nearest(before.from), a.nearest(before.to))
                && isBetween(b.nearest(crossing), b.nearest(after.from), b.nearest(after.to));
    }

    private static boolean isBetween(double t, double start, double end) {
        return start < t && t < end;
    }
}

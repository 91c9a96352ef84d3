package buildup.profiles.region;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What an outer ring has behind slits: stretches that go round air which opens to the outside by a mouth between two
 * outlines no wider than {@link Tolerance#CLOSED_TO_THE_ROOM}. A mouth begins at a vertex of the ring and ends at the
 * nearest place of another outline; what goes round it by less than four widths is a groove, and open.
 */
public final class Pockets {
    private static final double WIDEST = Tolerance.CLOSED_TO_THE_ROOM + Tolerance.SAME_SIZE;
    private static final double LEAST_WAY_ROUND = 4 * Tolerance.CLOSED_TO_THE_ROOM;

    /** A stretch of the ring, and whether it lies behind a slit. */
    public record Stretch(Bound bound, boolean hidden) {}

    /** A place on the ring: the number of its bound and how far along it, 0 to 1, added. */
    private record Mouth(double from, double to) {
        boolean holds(double place) {
            return from <= to ? place > from && place < to : place > from || place < to;
        }
    }

    private final List<Bound> ring;
    private final Predicate<Point> inWood;
    private final List<Box> boxes;

    private Pockets(List<Bound> ring, Predicate<Point> inWood) {
        this.ring = ring;
        this.inWood = inWood;
        this.boxes = new ArrayList<>(ring.size());
        for (Bound bound : ring) {
            boxes.add(bound.segment().box());
        }
    }

    /**
     * The ring, cut where a mouth ends.
     *
     * @param ring an outer ring, wood on the left
     * @param inWood whether a place lies in any outline
     */
    public static List<Stretch> of(List<Bound> ring, Predicate<Point> inWood) {
        return new Pockets(ring, inWood).stretches();
    }

    private List<Stretch> stretches() {
        List<Mouth> mouths = new ArrayList<>(0);
        for (int vertex = 0; vertex < ring.size(); vertex++) {
            mouth(vertex).ifPresent(mouths::add);
        }
        List<Stretch> stretches = new ArrayList<>(ring.size());
        for (int i = 0; i < ring.size(); i++) {
            if (mouths.isEmpty()) {
                stretches.add(new Stretch(ring.get(i), false));
            } else {
                cut(i, mouths, stretches);
            }
        }
        return stretches;
    }

    private void cut(int i, List<Mouth> mouths, List<Stretch> stretches) {
        Bound bound = ring.get(i);
        for (double[] part : parts(i, mouths)) {
            double middle = i + (part[0] + part[1]) / 2;
            Segment segment =
                    part[1] - part[0] == 1 ? bound.segment() : bound.segment().part(part[0], part[1]);
            stretches.add(new Stretch(
                    new Bound(bound.outline(), bound.stroke(), segment),
                    mouths.stream().anyMatch(mouth -> mouth.holds(middle))));
        }
    }

    private static List<double[]> parts(int i, List<Mouth> mouths) {
        List<Double> cuts = new ArrayList<>(List.of(0.0));
        mouths.stream()
                .flatMap(mouth -> List.of(mouth.from() - i, mouth.to() - i).stream())
                .filter(t -> t > 0 && t < 1)
                .sorted()
                .distinct()
                .forEach(cuts::add);
        cuts.add(1.0);
        return IntStream.range(1, cuts.size())
                .mapToObj(k -> new double[] {cuts.get(k - 1), cuts.get(k)})
                .toList();
    }

    /** The mouth that begins at a vertex, if one does: to the nearest of another outline, through air. */
    private Optional<Mouth> mouth(int vertex) {
        Point p = ring.get(vertex).segment().from();
        int own = ring.get(vertex).outline();
        int before = ring.get(Math.floorMod(vertex - 1, ring.size())).outline();
        double nearest = Double.POSITIVE_INFINITY;
        double place = -1;
        // each vertex about each bound: by its box first, and no object is made for what lies farther off
        for (int i = 0; i < ring.size(); i++) {
            int outline = ring.get(i).outline();
            if (outline != own && outline != before && boxes.get(i).holds(p, WIDEST)) {
                double t = ring.get(i).segment().nearest(p);
                Point at = ring.get(i).segment().at(t);
                double distance = at.distance(p);
                if (distance <= WIDEST && distance < nearest && !at.near(p, Tolerance.SNAP)) {
                    nearest = distance;
                    place = i + t;
                }
            }
        }
        return place < 0 || inWood.test(new Line(p, at(place)).at(0.5))
                ? Optional.empty()
                : pocket(vertex, snapped(place));
    }

    /** Places within rounding of a vertex are that vertex. */
    private double snapped(double place) {
        int i = index(place);
        Segment segment = ring.get(i).segment();
        double t = place - i;
        if (t * segment.length() <= Tolerance.SNAP) {
            return i;
        }
        return (1 - t) * segment.length() <= Tolerance.SNAP ? (i + 1) % ring.size() : place;
    }

    private int index(double place) {
        return Math.min((int) place, ring.size() - 1);
    }

    private Point at(double place) {
        int i = index(place);
        return ring.get(i).segment().at(place - i);
    }

    /** The one of the two ways round between the ends of a mouth that has air on its inner side, and no wood. */
    private Optional<Mouth> pocket(double vertex, double end) {
        Mouth onward = new Mouth(vertex, end);
        Mouth back = new Mouth(end, vertex);
        Mouth pocket = twiceArea(onward) < twiceArea(back) ? onward : back;
        return along(pocket, Segment::length) > LEAST_WAY_ROUND ? Optional.of(pocket) : Optional.empty();
    }

    private double twiceArea(Mouth mouth) {
        return along(mouth, Segment::twiceArea) + new Line(at(mouth.to()), at(mouth.from())).twiceArea();
    }

    /** A measure summed over the ring from one end of a mouth to the other. */
    private double along(Mouth mouth, ToDoubleFunction<Segment> of) {
        double way = upTo(mouth.to(), of) - upTo(mouth.from(), of);
        return mouth.from() <= mouth.to() ? way : way + upTo(ring.size(), of);
    }

    /** The same from where the ring begins to a place of it. */
    private double upTo(double place, ToDoubleFunction<Segment> of) {
        int whole = (int) place;
        double sum = 0;
        for (int i = 0; i < whole; i++) {
            sum += of.applyAsDouble(ring.get(i).segment());
        }
        double t = place - whole;
        return t > 0 ? sum + of.applyAsDouble(ring.get(whole).segment().part(0, t)) : sum;
    }
}

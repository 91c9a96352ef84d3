package buildup.profiles.region;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
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
    private final double[] area;
    private final double[] length;

    private Pockets(List<Bound> ring, Predicate<Point> inWood) {
        this.ring = ring;
        this.inWood = inWood;
        this.boxes = ring.stream().map(bound -> bound.segment().box()).toList();
        this.area = new double[ring.size() + 1];
        this.length = new double[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            area[i + 1] = area[i] + ring.get(i).segment().twiceArea();
            length[i + 1] = length[i] + ring.get(i).segment().length();
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
        List<Mouth> mouths = IntStream.range(0, ring.size())
                .boxed()
                .flatMap(vertex -> mouth(vertex).stream())
                .toList();
        List<Stretch> stretches = new ArrayList<>(ring.size());
        for (int i = 0; i < ring.size(); i++) {
            Bound bound = ring.get(i);
            for (double[] part : parts(i, mouths)) {
                double middle = i + (part[0] + part[1]) / 2;
                Segment segment = part[1] - part[0] == 1
                        ? bound.segment()
                        : bound.segment().part(part[0], part[1]);
                stretches.add(new Stretch(
                        new Bound(bound.outline(), bound.stroke(), segment),
                        mouths.stream().anyMatch(mouth -> mouth.holds(middle))));
            }
        }
        return stretches;
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
        Box here = new Box(p.x(), p.y(), p.x(), p.y());
        return IntStream.range(0, ring.size())
                .filter(i -> ring.get(i).outline() != own && ring.get(i).outline() != before)
                .filter(i -> boxes.get(i).near(here, WIDEST))
                .mapToObj(i -> i + ring.get(i).segment().nearest(p))
                .filter(place -> at(place).distance(p) <= WIDEST && !at(place).near(p, Tolerance.SNAP))
                .min(Comparator.comparingDouble(place -> at(place).distance(p)))
                .filter(place -> !inWood.test(new Line(p, at(place)).at(0.5)))
                .flatMap(place -> pocket(vertex, snapped(place)));
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
        return way(pocket, length) > LEAST_WAY_ROUND ? Optional.of(pocket) : Optional.empty();
    }

    private double twiceArea(Mouth mouth) {
        return way(mouth, area) + new Line(at(mouth.to()), at(mouth.from())).twiceArea();
    }

    private double way(Mouth mouth, double[] sums) {
        double way = sum(mouth.to(), sums) - sum(mouth.from(), sums);
        return mouth.from() <= mouth.to() ? way : way + sums[ring.size()];
    }

    private double sum(double place, double[] sums) {
        int i = index(place);
        double t = place - i;
        if (t == 0) {
            return sums[i];
        }
        Segment part = ring.get(i).segment().part(0, t);
        return sums[i] + (sums == area ? part.twiceArea() : part.length());
    }
}

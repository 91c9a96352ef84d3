package buildup.engine.room.splice;

import buildup.engine.room.stock.LengthSteps;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Chooses where a piece longer than any stick is joined: in as few parts as the sticks allow; on studs where they are
 * known; not over the joint of another piece; where it is seen least from where one comes in; and else with parts as long
 * as a stick allows. No joint lies near an end of the piece, unless nothing else is possible.
 */
public final class SplicePlaces {
    /** A part shorter than this does not reach from stud to stud: common spacing, no source. */
    private static final int LEAST = 16 * LengthSteps.PER_INCH;

    /** A joint nearer to that of another piece, in, lies over it: common stud spacing, no source. */
    private static final double APART = 15;

    private static final Comparator<Cost> CHEAPER = Comparator.comparingInt(Cost::off)
            .thenComparingInt(Cost::over)
            .thenComparingDouble(Cost::seen)
            .thenComparingDouble(Cost::near)
            .thenComparingLong(Cost::order);

    /**
     * What is to be joined, in {@link LengthSteps}.
     *
     * @param longest that a part can be
     * @param overlap of two parts
     * @param clear of joints from either end: as much as is held back to clamp
     * @param step of the tape
     */
    public record Task(int length, int longest, int overlap, int clear, int step) {
        /** What so many parts reach. */
        private int reach(int parts) {
            return parts * longest - (parts - 1) * overlap;
        }

        private int parts() {
            int parts = 1;
            while (reach(parts) < length) {
                parts++;
            }
            return parts;
        }
    }

    /**
     * What a choice of places comes to, the first figure first.
     *
     * @param off how many joints miss the studs
     * @param over how many lie over joints of other pieces
     * @param seen how large all of them look
     * @param near how near they are to the eye, where they look alike, turned about: less is farther
     * @param order the usual way is less
     */
    private record Cost(int off, int over, double seen, double near, long order) {
        static final Cost NONE = new Cost(0, 0, 0, 0, 0);

        Cost plus(Cost more) {
            return new Cost(off + more.off, over + more.over, seen + more.seen, near + more.near, order + more.order);
        }
    }

    private record Way(Cost cost, List<Integer> places) {}

    private final Task task;
    private final SpliceWall wall;
    private final boolean fromLeft;
    private final List<Double> others;

    private SplicePlaces(Task task, SpliceWall wall, boolean fromLeft, List<Double> others) {
        this.task = task;
        this.wall = wall;
        this.fromLeft = fromLeft;
        this.others = others;
    }

    /**
     * Where each part but the first begins, from the long point at the left, {@link LengthSteps}.
     *
     * @param fromLeft whether the longest part lies at the left where nothing else decides
     * @param others middles of the joints of other pieces along the same stretch, in
     */
    public static List<Integer> of(Task task, SpliceWall wall, boolean fromLeft, List<Double> others) {
        SplicePlaces places = new SplicePlaces(task, wall, fromLeft, others);
        int clear = Math.min(Math.max(LEAST, task.clear()), task.longest() / 2);
        return places.within(clear, Math.min(LEAST, task.longest() / 2))
                .or(() -> places.within(Math.min(LEAST, task.longest() / 2), task.step()))
                .or(() -> places.within(task.step(), task.step()))
                .orElseThrow(() -> new IllegalArgumentException("sticks that reach no farther than they overlap"));
    }

    /**
     * The middle of a joint along the stretch, in.
     *
     * @param place where the right part begins, from the long point at the left, {@link LengthSteps}
     */
    public static double middle(SpliceWall wall, int place, int overlap) {
        return wall.from() + LengthSteps.inches(place) + LengthSteps.inches(overlap) / 2;
    }

    /** The cheapest way with no joint so near to an end and no part so short; nothing where there is none. */
    private Optional<List<Integer>> within(int clear, int least) {
        int parts = task.parts();
        Map<Integer, Way> ways = new TreeMap<>(Map.of(0, new Way(Cost.NONE, List.of())));
        for (int joint = 1; joint < parts; joint++) {
            Map<Integer, Way> next = new TreeMap<>();
            int still = parts - joint;
            boolean first = joint == 1;
            for (Map.Entry<Integer, Way> way : ways.entrySet()) {
                int from = Math.max(way.getKey() + (first ? clear : least), task.length() - task.reach(still));
                int behind = still == 1 ? clear : least * still;
                int to = Math.min(
                        way.getKey() + task.longest() - task.overlap(), task.length() - task.overlap() - behind);
                for (int place : candidates(from, to)) {
                    List<Integer> places = new ArrayList<>(way.getValue().places());
                    places.add(place);
                    Way longer = new Way(way.getValue().cost().plus(cost(place)), List.copyOf(places));
                    next.merge(place, longer, (a, b) -> CHEAPER.compare(b.cost(), a.cost()) < 0 ? b : a);
                }
            }
            ways = next;
        }
        return ways.values().stream()
                .min(Comparator.comparing(Way::cost, CHEAPER))
                .map(Way::places);
    }

    private Set<Integer> candidates(int from, int to) {
        Set<Integer> all = new TreeSet<>();
        if (from > to) {
            return all;
        }
        all.add(from);
        all.add(to);
        for (double stud : wall.anywhere() ? List.<Double>of() : wall.studs()) {
            double place = stud - wall.from() - LengthSteps.inches(task.overlap()) / 2;
            int marked = (int) Math.round(place * LengthSteps.PER_INCH / task.step()) * task.step();
            if (marked >= from && marked <= to) {
                all.add(marked);
            }
        }
        return all;
    }

    private Cost cost(int place) {
        double middle = middle(wall, place, task.overlap());
        boolean over = others.stream().anyMatch(other -> Math.abs(other - middle) < APART);
        return new Cost(
                wall.holds(middle) ? 0 : 1,
                over ? 1 : 0,
                wall.seen(middle),
                -wall.away(middle),
                fromLeft ? -(long) place : place);
    }
}

package buildup.engine.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * First plans, piece by piece, the longest first, each into the first stick that has room (first fit decreasing) or
 * into the fullest that has (best fit decreasing); then every stick is taken as cheap as its pieces allow.
 */
final class Greedy {
    private final Bins bins;
    private final int[] counts;
    private final int[] most;

    private Greedy(Bins bins, int[] counts, int[] most) {
        this.bins = bins;
        this.counts = counts;
        this.most = most;
    }

    /** The cheapest of several such plans; nothing when the sticks that there are do not hold the pieces. */
    static Optional<List<StickLoad>> plan(Bins bins) {
        return plan(bins, bins.counts, bins.most);
    }

    /** The same for so many pieces of each type and sticks of each kind. */
    static Optional<List<StickLoad>> plan(Bins bins, int[] counts, int[] most) {
        return new Greedy(bins, counts, most).cheapest();
    }

    static long cost(Bins bins, List<StickLoad> loads) {
        return loads.stream().mapToLong(load -> bins.costs[load.kind()]).sum();
    }

    private Optional<List<StickLoad>> cheapest() {
        int[] byPrice = IntStream.range(0, bins.kinds.length)
                .boxed()
                .sorted(Comparator.comparingDouble(kind -> (double) bins.costs[kind] / bins.rooms[kind]))
                .mapToInt(kind -> kind)
                .toArray();
        return IntStream.range(-1, bins.kinds.length)
                .mapToObj(first -> first < 0
                        ? byPrice
                        : IntStream.concat(
                                        IntStream.of(first),
                                        IntStream.of(byPrice).filter(kind -> kind != first))
                                .toArray())
                .flatMap(order -> Stream.of(packed(order, true), packed(order, false)))
                .flatMap(Optional::stream)
                .min(Comparator.comparingLong(loads -> cost(bins, loads)));
    }

    private Optional<List<StickLoad>> packed(int[] order, boolean first) {
        List<StickLoad> loads = new ArrayList<>();
        int[] left = new int[IntStream.of(counts).sum()];
        int[] stock = most.clone();
        for (int type = 0; type < bins.types(); type++) {
            int from = 0;
            for (int piece = 0; piece < counts[type]; piece++) {
                int at = first
                        ? firstFit(left, from, loads.size(), bins.widths[type])
                        : bestFit(left, loads.size(), bins.widths[type]);
                if (at < 0) {
                    int kind = opened(order, stock, bins.widths[type]);
                    if (kind < 0) {
                        return Optional.empty();
                    }
                    stock[kind]--;
                    at = loads.size();
                    loads.add(new StickLoad(kind, new int[bins.types()]));
                    left[at] = bins.rooms[kind];
                }
                from = at;
                loads.get(at).counts()[type]++;
                left[at] -= bins.widths[type];
            }
        }
        return Optional.of(cheaper(loads, stock));
    }

    /** The first stick with room, none before {@code from} having any; -1 when none has. */
    private static int firstFit(int[] left, int from, int sticks, int width) {
        for (int i = from; i < sticks; i++) {
            if (left[i] >= width) {
                return i;
            }
        }
        return -1;
    }

    /** The fullest stick with room; -1 when none has. */
    private static int bestFit(int[] left, int sticks, int width) {
        int best = -1;
        for (int i = 0; i < sticks; i++) {
            if (left[i] >= width && (best < 0 || left[i] < left[best])) {
                best = i;
            }
        }
        return best;
    }

    /** The first kind in order of which there is one with room; -1 when there is none. */
    private int opened(int[] order, int[] stock, int width) {
        for (int kind : order) {
            if (stock[kind] > 0 && bins.rooms[kind] >= width) {
                return kind;
            }
        }
        return -1;
    }

    private List<StickLoad> cheaper(List<StickLoad> loads, int[] stock) {
        List<StickLoad> cheaper = new ArrayList<>();
        for (StickLoad load : loads) {
            int kind = cheapest(load, stock);
            stock[load.kind()]++;
            stock[kind]--;
            cheaper.add(new StickLoad(kind, load.counts()));
        }
        return cheaper;
    }

    /** The cheapest kind that there is with room for a load; its own where none is cheaper. */
    private int cheapest(StickLoad load, int[] stock) {
        int taken = load.taken(bins);
        int kind = load.kind();
        for (int other = 0; other < bins.kinds.length; other++) {
            boolean holds = stock[other] > 0 && bins.rooms[other] >= taken;
            if (holds && bins.costs[other] < bins.costs[kind]) {
                kind = other;
            }
        }
        return kind;
    }
}

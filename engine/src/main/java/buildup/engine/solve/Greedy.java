package buildup.engine.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
        List<List<Integer>> orders = new ArrayList<>();
        List<Integer> byPrice = IntStream.range(0, bins.kinds.length)
                .boxed()
                .sorted(Comparator.comparingDouble(kind -> (double) bins.costs[kind] / bins.rooms[kind]))
                .toList();
        orders.add(byPrice);
        for (int first = 0; first < bins.kinds.length; first++) {
            List<Integer> order = new ArrayList<>(byPrice);
            order.remove((Integer) first);
            order.add(0, first);
            orders.add(order);
        }
        return orders.stream()
                .flatMap(order -> IntStream.range(0, 2).mapToObj(way -> packed(order, way == 0)))
                .flatMap(Optional::stream)
                .min(Comparator.comparingLong(loads -> cost(bins, loads)));
    }

    private Optional<List<StickLoad>> packed(List<Integer> order, boolean first) {
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
                    Optional<Integer> kind = opened(order, stock, bins.widths[type]);
                    if (kind.isEmpty()) {
                        return Optional.empty();
                    }
                    stock[kind.get()]--;
                    at = loads.size();
                    loads.add(new StickLoad(kind.get(), new int[bins.types()]));
                    left[at] = bins.rooms[kind.get()];
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

    private Optional<Integer> opened(List<Integer> order, int[] stock, int width) {
        return order.stream()
                .filter(kind -> stock[kind] > 0 && bins.rooms[kind] >= width)
                .findFirst();
    }

    private List<StickLoad> cheaper(List<StickLoad> loads, int[] stock) {
        List<StickLoad> cheaper = new ArrayList<>();
        for (StickLoad load : loads) {
            int taken = load.taken(bins);
            int kind = IntStream.range(0, bins.kinds.length)
                    .filter(other -> stock[other] > 0 && bins.rooms[other] >= taken)
                    .filter(other -> bins.costs[other] < bins.costs[load.kind()])
                    .boxed()
                    .min(Comparator.comparingLong(other -> bins.costs[other]))
                    .orElse(load.kind());
            stock[load.kind()]++;
            stock[kind]--;
            cheaper.add(new StickLoad(kind, load.counts()));
        }
        return cheaper;
    }
}

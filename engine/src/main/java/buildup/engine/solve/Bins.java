package buildup.engine.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * A stick problem as bins: alike pieces counted as one type, a kerf added to every piece and every stick, and one cost
 * in which a unit of price weighs more than all sticks together, so that the least cost is the least price and then the
 * fewest sticks.
 */
final class Bins {
    /** A rise of the price by so small a share of its least step is told from a stick more. */
    private static final long FINENESS = 8;

    private static final long MOST_CELLS = 4_000_000;
    private static final int MOST_TYPES = 250;

    /** Widths of the types, falling. */
    final int[] widths;

    /** How many pieces there are of each type. */
    final int[] counts;

    /** The pieces' own numbers, by type. */
    final List<List<Integer>> members;

    /** The numbers, in the problem, of the kinds worth having. */
    final int[] kinds;

    /** Room of each of these kinds. */
    final int[] rooms;

    /** Cost of a stick of each kind. */
    final long[] costs;

    /** How many sticks there are of each kind, no more than pieces. */
    final int[] most;

    /** Cost of a unit of price; a stick costs 1 besides. */
    final long weight;

    private final long[] prices;
    private final int pieces;

    private Bins(StickProblem problem) {
        TreeMap<Integer, List<Integer>> byLength = new TreeMap<>(Comparator.reverseOrder());
        for (int i = 0; i < problem.pieces().size(); i++) {
            byLength.computeIfAbsent(problem.pieces().get(i), length -> new ArrayList<>())
                    .add(i);
        }
        pieces = problem.pieces().size();
        weight = FINENESS * (pieces + 1L);
        members = List.copyOf(byLength.values());
        List<Integer> full = byLength.keySet().stream()
                .map(length -> length + problem.kerf())
                .toList();
        int unit = full.stream().reduce(0, Bins::divisor);
        widths = full.stream().mapToInt(width -> width / unit).toArray();
        counts = members.stream().mapToInt(List::size).toArray();
        kinds = useful(problem);
        rooms = new int[kinds.length];
        costs = new long[kinds.length];
        most = new int[kinds.length];
        prices = new long[kinds.length];
        for (int kind = 0; kind < kinds.length; kind++) {
            StickProblem.Stick stick = problem.sticks().get(kinds[kind]);
            rooms[kind] = (stick.length() + problem.kerf()) / unit;
            prices[kind] = stick.price();
            costs[kind] = stick.price() * weight + 1;
            most[kind] = Math.min(stick.most(), pieces);
        }
    }

    static Bins of(StickProblem problem) {
        return new Bins(problem);
    }

    /** Kinds that hold some piece and are not bettered in every way by another, longest first, then the cheaper. */
    private static int[] useful(StickProblem problem) {
        List<StickProblem.Stick> sticks = problem.sticks();
        int shortest = problem.pieces().stream().min(Comparator.naturalOrder()).orElse(0);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < sticks.size(); i++) {
            if (sticks.get(i).length() >= shortest && sticks.get(i).most() > 0) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingInt((Integer i) -> -sticks.get(i).length())
                .thenComparingLong(i -> sticks.get(i).price())
                .thenComparingInt(i -> -sticks.get(i).most())
                .thenComparingInt(i -> i));
        List<Integer> kept = new ArrayList<>();
        for (int i : order) {
            boolean bettered = kept.stream()
                    .map(sticks::get)
                    .anyMatch(other -> other.most() >= problem.pieces().size()
                            && other.price() <= sticks.get(i).price());
            if (!bettered) {
                kept.add(i);
            }
        }
        return kept.stream().mapToInt(i -> i).toArray();
    }

    int types() {
        return widths.length;
    }

    /** Whether there are as many of a kind as anybody could want. */
    boolean unlimited(int kind) {
        return most[kind] == pieces;
    }

    /** Whether a table of all rooms for all types would take too much memory: then first plans must do. */
    boolean large() {
        return (types() + 1L) * (widestRoom() + 1L) > MOST_CELLS || types() > MOST_TYPES;
    }

    int pieces() {
        return pieces;
    }

    int widestRoom() {
        return rooms.length == 0 ? 0 : rooms[0];
    }

    long price(long cost) {
        return cost / weight;
    }

    int sticks(long cost) {
        return (int) (cost % weight);
    }

    /** The least cost that a plan can have when it has at least this one: prices come in steps, sticks in ones. */
    long roundedUp(long cost) {
        long step = step();
        if (step == 0) {
            return Math.max(cost, fewest(0));
        }
        long price = cost / weight / step * step;
        long sticks = Math.max(cost - price * weight, fewest(price));
        return sticks <= most(price) ? price * weight + sticks : (price + step) * weight + fewest(price + step);
    }

    /** The greatest cost that a plan can have when it has less than this one. */
    long roundedDown(long cost) {
        long step = step();
        long price = cost / weight;
        long sticks = Math.min(cost - price * weight - 1, most(price));
        return sticks >= fewest(price) || step == 0
                ? price * weight + sticks
                : (price - step) * weight + most(price - step);
    }

    /** The greatest cost of a plan of the price that this cost holds. */
    long samePrice(long cost) {
        return price(cost) * weight + most(price(cost));
    }

    /** No plan of that price has fewer sticks: as few as their length allows, and enough to cost so much. */
    private long fewest(long price) {
        long dearest = Arrays.stream(prices).max().orElse(0);
        return dearest == 0 ? fewest() : Math.max(fewest(), (price + dearest - 1) / dearest);
    }

    /** No plan of that price has more sticks: those that cost nothing, and as many of the cheapest others. */
    private long most(long price) {
        long free = 0;
        long cheapest = Long.MAX_VALUE;
        if (step() == 0) {
            return pieces;
        }
        for (int kind = 0; kind < kinds.length; kind++) {
            free += prices[kind] == 0 ? most[kind] : 0;
            cheapest = prices[kind] == 0 ? cheapest : Math.min(cheapest, prices[kind]);
        }
        return Math.min(pieces, free + price / cheapest);
    }

    /** Prices are multiples of this; 0 when all are 0. */
    private long step() {
        long step = 0;
        for (long price : prices) {
            step = divisor(step, price);
        }
        return step;
    }

    /** No plan has fewer sticks: all were as long as the longest, and none wasted. */
    int fewest() {
        long total = 0;
        for (int type = 0; type < types(); type++) {
            total += (long) widths[type] * counts[type];
        }
        return (int) ((total + widestRoom() - 1) / widestRoom());
    }

    private static int divisor(int a, int b) {
        return (int) divisor((long) a, (long) b);
    }

    private static long divisor(long a, long b) {
        return b == 0 ? a : divisor(b, a % b);
    }
}

package buildup.engine.hold.order;

import buildup.engine.section.compose.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Seeks an order in which units can be put up. For each unit the ways out are known with the units that bar them; fewer
 * units bar no way that more leave free, so taking down one unit after another finds whether any order goes at all: a
 * set of which none can be taken out first stays together, whatever else is done. The nearest order, by the number of
 * pairs that change places, is found by the cheapest way through the sets of units that stand (Dijkstra, A note on two
 * problems in connexion with graphs, Numerische Mathematik 1, 1959).
 */
final class Planner {
    /** More sets than this are not looked at; what was found without them is then not proved to be the nearest. */
    private static final int MOST_SETS = 100_000;

    /** A joined unit of more pieces than this is not sought. */
    private static final int MOST_JOINED = 5;

    private static final int MOST_TRIED = 20_000;

    /**
     * An order that goes.
     *
     * @param proved whether no nearer order goes
     * @param propped whether some unit goes up before all that carries or backs it, and is held until that is there
     */
    record Found(List<Unit> units, boolean proved, boolean propped) {}

    private final Section section;
    private final Ways ways;
    private final List<Integer> standing;
    private final List<Unit> units;
    private final List<List<BitSet>> barring;
    private final List<BitSet> supporters;

    /** @param standing bodies that stood before any unit */
    Planner(Section section, Ways ways, List<Integer> standing, List<Unit> units) {
        this.section = section;
        this.ways = ways;
        this.standing = standing;
        this.units = units;
        this.barring = units.stream().map(this::barring).toList();
        this.supporters = units.stream().map(this::supporters).toList();
    }

    /** For each way that what stood before leaves free, the units that bar it; those that bar no fewer left out. */
    private List<BitSet> barring(Unit unit) {
        List<Integer> others = new ArrayList<>(standing);
        units.stream().filter(other -> !other.equals(unit)).forEach(other -> others.addAll(other.bodies()));
        List<BitSet> all = new ArrayList<>();
        for (WayIn way : ways.all(unit, others)) {
            if (ways.blockers(unit, way, standing).isEmpty()) {
                BitSet bars = new BitSet();
                for (int i = 0; i < units.size(); i++) {
                    if (!units.get(i).equals(unit)
                            && !ways.blockers(unit, way, units.get(i).bodies()).isEmpty()) {
                        bars.set(i);
                    }
                }
                if (all.stream().noneMatch(fewer -> isWithin(fewer, bars))) {
                    all.removeIf(more -> isWithin(bars, more));
                    all.add(bars);
                }
            }
        }
        return all;
    }

    private static boolean isWithin(BitSet small, BitSet large) {
        BitSet left = (BitSet) small.clone();
        left.andNot(large);
        return left.isEmpty();
    }

    /** The units that carry or back a unit; empty when what stood before does. */
    private BitSet supporters(Unit unit) {
        Set<Integer> holders = unit.holders(section);
        BitSet all = new BitSet();
        if (Collections.disjoint(holders, standing)) {
            IntStream.range(0, units.size())
                    .filter(i -> !Collections.disjoint(holders, units.get(i).bodies()))
                    .forEach(all::set);
        }
        return all;
    }

    /** Whether something that carries or backs it is there, or nothing ever does. */
    boolean isSupported(int unit, BitSet up) {
        return supporters.get(unit).isEmpty() || supporters.get(unit).intersects(up);
    }

    private boolean goes(int unit, BitSet up, boolean propped) {
        return (propped || isSupported(unit, up)) && isFree(unit, up);
    }

    private boolean isFree(int unit, BitSet up) {
        return barring.get(unit).stream().anyMatch(bars -> !bars.intersects(up));
    }

    /** The order that can be put up with the fewest pairs changed, without props if one does; absent when none goes. */
    Optional<Found> nearest() {
        return stuck().isEmpty() ? cheapest(false).or(() -> cheapest(true)) : Optional.empty();
    }

    /** Units of which none can be taken out first, even with all others gone; empty when all come apart. */
    List<Unit> stuck() {
        BitSet left = new BitSet();
        left.set(0, units.size());
        boolean changed = true;
        while (changed) {
            changed = false;
            // from the last to the first: the order of putting up, backward
            for (int i = units.size() - 1; i >= 0; i--) {
                if (left.get(i)) {
                    left.clear(i);
                    if (isFree(i, left)) {
                        changed = true;
                    } else {
                        left.set(i);
                    }
                }
            }
        }
        return left.stream().mapToObj(units::get).toList();
    }

    private record State(BitSet up, int cost, List<Integer> order) {}

    private Optional<Found> cheapest(boolean propped) {
        PriorityQueue<State> open = new PriorityQueue<>(Comparator.comparingInt(State::cost)
                .thenComparing(state -> -state.order().size()));
        Map<BitSet, Integer> seen = new HashMap<>();
        open.add(new State(new BitSet(), 0, List.of()));
        while (!open.isEmpty()) {
            State state = open.remove();
            if (state.order().size() == units.size()) {
                return Optional.of(
                        new Found(state.order().stream().map(units::get).toList(), true, propped));
            }
            if (seen.size() > MOST_SETS) {
                return backward(propped);
            }
            if (seen.getOrDefault(state.up(), Integer.MAX_VALUE) < state.cost()) {
                continue;
            }
            for (int i = 0; i < units.size(); i++) {
                if (!state.up().get(i) && goes(i, state.up(), propped)) {
                    BitSet up = (BitSet) state.up().clone();
                    up.set(i);
                    int cost = state.cost() + state.up().get(i, units.size()).cardinality();
                    if (cost < seen.getOrDefault(up, Integer.MAX_VALUE)) {
                        seen.put(up, cost);
                        List<Integer> order = new ArrayList<>(state.order());
                        order.add(i);
                        open.add(new State(up, cost, order));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Takes down whatever can be, the last first; the same backward goes up. */
    private Optional<Found> backward(boolean propped) {
        BitSet left = new BitSet();
        left.set(0, units.size());
        List<Unit> order = new ArrayList<>();
        while (!left.isEmpty()) {
            int next = -1;
            for (int i = left.length() - 1; i >= 0 && next < 0; i = left.previousSetBit(i - 1)) {
                BitSet rest = (BitSet) left.clone();
                rest.clear(i);
                next = goes(i, rest, propped) ? i : -1;
            }
            if (next < 0) {
                return Optional.empty();
            }
            left.clear(next);
            order.add(units.get(next));
        }
        Collections.reverse(order);
        return Optional.of(new Found(order, false, propped));
    }

    /**
     * The fewest pieces that, joined first, let the rest be put up; empty when none of up to five touching pieces do.
     * Sought among the units that stay together, which hold all such pieces but those that touch them.
     */
    List<Integer> joined() {
        List<Integer> core =
                stuck().stream().flatMap(unit -> unit.bodies().stream()).toList();
        List<List<Integer>> groups = core.stream().map(body -> List.of(body)).toList();
        int tried = 0;
        for (int size = 2; size <= MOST_JOINED; size++) {
            groups = groups.stream()
                    .flatMap(group -> core.stream()
                            .filter(body -> !group.contains(body) && section.touches(body, group))
                            .map(body -> IntStream.concat(group.stream().mapToInt(one -> one), IntStream.of(body))
                                    .sorted()
                                    .boxed()
                                    .toList()))
                    .distinct()
                    .toList();
            for (List<Integer> group : groups) {
                if (++tried > MOST_TRIED) {
                    return List.of();
                }
                if (with(group).nearest().isPresent()) {
                    return group;
                }
            }
        }
        return List.of();
    }

    /** The same with these pieces as one unit. */
    private Planner with(List<Integer> group) {
        List<Unit> joined = new ArrayList<>();
        for (Unit unit : units) {
            if (unit.bodies().stream().noneMatch(group::contains)) {
                joined.add(unit);
            }
        }
        joined.add(new Unit(Optional.of(""), group));
        joined.sort(Comparator.comparingInt(Unit::last));
        return new Planner(section, ways, standing, joined);
    }
}

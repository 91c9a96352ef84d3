package buildup.engine.hold.support;

import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.LoadPath;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Balance.Kept;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Groups of pieces on the level bearing below them, moments about the end that they would tip over. It is the equilibrium
 * of the whole stack with the group taken as one body and all around it as firm; where pieces that the group bears on do
 * not move themselves, the two say the same.
 */
final class Balances {
    /** A nail stands this far under the top of an upright back, in: common practice, no source. */
    private static final double UNDER_TOP = 0.25;

    /** An edge thinner than this is nailed in its middle, in: common practice, no source. */
    private static final double THIN = 1;

    /** How far from the end of a board a nail is driven down, in: common practice, no source. */
    private static final double DOWN_IN = 0.5;

    private final Section section;
    private final LoadPath path;
    private final List<Load> loads;
    /** What each piece weighs, pounds per foot, and how far out its centroid is. */
    private final double[] pounds;

    private final double[] centers;

    /** For each body the pieces that bear on it. */
    private final Map<Integer, Set<Integer>> bearers = new HashMap<>();

    /** For each body the pieces that it carries, or that are with it. */
    private final Map<Integer, Set<Integer>> carried = new HashMap<>();

    /** For each body those that touch it, or of which one rests on the other. */
    private final Map<Integer, Set<Integer>> ties = new HashMap<>();

    Balances(Section section, LoadPath path, List<Load> loads) {
        this.section = section;
        this.path = path;
        this.loads = loads;
        this.pounds = new double[section.bodies().size()];
        this.centers = new double[section.bodies().size()];
        for (int piece = 0; piece < section.bodies().size(); piece++) {
            int one = piece;
            if (section.body(piece).inStack()) {
                pounds[piece] = Composer.weightPerFoot(section.body(piece));
                centers[piece] = section.body(piece).outline().centroid().x();
            }
            bearing(piece, on -> true).forEach(bearing -> put(bearers, bearing.on(), one));
            if (section.body(piece).inStack()) {
                carriedBy(piece).forEach(on -> put(carried, on, one));
            }
            path.restsOn(piece).forEach(on -> tie(on, one));
        }
        section.contacts().stream()
                .filter(contact -> contact.length() > 0)
                .forEach(contact -> tie(contact.a(), contact.b()));
    }

    private static void put(Map<Integer, Set<Integer>> lists, int at, int piece) {
        lists.computeIfAbsent(at, body -> new TreeSet<>()).add(piece);
    }

    private void tie(int one, int other) {
        put(ties, one, other);
        put(ties, other, one);
    }

    /**
     * Every group once: each piece that bears on something, with all whose weight goes through it alone; and each lot of
     * pieces that one body carries, alone or with others. Pieces that count as fixed, or are said to be, go their own way.
     *
     * @param more groups that are wanted too, as those that tip
     */
    List<Balance> all(List<List<Integer>> more) {
        Map<List<Integer>, Balance> found = new LinkedHashMap<>();
        for (int body = 0; body < section.bodies().size(); body++) {
            int carrier = body;
            ofPiece(body).ifPresent(balance -> found.putIfAbsent(balance.group(), balance));
            onCarrier(carrier).forEach(balance -> found.putIfAbsent(balance.group(), balance));
        }
        more.forEach(group -> of(group).ifPresent(balance -> found.putIfAbsent(balance.group(), balance)));
        return List.copyOf(found.values());
    }

    /** A piece that bears on something grounded, with all whose weight goes through it alone. */
    Optional<Balance> ofPiece(int body) {
        return bears(body) ? of(path.through(body)) : Optional.empty();
    }

    /**
     * Balances of what a body carries, alone or together with others: the pieces that bear on it and all that rests on
     * them. Pieces that are fastened or rest on each other share one balance; those that are not have one each.
     */
    List<Balance> onCarrier(int carrier) {
        Set<Integer> above = new TreeSet<>();
        Deque<Integer> open = new ArrayDeque<>(bearers.getOrDefault(carrier, Set.of()));
        while (!open.isEmpty()) {
            int piece = open.remove();
            if (!firm(piece) && above.add(piece)) {
                open.addAll(carried.getOrDefault(piece, Set.of()));
            }
        }
        return tied(above).stream().map(this::of).flatMap(Optional::stream).toList();
    }

    /** What a piece bears on; what is fixed or hangs is with the body that holds it. */
    private List<Integer> carriedBy(int piece) {
        if (Model.saidToBeFixed(section, piece)) {
            return LoadPath.fixedTo(section, piece).stream().toList();
        }
        return section.standing(piece).bearing().isEmpty()
                ? path.hungOn(piece).stream().toList()
                : path.restsOn(piece);
    }

    /** Whether a piece is held by itself, so that its weight does not go to what it stands on. */
    private boolean firm(int piece) {
        return section.standing(piece).counted();
    }

    private boolean bears(int piece) {
        return section.body(piece).inStack()
                && !section.standing(piece).counted()
                && !Model.saidToBeFixed(section, piece)
                && !section.standing(piece).bearing().isEmpty();
    }

    private List<Bearing> bearing(int piece, Predicate<Integer> on) {
        return bears(piece)
                ? section.standing(piece).bearing().stream()
                        .filter(one -> on.test(one.on()))
                        .toList()
                : List.of();
    }

    /** The pieces in lots: those that touch, or of which one rests on the other, tip together. */
    private List<List<Integer>> tied(Set<Integer> pieces) {
        List<List<Integer>> lots = new ArrayList<>();
        Set<Integer> left = new TreeSet<>(pieces);
        while (!left.isEmpty()) {
            Deque<Integer> open = new ArrayDeque<>(List.of(left.iterator().next()));
            Set<Integer> lot = new TreeSet<>();
            while (!open.isEmpty()) {
                int next = open.remove();
                if (left.remove(next)) {
                    lot.add(next);
                    open.addAll(ties.getOrDefault(next, Set.of()));
                }
            }
            lots.add(List.copyOf(lot));
        }
        return lots;
    }

    /** A group on all that carries it from outside; nothing when nothing does. */
    Optional<Balance> of(List<Integer> group) {
        Set<Integer> own = new HashSet<>(group);
        List<Integer> lowest = lowest(group);
        List<Bearing> bearing = lowest.stream()
                .flatMap(piece -> bearing(piece, on -> !own.contains(on)).stream())
                .toList();
        return bearing.isEmpty() ? Optional.empty() : Optional.of(balance(group, bearing, lowest));
    }

    private Balance balance(List<Integer> group, List<Bearing> bearing, List<Integer> lowest) {
        double back = bearing.stream().mapToDouble(one -> one.from().x()).min().orElseThrow();
        double face = bearing.stream().mapToDouble(one -> one.to().x()).max().orElseThrow();
        double weight = 0;
        double moment = 0;
        for (int piece : group) {
            weight += pounds[piece];
            moment += pounds[piece] * centers[piece];
        }
        double load = 0;
        double loadMoment = 0;
        for (Load one : loads) {
            if (group.contains(one.body())) {
                load += one.poundsPerFoot();
                loadMoment += one.poundsPerFoot() * one.out();
            }
        }
        double loaded = (moment + loadMoment) / (weight + load);
        boolean forward = loaded > (back + face) / 2;
        double level = level(bearing, forward, forward ? face : back);
        double past = Math.max(loaded - face, back - loaded);
        double overturning = past > Tolerance.SNAP ? past * (weight + load) : 0;
        Point holdAt = holdAt(lowest);
        Point downAt = downAt(lowest, forward);
        double arm = holdAt.y() - level;
        double reach = forward ? face - downAt.x() : downAt.x() - back;
        boolean tips = overturning > 0;
        return new Balance(
                lowest.get(0),
                bearing.stream().map(Bearing::on).distinct().sorted().toList(),
                group,
                back,
                face,
                level,
                weight,
                moment / weight,
                load,
                loaded,
                overturning,
                tips && arm > Tolerance.TOUCHING ? OptionalDouble.of(overturning / arm) : OptionalDouble.empty(),
                holdAt,
                tips && reach > Tolerance.TOUCHING ? OptionalDouble.of(overturning / reach) : OptionalDouble.empty(),
                downAt,
                Kept.by(tips ? Keeper.NOTHING : Keeper.WEIGHT));
    }

    /** Height of the bearing on whose end a group would turn; the highest, where several end there. */
    private static double level(List<Bearing> bearing, boolean forward, double end) {
        return bearing.stream()
                .filter(one -> Math.abs((forward ? one.to().x() : one.from().x()) - end) <= Tolerance.TOUCHING)
                .mapToDouble(one -> forward ? one.to().y() : one.from().y())
                .max()
                .orElseThrow();
    }

    /** The pieces of a group that bear on something outside it. */
    List<Integer> lowest(Balance balance) {
        return lowest(balance.group());
    }

    private List<Integer> lowest(List<Integer> group) {
        Set<Integer> own = new HashSet<>(group);
        return group.stream()
                .filter(piece -> !bearing(piece, on -> !own.contains(on)).isEmpty())
                .toList();
    }

    /** On the back of the rearmost of the lowest pieces. */
    private Point holdAt(List<Integer> lowest) {
        Box box = rearmost(lowest);
        double under = box.height() < THIN ? box.height() / 2 : UNDER_TOP;
        return new Point(box.back(), box.top() - under);
    }

    /** Half an inch inside the end of the lowest pieces on the side that would rise. */
    private Point downAt(List<Integer> lowest, boolean forward) {
        Box all = Box.around(lowest.stream()
                .map(section::body)
                .map(Body::outline)
                .map(outline -> outline.box())
                .toList());
        double in = Math.min(DOWN_IN, all.width() / 2);
        return new Point(forward ? all.back() + in : all.face() - in, all.top());
    }

    private Box rearmost(List<Integer> lowest) {
        Box best = section.body(lowest.get(0)).outline().box();
        for (int piece : lowest) {
            Box box = section.body(piece).outline().box();
            if (box.back() < best.back()) {
                best = box;
            }
        }
        return best;
    }
}

package buildup.engine.hold.support;

import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Balance.Kept;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;

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

    Balances(Section section, LoadPath path, List<Load> loads) {
        this.section = section;
        this.path = path;
        this.loads = loads;
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
     * What stands on a body, alone or with others: the pieces that bear on it, with all that rests on any of them; one
     * balance for each lot that nothing ties to the others.
     */
    List<Balance> onCarrier(int carrier) {
        Set<Integer> above = new LinkedHashSet<>();
        boolean more = true;
        while (more) {
            List<Integer> next = IntStream.range(0, section.bodies().size())
                    .filter(piece -> section.body(piece).inStack() && !firm(piece) && !above.contains(piece))
                    .filter(piece -> bearing(piece, on -> on == carrier).size() > 0
                            || carriedBy(piece).stream().anyMatch(above::contains))
                    .boxed()
                    .toList();
            above.addAll(next);
            more = !next.isEmpty();
        }
        return tied(List.copyOf(new TreeSet<>(above))).stream()
                .map(this::of)
                .flatMap(Optional::stream)
                .toList();
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

    /** Whether a piece goes its own way to the ground, whatever it stands on. */
    private boolean firm(int piece) {
        boolean said = Model.saidToBeFixed(section, piece);
        return section.standing(piece).counted()
                || (said
                        && LoadPath.fixedTo(section, piece)
                                .filter(body -> section.body(body).inStack())
                                .isEmpty());
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
    private List<List<Integer>> tied(List<Integer> pieces) {
        List<List<Integer>> lots = new ArrayList<>();
        Set<Integer> left = new LinkedHashSet<>(pieces);
        while (!left.isEmpty()) {
            List<Integer> open = new ArrayList<>(List.of(left.iterator().next()));
            Set<Integer> lot = new TreeSet<>();
            while (!open.isEmpty()) {
                int next = open.remove(0);
                if (left.remove(next)) {
                    lot.add(next);
                    left.stream().filter(other -> tie(next, other)).forEach(open::add);
                }
            }
            lots.add(List.copyOf(lot));
        }
        return lots;
    }

    private boolean tie(int one, int other) {
        return path.restsOn(one).contains(other)
                || path.restsOn(other).contains(one)
                || section.contacts().stream().anyMatch(contact -> contact.length() > 0 && contact.between(one, other));
    }

    /** A group on all that carries it from outside; nothing when nothing does. */
    Optional<Balance> of(List<Integer> group) {
        List<Integer> lowest = group.stream()
                .filter(piece -> !bearing(piece, on -> !group.contains(on)).isEmpty())
                .toList();
        List<Bearing> bearing = lowest.stream()
                .flatMap(piece -> bearing(piece, on -> !group.contains(on)).stream())
                .toList();
        return bearing.isEmpty() ? Optional.empty() : Optional.of(balance(group, bearing, lowest));
    }

    private Balance balance(List<Integer> group, List<Bearing> bearing, List<Integer> lowest) {
        double back = bearing.stream().mapToDouble(one -> one.from().x()).min().orElseThrow();
        double face = bearing.stream().mapToDouble(one -> one.to().x()).max().orElseThrow();
        double weight = 0;
        double moment = 0;
        for (int piece : group) {
            double own = Composer.weightPerFoot(section.body(piece));
            weight += own;
            moment += own * section.body(piece).outline().centroid().x();
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
        return balance.group().stream()
                .filter(piece ->
                        !bearing(piece, on -> !balance.group().contains(on)).isEmpty())
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

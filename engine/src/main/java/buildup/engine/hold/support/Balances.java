package buildup.engine.hold.support;

import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.LoadPath;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Balance.Kept;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
    private final BitSet[] bearers;

    /** For each body the pieces that it carries, or that are with it; none whose weight counts as held beside it. */
    private final BitSet[] carried;

    /** For each body those that touch it, or of which one rests on the other. */
    private final BitSet[] ties;

    Balances(Section section, LoadPath path, List<Load> loads) {
        this.section = section;
        this.path = path;
        this.loads = loads;
        int count = section.bodies().size();
        this.pounds = new double[count];
        this.centers = new double[count];
        this.bearers = empty(count);
        this.carried = empty(count);
        this.ties = empty(count);
        for (int piece = 0; piece < count; piece++) {
            if (section.body(piece).inStack()) {
                pounds[piece] = Composer.weightPerFoot(section.body(piece));
                centers[piece] = section.body(piece).outline().centroid().x();
                if (!section.standing(piece).counted()) {
                    for (int on : carriedBy(piece)) {
                        carried[on].set(piece);
                    }
                }
            }
            if (bears(piece)) {
                for (Bearing bearing : section.standing(piece).bearing()) {
                    bearers[bearing.on()].set(piece);
                }
            }
            for (int on : path.restsOn(piece)) {
                tie(on, piece);
            }
        }
        for (Contact contact : section.contacts()) {
            if (contact.length() > 0) {
                tie(contact.a(), contact.b());
            }
        }
    }

    private static BitSet[] empty(int count) {
        BitSet[] sets = new BitSet[count];
        for (int i = 0; i < count; i++) {
            sets[i] = new BitSet(count);
        }
        return sets;
    }

    private void tie(int one, int other) {
        ties[one].set(other);
        ties[other].set(one);
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
            if (bears(body)) {
                find(path.through(body), found);
            }
            for (List<Integer> lot : lotsOn(body)) {
                find(lot, found);
            }
        }
        for (List<Integer> group : more) {
            find(group, found);
        }
        return List.copyOf(found.values());
    }

    private void find(List<Integer> group, Map<List<Integer>, Balance> found) {
        if (!found.containsKey(group)) {
            of(group).ifPresent(balance -> found.put(group, balance));
        }
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
        return lotsOn(carrier).stream().map(this::of).flatMap(Optional::stream).toList();
    }

    private List<List<Integer>> lotsOn(int carrier) {
        BitSet above = new BitSet(ties.length);
        BitSet open = (BitSet) bearers[carrier].clone();
        for (int piece = open.nextSetBit(0); piece >= 0; piece = open.nextSetBit(0)) {
            above.set(piece);
            open.or(carried[piece]);
            open.andNot(above);
        }
        return tied(above);
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

    private boolean bears(int piece) {
        return section.body(piece).inStack()
                && !section.standing(piece).counted()
                && !Model.saidToBeFixed(section, piece)
                && !section.standing(piece).bearing().isEmpty();
    }

    /** The pieces in lots: those that touch, or of which one rests on the other, tip together. */
    private List<List<Integer>> tied(BitSet pieces) {
        List<List<Integer>> lots = new ArrayList<>();
        BitSet left = (BitSet) pieces.clone();
        for (int first = left.nextSetBit(0); first >= 0; first = left.nextSetBit(first)) {
            BitSet lot = new BitSet(ties.length);
            BitSet open = new BitSet(ties.length);
            for (int next = first; next >= 0; next = open.nextSetBit(0)) {
                lot.set(next);
                left.clear(next);
                open.or(ties[next]);
                open.and(left);
            }
            lots.add(lot.stream().boxed().toList());
        }
        return lots;
    }

    /** A group on all that carries it from outside; nothing when nothing does. */
    Optional<Balance> of(List<Integer> group) {
        BitSet own = bits(group);
        List<Integer> lowest = new ArrayList<>();
        List<Bearing> bearing = new ArrayList<>();
        for (int piece : group) {
            int before = bearing.size();
            if (bears(piece)) {
                for (Bearing one : section.standing(piece).bearing()) {
                    if (!own.get(one.on())) {
                        bearing.add(one);
                    }
                }
            }
            if (bearing.size() > before) {
                lowest.add(piece);
            }
        }
        return bearing.isEmpty() ? Optional.empty() : Optional.of(balance(group, bearing, lowest));
    }

    private BitSet bits(List<Integer> group) {
        BitSet bits = new BitSet(ties.length);
        for (int piece : group) {
            bits.set(piece);
        }
        return bits;
    }

    private Balance balance(List<Integer> group, List<Bearing> bearing, List<Integer> lowest) {
        double back = Double.POSITIVE_INFINITY;
        double face = Double.NEGATIVE_INFINITY;
        BitSet carriers = new BitSet(ties.length);
        for (Bearing one : bearing) {
            back = Math.min(back, one.from().x());
            face = Math.max(face, one.to().x());
            carriers.set(one.on());
        }
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
                carriers.stream().boxed().toList(),
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
        double level = Double.NEGATIVE_INFINITY;
        for (Bearing one : bearing) {
            Point last = forward ? one.to() : one.from();
            if (Math.abs(last.x() - end) <= Tolerance.TOUCHING) {
                level = Math.max(level, last.y());
            }
        }
        return level;
    }

    /** The pieces of a group that bear on something outside it. */
    List<Integer> lowest(Balance balance) {
        BitSet own = bits(balance.group());
        List<Integer> lowest = new ArrayList<>();
        for (int piece : balance.group()) {
            if (bears(piece) && bearsOutside(piece, own)) {
                lowest.add(piece);
            }
        }
        return lowest;
    }

    private boolean bearsOutside(int piece, BitSet group) {
        for (Bearing bearing : section.standing(piece).bearing()) {
            if (!group.get(bearing.on())) {
                return true;
            }
        }
        return false;
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

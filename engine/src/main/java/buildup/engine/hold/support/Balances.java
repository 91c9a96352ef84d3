package buildup.engine.hold.support;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Single-piece statics: weight and loads of a group against the level bearing below it, moments about the end that it
 * would tip over.
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
    private final Set<Integer> nailed;

    /** @param nailed pieces that fastenings hold: whether those suffice against leaning is asked of them later */
    Balances(Section section, LoadPath path, List<Load> loads, Set<Integer> nailed) {
        this.section = section;
        this.path = path;
        this.loads = loads;
        this.nailed = nailed;
    }

    /** Each piece that bears on something grounded, with all whose weight goes through it. */
    Optional<Balance> ofPiece(int body) {
        Standing standing = standing(body);
        return section.body(body).inStack()
                ? balance(body, false, path.through(body), standing.bearing(), List.of(body))
                : Optional.empty();
    }

    /**
     * What stands on a body: the pieces that bear on it alone, with all whose weight goes through any of them; one balance
     * for each lot that nothing ties to the others.
     */
    List<Balance> onCarrier(int carrier) {
        List<Integer> lowest = section.standing().stream()
                .filter(standing -> !standing.fixed() || nailed.contains(standing.body()))
                .filter(standing -> !standing.bearing().isEmpty())
                .filter(standing -> standing.bearing().stream().allMatch(one -> one.on() == carrier))
                .map(Standing::body)
                .toList();
        List<Integer> carried = IntStream.range(0, section.bodies().size())
                .filter(piece -> section.body(piece).inStack() && onlyThrough(piece, lowest))
                .boxed()
                .toList();
        List<Balance> balances = new ArrayList<>();
        for (List<Integer> group : tied(carried)) {
            List<Integer> low = group.stream().filter(lowest::contains).toList();
            List<Bearing> bearing = low.stream()
                    .flatMap(one -> standing(one).bearing().stream())
                    .toList();
            balance(carrier, true, group, bearing, low).ifPresent(balances::add);
        }
        return balances;
    }

    /** Whether every way of a piece to the ground passes one of these. */
    private boolean onlyThrough(int piece, List<Integer> lowest) {
        List<Integer> open = new ArrayList<>(List.of(piece));
        Set<Integer> seen = new LinkedHashSet<>();
        boolean met = false;
        while (!open.isEmpty()) {
            int next = open.remove(0);
            if (lowest.contains(next)) {
                met = true;
            } else if (path.restsOn(next).isEmpty()) {
                return false;
            } else if (seen.add(next)) {
                open.addAll(path.restsOn(next));
            }
        }
        return met;
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

    private Standing standing(int body) {
        return section.standing().stream()
                .filter(one -> one.body() == body)
                .findFirst()
                .orElse(new Standing(body, true, false, List.of(), List.of()));
    }

    private Optional<Balance> balance(
            int body, boolean carrier, List<Integer> group, List<Bearing> bearing, List<Integer> lowest) {
        if (bearing.isEmpty() || group.isEmpty()) {
            return Optional.empty();
        }
        double back = bearing.stream().mapToDouble(one -> one.from().x()).min().orElseThrow();
        double face = bearing.stream().mapToDouble(one -> one.to().x()).max().orElseThrow();
        double level = bearing.stream().mapToDouble(one -> one.from().y()).max().orElseThrow();
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
        double resultant = moment / weight;
        double loaded = (moment + loadMoment) / (weight + load);
        boolean forward = loaded > face;
        boolean backward = loaded < back;
        double overturning = forward
                ? moment + loadMoment - (weight + load) * face
                : backward ? (weight + load) * back - moment - loadMoment : 0;
        Point holdAt = holdAt(lowest);
        Point downAt = downAt(lowest, forward);
        double arm = holdAt.y() - level;
        double reach = forward ? face - downAt.x() : downAt.x() - back;
        boolean tips = overturning > 0;
        return Optional.of(new Balance(
                body,
                carrier,
                group,
                back,
                face,
                level,
                weight,
                resultant,
                load,
                loaded,
                overturning,
                tips && arm > Tolerance.TOUCHING ? OptionalDouble.of(overturning / arm) : OptionalDouble.empty(),
                holdAt,
                tips && reach > Tolerance.TOUCHING ? OptionalDouble.of(overturning / reach) : OptionalDouble.empty(),
                downAt));
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

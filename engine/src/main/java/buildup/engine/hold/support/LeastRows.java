package buildup.engine.hold.support;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.fixing.Places;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.statics.Equilibrium;
import buildup.engine.hold.statics.Force;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Mechanism.Movement;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Tie;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks for the least row of fastenings with which what falls stands. Each is tried in the whole stack. */
final class LeastRows {

    /** Of the places that look best so many are tried. */
    private static final int TRIED = 6;

    /** Where one row does not hold, so many are tried, each with as many others. */
    private static final int TRIED_IN_PAIRS = 3;

    /** A piece that is longer than one row of it keeps from turning has two. */
    private static final int ROWS_OF_A_PIECE = 2;

    /** Who would have to add more rows than this does not have a row to add. */
    private static final int MOST = 8;

    private final Model model;
    private final List<Loading> weights;
    private final List<Fixed> given;
    private final Places places;
    /** What the rows of the document are without one of them. */
    private final Map<Optional<String>, List<Fixed>> others = new HashMap<>();

    /**
     * @param model that falls
     * @param weights each set under which it is to stand
     * @param given the rows of the document
     */
    LeastRows(Model model, List<Loading> weights, List<Fixed> given, Places places) {
        this.model = model;
        this.weights = weights;
        this.given = given;
        this.places = places;
    }

    /**
     * Rows that hold what falls.
     *
     * @param rows one for each fall that a row of this kind holds, or two where only two together do, in their order
     * @param stands whether the stack stands with all of them
     */
    record Found(List<LeastRow> rows, boolean stands) {
        static final Found NONE = new Found(List.of(), false);
    }

    /** One row for each fall that one holds, or two; none when many would be wanted. */
    Found of(List<Fall> falls) {
        if (falls.size() > MOST) {
            return Found.NONE;
        }
        List<LeastRow> rows = new ArrayList<>();
        Model built = model;
        boolean all = true;
        for (int i = 0; i < falls.size(); i++) {
            Model rest = built;
            for (Fall later : falls.subList(i + 1, falls.size())) {
                rest = Falls.held(rest, later.first());
            }
            if (!falls(rest)) {
                continue;
            }
            List<LeastRow> found = rows(rest, falls.get(i));
            all &= !found.isEmpty();
            for (LeastRow row : found) {
                rows.add(row.against(i));
                built = with(built, row);
            }
            if (found.isEmpty()) {
                built = Falls.held(built, falls.get(i).first());
            }
        }
        return new Found(rows, all && !rows.isEmpty() && !falls(built));
    }

    private boolean falls(Model tried) {
        return weights.stream().anyMatch(set -> Mechanism.falls(tried, set));
    }

    private static Model with(Model before, LeastRow row) {
        return room(before, row.nail(), row.instead()).with(ties(row.nail(), row.perFoot()));
    }

    /** The model as the row finds it: without the row in whose place it comes, or without trust in its piece. */
    private static Model room(Model before, Fixed nail, Optional<String> instead) {
        return instead.map(before::without).orElseGet(() -> before.decided(nail.piece()));
    }

    /**
     * A place, the row that it would take the place of, and how far apart nails may stand there by what one takes of a fall;
     * 0 where they would have to stand nearer than any are proposed.
     */
    private record Candidate(Fixed nail, Optional<String> instead, double spacing) {
        /** Square to the face comes first. */
        double plainest() {
            return Math.abs(nail.fastening().angle());
        }
    }

    /** How wide a search for a row goes: the next is asked only when the one before has found nothing. */
    private enum Scope {
        /** What falls most, nailed where no other row is met. */
        NEAR,
        /** Whatever moves along too, also between the nails of other rows. */
        WIDE,
        /** In place of rows whose tool does not get in either. */
        BLOCKED,
        /** Through what lies against it, into it: as a fascia hangs on the lid that is put on it. */
        THROUGH
    }

    private List<LeastRow> rows(Model rest, Fall fall) {
        Optional<Loading> falls =
                weights.stream().filter(set -> Mechanism.falls(rest, set)).findFirst();
        Optional<Movement> movement = falls.flatMap(set -> Mechanism.falling(rest, set));
        if (movement.isEmpty()) {
            return List.of();
        }
        // the work that the fall is scaled to
        double all = falls.get().pounds();
        for (Scope scope : Scope.values()) {
            List<LeastRow> held = held(rest, candidates(fall, scope, all, movement.get()));
            if (!held.isEmpty()) {
                return List.of(held.get(0).or(held.subList(1, held.size())));
            }
        }
        List<LeastRow> pair = pair(rest, fall, movement.get());
        return pair.isEmpty() ? inTheirOrder(rest) : pair;
    }

    /**
     * Rows for one piece after another, as they are put up, each into what is up by then: so a cleat is hung before the board
     * under it. Each piece has the best of its places that keeps it, or two of them; then all stand as far apart as will do.
     */
    private List<LeastRow> inTheirOrder(Model rest) {
        List<Candidate> driven = new ArrayList<>();
        Model built = rest;
        for (int piece : rest.free()) {
            for (int i = 0; i < ROWS_OF_A_PIECE && moves(built, piece); i++) {
                Optional<Candidate> next = keeping(built, piece, driven);
                if (next.isEmpty()) {
                    return List.of();
                }
                driven.add(next.get());
                built = closest(built, next.get());
            }
        }
        return driven.isEmpty() || driven.size() > MOST || falls(built) ? List.of() : apart(rest, driven);
    }

    /** The place of a piece that keeps it; where none does alone, the one that takes most of its motion. */
    private Optional<Candidate> keeping(Model built, int piece, List<Candidate> driven) {
        Movement movement = movement(built).orElseThrow();
        List<Fixed> beside = new ArrayList<>(given);
        driven.forEach(one -> beside.add(one.nail()));
        boolean nailer = model.section().body(piece).nailer();
        List<Candidate> candidates = places.of(piece).stream()
                // others hang on a nailer: it is screwed where a screw goes in
                .sorted(Comparator.comparing(nail -> nailer && kind(nail) == Fastener.Kind.NAIL))
                .filter(nail -> resists(movement, nail) > Tolerance.SAME_MOTION && places.free(nail, beside))
                .map(nail -> new Candidate(nail, Optional.empty(), 0))
                .toList();
        return candidates.stream()
                .limit(TRIED)
                .filter(one -> !moves(closest(built, one), piece))
                .findFirst()
                .or(() -> candidates.stream().max(Comparator.comparingDouble(one -> resists(movement, one.nail()))));
    }

    /** Some rows, all as far apart as keeps what they hold. */
    private List<LeastRow> apart(Model rest, List<Candidate> driven) {
        Model without = rest;
        List<Tie> all = new ArrayList<>();
        for (Candidate one : driven) {
            without = room(without, one.nail(), one.instead());
            all.addAll(ties(one.nail(), 1));
        }
        OptionalDouble needed = needed(without, all);
        List<LeastRow> rows = new ArrayList<>();
        List<Fixed> beside = new ArrayList<>(given);
        for (Candidate one : needed.isPresent() ? driven : List.<Candidate>of()) {
            Optional<LeastRow> row = row(one, needed.getAsDouble(), beside);
            if (row.isEmpty()) {
                return List.of();
            }
            rows.add(row.get());
            beside.add(row.get().nail());
        }
        return rows;
    }

    private Model closest(Model before, Candidate one) {
        return room(before, one.nail(), one.instead()).with(ties(one.nail(), 12 / closest(one.nail())));
    }

    private Optional<Movement> movement(Model tried) {
        return weights.stream()
                .flatMap(set -> Mechanism.falling(tried, set).stream())
                .findFirst();
    }

    private boolean moves(Model tried, int piece) {
        return movement(tried).filter(found -> Falls.moves(found, piece)).isPresent();
    }

    /**
     * Two rows that hold together what neither holds alone, of those with the widest spacing: one that takes most of the
     * fall, and one that takes most of what moves once that is driven. Few are tried, for each asks for the whole stack.
     */
    private List<LeastRow> pair(Model rest, Fall fall, Movement movement) {
        List<List<LeastRow>> pairs = new ArrayList<>();
        for (Candidate one : strongest(fall, movement, given)) {
            Model driven = closest(rest, one);
            Optional<Movement> left = weights.stream()
                    .flatMap(set -> Mechanism.falling(driven, set).stream())
                    .findFirst();
            List<Fixed> beside = new ArrayList<>(others(one.instead()));
            beside.add(one.nail());
            for (Candidate other :
                    left.map(move -> strongest(fall, move, beside)).orElse(List.of())) {
                if (one.instead().isEmpty() || !one.instead().equals(other.instead())) {
                    pairs.add(together(rest, one, other));
                }
            }
        }
        return pairs.stream()
                .filter(pair -> !pair.isEmpty())
                .min(Comparator.comparingDouble(pair -> -pair.get(0).spacing()))
                .orElse(List.of());
    }

    /** Of each piece that falls first, and of each row that it has, the place that takes most of a motion. */
    private List<Candidate> strongest(Fall fall, Movement movement, List<Fixed> beside) {
        return candidates(fall, Scope.NEAR, 0, movement).stream()
                .filter(candidate -> candidate.instead().isPresent() || places.free(candidate.nail(), beside))
                .sorted(Comparator.comparing((Candidate candidate) -> lesser(candidate.nail(), candidate.instead()))
                        .thenComparingDouble(
                                candidate -> -Math.rint(resists(movement, candidate.nail()) / Tolerance.SAME_MOTION))
                        .thenComparing(Candidate::plainest)
                        .thenComparing(candidate ->
                                candidate.nail().fastening().use().fastener().diameter()))
                .limit(TRIED_IN_PAIRS)
                .toList();
    }

    private double closest(Fixed nail) {
        return places.spacings(nail).stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    /** Both as far apart as will do, each between the nails of what is beside it; nothing where they do not. */
    private List<LeastRow> together(Model rest, Candidate one, Candidate other) {
        Model without = room(room(rest, one.nail(), one.instead()), other.nail(), other.instead());
        List<Tie> both = new ArrayList<>(ties(one.nail(), 1));
        both.addAll(ties(other.nail(), 1));
        OptionalDouble needed = needed(without, both);
        if (needed.isEmpty()) {
            return List.of();
        }
        double count = needed.getAsDouble();
        List<Fixed> beside = given.stream()
                .filter(row -> !one.instead().equals(Optional.of(row.fastening().name())))
                .filter(row ->
                        !other.instead().equals(Optional.of(row.fastening().name())))
                .toList();
        Optional<LeastRow> first = row(one, count, beside);
        List<Fixed> more = new ArrayList<>(beside);
        first.ifPresent(row -> more.add(row.nail()));
        return first.flatMap(row -> row(other, count, more).map(second -> List.of(row, second)))
                .orElse(List.of());
    }

    private List<LeastRow> held(Model rest, List<Candidate> candidates) {
        return candidates.stream()
                .sorted(Comparator.comparing((Candidate candidate) -> lesser(candidate.nail(), candidate.instead()))
                        .thenComparingDouble(candidate -> -candidate.spacing())
                        .thenComparing(Candidate::plainest)
                        .thenComparing(candidate -> other(candidate.nail(), candidate.instead()))
                        .thenComparing(candidate ->
                                candidate.nail().fastening().use().fastener().diameter()))
                .limit(TRIED)
                .map(candidate -> tried(rest, candidate))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing((LeastRow row) -> lesser(row.nail(), row.instead()))
                        .thenComparingDouble(row -> -row.spacing())
                        .thenComparing(row -> Math.abs(row.nail().fastening().angle()))
                        .thenComparing(row -> other(row.nail(), row.instead()))
                        .thenComparing(
                                row -> row.nail().fastening().use().fastener().diameter()))
                .toList();
    }

    /** Whether it is a nail in place of screws: only where no screw does. */
    private boolean lesser(Fixed nail, Optional<String> instead) {
        return kind(nail) == Fastener.Kind.NAIL
                && replaced(instead)
                        .filter(row -> kind(row) == Fastener.Kind.SCREW)
                        .isPresent();
    }

    /** Whether it is another fastener than the row in whose place it comes; the same is sold in other lengths. */
    private boolean other(Fixed nail, Optional<String> instead) {
        return replaced(instead)
                .filter(row -> !row.fastening()
                        .use()
                        .fastener()
                        .name()
                        .equals(nail.fastening().use().fastener().name()))
                .isPresent();
    }

    private Optional<Fixed> replaced(Optional<String> instead) {
        return instead.flatMap(name -> given.stream()
                .filter(row -> row.fastening().name().equals(name))
                .findFirst());
    }

    private static Fastener.Kind kind(Fixed nail) {
        return nail.fastening().use().fastener().kind();
    }

    private List<Candidate> candidates(Fall fall, Scope scope, double all, Movement movement) {
        List<Integer> pieces = scope == Scope.NEAR ? fall.first().pieces() : fall.pieces();
        List<Candidate> candidates = new ArrayList<>();
        for (Fixed row : scope == Scope.THROUGH ? List.<Fixed>of() : given) {
            if (pieces.contains(row.piece()) || (scope != Scope.NEAR && joins(row, pieces))) {
                Optional<String> instead = Optional.of(row.fastening().name());
                List<Fixed> others = scope == Scope.BLOCKED ? places.insteadBlocked(row) : places.instead(row);
                others.forEach(nail -> add(nail, instead, scope, all, movement, candidates));
                if (scope == Scope.WIDE && row.sound()) {
                    add(row, instead, scope, all, movement, candidates);
                }
            }
        }
        if (scope == Scope.THROUGH) {
            pieces.stream()
                    .flatMap(places::through)
                    .filter(nail -> !pieces.contains(nail.piece()))
                    .forEach(nail -> add(nail, Optional.empty(), scope, all, movement, candidates));
        } else if (scope != Scope.BLOCKED) {
            for (int piece : pieces) {
                places.of(piece).forEach(nail -> add(nail, Optional.empty(), scope, all, movement, candidates));
            }
        }
        return candidates;
    }

    /** Whether a row on another piece goes into one of some pieces. */
    private static boolean joins(Fixed row, List<Integer> pieces) {
        return row.joints().stream().anyMatch(joint -> pieces.contains(joint.far()));
    }

    private void add(
            Fixed nail, Optional<String> instead, Scope scope, double all, Movement movement, List<Candidate> out) {
        // what it takes of the fall is quicker asked than whether it meets others
        Optional<Double> spacing = spacing(nail, all / resists(movement, nail));
        if (spacing.isPresent() && (scope != Scope.NEAR || places.free(nail, others(instead)))) {
            out.add(new Candidate(nail, instead, spacing.get()));
        }
    }

    /** The rows of the document but for the one of that name. */
    private List<Fixed> others(Optional<String> instead) {
        return others.computeIfAbsent(
                instead,
                name -> given.stream()
                        .filter(row ->
                                name.filter(row.fastening().name()::equals).isEmpty())
                        .toList());
    }

    /** The widest spacing that gives so many in a foot. */
    private Optional<Double> spacing(Fixed nail, double perFoot) {
        return places.spacings(nail).stream()
                .filter(spacing -> 12 / spacing >= perFoot)
                .findFirst();
    }

    /** What one nail in a foot would take of the fall: how far it gives, times what it holds. */
    private static double resists(Movement movement, Fixed nail) {
        double work = 0;
        for (Tie tie : ties(nail, 1)) {
            double most = 0;
            for (Force force : Model.forces(tie)) {
                most = Math.max(most, force.most() * -movement.parts(force));
            }
            work += most;
        }
        return work;
    }

    private Optional<LeastRow> tried(Model rest, Candidate candidate) {
        Model without = room(rest, candidate.nail(), candidate.instead());
        OptionalDouble needed = needed(without, ties(candidate.nail(), 1));
        return needed.isPresent()
                ? row(candidate, needed.getAsDouble(), others(candidate.instead()))
                : Optional.empty();
    }

    /** How many in a foot keep the stack at rest under each set of weights; nothing when however many do not. */
    private OptionalDouble needed(Model without, List<Tie> added) {
        double needed = 0;
        for (Loading set : weights) {
            OptionalDouble least = Equilibrium.least(without, set.weights(), added);
            if (least.isEmpty()) {
                return least;
            }
            needed = Math.max(needed, least.getAsDouble());
        }
        return OptionalDouble.of(needed);
    }

    private Optional<LeastRow> row(Candidate candidate, double needed, List<Fixed> beside) {
        return spacing(candidate.nail(), needed)
                .flatMap(spacing -> places.between(candidate.nail(), spacing, beside))
                .map(nail -> new LeastRow(nail, nail.fastening().spacing(), needed, candidate.instead(), 0, List.of()));
    }

    /** A row of so many in a foot of run. */
    private static List<Tie> ties(Fixed nail, double perFoot) {
        List<Tie> ties = new ArrayList<>();
        for (Joint joint : nail.joints()) {
            ties.add(new Tie(
                    nail.fastening().name(),
                    joint.near(),
                    joint.far(),
                    Ties.entry(nail, joint.far()),
                    nail.way(),
                    joint.byItsPoint() || !Ties.pulls(nail, joint) ? 0 : joint.withdrawal() * perFoot,
                    Ties.pulls(nail, joint) ? joint.head() * perFoot : 0,
                    joint.lateral() * perFoot));
        }
        return ties;
    }
}

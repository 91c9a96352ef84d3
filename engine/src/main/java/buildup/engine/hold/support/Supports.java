package buildup.engine.hold.support;

import buildup.engine.hold.fixing.Places;
import buildup.engine.hold.framing.Landed;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.statics.Equilibrium;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.FirstToGive.Mode;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.LoadPath;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Mechanism.Movement;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.hold.statics.Tie;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Balance.Kept;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.hold.support.Support.Whole;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.profiles.outline.Tolerance;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Asks what holds a section. There is one statics: the whole stack as rigid bodies. What is told of single groups takes its
 * verdict from there.
 */
public final class Supports {
    private final Section section;
    private final List<Load> loads;
    private final List<Tie> ties;
    private final LoadPath path;
    /** Contacts and the fasteners that are given. */
    private final Model plain;

    private final Loading own;
    private final Loading all;

    private Supports(Section section, List<Load> loads, List<Tie> ties, OptionalDouble friction) {
        this.section = section;
        this.loads = loads;
        this.ties = ties;
        this.path = LoadPath.of(section, ties);
        this.plain = Model.plain(section, ties, friction.orElse(0));
        this.own = new Loading(plain.weights());
        this.all = loads.isEmpty()
                ? own
                : new Loading(Stream.concat(own.weights().stream(), Weight.of(loads).stream())
                        .toList());
    }

    /**
     * What holds a section.
     *
     * @param loads of the document, as far as they stand on a piece
     * @param ties the fasteners where they hold; what the section knows of its fastenings decides which pieces they hold
     * @param friction the coefficient with which contacts rub; absent when they are not to
     */
    static Support of(Section section, List<Load> loads, List<Tie> ties, OptionalDouble friction) {
        return new Supports(section, loads, ties, friction).support(friction);
    }

    /**
     * The same, with a proposal where it does not stand.
     *
     * @param wanted loads of the document
     * @param given rows of fastenings of the document, where they have a place
     * @param landed the same where some of their nails go between studs: it has to stand there too
     * @param places where others could go; absent when nothing is to be proposed
     * @param notices told what falls and why
     */
    public static Support of(
            Section section,
            List<Loads.Wanted> wanted,
            List<Fixed> given,
            List<Landed> landed,
            OptionalDouble friction,
            Optional<Places> places,
            Notices notices) {
        List<Load> loads = Loads.on(section, wanted, notices);
        Supports asked = new Supports(section, loads, Ties.of(given), friction);
        Support alone = asked.support(friction);
        boolean falls = alone.whole().answer() == Answer.NO;
        Optional<Support> between =
                falls ? Optional.empty() : BetweenStuds.worst(section, loads, landed, friction, notices);
        if (between.isPresent()) {
            return between.get();
        }
        Support support = places.filter(search -> falls)
                .map(search -> asked.proposed(alone, given, search))
                .orElse(alone);
        SupportFaults.say(section, support, places.map(search -> given), notices);
        return support;
    }

    /** The same of fasteners as statics sees them; nothing is proposed. */
    static Support of(
            Section section, List<Loads.Wanted> wanted, List<Tie> ties, OptionalDouble friction, Notices notices) {
        Support support = of(section, Loads.on(section, wanted, notices), ties, friction);
        SupportFaults.say(section, support, Optional.empty(), notices);
        return support;
    }

    private Support proposed(Support support, List<Fixed> given, Places places) {
        List<Loading> sets = loads.isEmpty() ? List.of(own) : List.of(all, own);
        Model touching = plain.trusting(path);
        List<Fall> falls = support.whole().falls();
        LeastRows.Found found = new LeastRows(touching, sets, given, places).of(falls);
        if (!found.stands()) {
            LeastRows.Found closed = new LeastRows(touching.withGaps(), sets, given, places).of(falls);
            found = closed.stands() ? closed : found;
        }
        return support.with(found.rows(), found.stands());
    }

    private Support support(OptionalDouble rub) {
        Model touching = plain.trusting(path);
        boolean alone = !Mechanism.falls(touching, own);
        boolean stands = alone && !Mechanism.falls(touching, all);
        Model closed = stands ? touching : touching.withGaps();
        boolean closes = !stands && !Mechanism.falls(closed, own);
        Model model = closes && (!alone || !Mechanism.falls(closed, all)) ? closed : touching;
        boolean ownStands = alone || closes;
        // under its loads, unless those are what keeps it
        boolean loaded = ownStands || Mechanism.falls(model, all);
        List<Fall> falls = Falls.all(model, loaded ? all : own);
        Answer answer = falls.isEmpty() ? model == touching ? Answer.STANDS : Answer.TRUST : Answer.NO;
        Optional<Fall> closing =
                answer == Answer.TRUST ? closing(model, Mechanism.falls(touching, all) ? all : own) : Optional.empty();
        Whole plain = new Whole(
                answer,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                ownStands && answer == Answer.NO,
                falls,
                closing);
        Whole whole = factors(plain, model);
        return new Support(balances(model, whole), path, loads, rub, whole, trust(), List.of(), false);
    }

    /** The motion by which gaps close under weights that close them: loads may be what keeps them open. */
    private static Optional<Fall> closing(Model model, Loading loading) {
        return Mechanism.closing(model, loading).map(movement -> Falls.closing(model, loading.weights(), movement));
    }

    private Whole factors(Whole plain, Model model) {
        if (plain.answer() == Answer.NO && !plain.underLoad()) {
            OptionalDouble none = loads.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(0);
            return with(plain, none, OptionalDouble.empty(), Optional.empty());
        }
        Limit load = loads.isEmpty() ? Limit.NONE : limit(model, own.weights(), Weight.of(loads));
        Limit weight = limit(model, List.of(), all.weights());
        return with(plain, load.factor, weight.factor, load.governs.or(() -> weight.governs));
    }

    private static Whole with(Whole plain, OptionalDouble load, OptionalDouble times, Optional<FirstToGive> governs) {
        return new Whole(plain.answer(), load, times, governs, plain.underLoad(), plain.falls(), plain.closing());
    }

    /** How far some weights may grow, and what gives then; absent when they do not matter. */
    record Limit(OptionalDouble factor, Optional<FirstToGive> governs) {
        static final Limit NONE = new Limit(OptionalDouble.empty(), Optional.empty());
    }

    /** @param dead weights that stay; the model stands under them */
    static Limit limit(Model model, List<Weight> dead, List<Weight> live) {
        Optional<Double> factor = Equilibrium.factor(model, dead, live);
        if (factor.filter(Double::isFinite).isEmpty()) {
            return Limit.NONE;
        }
        Optional<Movement> collapse = Mechanism.collapse(model, dead, live);
        Optional<FirstToGive> governs = collapse.flatMap(movement -> movement.gives()
                .map(force -> new FirstToGive(force.name(), force.mode()))
                .or(() -> Falls.pivot(model, movement).map(force -> new FirstToGive(force.name(), Mode.CONTACT))));
        return new Limit(OptionalDouble.of(factor.get()), governs);
    }

    private List<Balance> balances(Model model, Whole whole) {
        Balances asked = new Balances(section, path, loads);
        List<Fall> leaning = leaning();
        List<List<Integer>> tipping = Stream.concat(whole.falls().stream(), leaning.stream())
                .map(motion -> motion.first().pieces())
                .distinct()
                .toList();
        List<Fall> closing = whole.closing().stream().toList();
        Model standing = model;
        for (Fall fall : whole.falls()) {
            standing = Falls.held(standing, fall.first());
        }
        List<Balance> balances = new ArrayList<>();
        for (Balance balance : asked.all(tipping)) {
            if (moves(asked, balance, whole.falls())) {
                balances.add(balance.with(Kept.by(Keeper.NOTHING)));
            } else if (moves(asked, balance, closing)) {
                balances.add(balance.with(fastened(model, balance, Keeper.AFTER_CLOSING)));
            } else if (!balance.leans()) {
                balances.add(balance);
            } else if (moves(asked, balance, leaning)) {
                balances.add(balance.with(fastened(standing, balance, Keeper.FASTENINGS)));
            } else {
                balances.add(balance.with(Kept.by(Keeper.NEIGHBORS)));
            }
        }
        return balances;
    }

    /** Whether some piece of a group that bears moves against some body that carries it. */
    private static boolean moves(Balances asked, Balance balance, List<Fall> falls) {
        List<Integer> lowest = asked.lowest(balance);
        return falls.stream()
                .flatMap(fall -> fall.parts().stream())
                .filter(part -> lowest.stream().anyMatch(part.pieces()::contains))
                .anyMatch(part -> !part.pieces().containsAll(balance.carriers()));
    }

    /** What would fall without its fastenings. */
    private List<Fall> leaning() {
        if (ties.isEmpty()) {
            return List.of();
        }
        Model bare = plain.bare(path);
        List<Fall> falls = new ArrayList<>(Falls.begun(bare, all));
        if (!loads.isEmpty()) {
            falls.addAll(Falls.begun(bare, own));
        }
        return falls;
    }

    /**
     * How many times over fastenings hold a group in a model that stands: its own weight and loads grow, those of the others stay.
     */
    private Kept fastened(Model model, Balance balance, Keeper keeper) {
        List<Weight> live = all.weights().stream()
                .filter(weight -> balance.group().contains(weight.body()))
                .toList();
        List<Weight> dead = all.weights().stream()
                .filter(weight -> !balance.group().contains(weight.body()))
                .toList();
        Limit limit = limit(model, dead, live);
        return new Kept(keeper, limit.factor, limit.governs);
    }

    private List<Trust> trust() {
        List<Trust> trust = new ArrayList<>();
        for (int piece = 0; piece < section.bodies().size(); piece++) {
            if (section.body(piece).inStack()) {
                trusted(piece).ifPresent(trust::add);
            }
        }
        section.overlaps().forEach(overlap -> {
            boolean later = section.body(overlap.b()).inStack();
            trust.add(new Trust(
                    later ? overlap.b() : overlap.a(),
                    OptionalInt.of(later ? overlap.a() : overlap.b()),
                    Trust.Why.OVERLAPS));
        });
        return trust;
    }

    private Optional<Trust> trusted(int piece) {
        if (Model.saidToBeFixed(section, piece)) {
            return Optional.of(new Trust(piece, optional(LoadPath.fixedTo(section, piece)), Trust.Why.SAID));
        }
        if (section.standing(piece).counted()) {
            Trust.Why why = fallsUnlessFixed(piece) ? Trust.Why.FALLS_UNLESS_FIXED : Trust.Why.COUNTS_AS_FIXED;
            return Optional.of(new Trust(piece, optional(path.fixedOn(piece)), why));
        }
        if (Model.hangsOnTrust(section, path, piece)) {
            return Optional.of(new Trust(piece, optional(path.hungOn(piece)), Trust.Why.HANGS));
        }
        return Optional.empty();
    }

    /**
     * Whether a piece that counts as fixed needs to be: its weight, with all that goes through it, falls past what it bears
     * on. Before the document speaks of fastenings or of loads on it, that is asked only of what reaches farther out than
     * the flat is high by which it lies there, as a shelf does: no nail is thought to hold that.
     */
    private boolean fallsUnlessFixed(int piece) {
        List<Integer> group = path.through(piece);
        boolean loaded = loads.stream().anyMatch(load -> group.contains(load.body()));
        if (ties.isEmpty() && !loaded && !reachesOut(piece)) {
            return false;
        }
        double pounds = 0;
        double moment = 0;
        for (Weight weight : all.weights()) {
            if (group.contains(weight.body())) {
                pounds += weight.pounds();
                moment += weight.pounds() * weight.out();
            }
        }
        double out = moment / pounds;
        List<Standing.Bearing> bearing = section.standing(piece).bearing();
        double back = bearing.stream()
                .mapToDouble(one -> Math.min(one.from().x(), one.to().x()))
                .min()
                .orElse(Double.MAX_VALUE);
        double face = bearing.stream()
                .mapToDouble(one -> Math.max(one.from().x(), one.to().x()))
                .max()
                .orElse(-Double.MAX_VALUE);
        return out < back - Tolerance.LEAST_OVERHANG || out > face + Tolerance.LEAST_OVERHANG;
    }

    private boolean reachesOut(int piece) {
        double flat = section.contacts().stream()
                .filter(contact -> contact.of(piece)
                        && path.fixedOn(piece)
                                .filter(on -> on == contact.other(piece))
                                .isPresent())
                .mapToDouble(Contact::length)
                .sum();
        return section.body(piece).outline().box().width() > flat;
    }

    private static OptionalInt optional(Optional<Integer> body) {
        return body.isPresent() ? OptionalInt.of(body.get()) : OptionalInt.empty();
    }
}

package buildup.engine.hold.support;

import buildup.engine.Bench;
import buildup.engine.hold.statics.Equilibrium;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.LoadPath;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.hold.statics.Tie;
import buildup.engine.hold.support.Supports.Limit;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Fastened;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A section with loads and fasteners put on it by name. */
record Held(Section section, List<Load> loads, List<Tie> joints, double friction) {
    Held(Section section, List<Load> loads, List<Tie> joints) {
        this(section, loads, joints, 0);
    }

    /** Pounds in a square inch of check wood, a foot of it: 29.35 lb a cubic foot, an input of these tests. */
    static final double WOOD = 29.35 / 144;

    private static final Mark NOWHERE = new Mark("stack.yaml", 1, 1);

    static Held of(Bench bench) {
        return new Held(bench.section(), List.of(), List.of());
    }

    int number(String name) {
        return section.bodies().stream().map(body -> body.name()).toList().indexOf(name);
    }

    List<String> names(List<Integer> bodies) {
        return bodies.stream().map(section::name).toList();
    }

    Held load(String on, double out, double pounds) {
        return with(loads, new Load("load on " + on, number(on), out, pounds, NOWHERE));
    }

    private Held with(List<Load> before, Load load) {
        List<Load> more = new ArrayList<>(before);
        more.add(load);
        return new Held(section, more, joints, friction);
    }

    /** @param degrees of the axis from head to point, counterclockwise from straight out */
    Held nail(String name, String outer, String inner, Point at, double degrees, double withdrawal, double lateral) {
        Point axis = Motion.turn(degrees).apply(new Point(1, 0));
        List<Tie> more = new ArrayList<>(joints);
        more.add(new Tie(name, number(outer), number(inner), at, axis, withdrawal, lateral));
        return new Held(section, loads, more, friction);
    }

    /** Two nails so strong that the two bodies are one. */
    Held weld(String outer, String inner, Point at) {
        double strong = 1e4;
        return nail("weld", outer, inner, at, 0, strong, strong)
                .nail("weld", outer, inner, at, 180, strong, strong)
                .nail("weld", outer, inner, at.plus(new Point(0, 1)), 0, strong, strong)
                .nail("weld", outer, inner, at.plus(new Point(0, 1)), 180, strong, strong);
    }

    Held loads(UnaryOperator<Load> change) {
        return new Held(section, loads.stream().map(change).toList(), joints, friction);
    }

    Held loadsTimes(double factor) {
        return loads(
                load -> new Load(load.name(), load.body(), load.out(), load.poundsPerFoot() * factor, load.mark()));
    }

    Held joints(UnaryOperator<Tie> change) {
        return new Held(section, loads, joints.stream().map(change).toList(), friction);
    }

    /** The stack seen from its other end: x becomes -x. The room must be empty but for its pieces. */
    Held mirrored() {
        List<Placed> placed = section.bodies().stream()
                .map(body -> body.placed().orElseThrow())
                .map(one -> new Placed(one.piece(), one.outline().moved(Motion.ENDS)))
                .toList();
        Section turned = Composer.compose(section.stack(), placed, new Notices());
        return new Held(turned, loads, joints, friction)
                .loads(load -> new Load(load.name(), load.body(), -load.out(), load.poundsPerFoot(), load.mark()))
                .joints(joint -> new Tie(
                        joint.name(),
                        joint.outer(),
                        joint.inner(),
                        Motion.ENDS.apply(joint.at()),
                        Motion.ENDS.apply(joint.axis()),
                        joint.withdrawal(),
                        joint.lateral()));
    }

    /** Contacts and these fasteners, nothing on trust. */
    Model model() {
        return Model.plain(section, joints, friction);
    }

    List<Weight> weights() {
        return model().weights();
    }

    List<Weight> all() {
        return Stream.concat(weights().stream(), Weight.of(loads).stream()).toList();
    }

    /** How far the loads may grow; nothing when the stack does not stand without them either. */
    Optional<Limit> limit() {
        return Mechanism.falls(model(), new Loading(weights()))
                ? Optional.empty()
                : Optional.of(Supports.limit(model(), weights(), Weight.of(loads)));
    }

    String governs() {
        return limit().orElseThrow().governs().map(FirstToGive::name).orElse("");
    }

    /** The factor; below nothing when the stack does not stand without loads either. */
    double factor() {
        if (Equilibrium.factor(model(), weights(), List.of()).isEmpty()) {
            return Double.NEGATIVE_INFINITY;
        }
        return Equilibrium.factor(model(), weights(), Weight.of(loads)).orElse(Double.NEGATIVE_INFINITY);
    }

    /** How it falls, with its loads. */
    List<Fall> falls() {
        return Falls.all(model(), new Loading(all()));
    }

    LoadPath path() {
        return LoadPath.of(section, joints);
    }

    Balance balance(String piece) {
        return new Balances(section, path(), loads).ofPiece(number(piece)).orElseThrow();
    }

    List<Balance> balancesOn(String carrier) {
        return new Balances(section, path(), loads).onCarrier(number(carrier));
    }

    Balance balanceOn(String carrier) {
        List<Balance> balances = balancesOn(carrier);
        if (balances.size() != 1) {
            throw new AssertionError(balances.toString());
        }
        return balances.get(0);
    }

    /** The same, those of the fasteners deciding what holds the pieces that they sit on. */
    Held decided() {
        Set<Integer> given = joints.stream().map(Tie::outer).collect(Collectors.toSet());
        Set<Integer> held = joints.stream()
                .filter(tie -> section.body(tie.inner()).standing() && tie.pull() > 0)
                .map(Tie::outer)
                .collect(Collectors.toSet());
        return new Held(section.heldBy(new Fastened(given, held, held), new Notices()), loads, joints, friction);
    }

    /** The same, nothing taken on trust: fastenings are said to be given for every piece, and hold none. */
    Held free() {
        Set<Integer> given = IntStream.range(0, section.bodies().size()).boxed().collect(Collectors.toSet());
        return new Held(
                section.heldBy(new Fastened(given, Set.of(), Set.of()), new Notices()), loads, joints, friction);
    }

    /** As the program asks. */
    Support support() {
        return Supports.of(section, loads, joints, friction > 0 ? OptionalDouble.of(friction) : OptionalDouble.empty());
    }

    /** As the program asks, notices and all. */
    Support support(Notices notices) {
        List<Loads.Wanted> wanted = loads.stream()
                .map(load -> new Loads.Wanted(
                        load.name(), section.name(load.body()), load.out(), load.poundsPerFoot(), load.mark()))
                .toList();
        return Supports.of(section, wanted, joints, OptionalDouble.empty(), notices);
    }
}

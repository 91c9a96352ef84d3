package buildup.engine.hold.order;

import buildup.catalog.Catalog;
import buildup.engine.hold.fixing.ToolReach;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** Asks whether a stack can be put up in its order, and what order would do where it cannot. */
public final class Orders {
    /** A longer list of names is not read. */
    private static final int MOST_NAMED = 3;

    private static final int MOST_MOVES = 2;

    private final Section section;
    private final Notices notices;
    private final Ways ways;
    private final List<Integer> standing = new ArrayList<>();
    private final List<Unit> units;

    private Orders(Section section, List<BenchUnits.Joined> bench, Notices notices) {
        this.section = section;
        this.notices = notices;
        this.ways = new Ways(section);
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).standing()) {
                standing.add(i);
            }
        }
        this.units = units(bench);
    }

    /**
     * The answer for a stack.
     *
     * @param bench what is joined before it goes up
     * @param fixed the fastenings of the section
     * @param catalog lists the tools
     * @param notices told what cannot go in, and what is wrong with a unit
     */
    public static PuttingUp of(
            Section section, List<BenchUnits.Joined> bench, List<Fixed> fixed, Catalog catalog, Notices notices) {
        Orders orders = new Orders(section, bench, notices);
        bench.forEach(orders::sayUnit);
        List<PutUp> steps = orders.steps(fixed);
        steps.stream()
                .filter(step -> step.loose() && step.unit().bench().isEmpty())
                .forEach(step -> orders.sayLoose(step.unit(), fixed));
        List<Driving> driving = orders.driving(fixed, new ToolReach(section, catalog));
        if (steps.stream().allMatch(PutUp::goes)) {
            return new PuttingUp(steps, Optional.empty(), true, false, List.of(), driving);
        }
        Planner planner = new Planner(section, orders.ways, orders.standing, orders.units);
        Optional<Planner.Found> found = planner.nearest();
        List<Integer> join = found.isPresent() ? List.of() : planner.joined();
        PuttingUp order = new PuttingUp(
                steps,
                found.map(Planner.Found::units),
                found.map(Planner.Found::proved).orElse(true),
                found.map(Planner.Found::propped).orElse(false),
                join,
                driving);
        steps.stream().filter(step -> !step.goes()).forEach(step -> orders.sayBlocked(step, order));
        return order;
    }

    private int number(String piece) {
        return section.number(piece).orElseThrow();
    }

    /** In the order of putting up: a bench unit where its last piece stands in the document. */
    private List<Unit> units(List<BenchUnits.Joined> bench) {
        List<Unit> all = new ArrayList<>();
        Set<Integer> joined = new HashSet<>();
        for (BenchUnits.Joined unit : bench) {
            List<Integer> bodies =
                    unit.pieces().stream().map(this::number).sorted().toList();
            joined.addAll(bodies);
            all.add(new Unit(Optional.of(unit.name()), bodies));
        }
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).inStack() && !joined.contains(i)) {
                all.add(Unit.piece(i));
            }
        }
        all.sort(Comparator.comparingInt(Unit::last));
        return List.copyOf(all);
    }

    private List<PutUp> steps(List<Fixed> fixed) {
        List<Integer> up = new ArrayList<>(standing);
        List<PutUp> steps = new ArrayList<>();
        for (Unit unit : units) {
            steps.add(step(unit, up, fixed));
            up.addAll(unit.bodies());
        }
        return steps;
    }

    private PutUp step(Unit unit, List<Integer> up, List<Fixed> fixed) {
        boolean loose = isLoose(unit, up, fixed);
        Optional<WayIn> way = ways.best(unit, up);
        if (way.isPresent()) {
            return new PutUp(unit, way, needs(way.get()), has(unit, way.get(), up), List.of(), loose);
        }
        Optional<WayIn> nearest = ways.nearest(unit, up).filter(tried -> isShort(unit, tried, up));
        WayIn tried = nearest.orElse(WayIn.straight(0));
        List<Integer> blockers = fewest(unit, nearest, up);
        return new PutUp(unit, nearest, needs(tried), has(unit, tried, up), blockers, loose);
    }

    /** Whether it is room that the way lacks: some is there, or it is the room itself that ends there. */
    private boolean isShort(Unit unit, WayIn way, List<Integer> up) {
        return ways.room(unit, way.first(), up) > Tolerance.TOUCHING
                || ways.blockers(unit, way, up).stream()
                        .noneMatch(body -> section.body(body).inStack());
    }

    /** What is in the way: of the way that lacks room, else of the straight way with the fewest in it. */
    private List<Integer> fewest(Unit unit, Optional<WayIn> nearest, List<Integer> up) {
        if (nearest.isPresent()) {
            List<Integer> all = new ArrayList<>(passed(unit, nearest.get(), up));
            ways.blockers(unit, nearest.get(), up).stream()
                    .filter(body -> !all.contains(body))
                    .forEach(all::add);
            return all;
        }
        return Ways.EXITS.stream()
                .map(then -> ways.blockers(unit, WayIn.straight(then), up))
                .min(Comparator.comparingInt(List::size))
                .orElseThrow();
    }

    /** What it would have to be lifted over, or brought round in another way. */
    private List<Integer> passed(Unit unit, WayIn way, List<Integer> up) {
        return ways.blockers(unit, WayIn.straight(way.then()), up);
    }

    private static OptionalDouble needs(WayIn way) {
        return way.isStraight() ? OptionalDouble.empty() : OptionalDouble.of(way.shift());
    }

    private OptionalDouble has(Unit unit, WayIn way, List<Integer> up) {
        double room = ways.room(unit, way.first(), up);
        return way.isStraight() || Double.isInfinite(room) ? OptionalDouble.empty() : OptionalDouble.of(room);
    }

    /** Whether nothing is there yet of what carries or backs it, is said to hold it, or its nails bite in. */
    private boolean isLoose(Unit unit, List<Integer> up, List<Fixed> fixed) {
        Set<Integer> holders = holders(unit, fixed);
        return !holders.isEmpty() && holders.stream().noneMatch(up::contains);
    }

    private Set<Integer> holders(Unit unit, List<Fixed> fixed) {
        Set<Integer> holders = unit.holders(section);
        unit.bodies().stream()
                .flatMap(body -> section.body(body).placed().stream())
                .flatMap(placed -> placed.piece().fixed().stream())
                .flatMapToInt(said -> section.number(said.text()).stream())
                .filter(body -> !unit.bodies().contains(body))
                .forEach(holders::add);
        fixed.stream()
                .filter(row -> unit.bodies().contains(row.piece()))
                .flatMap(row -> row.beyond().stream())
                .map(grip -> grip.body())
                .filter(body -> !unit.bodies().contains(body))
                .forEach(holders::add);
        return holders;
    }

    private List<Driving> driving(List<Fixed> fixed, ToolReach access) {
        List<Driving> all = new ArrayList<>();
        for (Fixed row : fixed) {
            int own = stepOf(row.piece());
            Unit unit = units.get(own);
            boolean bench = unit.bench().isPresent()
                    && row.beyond().stream().allMatch(grip -> unit.bodies().contains(grip.body()));
            int step = Math.max(own, stepOf(row.after()));
            for (var grip : row.beyond()) {
                step = Math.max(step, stepOf(grip.body()));
            }
            int last = units.get(step).last();
            OptionalInt hidden =
                    bench || unit.bench().isEmpty() ? OptionalInt.empty() : access.inTheWay(row, unit.last());
            if (hidden.isPresent() && unit.bodies().contains(hidden.getAsInt())) {
                sayHidden(row, unit, hidden.getAsInt());
            }
            all.add(new Driving(
                    row,
                    step,
                    bench,
                    // joined on the bench it is driven before anything can be in its way
                    bench ? OptionalInt.empty() : access.coveredBy(row, last),
                    hidden.isPresent() && unit.bodies().contains(hidden.getAsInt()) ? hidden : OptionalInt.empty()));
        }
        return all;
    }

    /** The step in which a body goes up; 0 for what stood before. */
    private int stepOf(int body) {
        return IntStream.range(0, units.size())
                .filter(i -> units.get(i).bodies().contains(body))
                .findFirst()
                .orElse(0);
    }

    private void sayHidden(Fixed row, Unit unit, int by) {
        notices.add(OrderNotices.HIDDEN
                .with("fastening", row.fastening().name())
                .with("unit", unit.bench().orElseThrow())
                .with("other", section.name(by))
                .of(section.name(row.piece()))
                .at(row.fastening().mark()));
    }

    private void sayUnit(BenchUnits.Joined joined) {
        List<Integer> bodies = joined.pieces().stream().map(this::number).toList();
        Set<Integer> together = new HashSet<>(List.of(bodies.get(0)));
        boolean grows = true;
        while (grows) {
            grows =
                    bodies.stream()
                            .filter(body -> !together.contains(body) && section.touches(body, together))
                            .toList()
                            .stream()
                            .map(together::add)
                            .reduce(false, Boolean::logicalOr);
        }
        if (together.size() < bodies.size()) {
            notices.add(OrderNotices.APART
                    .with("unit", joined.name())
                    .with("others", names(List.copyOf(together)))
                    .with(
                            "pieces",
                            names(bodies.stream()
                                    .filter(body -> !together.contains(body))
                                    .toList()))
                    .of(joined.pieces().get(0))
                    .at(joined.mark()));
        }
        Unit unit = units.get(stepOf(bodies.get(0)));
        List<Integer> before = upBefore(unit);
        Set<Integer> holders = unit.holders(section);
        if (!holders.isEmpty() && holders.stream().noneMatch(before::contains)) {
            notices.add(OrderNotices.TOO_EARLY
                    .with("unit", joined.name())
                    .with("last", section.name(unit.last()))
                    .with("others", names(List.copyOf(holders)))
                    .of(section.name(unit.last()))
                    .at(joined.mark()));
        }
    }

    private void sayLoose(Unit unit, List<Fixed> fixed) {
        notices.add(about(unit, OrderNotices.LOOSE.with("others", names(List.copyOf(holders(unit, fixed))))));
    }

    private List<Integer> upBefore(Unit unit) {
        List<Integer> before = new ArrayList<>(standing);
        units.stream().takeWhile(other -> !other.equals(unit)).forEach(other -> before.addAll(other.bodies()));
        return before;
    }

    private Listing names(List<Integer> bodies) {
        if (bodies.size() <= MOST_NAMED) {
            return Listing.and(bodies.stream().map(this::quoted).toList());
        }
        List<Phrase> named = new ArrayList<>(
                bodies.stream().limit(MOST_NAMED - 1).map(this::quoted).toList());
        named.add(OrderNotices.MORE.with("more", Figure.count(bodies.size() - named.size())));
        return Listing.and(named);
    }

    private Phrase quoted(int body) {
        return (section.body(body).piece() ? OrderNotices.QUOTED : OrderNotices.THE).with("name", section.name(body));
    }

    private void sayBlocked(PutUp step, PuttingUp order) {
        Unit unit = step.unit();
        Phrase who = unit.bench().isPresent()
                ? OrderNotices.UNIT.with("name", unit.bench().get())
                : quoted(unit.bodies().get(0));
        boolean room =
                step.way().isPresent() && step.needs().isPresent() && step.has().isPresent();
        Notice notice = (room ? OrderNotices.TOO_LITTLE_ROOM : OrderNotices.NO_WAY).with("unit", who);
        if (!room) {
            notice = notice.with("blockers", names(step.blockedBy()));
        } else {
            List<Integer> up = upBefore(unit);
            List<Integer> passed = passed(unit, step.way().orElseThrow(), up);
            double needs = step.needs().getAsDouble();
            double has = step.has().getAsDouble();
            notice = notice.with("passed", names(passed))
                    .with(
                            "blockers",
                            names(step.blockedBy().stream()
                                    .filter(body -> !passed.contains(body))
                                    .toList()))
                    .with("move", step.way().orElseThrow().move())
                    .with("needs", Figure.atLeast(needs))
                    .with("has", Figure.atMost(has))
                    .amount(Figure.atLeast(needs - has));
        }
        notices.add(about(unit, notice).cure(cure(order)));
    }

    private Notice about(Unit unit, Notice notice) {
        Notice about = notice.of(section.name(unit.last()));
        return section.body(unit.last())
                .placed()
                .map(placed -> placed.piece().mark())
                .map(about::at)
                .orElse(about);
    }

    private Phrase cure(PuttingUp order) {
        if (order.instead().isPresent()) {
            return (order.propped() ? OrderNotices.PROPPED : OrderNotices.NEAREST)
                    .with("moves", told(moves(order.instead().get())));
        }
        if (!order.join().isEmpty()) {
            return OrderNotices.JOIN
                    .with("pieces", names(order.join()))
                    .with(
                            "list",
                            String.join(
                                    ", ",
                                    order.join().stream().map(section::name).toList()));
        }
        return OrderNotices.SLIDE;
    }

    private static Listing told(List<Phrase> moves) {
        if (moves.size() <= MOST_MOVES) {
            return Listing.and(moves);
        }
        List<Phrase> first = new ArrayList<>(moves.subList(0, MOST_MOVES - 1));
        first.add(OrderNotices.MOVES.with("more", Figure.count(moves.size() - first.size())));
        return Listing.and(first);
    }

    /** The pieces that go up earlier than they were to, each before the next one that was to be earlier. */
    private List<Phrase> moves(List<Unit> instead) {
        List<Phrase> moves = new ArrayList<>();
        for (int i = 0; i < instead.size(); i++) {
            Unit unit = instead.get(i);
            int at = i;
            boolean moved = IntStream.range(i + 1, instead.size())
                    .anyMatch(
                            later -> instead.get(later).last() < instead.get(at).last());
            boolean first = i == 0 || instead.get(i - 1).last() < unit.last();
            if (moved && first) {
                moves.add(OrderNotices.BEFORE
                        .with("piece", section.name(unit.last()))
                        .with("other", section.name(instead.get(i + 1).last())));
            }
        }
        return moves;
    }
}

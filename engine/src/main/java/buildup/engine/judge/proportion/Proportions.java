package buildup.engine.judge.proportion;

import buildup.catalog.Catalog;
import buildup.catalog.book.BookOrder;
import buildup.catalog.book.BookRule;
import buildup.catalog.book.EntablaturePart;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a stack beside the books. Reads its own blocks of the document, {@code parts:} and {@code proportion:}. */
public final class Proportions {
    /** An order with its pedestal is 4 + 12 + 3 parts high, 3 of them the entablature: Vignola, Canon of the five orders. */
    private static final double ENTABLATURE_OF_A_ROOM = 3.0 / 19;

    private final Section section;
    private final ProportionWish wish;
    private final Catalog catalog;
    private final List<PartShare> parts;

    private Proportions(Section section, ProportionWish wish, Catalog catalog, List<PartShare> parts) {
        this.section = section;
        this.wish = wish;
        this.catalog = catalog;
        this.parts = parts;
    }

    /**
     * What the document asks; what is wrong with its blocks is refused.
     *
     * @param root the document, read with the stack's lengths
     */
    public static ProportionWish read(Stack stack, Fields root, Catalog catalog, Notices notices) {
        return new ProportionReader(stack, catalog, notices).read(root);
    }

    /** How the stack reads; parts that overlap are a problem, and then nothing else is said. */
    public static Proportion of(Section section, ProportionWish wish, Catalog catalog, Notices notices) {
        if (!wish.asked()) {
            return Proportion.nothing(false);
        }
        PartFinder finder = new PartFinder(section);
        Optional<int[]> overlap = finder.overlap(wish.parts());
        if (overlap.isPresent()) {
            int low = overlap.get()[0];
            int high = overlap.get()[1];
            notices.add(ProportionNotices.OVERLAP
                    .with("lower", partOf(wish, section.name(low)))
                    .with("other", section.name(high))
                    .with("upper", partOf(wish, section.name(high)))
                    .of(section.name(low))
                    .at(wish.mark()));
            return Proportion.nothing(true);
        }
        List<PartShare> parts = finder.parts(wish.parts());
        Optional<PartShare> flat = parts.stream()
                .filter(part -> part.height() <= Tolerance.TOUCHING)
                .findFirst();
        if (flat.isPresent() && !wish.parts().isEmpty()) {
            notices.add(ProportionNotices.NO_HEIGHT
                    .with("part", flat.get().part().word())
                    .at(wish.mark()));
            return Proportion.nothing(true);
        }
        if (flat.isPresent()) {
            parts = finder.whole();
        }
        return parts.isEmpty() ? Proportion.nothing(true) : new Proportions(section, wish, catalog, parts).reading();
    }

    private static String partOf(ProportionWish wish, String piece) {
        return wish.parts().entrySet().stream()
                .filter(entry -> entry.getValue().contains(piece))
                .map(entry -> entry.getKey().word())
                .findFirst()
                .orElse("");
    }

    private Proportion reading() {
        Set<Integer> bodies =
                parts.stream().flatMap(part -> part.bodies().stream()).collect(Collectors.toSet());
        Rhythm rhythm = new Rhythm(section);
        List<OrderRow> orders =
                parts.size() > 1 ? catalog.orders().stream().map(this::row).toList() : List.of();
        return new Proportion(
                true,
                !wish.parts().isEmpty(),
                parts,
                projection(),
                overhangs(),
                corona(rhythm),
                rhythm.members(bodies),
                rhythm.reveals(),
                orders,
                sizes(),
                laid(orders));
    }

    private Optional<Corona> corona(Rhythm rhythm) {
        return part(EntablaturePart.CORNICE)
                .flatMap(cornice -> rhythm.corona(
                        Set.copyOf(cornice.bodies()),
                        part(EntablaturePart.FRIEZE).map(PartShare::face).orElse(0.0)));
    }

    private Optional<PartShare> part(EntablaturePart part) {
        return parts.stream().filter(one -> one.part() == part).findFirst();
    }

    private List<EntablaturePart> kinds() {
        return parts.stream().map(PartShare::part).toList();
    }

    private double height() {
        return parts.stream().mapToDouble(PartShare::height).sum();
    }

    /** Beyond the face of the frieze, else of the architrave, else of the wall plane. */
    private OptionalDouble projection() {
        double from = part(EntablaturePart.FRIEZE)
                .or(() -> part(EntablaturePart.ARCHITRAVE))
                .map(PartShare::face)
                .orElse(0.0);
        return part(EntablaturePart.CORNICE)
                .map(cornice -> OptionalDouble.of(cornice.face() - from))
                .orElse(OptionalDouble.empty());
    }

    private List<Overhang> overhangs() {
        List<Overhang> overhangs = new ArrayList<>();
        for (Standing standing : section.standing()) {
            double width = standing.bearing().stream()
                    .mapToDouble(Standing.Bearing::width)
                    .sum();
            double end = standing.bearing().stream()
                    .mapToDouble(
                            bearing -> Math.max(bearing.from().x(), bearing.to().x()))
                    .max()
                    .orElse(Double.POSITIVE_INFINITY);
            double over = section.body(standing.body()).outline().box().face() - end;
            if (section.body(standing.body()).inStack() && width > Tolerance.TOUCHING && over > Tolerance.TOUCHING) {
                overhangs.add(new Overhang(standing.body(), width, over));
            }
        }
        return overhangs;
    }

    private OrderRow row(BookOrder order) {
        LaidOrder laid = LaidOrder.of(order, kinds(), height());
        Map<EntablaturePart, Double> heights = new EnumMap<>(EntablaturePart.class);
        double apart = 0;
        for (PartShare part : parts) {
            heights.put(part.part(), laid.height(part.part()));
            apart += Math.abs(part.share() - laid.height(part.part()) / height());
        }
        double share = order.share(EntablaturePart.CORNICE, Arrays.asList(EntablaturePart.values()))
                .doubleValue();
        OptionalDouble room = room();
        return new OrderRow(
                order,
                heights,
                laid.projection(),
                apart / 2,
                room.isPresent()
                        ? OptionalDouble.of(ENTABLATURE_OF_A_ROOM * share * room.getAsDouble())
                        : OptionalDouble.empty());
    }

    private OptionalDouble room() {
        OptionalDouble floor = section.stack().space().floor();
        OptionalDouble ceiling = section.stack().space().ceiling();
        return wish.room().isPresent() || floor.isEmpty() || ceiling.isEmpty()
                ? wish.room()
                : OptionalDouble.of(ceiling.getAsDouble() - floor.getAsDouble());
    }

    private List<SizeRow> sizes() {
        List<SizeRow> rows = new ArrayList<>();
        for (BookRule rule : catalog.proportions()) {
            OptionalDouble whole = whole(rule.of());
            if (whole.isPresent()) {
                double of = whole.getAsDouble();
                rows.add(new SizeRow(
                        rule,
                        part(rule.least(), of),
                        part(rule.most(), of),
                        rule.measures().map(this::measured).orElse(OptionalDouble.empty())));
            }
        }
        return rows;
    }

    private static OptionalDouble part(Optional<BigDecimal> share, double whole) {
        return share.map(number -> OptionalDouble.of(number.doubleValue() * whole))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble whole(BookRule.Whole of) {
        return switch (of) {
            case ROOM -> room();
            case DOOR_WIDTH -> wish.doorWidth();
            case DOOR_HEIGHT -> wish.doorHeight();
            case CORNICE -> height(EntablaturePart.CORNICE);
        };
    }

    private OptionalDouble height(EntablaturePart part) {
        return part(part).map(found -> OptionalDouble.of(found.height())).orElse(OptionalDouble.empty());
    }

    private OptionalDouble measured(BookRule.Measured measured) {
        return switch (measured) {
            case CORNICE -> height(EntablaturePart.CORNICE);
            case ARCHITRAVE -> height(EntablaturePart.ARCHITRAVE);
            case FRIEZE -> height(EntablaturePart.FRIEZE);
            case PROJECTION -> projection();
            case DOOR_WIDTH -> wish.doorWidth();
            case ENTABLATURE ->
                parts.size() == EntablaturePart.values().length ? OptionalDouble.of(height()) : OptionalDouble.empty();
            case CORNICE_AND_FRIEZE -> {
                OptionalDouble cornice = height(EntablaturePart.CORNICE);
                OptionalDouble frieze = height(EntablaturePart.FRIEZE);
                yield cornice.isPresent() && frieze.isPresent()
                        ? OptionalDouble.of(cornice.getAsDouble() + frieze.getAsDouble())
                        : OptionalDouble.empty();
            }
        };
    }

    /** The one that is asked for, else the nearest of those whose members are known, else the nearest. */
    private Optional<LaidOrder> laid(List<OrderRow> orders) {
        Comparator<OrderRow> nearest = Comparator.comparingDouble(OrderRow::off);
        return wish.beside()
                .or(() -> orders.stream()
                        .filter(row -> !row.order().members().isEmpty())
                        .min(nearest)
                        .map(OrderRow::order))
                .map(order -> LaidOrder.of(order, kinds(), height()));
    }
}

package buildup.engine.judge.proportion;

import buildup.catalog.book.EntablaturePart;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a stack reads beside the books.
 *
 * @param asked whether the document asks
 * @param named whether its parts are named, not read from the stack
 * @param parts from below; none when they do not fit
 * @param projection of the cornice beyond what lies below it, in; absent when there is no cornice
 * @param overhangs what hangs over its bearing, in the order of putting up
 * @param corona the overhanging face of the cornice, if there is one
 * @param rhythm members with a height, from below
 * @param reveals that an eye compares
 * @param orders each at the height of the stack; none when the stack is of one part
 * @param sizes what rules of the books ask
 * @param laid the order that is laid beside it
 */
public record Proportion(
        boolean asked,
        boolean named,
        List<PartShare> parts,
        OptionalDouble projection,
        List<Overhang> overhangs,
        Optional<Corona> corona,
        List<RhythmRow> rhythm,
        List<RevealReading> reveals,
        List<OrderRow> orders,
        List<SizeRow> sizes,
        Optional<LaidOrder> laid) {
    /** Copies the lists. */
    public Proportion {
        parts = List.copyOf(parts);
        overhangs = List.copyOf(overhangs);
        rhythm = List.copyOf(rhythm);
        reveals = List.copyOf(reveals);
        orders = List.copyOf(orders);
        sizes = List.copyOf(sizes);
    }

    /** Nothing was asked, or nothing can be said. */
    static Proportion nothing(boolean asked) {
        return new Proportion(
                asked,
                false,
                List.of(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    /** One part, if the stack has it. */
    public Optional<PartShare> part(EntablaturePart part) {
        return parts.stream().filter(one -> one.part() == part).findFirst();
    }

    /** Projection of the cornice in heights of the cornice. */
    public OptionalDouble projectionToHeight() {
        Optional<PartShare> cornice = part(EntablaturePart.CORNICE).filter(part -> part.height() > 0);
        return cornice.isPresent() && projection.isPresent()
                ? OptionalDouble.of(projection.getAsDouble() / cornice.get().height())
                : OptionalDouble.empty();
    }

    /** Height of all parts together, in. */
    public double height() {
        return parts.stream().mapToDouble(PartShare::height).sum();
    }

    /** The order whose parts are nearest to those of the stack. */
    public Optional<OrderRow> nearest() {
        return orders.stream().min(Comparator.comparingDouble(OrderRow::off));
    }

    /** How many members and reveals a person may want to look at. */
    public long remarks() {
        return rhythm.stream().filter(row -> !row.remarks().isEmpty()).count()
                + reveals.stream().filter(row -> !row.remarks().isEmpty()).count();
    }
}

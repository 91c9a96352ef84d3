package buildup.engine.judge.proportion;

import buildup.catalog.book.BookMember;
import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An order drawn to the height of the stack.
 *
 * @param unit inches to one unit of the order
 * @param parts that the stack has too, from below
 */
public record LaidOrder(BookOrder order, double unit, List<EntablaturePart> parts) {
    /** Copies the list. */
    public LaidOrder {
        parts = List.copyOf(parts);
    }

    /**
     * A member of the order's cornice at this height, inches.
     *
     * @param height of the member
     * @param running its top over the underside of the cornice
     * @param out how far it comes out beyond what lies below it
     * @param face how far it comes out beyond the frieze
     */
    public record Row(BookMember member, double height, double running, double out, double face) {}

    /** An order so that some of its parts are so high together, in. */
    static LaidOrder of(BookOrder order, List<EntablaturePart> parts, double height) {
        double units = parts.stream()
                .mapToDouble(part -> order.height(part).doubleValue())
                .sum();
        return new LaidOrder(order, height / units, parts);
    }

    /** The height of a part, in. */
    public double height(EntablaturePart part) {
        return order.height(part).doubleValue() * unit;
    }

    /** Projection of the cornice beyond the frieze, in; absent when the book does not say. */
    public OptionalDouble projection() {
        return order.projection()
                .map(units -> OptionalDouble.of(units.doubleValue() * unit))
                .orElse(OptionalDouble.empty());
    }

    /** The members of its cornice from below; their numbers are shares of the cornice where the order's are. */
    public List<Row> members() {
        double units = order.members().stream()
                .mapToDouble(member -> member.height().doubleValue())
                .sum();
        double scale = units > 0 ? height(EntablaturePart.CORNICE) / units : 0;
        List<Row> rows = new ArrayList<>();
        double running = 0;
        double face = 0;
        for (BookMember member : order.members()) {
            double height = member.height().doubleValue() * scale;
            double out = member.out().doubleValue() * scale;
            running += height;
            face += out;
            rows.add(new Row(member, height, running, out, face));
        }
        return List.copyOf(rows);
    }
}

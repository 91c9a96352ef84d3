package buildup.catalog.book;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An order as a book gives it; numbers in any one unit.
 *
 * @param place page, plate or section of the book
 * @param memory what of it comes from memory; empty when all of it was seen
 * @param assumed what is not in the book; empty when nothing is
 * @param parts heights of all three parts
 * @param projection of the cornice beyond the face of the frieze, if the book says
 * @param members of the cornice from below; none when the book, as it was seen, has none
 */
public record BookOrder(
        String name,
        String book,
        String place,
        String memory,
        String assumed,
        Map<EntablaturePart, BigDecimal> parts,
        Optional<BigDecimal> projection,
        List<BookMember> members) {
    /** Copies map and list. */
    public BookOrder {
        parts = Map.copyOf(parts);
        members = List.copyOf(members);
    }

    /** The height of a part as a share of the height of some parts, itself one of them. */
    public BigDecimal share(EntablaturePart part, List<EntablaturePart> among) {
        BigDecimal sum = among.stream().map(this::height).reduce(BigDecimal.ZERO, BigDecimal::add);
        return height(part).divide(sum, MathContext.DECIMAL64);
    }

    /** The height of a part in the unit of the order. */
    public BigDecimal height(EntablaturePart part) {
        return parts.getOrDefault(part, BigDecimal.ZERO);
    }
}

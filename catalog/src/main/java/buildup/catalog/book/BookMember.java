package buildup.catalog.book;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * A member of an order's cornice; numbers in the unit of its order.
 *
 * @param height of the member
 * @param out how far it comes out beyond what lies below it
 */
public record BookMember(String name, Zone zone, BigDecimal height, BigDecimal out, Shape shape) {
    /** Where in a cornice a member is. */
    public enum Zone {
        /** Under the overhang. */
        BED,
        /** The upright face that overhangs. */
        CORONA,
        /** On top of that. */
        CROWN;

        /** Its word in documents. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How a member is drawn. */
    public enum Shape {
        FLAT,
        BEVEL,
        HOLLOW,
        ROUND,
        /** Hollow above and outermost, round below. */
        RECTA,
        /** Round above, hollow below. */
        REVERSA;

        /** Its word in documents. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}

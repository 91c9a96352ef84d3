package buildup.catalog.book;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/**
 * A rule of proportion as a book gives it.
 *
 * @param place page or article of the book
 * @param memory whether it was not seen but comes from memory
 * @param measures what of a stack it speaks of; absent when no figure of a stack is meant
 * @param of what it is a share of
 * @param least share, if there is one
 * @param most share, if there is one
 */
public record BookRule(
        String name,
        String book,
        String place,
        boolean memory,
        Optional<Measured> measures,
        Whole of,
        Optional<BigDecimal> least,
        Optional<BigDecimal> most) {
    /** What of a stack a rule may speak of. */
    public enum Measured {
        CORNICE,
        ENTABLATURE,
        CORNICE_AND_FRIEZE,
        ARCHITRAVE,
        FRIEZE,
        PROJECTION,
        DOOR_WIDTH;

        /** Its word in documents. */
        public String word() {
            return words(this);
        }
    }

    /** What a rule may take a share of. */
    public enum Whole {
        ROOM,
        DOOR_WIDTH,
        DOOR_HEIGHT,
        CORNICE;

        /** Its word in documents. */
        public String word() {
            return words(this);
        }
    }

    private static String words(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

package buildup.shared.length;

import java.util.List;
import java.util.Optional;

/** What came of reading a size. */
public sealed interface Reading permits Reading.Good, Reading.Bad {

    /** A length, and what must be said about how it was taken, if anything. */
    record Good(Length length, Optional<Echo> echo) implements Reading {}

    /**
     * No length.
     *
     * @param fault why
     * @param written the part at fault, as written
     * @param names of {@link Fault#UNKNOWN_NAME} those that are known, of {@link Fault#NO_SHOP_FRACTION} the fraction
     *     that was probably meant, of {@link Fault#INCHES_OR_METRIC} the number as a decimal
     * @param bareUnit the unit of a number that names none
     */
    record Bad(Fault fault, String written, List<String> names, LengthUnit bareUnit) implements Reading {
        /** Copies the list. */
        public Bad {
            names = List.copyOf(names);
        }
    }

    /** Why a text is no length. */
    enum Fault {
        /** There is no text. */
        NOTHING,
        /** It is longer than any size is written. */
        LONG_TEXT,
        /** It is shaped like no size. */
        NO_SIZE,
        /** A sign stands last. */
        ENDS_IN_A_SIGN,
        /** Its denominator or divisor is zero. */
        DIVIDES_BY_ZERO,
        /** It is longer than {@link LengthReader#GREATEST}. */
        BEYOND_ANY_BUILDING,
        /** Its denominator is on no tape. */
        NO_SHOP_FRACTION,
        /** A bare fraction where bare numbers are metric: carpenters write inches so, and nobody millimeters. */
        INCHES_OR_METRIC,
        /** A word that names no length. */
        UNKNOWN_NAME
    }

    /**
     * How a writing that could be taken otherwise was read.
     *
     * @param doubt what could be otherwise
     * @param written as written
     * @param readAs as it was taken
     */
    record Echo(Doubt doubt, String written, String readAs) {}

    /** Why a size could have been meant otherwise. */
    enum Doubt {
        /** It may be a slip. */
        SLIP,
        /** Feet with a bare number behind them. */
        BARE_INCHES,
        /** The mark behind a printed size was dropped. */
        MARK_DROPPED,
        /** A comma was taken as the decimal point. */
        COMMA
    }
}

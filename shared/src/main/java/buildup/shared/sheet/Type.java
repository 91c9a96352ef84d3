package buildup.shared.sheet;

import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.List;

/** What the cells of a column hold. */
public sealed interface Type {
    /** A number of a quantity, and how people read it. */
    record Measure(Quantity quantity, Rounding rounding) implements Type {}

    /**
     * A number whose quantity differs from row to row.
     *
     * @param words whether some rows have words in its place
     */
    record Amount(boolean words) implements Type {}

    /** Words as they stand. */
    record Words() implements Type {}

    /** Yes or no. */
    record Flag() implements Type {}

    /** A point of the plane of the section: projection and height in inches. */
    record Place() implements Type {}

    /** Several names. */
    record Names() implements Type {}

    /** Several numbers of a quantity, without headings of their own. */
    record Measures(Quantity quantity, Rounding rounding) implements Type {}

    /** A sentence with figures; where programs read it, it is in the unit of the document. */
    record Saying() implements Type {}

    /** Several sentences with figures. */
    record Sayings() implements Type {}

    /** Rows of figures under names of their own, which differ from row to row: sizes called as a list calls them. */
    record Called(Quantity quantity, Rounding rounding) implements Type {}

    /**
     * Columns of their own below this one.
     *
     * @param columns of each row
     * @param many a list of rows; else one
     * @param between what stands between the cells of a row where people read them in one cell
     */
    record Nested(List<Column> columns, boolean many, String between) implements Type {
        /** Copies the list. */
        public Nested {
            columns = List.copyOf(columns);
        }
    }
}

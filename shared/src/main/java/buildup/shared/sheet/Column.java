package buildup.shared.sheet;

/**
 * A column of a sheet.
 *
 * @param key in JSON and in the schema; also the word by which a rule may ask for the figure
 * @param heading over the column where people read it; also a word by which a rule may ask for it
 * @param type what its cells hold
 * @param name whether it is part of what a row is known by
 * @param shown who reads it
 * @param sums whether rows of one name add up, and no row means none
 */
public record Column(String key, String heading, Type type, boolean name, Shown shown, boolean sums) {
    /** A column whose rows do not add up. */
    public Column(String key, String heading, Type type, boolean name, Shown shown) {
        this(key, heading, type, name, shown, false);
    }

    /** Who reads a column. */
    public enum Shown {
        /** People and programs. */
        BOTH,
        /** Programs alone. */
        JSON,
        /** People alone. */
        TEXT
    }
}

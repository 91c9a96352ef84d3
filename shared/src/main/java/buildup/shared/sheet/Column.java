package buildup.shared.sheet;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A column of a sheet.
 *
 * @param key in JSON and in the schema; also the word by which a rule may ask for the figure
 * @param heading over the column where people read it; also a word by which a rule may ask for it
 * @param type what its cells hold
 * @param shown who reads it
 * @param traits what else is true of it
 * @param answered for {@link Trait#NONE_WITHOUT_ROW}, the lights or eyes that were asked and had an answer: of one that
 *     could not shine or see, no row means nothing
 */
public record Column(String key, String heading, Type type, Shown shown, Set<Trait> traits, Set<String> answered) {
    /** Who reads a column. */
    public enum Shown {
        /** People and programs. */
        BOTH,
        /** Programs alone. */
        JSON,
        /** People alone. */
        TEXT
    }

    /** What may be true of a column. */
    public enum Trait {
        /** It is part of what a row is known by. */
        NAME,
        /** Every row has it. */
        ALWAYS,
        /** It is not set beside that of another answer: a place in a file, a letter that the order gives. */
        ALONE,
        /** Rows of one name add up, and no row means none. */
        SUMS,
        /** No row means none, for whatever was asked. */
        NONE_WITHOUT_ROW
    }

    /** Copies the sets. */
    public Column {
        traits = Set.copyOf(traits);
        answered = Set.copyOf(answered);
    }

    /** A column in which a row that is not there means nothing. */
    public Column(String key, String heading, Type type, Shown shown, Set<Trait> traits) {
        this(key, heading, type, shown, traits, Set.of());
    }

    /** A column that everybody reads and that may be empty. */
    static Column of(String key, String heading, Type type) {
        return new Column(key, heading, type, Shown.BOTH, EnumSet.noneOf(Trait.class));
    }

    /** The same with one more trait. */
    Column and(Trait more) {
        Set<Trait> all = EnumSet.of(more);
        all.addAll(traits);
        return new Column(key, heading, type, shown, all, answered);
    }

    /** The same for other readers. */
    Column shownTo(Shown whom) {
        return new Column(key, heading, type, whom, traits, answered);
    }

    /** Whether it is part of what a row is known by. */
    public boolean name() {
        return traits.contains(Trait.NAME);
    }

    /** Whether every row has it. */
    public boolean always() {
        return traits.contains(Trait.ALWAYS);
    }

    /** Whether it is set beside that of another answer. */
    public boolean compared() {
        return !traits.contains(Trait.ALONE);
    }

    /** Whether rows of one name add up, and no row means none. */
    public boolean sums() {
        return traits.contains(Trait.SUMS);
    }

    /**
     * Whether no row means none.
     *
     * @param asked the light or eye that is asked about; absent where it is any of them
     */
    public boolean noneWithoutRow(Optional<String> asked) {
        return sums()
                || (traits.contains(Trait.NONE_WITHOUT_ROW)
                        && asked.map(answered::contains).orElse(!answered.isEmpty()));
    }

    /** The same, in which no row means none for those that were asked. */
    Column noneWithoutRow(Set<String> whom) {
        return new Column(key, heading, type, shown, and(Trait.NONE_WITHOUT_ROW).traits, whom);
    }
}

package buildup.shared.sheet;

import java.util.EnumSet;
import java.util.Set;

/**
 * A column of a sheet.
 *
 * @param key in JSON and in the schema; also the word by which a rule may ask for the figure
 * @param heading over the column where people read it; also a word by which a rule may ask for it
 * @param type what its cells hold
 * @param shown who reads it
 * @param traits what else is true of it
 * @param noRow what it means that there is no row
 */
public record Column(String key, String heading, Type type, Shown shown, Set<Trait> traits, NoRow noRow) {
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
        /** Of the rows below a row, the first figure adds up to one of the row. */
        ADDS,
        /** Of two columns of names side by side, either holds either name: which stands first means nothing. */
        EITHER,
        /** What could be, and is not: a nail that could go there. */
        OFFERED
    }

    /** Copies the set. */
    public Column {
        traits = Set.copyOf(traits);
    }

    /** A column in which nothing is known of what has no row. */
    public Column(String key, String heading, Type type, Shown shown, Set<Trait> traits) {
        this(key, heading, type, shown, traits, NoRow.UNKNOWN);
    }

    /** A column that everybody reads and that may be empty. */
    static Column of(String key, String heading, Type type) {
        return new Column(key, heading, type, Shown.BOTH, EnumSet.noneOf(Trait.class));
    }

    /** The same with one more trait. */
    Column and(Trait more) {
        Set<Trait> all = EnumSet.of(more);
        all.addAll(traits);
        return new Column(key, heading, type, shown, all, noRow);
    }

    /** The same for other readers. */
    Column shownTo(Shown whom) {
        return new Column(key, heading, type, whom, traits, noRow);
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

    /** Whether the first figure of the rows below a row adds up. */
    public boolean adds() {
        return traits.contains(Trait.ADDS);
    }

    /** Whether its name may as well stand in the column beside it. */
    public boolean either() {
        return traits.contains(Trait.EITHER);
    }

    /** Whether it tells what could be, and is not. */
    public boolean offered() {
        return traits.contains(Trait.OFFERED);
    }

    /** The same, in which what has no row means that. */
    Column noRow(NoRow means) {
        return new Column(key, heading, type, shown, traits, means);
    }
}

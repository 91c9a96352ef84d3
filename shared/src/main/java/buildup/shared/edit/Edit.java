package buildup.shared.edit;

/**
 * One change of a document.
 *
 * <p>A place is written as people say it: keys and names from the top down with dots between them, as {@code title},
 * {@code space.ceiling}, {@code eyes.standing.height}, {@code pieces.frieze.profile}. A piece may stand first: {@code
 * frieze.profile}. An entry that has no name is called by its number, counted from 1. Names may hold blanks; where two
 * fit, the longer one is meant.
 */
public sealed interface Edit {

    /**
     * Gives a place a value: another than it has, or the first where the key is not there yet. A name that other parts
     * of the document mention is changed in all of them, as by {@link Rename}.
     */
    record Set(String place, Content value) implements Edit {}

    /**
     * Puts an entry into a list, which is made if its key is not there yet or holds nothing.
     *
     * @param list the place of the list
     * @param position that the entry will have, counted from 1; beyond the end it comes last
     */
    record Add(String list, int position, Content entry) implements Edit {}

    /** Takes out an entry of a list, or a key with what it holds. */
    record Remove(String place) implements Edit {}

    /**
     * Moves an entry within its list, or a key among its neighbors.
     *
     * @param position that it will have, counted from 1; beyond the end it comes last
     */
    record Move(String place, int position) implements Edit {}

    /** Gives a piece, a size, an eye or a light another name, here and wherever the document mentions it. */
    record Rename(Naming kind, String from, String to) implements Edit {}
}

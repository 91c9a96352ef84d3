package buildup.shared.sheet;

import java.util.List;
import java.util.Set;

/**
 * What it means in a column of numbers that a sheet has no row of a name: that there is none of it, which is 0, or that
 * nothing is known.
 *
 * @param by keys of the columns of names that decide it
 * @param none the names under these of which no row means none; an empty set of them where no name is asked about
 */
public record NoRow(List<String> by, Set<Set<String>> none) {
    /** Nothing is known of what has no row. */
    public static final NoRow UNKNOWN = new NoRow(List.of(), Set.of());

    /** What has no row is none, whatever its name. */
    public static final NoRow NONE = new NoRow(List.of(), Set.of(Set.of()));

    /** Copies the collections. */
    public NoRow {
        by = List.copyOf(by);
        none = Set.copyOf(none);
    }

    /**
     * Whether no row means none.
     *
     * @param asked the names under {@link #by} that are asked about
     */
    public boolean isNone(Set<String> asked) {
        return none.contains(asked);
    }
}

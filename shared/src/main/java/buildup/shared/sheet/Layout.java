package buildup.shared.sheet;

import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * One of the tables in which people read a sheet. A row that has nothing under any of its columns is left out of it.
 *
 * @param title over the table
 * @param keys of its columns, in order; {@code blank.width} is a column below another
 * @param apart the column whose words each get a table of their own
 * @param across the column whose words each get a column of their own, with the last of the keys below
 * @param each the nested column of which every row gets a line of its own
 * @param where columns of which one must hold something, else the row is left out: a number other than 0, a yes, a word;
 *     none when all rows are shown
 */
public record Layout(
        Phrase title,
        List<String> keys,
        Optional<String> apart,
        Optional<String> across,
        Optional<String> each,
        List<String> where) {
    /** Copies the lists. */
    public Layout {
        keys = List.copyOf(keys);
        where = List.copyOf(where);
    }

    /** All rows, one line each. */
    static Layout of(Phrase title, List<String> keys) {
        return new Layout(title, keys, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    Layout apart(String key) {
        return new Layout(title, keys, Optional.of(key), across, each, where);
    }

    Layout across(String key) {
        return new Layout(title, keys, apart, Optional.of(key), each, where);
    }

    Layout each(String key) {
        return new Layout(title, keys, apart, across, Optional.of(key), where);
    }

    Layout where(List<String> holds) {
        return new Layout(title, keys, apart, across, each, holds);
    }
}

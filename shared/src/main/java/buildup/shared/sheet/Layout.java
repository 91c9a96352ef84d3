package buildup.shared.sheet;

import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * One of the tables in which people read a sheet.
 *
 * @param title over the table
 * @param keys of its columns, in order; {@code blank.width} is a column below another
 * @param apart the column whose words each get a table of their own
 */
public record Layout(Phrase title, List<String> keys, Optional<String> apart) {
    /** Copies the list. */
    public Layout {
        keys = List.copyOf(keys);
    }
}

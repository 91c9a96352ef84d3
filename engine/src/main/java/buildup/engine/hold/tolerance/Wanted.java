package buildup.engine.hold.tolerance;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Between what a figure of a sheet has to lie, as the document says.
 *
 * @param sheet key of the sheet
 * @param column key of the figure
 * @param names what its row is known by
 * @param least absent when nothing is too little
 * @param most absent when nothing is too much
 */
public record Wanted(String sheet, String column, List<String> names, OptionalDouble least, OptionalDouble most) {
    /** Copies the list. */
    public Wanted {
        names = List.copyOf(names);
    }
}

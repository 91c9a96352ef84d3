package buildup.shared.sheet;

import java.util.List;

/** One row; as many cells as the sheet has columns. */
public record Row(List<Cell> cells) {
    /** Copies the list. */
    public Row {
        cells = List.copyOf(cells);
    }
}

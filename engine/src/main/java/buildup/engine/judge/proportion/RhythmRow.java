package buildup.engine.judge.proportion;

import buildup.catalog.book.BookMember.Shape;
import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * One member in the rhythm of heights.
 *
 * @param member number of the row of the room-side walk
 * @param height how high it is as seen, in
 * @param remarks what a person may want to look at
 */
public record RhythmRow(int member, double height, Shape shape, List<Phrase> remarks) {
    /** Copies the list. */
    public RhythmRow {
        remarks = List.copyOf(remarks);
    }
}

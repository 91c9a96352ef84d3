package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;

/**
 * A distance to be dimensioned.
 *
 * @param from, to the two places; the lesser along the run first where it is laid
 * @param letter of the piece that it is a size of
 * @param wordings from long to short; the first that fits is taken
 * @param words the same in a sentence, for when the picture has no room for it
 */
public record Dimension(
        DimensionAxis run,
        Where where,
        Point from,
        Point to,
        Optional<String> letter,
        List<String> wordings,
        String words) {
    /** Where its line may lie. */
    public enum Where {
        /** As near as can be, in the open. */
        NEAR,
        /** In the row of lines on the room side. */
        LANE,
        /** Over or under the whole stack. */
        OUTSIDE
    }

    public Dimension {
        wordings = List.copyOf(wordings);
    }

    /** The same with its places in order. */
    public Dimension ordered() {
        return start() <= end() ? this : new Dimension(run, where, to, from, letter, wordings, words);
    }

    double start() {
        return run.along(from);
    }

    double end() {
        return run.along(to);
    }

    /** What is measured, from end to end, in of the picture. */
    public double length() {
        return end() - start();
    }

    /** Whether both say the same distance between the same two levels. */
    public boolean spans(Dimension other) {
        return run == other.run
                && Math.abs(start() - other.start()) < Tolerance.SAME_SIZE
                && Math.abs(end() - other.end()) < Tolerance.SAME_SIZE;
    }

    /** The same on a picture drawn to that scale. */
    public Dimension scaled(double scale) {
        return new Dimension(run, where, from.times(scale), to.times(scale), letter, wordings, words);
    }

    Dimension in(Where other) {
        return new Dimension(run, other, from, to, letter, wordings, words);
    }
}

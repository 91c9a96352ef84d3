package buildup.profiles.trace;

import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The rows of a scanner's dots under a tracing.
 *
 * @param dot from one row to the next, in; 0 where the points lie anywhere
 * @param slope of the tracing against them, radians
 */
record Rows(double dot, double slope) {
    /** Under a reading that lies as it was drawn. */
    static Rows of(Fitting drawn, double dot) {
        double slope = IntStream.range(0, drawn.curves().size())
                .filter(i -> drawn.curves().get(i) instanceof Curve.Straight)
                .boxed()
                .max(Comparator.comparingDouble(drawn::span))
                .map(i -> ((Curve.Straight) drawn.curves().get(i)).angle())
                .map(angle -> Math.abs(Math.IEEEremainder(angle, Math.PI / 2)))
                .orElse(0.0);
        return new Rows(dot, slope);
    }

    /**
     * Standard deviation of where a level or upright line lies that stays on one row, in: all of its points were rounded
     * the same way, and it may lie anywhere on the row. 0 for one that crosses rows, and for one that a round is bound to:
     * rounds cross them.
     */
    double unsure(Fitting fitting, int line) {
        boolean bound = fitting.bonds().stream()
                .filter(bond -> bond instanceof Bond.Tangent || bond instanceof Bond.Square)
                .anyMatch(bond -> bond.curves().contains(line));
        return !bound && fitting.span(line) * Math.sin(slope) < dot ? dot / Math.sqrt(12) : 0;
    }
}

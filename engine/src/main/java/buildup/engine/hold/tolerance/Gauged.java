package buildup.engine.hold.tolerance;

import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A figure that is taken of every build.
 *
 * @param name as {@code reveal of bead over frieze}
 * @param source where its sheet tells it as drawn
 * @param drawn as drawn, in
 * @param gauge takes it of a build
 */
record Gauged(String name, Wanted source, double drawn, Gauge gauge) {
    /** Takes a figure of a build. */
    @FunctionalInterface
    interface Gauge {
        /**
         * The figure, in.
         *
         * @param lean of the wall, for every inch of height
         * @param rise of the ceiling, in
         */
        double of(List<BuiltPiece> pieces, double lean, double rise);
    }

    OptionalDouble least() {
        return source.least();
    }

    OptionalDouble most() {
        return source.most();
    }

    /** Whether a figure is not what is wanted. */
    boolean fails(double figure) {
        return (least().isPresent() && figure < least().getAsDouble() - EVEN)
                || (most().isPresent() && figure > most().getAsDouble() + EVEN);
    }

    /** Whether anything can be wrong with it. */
    boolean judged() {
        return least().isPresent() || most().isPresent();
    }

    private static final double EVEN = Tolerance.COINCIDENT;
}

package buildup.engine.hold.framing;

import buildup.engine.hold.nail.Fixed;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One row of nails or screws along one stick.
 *
 * @param run, stretch as the plan calls them
 * @param fixed the row
 * @param into what it needs
 * @param set whether the document says where its first stands; else it is set out as well as can be
 * @param first where along the stretch the row begins, in
 * @param places of the row on the stick, in
 * @param misses those of them that meet no framing, in
 * @param off how far the one that misses most is from where it would land, in; 0 when all land
 * @param between the longest way between two that land, or from an end of the stick to one, in
 * @param bite how far each goes into a joist over the ceiling, its covering left out, in; absent where it goes elsewhere
 * @param best how the row is set out so that all of it lands, or as much as can be
 */
public record Landing(
        String run,
        String stretch,
        Fixed fixed,
        Into into,
        boolean set,
        double first,
        List<Double> places,
        List<Double> misses,
        double off,
        double between,
        OptionalDouble bite,
        Layout best) {
    /** What a row goes into. */
    public enum Into {
        STUDS("studs"),
        PLATE("plate"),
        MASONRY("masonry"),
        JOISTS("joists");

        private final String word;

        Into(String word) {
            this.word = word;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }
    }

    /**
     * How a row is set out along a stretch.
     *
     * @param first, spacing in
     * @param misses how many then miss
     */
    public record Layout(double first, double spacing, int misses) {}

    public Landing {
        places = List.copyOf(places);
        misses = List.copyOf(misses);
    }

    /** The same row, which goes so far into each joist that it meets, in. */
    Landing biting(double bites) {
        return new Landing(
                run, stretch, fixed, into, set, first, places, misses, off, between, OptionalDouble.of(bites), best);
    }

    /** How large a share of its nails meets framing, 0 to 1. */
    public double share() {
        return places.isEmpty() ? 1 : (double) landed() / places.size();
    }

    /** How many meet framing. */
    public int landed() {
        return places.size() - misses.size();
    }
}

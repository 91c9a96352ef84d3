package buildup.cli.drawing.label;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The one search by which letters, words and dimensions find their places: of many, the one that costs least. Places are
 * tried from the one that can cost least, and no further once what is left must cost more than the best found.
 *
 * @param place the best
 * @param cost of it; the less, the better it reads
 */
public record BestPlace<T>(T place, double cost) {
    /**
     * Judges a place that is tried.
     *
     * @param <C> what is tried
     * @param <T> what comes of it
     */
    public interface Judge<C, T> {
        /**
         * What it costs there; nothing when it cannot stand there.
         *
         * @param known cost of the best so far: what costs as much need not be judged to the end
         */
        Optional<BestPlace<T>> of(C tried, double known);
    }

    /**
     * The best of all; of equally good ones that which is tried first.
     *
     * @param most what it may cost at most
     * @param least what a try costs at the least, known before it is judged
     */
    public static <C, T> Optional<BestPlace<T>> among(
            List<C> tries, double most, ToDoubleFunction<C> least, Judge<C, T> judge) {
        Optional<BestPlace<T>> best = Optional.empty();
        double known = most;
        for (C tried : tries.stream().sorted(Comparator.comparingDouble(least)).toList()) {
            if (least.applyAsDouble(tried) >= known) {
                break;
            }
            Optional<BestPlace<T>> found = judge.of(tried, known);
            if (found.isPresent() && found.get().cost < known) {
                best = found;
                known = found.get().cost;
            }
        }
        return best;
    }
}

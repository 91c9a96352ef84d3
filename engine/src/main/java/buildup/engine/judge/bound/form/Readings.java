package buildup.engine.judge.bound.form;

import buildup.engine.section.stack.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A piece for all choices of the free sizes on which a part of its entry hangs.
 *
 * @param sizes how many free sizes there are in all
 * @param own the numbers of those on which that part hangs
 * @param counts how many choices each of these has
 * @param pieces by the number of the choices, the last of its own sizes turning fastest; absent where that part is refused,
 *     so that there is no such stack
 */
public record Readings(int sizes, List<Integer> own, List<Integer> counts, List<Optional<Piece>> pieces) {
    /** A number of the piece that hangs on that part alone. */
    public SizeSum sum(ToDoubleFunction<Piece> of) {
        return SizeSum.fitted(
                sizes,
                own.stream().mapToInt(Integer::intValue).toArray(),
                counts.stream().mapToInt(Integer::intValue).toArray(),
                number -> pieces.get(number).map(of::applyAsDouble).orElse(Double.NaN));
    }

    /** The numbers of the pieces that a box holds; none of those that are refused. */
    public List<Integer> in(ChoiceBox box) {
        List<Integer> in = new ArrayList<>();
        for (int number = 0; number < pieces.size(); number++) {
            boolean holds = pieces.get(number).isPresent();
            int left = number;
            for (int i = own.size() - 1; i >= 0; i--) {
                holds = holds && box.holds(own.get(i), left % counts.get(i));
                left /= counts.get(i);
            }
            if (holds) {
                in.add(number);
            }
        }
        return in;
    }

    /** Something that is the same whatever the sizes are; absent where it is not, or where there is never such a piece. */
    public <T> Optional<T> same(Function<Piece, T> of) {
        Optional<T> first = Optional.empty();
        for (Optional<Piece> piece : pieces) {
            if (piece.isPresent()) {
                T here = of.apply(piece.get());
                if (first.isPresent() && !Objects.equals(first.get(), here)) {
                    return Optional.empty();
                }
                first = Optional.of(here);
            }
        }
        return first;
    }
}

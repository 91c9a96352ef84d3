package buildup.engine.judge.search;

import buildup.engine.judge.must.MustResult;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of the stacks that were not tried.
 *
 * @param all whether every stack was tried or ruled out
 * @param ruledOut how many were ruled out without being tried: no stack counts here that was tried
 * @param nothingLeft whether no stack is left that may meet every rule and be a better answer
 * @param bound no stack that was not tried is nearer to what is wished; absent where that is not known, or where all were
 *     tried or ruled out
 * @param unbounded a wish of whose figure nothing is known, so that no bound is
 * @param fewest with how few changes at least a stack that was not tried comes; absent where there is none
 * @param least with so few changes, how little they come to at least, in
 * @param outOfReach the lines that no stack meets, each by the figure that it comes to at best
 */
public record Proof(
        boolean all,
        BigInteger ruledOut,
        boolean nothingLeft,
        OptionalDouble bound,
        Optional<String> unbounded,
        Optional<Integer> fewest,
        double least,
        List<MustResult> outOfReach) {
    /** Copies the list. */
    public Proof {
        outOfReach = List.copyOf(outOfReach);
    }

    /** Every stack was tried. */
    static final Proof ALL_TRIED = new Proof(
            true, BigInteger.ZERO, true, OptionalDouble.empty(), Optional.empty(), Optional.empty(), 0, List.of());

    /** Nothing is known. */
    static final Proof NOTHING = new Proof(
            false,
            BigInteger.ZERO,
            false,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.of(0),
            Double.NEGATIVE_INFINITY,
            List.of());

    /** The same, with a wish of whose figure nothing is known. */
    Proof because(Optional<String> wish) {
        return new Proof(all, ruledOut, nothingLeft, bound, wish, fewest, least, outOfReach);
    }

    /** Whether no stack that was not tried changes less. */
    boolean leastChange(Candidate candidate) {
        return fewest.isEmpty()
                || fewest.get() > candidate.changed()
                || (fewest.get() == candidate.changed() && least >= candidate.change());
    }
}

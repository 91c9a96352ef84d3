package buildup.engine.judge.search;

import buildup.engine.judge.along.Turning;
import buildup.engine.section.free.FreeSize;
import buildup.shared.figure.Phrase;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a search has found.
 *
 * @param goal what was sought
 * @param today how today's stack stands to it
 * @param best the answers that come nearest to what is wished, each unlike those before it
 * @param smallest the answer that differs least from today's stack; absent when nothing meets every rule
 * @param nearest where nothing meets every rule, the stack that gives up fewest; else absent
 * @param exact where nothing meets every rule, a place between two choices of one size at which every rule is met; else
 *     absent
 * @param turning where along each size, alone, a rule turns
 * @param idle the sizes along which, alone, no figure changes that is asked for
 * @param faulty how many stacks that meet every rule were passed over, since they bring a fault that today's has not
 * @param fault one of these faults
 * @param space how many stacks there are
 * @param judged how many were judged
 * @param unbuilt how many of these could not be put together
 * @param without of these the one that differs least from today's; absent where there is none
 * @param composed for how many of these the outlines alone did not tell what was asked
 * @param meeting how many of these meet every rule
 * @param proof what is known of the stacks that were not tried
 * @param proved whether no other stack of the space is a better answer
 * @param smallestProved whether no other stack of the space is a smaller change
 */
public record SearchResult(
        Goal goal,
        Answered today,
        List<Answered> best,
        Optional<Answered> smallest,
        Optional<Answered> nearest,
        Optional<Between> exact,
        List<Turning> turning,
        List<FreeSize> idle,
        int faulty,
        Optional<Phrase> fault,
        BigInteger space,
        long judged,
        long unbuilt,
        Optional<Unbuilt> without,
        long composed,
        long meeting,
        Proof proof,
        boolean proved,
        boolean smallestProved) {
    /** Copies the lists. */
    public SearchResult {
        best = List.copyOf(best);
        turning = List.copyOf(turning);
        idle = List.copyOf(idle);
    }

    /**
     * How many were ruled out without being tried: all others where the answer is proved to be the best, or where none of
     * them can be an answer at all.
     */
    public BigInteger ruledOut() {
        return proved || nothingLeft() ? space.subtract(BigInteger.valueOf(judged)) : proof.ruledOut();
    }

    /**
     * No stack that was not tried has a lesser {@link Candidate#score}; absent where that is not known, or where all were
     * tried or ruled out.
     */
    public OptionalDouble bound() {
        return proof.bound();
    }

    /** Whether no stack is left that may meet every rule and be a better answer. */
    public boolean nothingLeft() {
        return proof.nothingLeft();
    }
}

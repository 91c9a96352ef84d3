package buildup.engine.solve;

import java.util.List;

/**
 * Pieces to be cut and the sticks they can be cut from; every length in whole units, so that an exact fit fits.
 *
 * <p>Pieces lie one behind the other with a kerf between them; the last cut may fall off the end: lengths l and kerf k
 * fit a stick of length L when their sum + (n - 1) k is at most L. That is the same as bins of L + k for items of l + k.
 *
 * @param pieces their lengths, each at least 1
 * @param sticks the kinds of stick
 * @param kerf what a cut takes, at least 0
 */
public record StickProblem(List<Integer> pieces, List<Stick> sticks, int kerf) {
    /** As many of a kind of stick as anybody could want. */
    public static final int NO_END = Integer.MAX_VALUE;

    /**
     * A kind of stick.
     *
     * @param length that can be used
     * @param price in whole units, at least 0
     * @param most how many there are
     */
    public record Stick(int length, long price, int most) {}

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException when the kerf is negative, or a piece has no length
     */
    public StickProblem {
        pieces = List.copyOf(pieces);
        sticks = List.copyOf(sticks);
        if (kerf < 0 || pieces.stream().anyMatch(length -> length < 1)) {
            throw new IllegalArgumentException("kerf " + kerf + ", pieces " + pieces);
        }
    }
}

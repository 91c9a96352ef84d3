package buildup.engine.mill.nearest;

/**
 * What may be done to a profile to bring it onto another; shifting and flipping may always.
 *
 * @param anyTurn any angle, not the four quarters alone
 * @param scale larger or smaller, all of it alike
 */
public record Freedom(boolean anyTurn, boolean scale) {
    /** What a piece that lies on the bench allows. */
    public static Freedom usual() {
        return new Freedom(false, false);
    }
}

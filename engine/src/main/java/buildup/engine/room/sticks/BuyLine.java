package buildup.engine.room.sticks;

/**
 * What is taken of one kind of stick.
 *
 * @param sticks how many, those on hand included
 * @param feet of all of them
 * @param boardFeet as the trade counts them
 * @param used share of their wood that lies in pieces
 * @param kept share that is left in rests long enough to keep, and in strips an inch wide and more beside what is ripped
 * @param price of what is bought, hundredths
 * @param priced whether all that is bought has a price
 */
public record BuyLine(
        String name,
        String wood,
        int sticks,
        double feet,
        double boardFeet,
        double used,
        double kept,
        long price,
        boolean priced) {
    /** Share that goes in kerfs, trimmings, rips and rests too short to keep. */
    public double wasted() {
        return 1 - used - kept;
    }
}

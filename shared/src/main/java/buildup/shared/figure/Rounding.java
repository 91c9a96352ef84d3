package buildup.shared.figure;

/**
 * How a figure is rounded for people. Nothing is rounded before it is printed.
 *
 * @param side to which side it may err
 * @param step how finely
 * @param places decimals when {@code step} is {@link Step#DECIMALS}
 */
public record Rounding(Side side, Step step, int places) {
    /** To which side a printed figure may err. */
    public enum Side {
        /** To the nearest step. */
        NEAREST,
        /** Never less than the true figure. */
        UP,
        /** Never more than the true figure. */
        DOWN
    }

    /** How finely a figure is printed. */
    public enum Step {
        /** Lengths: 1/16 in or 0.1 mm, marked when the true size is more or less; others: their usual decimals. */
        SHOP,
        /** Lengths: 0.001 in or 0.01 mm, for whoever grinds steel. */
        FINE,
        /** Lengths: as finely as it takes for the printed size, typed back, to end in contact. */
        CONTACT,
        /** Lengths: as lists of sizes name them, to 1/64 in or 0.1 mm, marked when the true size is more or less. */
        LISTED,
        /** Lengths: as a lumberyard names a stick, in whole feet where it is so, else as SHOP. */
        STICK,
        /** Lengths of a rule of thumb or an example: as a shop of the unit names them, to 1/16 in or 5 mm. */
        THUMB,
        /** So many decimals. */
        DECIMALS
    }

    /** The nearest shop size, marked {@code +} or {@code -}. */
    public static final Rounding NEAREST = new Rounding(Side.NEAREST, Step.SHOP, 0);

    /** The next larger 1/16 in or 1 mm: cures and needs that more of does not hurt. */
    public static final Rounding UP = new Rounding(Side.UP, Step.SHOP, 0);

    /** The next smaller 1/16 in or 1 mm: what there is of room, bite or wood. */
    public static final Rounding DOWN = new Rounding(Side.DOWN, Step.SHOP, 0);

    /** Thousandths of an inch, hundredths of a millimeter. */
    public static final Rounding FINE = new Rounding(Side.NEAREST, Step.FINE, 0);

    /** A move that closes a gap: typed back as printed, it ends in contact. */
    public static final Rounding CONTACT = new Rounding(Side.NEAREST, Step.CONTACT, 0);

    /** A size of a list: to 1/64 in or 0.1 mm. */
    public static final Rounding LISTED = new Rounding(Side.NEAREST, Step.LISTED, 0);

    /** The length of a stick as a lumberyard names it: {@code 12 ft}. */
    public static final Rounding STICK = new Rounding(Side.NEAREST, Step.STICK, 0);

    /** A length of a rule of thumb: 4 in, and 100 mm. */
    public static final Rounding THUMB = new Rounding(Side.NEAREST, Step.THUMB, 0);

    /** How many times a stack takes its weight or its loads: never more than it does. */
    public static final Rounding TIMES = new Rounding(Side.DOWN, Step.DECIMALS, 2);

    /** So many decimals. */
    public static Rounding decimals(int places) {
        return new Rounding(Side.NEAREST, Step.DECIMALS, places);
    }

    /** The same decimals, erring to one side. */
    public Rounding to(Side other) {
        return new Rounding(other, step, places);
    }
}

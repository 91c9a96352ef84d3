package buildup.engine.mill.milling;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a head stands: square to one of the four sides of the stick, or tilted.
 *
 * @param word which head that is, as a molder calls its heads: outside, top, inside, bottom
 * @param degrees of the direction that it cuts from, counterclockwise from straight out of the front
 */
public record Side(String word, double degrees) {
    public static final Side FRONT = new Side("outside", 0);
    public static final Side ABOVE = new Side("top", 90);
    public static final Side BACK = new Side("inside", 180);
    public static final Side BELOW = new Side("bottom", 270);

    /** Square to the four sides, the one that does most first. */
    public static final List<Side> SQUARE = List.of(FRONT, ABOVE, BELOW, BACK);

    private static final Phrase HEAD = Phrase.of("{side} head");
    private static final Phrase TILTED_UP = Phrase.of("outside head tilted up {tilt}");
    private static final Phrase TILTED_DOWN = Phrase.of("outside head tilted down {tilt}");

    /** The outside head, tilted up (or, below 0, down) by so many degrees. */
    public static Side tilted(double degrees) {
        long whole = Math.round(Math.abs(degrees));
        return new Side("outside, tilted " + (degrees < 0 ? "down " : "up ") + whole, degrees);
    }

    /** The head that stands there, a tilt in degrees. */
    public Phrase words() {
        return !isTilted()
                ? HEAD.with("side", word)
                : (degrees < 0 ? TILTED_DOWN : TILTED_UP).with("tilt", Figure.angle(Math.rint(Math.abs(degrees))));
    }

    /** Whether it is the outside head, tilted. */
    public boolean isTilted() {
        return !SQUARE.contains(this);
    }

    static List<Side> with(List<Double> tilts) {
        List<Side> all = new ArrayList<>(SQUARE);
        tilts.forEach(tilt -> all.add(tilted(tilt)));
        return List.copyOf(all);
    }

    /** Several in a row. */
    static Listing words(List<Side> sides) {
        return Listing.and(sides.stream().map(Side::words).toList());
    }
}

package buildup.engine.mill.milling;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a head stands: square to one of the four sides of the stick, or tilted.
 *
 * @param word what it is called behind "from"
 * @param degrees of the direction that it cuts from, counterclockwise from straight out of the front
 */
public record Side(String word, double degrees) {
    public static final Side FRONT = new Side("the front", 0);
    public static final Side ABOVE = new Side("above", 90);
    public static final Side BACK = new Side("the back", 180);
    public static final Side BELOW = new Side("below", 270);

    /** Square to the four sides, the one that does most first. */
    public static final List<Side> SQUARE = List.of(FRONT, ABOVE, BELOW, BACK);

    /** A head in front, tilted up (or, below 0, down) by so many degrees. */
    public static Side tilted(double degrees) {
        long whole = Math.round(Math.abs(degrees));
        return new Side("the front, tilted " + (degrees < 0 ? "down " : "up ") + whole, degrees);
    }

    static List<Side> with(List<Double> tilts) {
        List<Side> all = new ArrayList<>(SQUARE);
        tilts.forEach(tilt -> all.add(tilted(tilt)));
        return List.copyOf(all);
    }

    /** Several in a row, with "and" before the last. */
    static String words(List<Side> sides) {
        List<String> words = sides.stream().map(Side::word).toList();
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}

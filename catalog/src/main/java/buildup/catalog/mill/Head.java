package buildup.catalog.mill;

import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import java.util.List;

/**
 * A head that holds ground knives, on its machine.
 *
 * @param about one line for a list
 * @param circle diameter of the cutting circle, at the longest point of the knife
 * @param hook how far the knife leans to the wood, off the line from the shaft to its edge
 * @param speed rpm
 * @param knives cutting
 * @param feed of the stick in a minute
 * @param widest knife that the machine takes
 * @param deepest profile that the head takes
 * @param corner radius that a ground knife leaves in an inside corner
 * @param stock widths of knife steel, as sold, in rising order
 */
public record Head(
        String name,
        String about,
        Length circle,
        Angle hook,
        int speed,
        int knives,
        Length feed,
        Length widest,
        Length deepest,
        Length corner,
        List<Length> stock) {
    public Head {
        stock = List.copyOf(stock);
    }
}

package buildup.catalog;

import buildup.shared.length.Length;
import java.util.List;
import java.util.Optional;

/**
 * The sizes in which boards are sold.
 *
 * @param about one line, with the standard that sets the sizes
 * @param thicknesses in rising order
 * @param widths in rising order; none when boards come in random widths, and a width asked for is then a true one
 */
public record BoardList(String name, String about, List<Dressed> thicknesses, List<Dressed> widths) {

    /**
     * A nominal size and what is left of it when the board is dressed.
     *
     * @param label the nominal size as the trade writes it ("5/4")
     * @param seldom whether it is in the standard, yet hardly in any yard
     */
    public record Dressed(String label, Length nominal, Length dressed, boolean seldom) {}

    public BoardList {
        thicknesses = List.copyOf(thicknesses);
        widths = List.copyOf(widths);
    }

    Optional<Dressed> thickness(Length nominal) {
        return at(thicknesses, nominal);
    }

    Optional<Dressed> width(Length nominal) {
        return at(widths, nominal);
    }

    private static Optional<Dressed> at(List<Dressed> sizes, Length nominal) {
        return sizes.stream()
                .filter(size -> size.nominal().near(nominal, Sizes.SAME))
                .findFirst();
    }
}

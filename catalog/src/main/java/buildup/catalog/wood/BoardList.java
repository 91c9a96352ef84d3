package buildup.catalog.wood;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import java.util.List;
import java.util.Optional;

/**
 * The sizes in which boards are sold.
 *
 * @param about one line, with the standard that sets the sizes
 * @param nominalUnit of nominal sizes without a unit
 * @param thicknesses in rising order
 * @param widths in rising order; none when boards come in random widths, and a width asked for is then a true one
 */
public record BoardList(
        String name, String about, LengthUnit nominalUnit, List<Dressed> thicknesses, List<Dressed> widths) {

    /**
     * A nominal size and what is left of it when the board is dressed.
     *
     * @param label the nominal size as the trade writes it ("5/4")
     * @param seldom whether it is in the standard, yet hardly in any yard
     */
    public record Dressed(String label, Length nominal, Length dressed, boolean seldom) {}

    /**
     * A board of the list.
     *
     * @param width absent when boards come in random widths
     */
    public record Board(Dressed thickness, Optional<Dressed> width) {
        /** As the trade calls it, with what is left of it in inches: {@code 1x8 (3/4 x 7-1/4)}. */
        public String call() {
            return width.map(wide -> thickness.label() + "x" + wide.label() + " ("
                            + Sizes.call(List.of(thickness.dressed(), wide.dressed()), LengthUnit.INCH) + ")")
                    .orElseGet(() -> thickness.label() + " (" + LengthWriter.inches(thickness.dressed()) + " thick)");
        }

        /** The same for people, who read sizes in the unit of the document. */
        public Phrase phrase() {
            return width.map(wide -> CatalogNotices.LISTED_BOARD
                            .with("label", thickness.label() + "x" + wide.label())
                            .with("thickness", Sizes.listed(thickness.dressed()))
                            .with("width", Sizes.listed(wide.dressed())))
                    .orElseGet(() -> CatalogNotices.LISTED_THICKNESS
                            .with("label", thickness.label())
                            .with("size", Sizes.listed(thickness.dressed())));
        }
    }

    public BoardList {
        thicknesses = List.copyOf(thicknesses);
        widths = List.copyOf(widths);
    }

    /** What a nominal thickness is true to, if the list has it. */
    public Optional<Dressed> thickness(Length nominal) {
        return at(thicknesses, nominal);
    }

    /** What a nominal width is true to, if the list has it. */
    public Optional<Dressed> width(Length nominal) {
        return at(widths, nominal);
    }

    private static Optional<Dressed> at(List<Dressed> sizes, Length nominal) {
        return sizes.stream()
                .filter(size -> size.nominal().near(nominal, Sizes.SAME))
                .findFirst();
    }
}

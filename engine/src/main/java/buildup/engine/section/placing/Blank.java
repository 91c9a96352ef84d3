package buildup.engine.section.placing;

import buildup.catalog.Catalog;
import buildup.engine.section.stack.Kind;
import buildup.shared.length.Length;
import java.util.Optional;

/** What a piece is cut from. */
public final class Blank {
    private Blank() {}

    /**
     * The board of the document's list from which a board or plain blocking is ripped; the profile itself for a
     * molding; nothing when no listed board is large enough, for a one-off, and for framing, which is there already.
     *
     * @param boardList the list that nominal sizes are taken from
     */
    public static Optional<String> stock(Placed placed, Catalog catalog, String boardList) {
        var stock = placed.piece().stock();
        if (placed.piece().kind() == Kind.FRAMING) {
            return Optional.empty();
        }
        if (stock.rips()) {
            return catalog.stockFor(
                    Length.inches(placed.blankThickness()), Length.inches(placed.blankWidth()), boardList);
        }
        return Optional.of(stock.name()).filter(name -> !stock.profileKind().equals("section"));
    }
}

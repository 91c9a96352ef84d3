package buildup.engine.section.placing;

import buildup.catalog.Catalog;
import buildup.catalog.wood.BoardList;
import buildup.engine.section.stack.PieceKind;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import java.util.Optional;

/** What a piece is cut from. */
public final class PieceBlank {
    private PieceBlank() {}

    /**
     * The board of the document's list from which a board or plain blocking is ripped; the profile itself for a
     * molding; nothing when no listed board is large enough, for a one-off, and for framing, which is there already.
     *
     * @param boardList the list that nominal sizes are taken from
     */
    public static Optional<String> stock(Placed placed, Catalog catalog, String boardList) {
        return board(placed, catalog, boardList).map(BoardList.Board::call).or(() -> molding(placed));
    }

    /** The same for people, who read sizes in the unit of the document. */
    public static Optional<Phrase> phrase(Placed placed, Catalog catalog, String boardList) {
        return board(placed, catalog, boardList)
                .map(BoardList.Board::phrase)
                .or(() -> molding(placed).map(Phrase::plain));
    }

    /** Whether the list has a board of the very width of the piece, so that nobody rips it. */
    public static boolean ownWidth(Placed placed, Catalog catalog, String boardList) {
        return board(placed, catalog, boardList)
                .flatMap(BoardList.Board::width)
                .filter(wide -> Math.abs(wide.dressed().toInches() - placed.blankWidth()) < Tolerance.TOUCHING)
                .isPresent();
    }

    private static Optional<BoardList.Board> board(Placed placed, Catalog catalog, String boardList) {
        boolean ripped = placed.piece().kind() != PieceKind.FRAMING
                && placed.piece().stock().rips();
        return ripped
                ? catalog.stockFor(
                        Length.inches(placed.blankThickness()), Length.inches(placed.blankWidth()), boardList)
                : Optional.empty();
    }

    private static Optional<String> molding(Placed placed) {
        var stock = placed.piece().stock();
        boolean milled = placed.piece().kind() != PieceKind.FRAMING
                && !stock.rips()
                && !stock.profileKind().equals("section");
        return milled ? Optional.of(stock.name()) : Optional.empty();
    }
}

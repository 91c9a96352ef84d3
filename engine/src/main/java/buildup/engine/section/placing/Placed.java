package buildup.engine.section.placing;

import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Stock;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;

/** A piece where it sits: its outline in the frame of the section. */
public record Placed(Piece piece, Outline outline) {
    /** The name of its piece. */
    public String name() {
        return piece.name();
    }

    /** Thickness of the blank, in: what is left after ripping to fit. */
    public double blankThickness() {
        return blank(true);
    }

    /** Width of the blank, in: what is left after ripping to fit. */
    public double blankWidth() {
        return blank(false);
    }

    private double blank(boolean thickness) {
        Stock stock = piece.stock();
        if (!piece.rips()) {
            return thickness ? stock.thickness() : stock.width();
        }
        Box box = outline.box();
        if (stock.board()) {
            return thickness == stock.lying() ? box.height() : box.width();
        }
        return thickness ? Math.min(box.width(), box.height()) : Math.max(box.width(), box.height());
    }
}

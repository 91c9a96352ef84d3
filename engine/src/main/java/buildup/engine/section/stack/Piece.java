package buildup.engine.section.stack;

import buildup.catalog.wood.Sawn;
import buildup.catalog.wood.Wood;
import buildup.profiles.outline.Outline;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import java.util.Optional;

/**
 * A piece of the stack, turned as it will sit but not yet placed.
 *
 * @param shape its outline after rip, lay, turn, spring and flip; its position means nothing yet
 * @param flippedOver whether the document says that it is upside down on purpose
 * @param sawn how its growth rings lie, by itself or by its wood; absent when they are mixed
 * @param spread how far its own sizes stray
 * @param fixed the name of what the document says it is fixed to
 */
public record Piece(
        String name,
        PieceKind kind,
        Outline shape,
        Stock stock,
        Wood wood,
        FiberDirection grain,
        Optional<Sawn> sawn,
        OwnSpread spread,
        Rules rules,
        boolean flippedOver,
        Optional<Scalar> fixed,
        Mark mark) {
    /** The same piece, placed by other rules. */
    public Piece placedBy(Rules other) {
        return new Piece(name, kind, shape, stock, wood, grain, sawn, spread, other, flippedOver, fixed, mark);
    }

    /** The same piece, cut from another stick. */
    public Piece from(Stock other, Outline drawn) {
        return new Piece(name, kind, drawn, other, wood, grain, sawn, spread, rules, flippedOver, fixed, mark);
    }

    /** Where a value of it stands in the document. */
    public String place(String key) {
        return "pieces." + name + "." + key;
    }

    /** Whether two rules on an axis cut it to fit: a board or plain blocking that stands or lies square. */
    public boolean rips() {
        return stock.rips() && shape.isRectangle();
    }
}

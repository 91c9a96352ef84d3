package buildup.engine.section.placing;

import buildup.engine.section.stack.Piece;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.Comparator;
import java.util.Optional;

/** Which way the width of a stick lies as its piece sits; its thickness lies square to it. */
public final class WidthWay {
    private WidthWay() {}

    /** The direction of the stick's width: along the back of a sprung one, along the wider side of a board or block. */
    public static Point of(Placed placed) {
        Outline outline = placed.outline();
        boolean sprung =
                outline.members().contains("wall-flat") && outline.members().contains("ceiling-flat");
        Optional<Line> back = sprung ? outline.straights("back").stream().findFirst() : Optional.empty();
        if (back.isPresent()) {
            return back.get().direction(0);
        }
        Box box = outline.box();
        Piece piece = placed.piece();
        if (piece.stock().board() && !outline.isRectangle()) {
            return longest(outline);
        }
        boolean lies = piece.stock().board()
                ? piece.stock().lying()
                : piece.stock().profileKind().equals("section")
                        ? box.width() > box.height()
                        : off(box.width(), piece) < off(box.height(), piece);
        return lies ? new Point(1, 0) : new Point(0, 1);
    }

    private static double off(double side, Piece piece) {
        return Math.abs(side - piece.stock().width());
    }

    private static Point longest(Outline outline) {
        return outline.segments().stream()
                .filter(Line.class::isInstance)
                .max(Comparator.comparingDouble(Segment::length))
                .map(line -> line.direction(0))
                .orElse(new Point(0, 1));
    }
}

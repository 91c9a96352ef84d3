package buildup.profiles;

import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;

/**
 * A piece of trim as it is commonly fixed: its outline, back at x = 0 and lowest point at y = 0, and the stick that it
 * is made from.
 *
 * @param name as it is asked for, size included ("cove-bed 1-1/4 x 1-3/8")
 * @param kind the trade's word for it ("crown", "bed", "board")
 */
public record Profile(String name, String kind, Outline outline, Stick stick) {
    /** What a profile is cut from. */
    public sealed interface Stick permits Board, Milled, Spring {}

    /** A plain board, which may be laid flat and ripped; inches. */
    public record Board(double thickness, double width) implements Stick {}

    /** A solid molding, run from a stick as large as its box. */
    public record Milled() implements Stick {}

    /** A sprung molding, run flat. */
    public record Spring(Sprung sprung) implements Stick {}

    /** A plain board standing on edge with its back at x = 0 and its lower edge at y = 0; sizes in inches, above 0. */
    public static Profile board(String name, double thickness, double width) {
        return new Profile(
                name, "board", Outline.rectangle(new Box(0, 0, thickness, width)), new Board(thickness, width));
    }

    /** Thickness of the stick, in; of a solid molding, which may lie flat, the lesser of its two sizes. */
    public double thickness() {
        if (stick instanceof Board board) {
            return board.thickness();
        }
        return stick instanceof Spring spring
                ? spring.sprung().thickness()
                : Math.min(outline.box().width(), outline.box().height());
    }

    /** Width of the stick, in; of a solid molding the greater of its two sizes. */
    public double width() {
        if (stick instanceof Board board) {
            return board.width();
        }
        return stick instanceof Spring spring
                ? spring.sprung().width()
                : Math.max(outline.box().width(), outline.box().height());
    }

    /**
     * The outline as it is run: flat on its back, back at x = 0 and lowest point at y = 0. Only a sprung molding is drawn
     * in another way.
     */
    public Outline asRun() {
        if (!(stick instanceof Spring spring)) {
            return outline;
        }
        Outline flat = outline.moved(Motion.turn(spring.sprung().spring()));
        return flat.moved(Motion.shift(-flat.box().back(), -flat.box().bottom()));
    }
}

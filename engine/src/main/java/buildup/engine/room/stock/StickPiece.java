package buildup.engine.room.stock;

import java.util.Optional;

/**
 * A piece to be cut.
 *
 * @param id short, on its label: the letter of its course and a number
 * @param stretch where it goes, with the run before it when there are several
 * @param part which part it is of a piece that is spliced or glued up; empty when it is whole
 * @param body number of its course in the section
 * @param length long point to long point, {@link LengthSteps}: the next mark of the tape, so that it surely fits
 * @param inches the same as it is told, not brought onto a tape
 * @param plain whether its section is a rectangle, so that it may be turned face for back
 * @param selfReturn whether it is the short piece that turns a course back to its own wall
 * @param group names the pieces that come from one stick, in order
 */
public record StickPiece(
        String id,
        String course,
        String stretch,
        String part,
        int body,
        int length,
        double inches,
        End left,
        End right,
        boolean plain,
        boolean selfReturn,
        Optional<String> group) {
    private static final String PLY = ".";

    /** The same piece, glued up from several: one of them, counted from 1. */
    public StickPiece ply(int number, int of) {
        String words = "ply " + number + " of " + of;
        return new StickPiece(
                id + PLY + number,
                course,
                stretch,
                part.isEmpty() ? words : part + ", " + words,
                body,
                length,
                inches,
                left,
                right,
                plain,
                selfReturn,
                group);
    }

    /** Behind the point, which ply it is; empty when it is glued up from none. */
    public String plyMark() {
        int mark = id.indexOf(PLY);
        return mark < 0 ? "" : id.substring(mark);
    }

    /** The id without it. */
    public String wholeId() {
        return id.substring(0, id.length() - plyMark().length());
    }

    /** Which ply it is, counted from 1; 0 when it is glued up from none. */
    public int plyNumber() {
        return gluedUp() ? Integer.parseInt(plyMark().substring(PLY.length())) : 0;
    }

    /** Whether it is one of several that are glued together before they are cut. */
    public boolean gluedUp() {
        return !plyMark().isEmpty();
    }

    /** How it is sawn off its stick at its left: plies are square until they are glued up, and cut aslant then. */
    public End leftOnStick() {
        return gluedUp() ? End.SQUARE : left;
    }

    /** The same at its right. */
    public End rightOnStick() {
        return gluedUp() ? End.SQUARE : right;
    }

    /** Whether a joint of it is one with that of its first ply. */
    public boolean laterPly() {
        return !plyMark().isEmpty() && !plyMark().equals(PLY + "1");
    }

    /** A part of it between two other ends, in a group of its own. */
    public StickPiece cut(
            String ownId, String ownPart, int ownLength, End ownLeft, End ownRight, Optional<String> ownGroup) {
        return new StickPiece(
                ownId,
                course,
                stretch,
                ownPart,
                body,
                ownLength,
                LengthSteps.inches(ownLength),
                ownLeft,
                ownRight,
                plain,
                selfReturn,
                ownGroup);
    }
}

package buildup.engine.room.sticks;

import buildup.engine.room.run.Course;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.StickPiece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A piece longer than any stick, in parts that meet at a scarf of 45 degrees through the thickness, or square where it is
 * hidden. The parts are as long as a stick allows; from one course to the next they begin at the other end, so that no
 * joint lies over another.
 *
 * @param parts from left to right
 * @param places of the joints, from the long point at the left, {@link LengthSteps}
 */
record Splice(List<StickPiece> parts, List<Integer> places) {
    /** A part shorter than this does not reach from stud to stud: common spacing, no source. */
    private static final int LEAST = 16 * LengthSteps.PER_INCH;

    /**
     * @param longest that a part can be, {@link LengthSteps}
     * @param overlap of two parts, {@link LengthSteps}
     * @param fromLeft whether the longest part lies at the left
     * @param course of the piece
     * @param after the group of the last part; the first part stays in that of the piece
     */
    static Splice of(
            StickPiece piece, int longest, int overlap, boolean fromLeft, Course course, Optional<String> after) {
        List<Integer> lengths = lengths(piece.length(), longest, overlap);
        if (!fromLeft) {
            Collections.reverse(lengths);
        }
        List<StickPiece> parts = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < lengths.size(); i++) {
            boolean last = i == lengths.size() - 1;
            parts.add(piece.cut(
                    piece.id() + (char) ('a' + i),
                    "part " + (i + 1) + " of " + lengths.size(),
                    lengths.get(i),
                    i == 0 ? piece.left() : joint(overlap, Hand.LEFT, course),
                    last ? piece.right() : joint(overlap, Hand.RIGHT, course),
                    i == 0 ? piece.group() : last ? after : Optional.empty()));
            from += lengths.get(i) - overlap;
            if (!last) {
                places.add(from);
            }
        }
        return new Splice(List.copyOf(parts), List.copyOf(places));
    }

    /** The left half lies below: its upper side is the longer one. */
    private static End joint(int overlap, Hand end, Course course) {
        int side = end == Hand.RIGHT ? 1 : -1;
        return overlap == 0 ? End.SQUARE : End.scarf(side * LengthSteps.inches(overlap), end, course);
    }

    private static List<Integer> lengths(int length, int longest, int overlap) {
        List<Integer> lengths = new ArrayList<>();
        int left = length;
        while (left > longest) {
            lengths.add(longest);
            left -= longest - overlap;
        }
        lengths.add(left);
        int last = lengths.size() - 1;
        int more = Math.min(LEAST, longest / 2) - left;
        if (more > 0) {
            lengths.set(last, left + more);
            lengths.set(last - 1, lengths.get(last - 1) - more);
        }
        return lengths;
    }
}

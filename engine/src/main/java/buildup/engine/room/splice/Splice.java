package buildup.engine.room.splice;

import buildup.engine.room.run.Course;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece longer than any stick, in parts that meet at a scarf of 45 degrees through the thickness, or square where it is
 * hidden.
 *
 * @param parts from left to right
 * @param joints between them
 */
public record Splice(List<StickPiece> parts, List<Joint> joints) {
    public Splice {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
    }

    /**
     * One joint.
     *
     * @param piece that is joined
     * @param left, right the parts that meet
     * @param at where the right one begins, from the long point at the left of the piece, {@link LengthSteps}
     * @param middle of the joint along the stretch, in
     * @param leftLiesOver whether the left part lies over the right one, on the side that lies up
     * @param scarf whether it is one; else square
     * @param wall behind it
     */
    public record Joint(
            StickPiece piece,
            StickPiece left,
            StickPiece right,
            int at,
            double middle,
            boolean leftLiesOver,
            boolean scarf,
            SpliceWall wall) {
        /** Where its middle lies from the long point at the left of the piece, in. */
        public double fromLeft() {
            return middle - wall.from();
        }

        /** Why it lies there. */
        public Phrase why() {
            Optional<Double> stud = wall.studAt(middle);
            Phrase on = wall.anywhere()
                    ? StickNotices.ON_BACKING
                    : stud.map(at -> StickNotices.ON_STUD.with("stud", Figure.length(at)))
                            .orElse(wall.studs().isEmpty() ? StickNotices.NO_STUD_KNOWN : StickNotices.NO_STUD_REACHED);
            return wall.eye().isEmpty()
                    ? on
                    : StickNotices.LEAST_SEEN.with("on", on).with("away", Figure.length(wall.away(middle)));
        }
    }

    /**
     * A piece made of parts that are joined at these places.
     *
     * @param places where each part but the first begins
     * @param course of the piece
     * @param after the group of the last part; the first part stays in that of the piece
     */
    public static Splice of(
            StickPiece piece,
            List<Integer> places,
            int overlap,
            Course course,
            SpliceWall wall,
            Optional<String> after) {
        List<StickPiece> parts = new ArrayList<>();
        int count = places.size() + 1;
        for (int i = 0; i < count; i++) {
            boolean last = i == count - 1;
            int from = i == 0 ? 0 : places.get(i - 1);
            int to = last ? piece.length() : places.get(i) + overlap;
            parts.add(piece.cut(
                    piece.id() + (char) ('a' + i),
                    "part " + (i + 1) + " of " + count,
                    to - from,
                    i == 0 ? piece.left() : end(places.get(i - 1), overlap, Hand.LEFT, course, wall),
                    last ? piece.right() : end(places.get(i), overlap, Hand.RIGHT, course, wall),
                    i == 0 ? piece.group() : last ? after : Optional.empty()));
        }
        List<Joint> joints = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            double middle = SplicePlaces.middle(wall, places.get(i), overlap);
            joints.add(new Joint(
                    piece,
                    parts.get(i),
                    parts.get(i + 1),
                    places.get(i),
                    middle,
                    wall.leftLiesOver(middle),
                    overlap > 0,
                    wall));
        }
        return new Splice(parts, joints);
    }

    /** The half of a joint: the part that lies over the other is the longer one on the side that lies up. */
    private static End end(int place, int overlap, Hand hand, Course course, SpliceWall wall) {
        if (overlap == 0) {
            return End.SQUARE;
        }
        boolean over = wall.leftLiesOver(SplicePlaces.middle(wall, place, overlap)) == (hand == Hand.RIGHT);
        return End.scarf((over ? 1 : -1) * LengthSteps.inches(overlap), hand, course);
    }
}

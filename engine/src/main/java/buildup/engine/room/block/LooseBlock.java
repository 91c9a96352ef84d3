package buildup.engine.room.block;

import buildup.engine.room.run.Course;
import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.Arrays;
import java.util.Optional;

/**
 * Blocks that are alike, as they are cut from a stick or a board.
 *
 * @param kind what they are
 * @param where the stretch and the place on it, with the run before it when there are several
 * @param count of the lengths that are cut
 * @param length of each along the grain, in
 * @param width, thickness of each, in
 * @param wood they are cut from
 * @param note which way the grain goes, and what is done with a length
 * @param joints how many ends of trim butt on it
 * @param met area of these ends, sq in
 */
public record LooseBlock(
        Kind kind,
        String where,
        int count,
        double length,
        double width,
        double thickness,
        String wood,
        String note,
        int joints,
        double met) {
    private static final Phrase BOARD = Phrase.of("board {thickness} x {width}");

    /** What a block is for. */
    public enum Kind {
        /** Under a casing's leg. */
        PLINTH("plinth block", "PB", -1),
        /** At a corner of a casing. */
        ROSETTE("rosette", "RO", -2),
        /** In the corner of two walls, or where a run ends against it. */
        CORNER("corner block", "CB", -3),
        /** Behind a sprung molding; hidden. */
        BACKING("backing block", "BB", -4);

        private final String word;
        private final String mark;

        /** In place of a number in the section, where it is no piece: below 0. */
        private final int body;

        Kind(String word, String mark, int body) {
            this.word = word;
            this.mark = mark;
            this.body = body;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }

        /** What its labels begin with. */
        public String mark() {
            return mark;
        }

        /** The kind that stands under such a number in place of that of a piece. */
        public static Optional<Kind> of(int body) {
            return Arrays.stream(values()).filter(kind -> kind.body == body).findFirst();
        }

        /** The number that stands in place of that of a piece. */
        public int body() {
            return body;
        }

        /** Whether it is seen. */
        public boolean trim() {
            return this != BACKING;
        }
    }

    /**
     * What shows of one, sq in: its face, its edges and its upper end, where it does not stand on the floor both its ends, less
     * what butts on it. One in a corner shows two of its long faces.
     */
    public double shown() {
        double edges = kind == Kind.CORNER ? 1 : 2;
        double ends = kind == Kind.PLINTH ? 1 : 2;
        double all = length * width + edges * length * thickness + ends * width * thickness;
        return kind.trim() ? Math.max(0, all - met) : 0;
    }

    /** The board that it is cut from, as if it ran along a wall. */
    public Course board() {
        double thin = Math.min(thickness, width);
        double wide = Math.max(thickness, width);
        Phrase stock = BOARD.with("thickness", Figure.length(thin)).with("width", Figure.length(wide));
        return new Course(
                kind.word,
                kind.body,
                kind.trim(),
                new Box(0, 0, thin, wide),
                0,
                true,
                stock,
                "board",
                thin,
                wide,
                false);
    }
}

package buildup.engine.room.surface;

/**
 * One way to deal with a surface that is not straight.
 *
 * @param move how far the stack is moved away from the surface for it, in; negative: toward it
 * @param least, most between which what is left lies along the run: the width of a reveal or a strip, or what is taken
 *     off a piece, in
 */
public record Remedy(GapAlong of, Kind kind, double move, double least, double most) {
    /** The ways, in the order in which they are told. */
    public enum Kind {
        /** The stack level, clear everywhere: an open reveal that varies, or the strip that is scribed to close it. */
        REVEAL("leave it open, or scribe a strip to close it"),
        /** The piece that meets the surface is moved up to it and scribed. */
        SCRIBE("scribe the piece"),
        /** The stack goes with the surface as well as a straight stack can. */
        FOLLOW("run it out of level"),
        /** On a wall: in line with its humps, the hollows packed out. */
        SHIM("shim behind"),
        /** On a wall: along the line that follows it best. */
        TURN("set it along the wall");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** What is done, in a few words. */
        public String words() {
            return words;
        }
    }
}

package buildup.engine.hold.support;

import java.util.OptionalInt;

/**
 * Something that a verdict rests on and that the document does not show.
 *
 * @param piece number of the piece that is taken to be held
 * @param on number of the body that it is taken to be held to; absent when that is no body of the section
 */
public record Trust(int piece, OptionalInt on, Why why) {
    /** Why it is taken to be so. */
    public enum Why {
        /** Its back lies flat on what stands, and no fastenings are given for it. */
        COUNTS_AS_FIXED("it lies flat there"),
        /** The same, and it would not stay there by its weight, though loads or other fastenings are given. */
        FALLS_UNLESS_FIXED("it lies flat there, and falls unless it is fastened"),
        /** The document says that it is fixed there. */
        SAID("the document says so"),
        /** Nothing carries it, and no fastenings are given for it. */
        HANGS("nothing carries it"),
        /** It overlaps the other, and how the two meet is not known. */
        OVERLAPS("it overlaps it");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** In a few words. */
        public String words() {
            return words;
        }
    }
}

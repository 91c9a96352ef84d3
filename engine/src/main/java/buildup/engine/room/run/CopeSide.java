package buildup.engine.room.run;

/**
 * Which of the two sticks at an inside corner is coped over the other, as seen from the room.
 *
 * @param left whether it is the one to the left of the corner
 */
public record CopeSide(boolean left, Why why) {
    /** Why that one. */
    public enum Why {
        /** The plan says so. */
        GIVEN("given"),
        /** From the entry one looks squarer at the face of the other, and so not into the joint. */
        ENTRY("seen from the entry"),
        /** Sticks are put up from left to right. */
        USUAL("put up from left to right");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** The reason in a few words. */
        public String words() {
            return words;
        }
    }
}

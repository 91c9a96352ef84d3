package buildup.engine.hold.support;

/**
 * What gives first when loads grow.
 *
 * @param name of the fastening, or of the contact as {@code frieze on soffit}
 */
public record Governs(String name, Mode mode) {
    /** How it gives. */
    public enum Mode {
        /** The fastener draws out of the piece that it bites in. */
        PULL("pull", "drawn out"),
        /** Its head pulls through the outer piece, or a pin slips out of it. */
        HEAD("head", "its head pulled through"),
        /** It gives across its axis. */
        SHEAR("shear", "across"),
        /** No fastener gives: pieces turn or slide on this contact. */
        CONTACT("contact", "as an edge to tip on");

        private final String word;
        private final String how;

        Mode(String word, String how) {
            this.word = word;
            this.how = how;
        }

        /** In one word. */
        public String word() {
            return word;
        }

        /** How it gives, as said behind its name. */
        public String how() {
            return how;
        }
    }
}

package buildup.engine.hold.statics;

import buildup.shared.figure.Phrase;

/**
 * What gives first when loads grow.
 *
 * @param name of the fastening, or of the contact as {@code soffit on frieze}
 */
public record FirstToGive(String name, Mode mode) {
    /** How it gives. */
    public enum Mode {
        /** The fastener draws out of the piece that it bites in. */
        PULL("pull", "{name} would draw out first"),
        /** Its head pulls through the outer piece, or a pin slips out of it. */
        HEAD("head", "the heads of {name} would pull through first"),
        /** It gives across its axis. */
        SHEAR("shear", "{name} would give way sideways first"),
        /** No fastener gives: pieces turn or slide on this contact. */
        CONTACT("contact", "it would tip first at {name}");

        private final String word;
        private final Phrase first;

        Mode(String word, String first) {
            this.word = word;
            this.first = Phrase.of(first);
        }

        /** In one word. */
        public String word() {
            return word;
        }
    }

    /** As {@code the heads of soffit screws would pull through first}. */
    public Phrase first() {
        return mode.first.with("name", name);
    }
}

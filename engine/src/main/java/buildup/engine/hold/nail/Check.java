package buildup.engine.hold.nail;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;

/**
 * One rule held against one nail; inches.
 *
 * @param has what there is
 * @param needs what the rule asks for
 */
public record Check(Rule rule, double has, double needs) {
    /** Rules for the length and the place of a nail, with where each is from. */
    public enum Rule {
        TWELVE_DIAMETERS("bite beyond the piece of 12 diameters", "rule of thumb, seen in print", true),
        SIX_DIAMETERS(
                "at least 6 diameters of bite for any lateral value",
                "NDS 2018, 12.1.5.6 and 12.1.6.4, as quoted",
                true),
        TEN_DIAMETERS("10 diameters of bite for the full lateral value", "NDS 2018, Table 12N note 3, as quoted", true),
        FOURTEEN_DIAMETERS(
                "14 diameters of bite in light wood for the full lateral value",
                "allowable loads before 1991, in a construction handbook",
                true),
        HALF_ITS_LENGTH("half the length beyond the piece", "rule of thumb, seen in print; many codes", true),
        THREE_QUARTERS("{size} of bite beyond the piece", 3.0 / 4, "common practice, no source", true),
        THRICE_THE_PIECE("length of 3 times the piece fastened", "rule of thumb, seen in print", true),
        POINT("{size} of wood before the point", 1.0 / 16, "common practice, no source", true),
        FAR_FACE("point within {size} of the far face", 1.0 / 4, "rule of thumb for two boards, seen in print", false),
        OPEN_AIR("no way through the open on the way into wood", "common practice, no source", false),
        EDGE("2.5 diameters of wood to either side", "commentary of the NDS, from memory", true),
        EDGE_BORED("1.67 diameters of wood to either side, bored for", "commentary of the NDS, from memory", true);

        private final String words;
        private final double size;
        private final String source;
        private final boolean least;

        Rule(String words, String source, boolean least) {
            this(words, 0, source, least);
        }

        Rule(String words, double size, String source, boolean least) {
            this.words = words;
            this.size = size;
            this.source = source;
            this.least = least;
        }

        /** The rule in words. */
        public Phrase words() {
            return Phrase.of(words).with("size", Figure.length(size));
        }

        /** The length that the rule names, in; 0 when it names none. */
        public double size() {
            return size;
        }

        /** Where the rule comes from, or that it is common practice. */
        public String source() {
            return source;
        }
    }

    /** Whether what there is meets what is needed, within {@link Tolerance#SAME_SIZE}. */
    public boolean met() {
        return rule.least ? has >= needs - Tolerance.SAME_SIZE : has <= needs + Tolerance.SAME_SIZE;
    }
}

package buildup.engine.hold.nail;

import java.util.List;

/**
 * What is left of a published figure in a case that the publication reduces.
 *
 * @param value from 0 to 1
 */
public record Factor(Why why, double value) {
    /** The cases, each with the words for it and where it is from. */
    public enum Why {
        TOE_WITHDRAWAL("toe-nail, drawn out", "NDS 2018, 12.5.4"),
        TOE_LATERAL("toe-nail, across", "NDS 2018, 12.5.4"),
        SLANTED_BITE("bite counted square to the joint", "commentary to NDS 2018, 12.5.4"),
        SLANTED_THREAD("thread counted square to the joint", "own rule, on the safe side"),
        END_GRAIN_WITHDRAWAL("nail in end grain, drawn out", "NDS 2018, 12.2.3.4"),
        END_GRAIN_THREAD("screw in end grain, drawn out", "NDS 2018, 12.2.2, from memory"),
        END_GRAIN_LATERAL("end grain, across", "NDS 2018, 12.5.2.2"),
        PANEL("panel, no published value", "none known here"),
        MASONRY("masonry, no published value for a nail or a wood screw", "none known here"),
        SHORT_BITE("bite of 6 to 10 diameters, across", "NDS 2018, 12.1.6.4 and Table 12N note 3, as quoted");

        private final String words;
        private final String source;

        Why(String words, String source) {
            this.words = words;
            this.source = source;
        }

        /** What is reduced, and in which case. */
        public String words() {
            return words;
        }

        /** The clause, or that there is none. */
        public String source() {
            return source;
        }
    }

    /** All of them multiplied; 1 when there are none. */
    public static double product(List<Factor> factors) {
        return factors.stream().mapToDouble(Factor::value).reduce(1, (a, b) -> a * b);
    }
}

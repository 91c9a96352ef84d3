package buildup.catalog.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a profile word draws, and which directions and sizes it takes. */
enum Verb {
    STRAIGHT(Ways.NONE, 1, "a length"),
    FILLET(Ways.ONE, 1, "a length"),
    CHAMFER(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    COVE(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    OVOLO(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    CYMA_RECTA(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    CYMA_REVERSA(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    SCOTIA(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    RABBET(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    GREEK_COVE(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    GREEK_OVOLO(Ways.BOX, 2, Verb.HEIGHT_AND_WIDTH),
    HOLLOW(Ways.BOX, 3, "height x width x radius"),
    ROUND(Ways.BOX, 3, "height x width x radius"),
    HALF_ROUND(Ways.ONE, 1, "a diameter"),
    ASTRAGAL(Ways.NONE, 2, "diameter x fillet"),
    GROOVE(Ways.NONE, 2, "width x depth");

    /** The directions that may stand between a word and its sizes. */
    enum Ways {
        NONE,
        ONE,
        /** One of up and down, one of out and in. */
        BOX
    }

    private static final String HEIGHT_AND_WIDTH = "height x width";

    /** Every spelling, as the user writes it. */
    private static final Map<String, Verb> SPELLED = spelled();

    private final Ways ways;
    private final int mostSizes;
    private final String takes;

    Verb(Ways ways, int mostSizes, String takes) {
        this.ways = ways;
        this.mostSizes = mostSizes;
        this.takes = takes;
    }

    private static Map<String, Verb> spelled() {
        Map<String, Verb> all = new LinkedHashMap<>();
        all.put("out", STRAIGHT);
        all.put("in", STRAIGHT);
        all.put("up", STRAIGHT);
        all.put("down", STRAIGHT);
        all.put("fillet", FILLET);
        all.put("chamfer", CHAMFER);
        all.put("cove", COVE);
        all.put("cavetto", COVE);
        all.put("ovolo", OVOLO);
        all.put("quarter-round", OVOLO);
        all.put("greek cove", GREEK_COVE);
        all.put("greek ovolo", GREEK_OVOLO);
        all.put("hollow", HOLLOW);
        all.put("round", ROUND);
        all.put("cyma recta", CYMA_RECTA);
        all.put("cyma reversa", CYMA_REVERSA);
        all.put("ogee", CYMA_REVERSA);
        all.put("scotia", SCOTIA);
        all.put("rabbet", RABBET);
        all.put("bead", HALF_ROUND);
        all.put("torus", HALF_ROUND);
        all.put("astragal", ASTRAGAL);
        all.put("quirk", GROOVE);
        all.put("drip", GROOVE);
        all.put("relief", GROOVE);
        return Collections.unmodifiableMap(all);
    }

    static Map<String, Verb> bySpelling() {
        return SPELLED;
    }

    Ways ways() {
        return ways;
    }

    int mostSizes() {
        return mostSizes;
    }

    /** The sizes in words, for a message. */
    String takes() {
        return takes;
    }
}

package buildup.engine.room.stock;

import buildup.engine.room.run.EndCut;

/** What an end is cut for, and how many such ends make one joint. */
public enum EndJoint {
    MITER("miter", 2),
    COPE("cope", 1),
    RETURN("return", 2),
    BUTT("butt", 1),
    SQUARE("square", 1),
    SCARF("scarf", 2);

    private final String word;
    private final int ends;

    EndJoint(String word, int ends) {
        this.word = word;
        this.ends = ends;
    }

    static EndJoint of(EndCut.Kind kind) {
        return switch (kind) {
            case MITER -> MITER;
            case COPE -> COPE;
            case RETURN -> RETURN;
            case BUTT -> BUTT;
            case SQUARE -> SQUARE;
        };
    }

    /** The word for it in reports. */
    public String word() {
        return word;
    }

    /** Joints that so many ends make; an end whose other half is missing is one too. */
    public int joints(int count) {
        return (count + ends - 1) / ends;
    }
}

package buildup.engine;

/** What may be asked of a stack, in the order in which one stands on another. */
public enum Question {
    /** The section itself: where pieces sit, what they leave, whether they overlap and fit. */
    SECTION,
    /** What stands behind each piece to nail into. */
    BACKING,
    /** Where the shadows fall. */
    LIGHT,
    /** What the eyes see. */
    SIGHT,
    /** Which joints stand open. */
    JOINT,
    /** When an eye on its way first sees raw wood. */
    APPROACH,
    /** Whether the fastenings bite. */
    FIXING,
    /** What carries and what holds. */
    SUPPORT,
    /** Whether it can be put up in its order. */
    ORDER,
    /** Lengths round the corners. */
    RUN,
    /** What is bought besides sticks. */
    BUYING,
    /** What the seasons of the year do to it. */
    SEASON,
    /** What the errors of sizes do to it. */
    TOLERANCE,
    /** What keeps clear of fire, doors and the like. */
    CLEARANCE,
    /** How it reads beside the books. */
    PROPORTION,
    /** Whether the stack meets what the document says it must. */
    MUST
}

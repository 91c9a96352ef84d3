package buildup.cli.scene;

/**
 * What an item of a picture is about, in words of the trade and of the stack document: who hides the figures of a drawing
 * hides them all, and nothing else.
 */
public enum Subject {
    TRIM,
    NAILER,
    FRAMING,
    /** Wall, floor and ceiling, and the plane that projections are measured from. */
    WALL,
    HATCH,
    /** Where something goes on beyond the picture. */
    BREAK,
    DIMENSIONS,
    /** Letters of pieces, and numbers of places, in their rings. */
    LETTERS,
    NOTES,
    /** What belongs to the sheet of paper. */
    SHEET,
    LIGHTS,
    EYES,
    BEARING,
    WEIGHTS,
    FASTENINGS,
    /** In what order, and on what way, pieces are put up. */
    SEQUENCE,
    SEASONS,
    PROPORTION,
    CLEARANCE,
    GRID;

    /** What lines of a style are about, where nothing else is said of them. */
    public static Subject of(LineStyle style) {
        return switch (style) {
            case OUTLINE, ARRIS, OTHER -> TRIM;
            case NAILER -> NAILER;
            case STANDING, PLANE -> WALL;
            case BREAK -> BREAK;
            case DIMENSION, TICK, EXTENSION -> DIMENSIONS;
            case LEADER, CASING -> LETTERS;
            case RULE, CHECK, CLOUD -> SHEET;
            case LIT, SHADE, CAST, RAY -> LIGHTS;
            case SEEN, HIDDEN, SIGHT -> EYES;
            case BEARING -> BEARING;
            case FALL, PAST -> WEIGHTS;
            case NAIL, COULD, BITE -> FASTENINGS;
            case DRY, DAMP -> SEASONS;
            case GRID, GRID_INCH -> GRID;
        };
    }
}

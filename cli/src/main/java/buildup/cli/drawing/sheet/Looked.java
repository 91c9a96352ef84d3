package buildup.cli.drawing.sheet;

/** How a picture is looked at, and with it how large its letters are and where its words stand. */
public enum Looked {
    /** Whole, on a screen of any size. */
    SCREEN,
    /** Whole, on a page. */
    PAGE,
    /** On several pages that are put together: words of any length are told before them and numbered in the picture. */
    PARTS
}

package buildup.cli.drawing.paper;

/**
 * What the pages of one picture have in common.
 *
 * @param view what they show
 * @param scale in words
 * @param whole what a page is that holds all of it
 * @param part what a page is that holds a part
 */
record PaperSet(String view, String scale, PageFrame.Use whole, PageFrame.Use part) {
    static PaperSet atFullSize(String view) {
        return new PaperSet(view, PaperPage.FULL_SIZE, PageFrame.Use.CHECKED, PageFrame.Use.PART);
    }

    static PaperSet asDrawn(String view) {
        return new PaperSet(view, PaperPage.AS_TOLD, PageFrame.Use.PLAIN, PageFrame.Use.PLAIN_PART);
    }

    /** Whether its pages bear lines to measure. */
    boolean checked() {
        return whole == PageFrame.Use.CHECKED;
    }
}

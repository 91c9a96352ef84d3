package buildup.cli.drawing.sheet;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import java.util.Optional;

/** What drawings have to say of the page that they should fit on. */
public final class DrawingNotices {
    private static final Code PAGE_TOO_SMALL = Code.of(
            "page-too-small", "A drawing takes more pages than anybody puts together, or a quote a larger one.");

    public static final Kind UNKNOWN_PAGE = DocumentCodes.UNKNOWN_NAME.refusal("No page is called '{name}'.", "");
    public static final Kind MANY_PAGES = PAGE_TOO_SMALL.refusal(
            "Full size takes {pages} pages of {page}: more than {most}.",
            "Take a larger page, or look at the sizes and their unit.");
    public static final Kind MANY_PARTS = PAGE_TOO_SMALL.refusal(
            "'{view}' takes {pages} pages of {page}: more than {most}.",
            "Take a larger page, or look at the sizes and their unit.");
    public static final Kind LARGE_QUOTE = PAGE_TOO_SMALL.refusal(
            "With its profiles at full size the quote does not fit on {page}.",
            "Leave --page out, and the smallest that holds it is taken.");
    public static final Kind LARGEST_QUOTE = PAGE_TOO_SMALL.refusal(
            "With its profiles at full size the quote does not fit on {page}.", "Write it as several orders.");

    private static final Phrase ANY_PAGE = Phrase.of("any page");

    private DrawingNotices() {}

    /** The page that was asked for. */
    public static Value page(Optional<PaperSize> wanted) {
        return wanted.<Value>map(page -> new Text(page.name())).orElse(ANY_PAGE);
    }
}

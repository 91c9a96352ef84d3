package buildup.cli.drawing.sheet;

import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sizes of paper that can be asked for by name; a page is turned when that serves. Sizes: ANSI/ASME Y14.1 (letter,
 * tabloid and the architectural sizes), ISO 216 (A series), from memory.
 */
public final class Pages {
    /** From small to large. */
    private static final List<PaperSize> INCHES = List.of(
            new PaperSize("letter", 8.5, 11),
            new PaperSize("legal", 8.5, 14),
            new PaperSize("tabloid", 11, 17),
            new PaperSize("arch-b", 12, 18),
            new PaperSize("arch-c", 18, 24),
            new PaperSize("arch-d", 24, 36),
            new PaperSize("arch-e", 36, 48));

    private static final List<PaperSize> METRIC = List.of(
            PaperSize.millimeters("a4", 210, 297),
            PaperSize.millimeters("a3", 297, 420),
            PaperSize.millimeters("a2", 420, 594),
            PaperSize.millimeters("a1", 594, 841),
            PaperSize.millimeters("a0", 841, 1189));

    private Pages() {}

    /** The paper of that name, in whatever case, if it is known. */
    public static Optional<PaperSize> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Stream.concat(INCHES.stream(), METRIC.stream())
                .filter(page -> page.name().equals(wanted))
                .findFirst();
    }

    /**
     * The paper that was asked for.
     *
     * @param notices told when there is none of that name
     */
    public static Optional<PaperSize> asked(String name, Notices notices) {
        Optional<PaperSize> found = named(name);
        if (found.isEmpty()) {
            notices.add(DrawingNotices.UNKNOWN_PAGE.with("name", name).cure(Suggestion.phrase(name, names())));
        }
        return found;
    }

    /** What a printer in a shop or at home holds. */
    public static PaperSize ofPrinter(boolean metric) {
        return metric ? METRIC.get(0) : INCHES.get(0);
    }

    /** The names of all papers, those in inches first. */
    public static List<String> names() {
        return Stream.concat(INCHES.stream(), METRIC.stream())
                .map(PaperSize::name)
                .toList();
    }

    /** The sizes of the same family as a page, from small to large. */
    public static List<PaperSize> like(PaperSize page) {
        return METRIC.contains(page) ? METRIC : INCHES;
    }

    /** What a drawing is put on when nobody asks for another. */
    public static List<PaperSize> usual() {
        return INCHES;
    }

    /** The smallest of some pages that holds a rectangle, turned if need be; the page as it is to lie. */
    public static Optional<PaperSize> holding(List<PaperSize> pages, double width, double height) {
        return pages.stream()
                .flatMap(page -> Stream.of(page, page.turned()))
                .filter(page -> page.holds(width, height))
                .findFirst();
    }
}

package buildup.cli.drawing.draft;

import buildup.cli.scene.TextMeasure;
import java.util.ArrayList;
import java.util.List;

/** Breaks long texts into lines. */
public final class Words {
    private static final String MORE = "\u2026";

    /** Stays with its figure. */
    private static final String PERCENT = " %";

    private Words() {}

    /** At most so many lines, each no wider than {@code width}; what is left over ends in an ellipsis. */
    public static List<String> lines(TextMeasure measure, String text, double size, double width, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty() && lines.size() < most) {
            int end = fitting(measure, rest, size, width);
            if (end < rest.length() && lines.size() == most - 1) {
                int kept = fitting(measure, rest, size, width - measure.width(MORE, size));
                lines.add(rest.substring(0, kept).strip() + MORE);
                return lines;
            }
            int blank = end < rest.length() ? rest.lastIndexOf(' ', end) : -1;
            while (blank > 0 && rest.startsWith(PERCENT, blank)) {
                blank = rest.lastIndexOf(' ', blank - 1);
            }
            int cut = blank > 0 ? blank : end;
            lines.add(rest.substring(0, cut).strip());
            rest = rest.substring(cut).strip();
        }
        return lines;
    }

    /** How many characters fit; at least one. */
    private static int fitting(TextMeasure measure, String text, double size, double width) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            if (measure.width(text.substring(0, next), size) > width) {
                return end;
            }
            end = next;
        }
        return end;
    }
}

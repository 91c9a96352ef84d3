package buildup.cli.report;

import buildup.catalog.words.OutlineWords;
import buildup.profiles.outline.Box;
import buildup.profiles.trace.Traced;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A tracing as an entry of a catalog. */
public final class TraceReport {
    /** Letters on a line of remarks. */
    private static final int WIDTH = 100;

    private TraceReport() {}

    /** A catalog of one profile, how well it fits in the comments above it. */
    public static String yaml(String name, String kind, Traced traced, LengthUnit unit, List<Notice> notices) {
        Box box = traced.outline().box();
        OutlineWords.Said said = OutlineWords.of(traced.outline(), unit);
        boolean metric = unit.isMetric();
        double one = metric ? Length.millimeters(1).toInches() : 1;
        StringBuilder yaml = new StringBuilder();
        yaml.append(String.format(
                Locale.ROOT,
                """
                # Traced: %d members from %d points. Largest deviation %.4f %s, near (%.3f, %.3f);
                # root mean square %.4f %s.
                """,
                traced.members().size(),
                traced.points().size(),
                traced.largest() / one,
                metric ? "mm" : "in",
                traced.farthest().x() / one,
                traced.farthest().y() / one,
                traced.rms() / one,
                metric ? "mm" : "in"));
        for (Traced.Fit fit : traced.members()) {
            yaml.append(String.format(
                            Locale.ROOT,
                            "#   %-16s %6d points  largest %.4f  rms %.4f",
                            fit.member(),
                            fit.points(),
                            fit.largest() / one,
                            fit.rms() / one))
                    .append("\n");
        }
        doubts(NoticeWords.in(unit), notices)
                .forEach(line -> yaml.append("# ").append(line).append("\n"));
        yaml.append(metric ? "units: mm\n" : "");
        yaml.append("profiles:\n  - name: ")
                .append(name)
                .append("\n    kind: ")
                .append(kind)
                .append("\n    about: Traced\n    sizes: [projection, height]\n    usual: [")
                .append(size(box.width(), metric))
                .append(" x ")
                .append(size(box.height(), metric))
                .append("]\n    words:\n");
        said.front().forEach(word -> yaml.append("      - ").append(word).append("\n"));
        if (!said.back().isEmpty()) {
            yaml.append("      - back: [")
                    .append(String.join(", ", said.back()))
                    .append("]\n");
        }
        return yaml.toString();
    }

    /** What is not sure of it, in lines that a page holds. */
    private static List<String> doubts(NoticeWords words, List<Notice> notices) {
        List<String> lines = new ArrayList<>();
        for (Notice notice : notices) {
            if (notice.level() == Level.PROBLEM) {
                String said = words.message(notice) + " " + words.cure(notice);
                StringBuilder line = new StringBuilder("In doubt:");
                for (String word : said.strip().split(" ", -1)) {
                    if (line.length() + 1 + word.length() > WIDTH) {
                        lines.add(line.toString());
                        line = new StringBuilder(" ");
                    }
                    line.append(" ").append(word);
                }
                lines.add(line.toString());
            }
        }
        return lines;
    }

    private static String size(double inches, boolean metric) {
        if (metric) {
            return LengthPrinter.millimeters(Length.inches(inches), 3);
        }
        String fraction = LengthPrinter.fraction(Length.inches(inches), 64);
        return fraction.endsWith("+") || fraction.endsWith("-")
                ? LengthPrinter.decimals(Length.inches(inches), 4)
                : fraction;
    }
}

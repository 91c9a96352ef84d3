package buildup.cli;

import buildup.cli.Agreement.Bare;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Tables in inches and pounds held against the same tables in metric units. */
public final class TwinTables {
    /** Tables of limits, whose sizes stand on the safe side: whole millimeters, and sixteenths. */
    private static final Pattern SAFE_SIDE = Pattern.compile("NEAR THE FIRE|KEPT CLEAR");

    /** Published formulas stand as they were published, and say so. */
    private static final Pattern PUBLISHED =
            Pattern.compile("(?s)FORMULAS behind the figures of nails.\\s*as published in"
                    + " inches\\s+and\\s+pounds.*?(?=\n\n|</section>|\\z)");

    /** A fraction of an inch, or a unit that no metric shop uses; quarters of a rough board name it everywhere. */
    private static final Pattern CUSTOMARY =
            Pattern.compile("\\d/\\d(?!x\\d)(?<!\\b[4-8]/4)|\\b(?:lb|sq in|inches|feet|foot|ft)\\b|\\d in\\b");

    /** Headings over figures that say themselves what they are. */
    private static final Set<String> BARE = Set.of("", "A", "B", "B - A");

    private TwinTables() {}

    /** What does not agree, in words. */
    public static List<String> faults(List<Table> inches, List<Table> metric) {
        List<String> faults = new ArrayList<>();
        if (inches.size() != metric.size()) {
            faults.add(inches.size() + " tables and " + metric.size());
        }
        for (int i = 0; i < Math.min(inches.size(), metric.size()); i++) {
            Table a = inches.get(i);
            Table b = metric.get(i);
            if (PUBLISHED.matcher(a.title()).matches()) {
                continue;
            }
            Agreement.fault(a.title(), b.title()).ifPresent(faults::add);
            if (a.rows().size() != b.rows().size()
                    || a.columns().size() != b.columns().size()) {
                faults.add(a.title() + ": another number of rows or columns");
                continue;
            }
            for (int row = 0; row < a.rows().size(); row++) {
                for (int cell = 0; cell < a.columns().size(); cell++) {
                    fault(a, b, row, cell).ifPresent(faults::add);
                }
            }
        }
        return faults;
    }

    /** A column of figures says its unit; cells of words are looked through. */
    private static Optional<String> fault(Table a, Table b, int row, int cell) {
        TableCell one = a.rows().get(row).get(cell);
        TableCell other = b.rows().get(row).get(cell);
        String unit = a.columns().get(cell).unit();
        // of one object, or of two beside each other, the line says what its figure is
        boolean line = a.columns().stream().allMatch(column -> BARE.contains(column.heading())) && cell > 0;
        String head =
                line ? a.rows().get(row).get(0).text() : a.columns().get(cell).heading();
        String otherHead =
                line ? b.rows().get(row).get(0).text() : b.columns().get(cell).heading();
        boolean named = unit.isEmpty() && !head.equals(otherHead);
        return Agreement.fault(
                        one.text() + (named ? behind(head) : ""),
                        other.text() + (named ? behind(otherHead) : ""),
                        unit.equals("in") && !SAFE_SIDE.matcher(a.title()).lookingAt() ? Bare.LENGTHS : Bare.SENTENCE)
                .map(fault -> a.title() + ", " + head + ": " + fault);
    }

    /** The unit that a heading ends with. */
    private static String behind(String heading) {
        return " " + heading.replaceFirst("^.*, ", "");
    }

    /** The lines of a metric text that hold what no metric shop reads. */
    public static Set<String> customary(String text) {
        Set<String> found = new TreeSet<>();
        PUBLISHED
                .matcher(text)
                .replaceAll("")
                .lines()
                .filter(line -> CUSTOMARY.matcher(line).find())
                .forEach(found::add);
        return found;
    }
}

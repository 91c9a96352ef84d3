package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.hold.backing.Backing;
import buildup.engine.section.compose.Hollow;
import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.compose.Totals;
import buildup.engine.look.sight.Sighting;
import buildup.engine.hold.support.Balance;
import buildup.profiles.outline.Tolerance;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** The head of a report: what a carpenter wants to know at the saw; as text, narrow enough for a telephone. */
public final class Summary {
    /** Columns that a telephone shows of a message in a fixed-width letter. */
    static final int WIDTH = 48;

    private static final int LABEL = 17;

    private final Section section;
    private final List<Backing> backings;
    private final List<Sighting> sights;
    private final List<Balance> balances;
    private final List<Notice> notices;
    private final Printed printed;
    private final List<Row> rows = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    /** A figure and what it is called. */
    public record Row(String label, String value) {}

    private Summary(Answer answer, Answers known, Printed printed) {
        this.section = known.section();
        this.backings = known.backings();
        this.sights = known.sights();
        this.balances = known.support().balances();
        this.notices = answer.notices();
        this.printed = printed;
        totals();
        weakest();
    }

    /** The figures of the whole; the same labels in every unit. */
    public static List<Row> rows(Answer answer, Answers known, Printed printed) {
        return List.copyOf(new Summary(answer, known, printed).rows);
    }

    static String write(Answer answer, Answers known) {
        Summary summary = new Summary(answer, known, new Printed(answer.unit()));
        summary.notices();
        summary.text.append('\n');
        summary.lines(answer.title(), "");
        summary.text.append('\n');
        summary.rows.forEach(summary::line);
        summary.text.append('\n');
        summary.lines(summary.printed.legend(), "");
        return summary.text.toString();
    }

    private void notices() {
        long problems = count(Level.PROBLEM);
        long notes = count(Level.NOTE);
        lines(counted(problems, "problem") + (notes == 0 ? "." : ", " + counted(notes, "note") + "."), "");
        Map<String, Set<String>> alike = new LinkedHashMap<>();
        for (Notice notice : notices) {
            if (notice.level() == Level.PROBLEM) {
                Set<String> pieces =
                        alike.computeIfAbsent(notice.code().replace('-', ' '), code -> new LinkedHashSet<>());
                notice.piece().ifPresent(pieces::add);
            }
        }
        alike.forEach((what, pieces) -> lines(what + (pieces.isEmpty() ? "" : ": " + String.join(", ", pieces)), "  "));
    }

    private long count(Level level) {
        return notices.stream().filter(notice -> notice.level() == level).count();
    }

    private static String counted(long count, String what) {
        return (count == 0 ? "No " : count + " ") + what + (count == 1 ? "" : "s");
    }

    private void totals() {
        Totals totals = section.totals();
        row("Height", printed.size(totals.height()) + trim(totals.height(), totals.trimHeight()));
        row("Projection", printed.size(totals.projection()) + trim(totals.projection(), totals.trimProjection()));
        row("Bottom to top", printed.size(totals.bottom()) + " to " + printed.size(totals.top()));
        left("Under ceiling", section.ceilingLeft());
        left("Projection left", section.projectionLeft());
        row("Weight", Printed.decimals(totals.weightPerFoot(), 2) + " lb a foot");
        row("Area", Printed.decimals(totals.area(), 2) + " sq in");
        row("Wood", String.join(", ", woods()));
    }

    /** What is said of the trim alone where nailers make a difference that shows. */
    private String trim(double all, double trim) {
        return printed.size(all).equals(printed.size(trim)) ? "" : ", trim alone " + printed.size(trim);
    }

    private void left(String label, OptionalDouble left) {
        left.ifPresent(room -> row(
                label,
                room < -Tolerance.COINCIDENT ? printed.size(-room) + " too much" : printed.size(room) + " left"));
    }

    private Set<String> woods() {
        Set<String> woods = new LinkedHashSet<>();
        section.bodies().stream()
                .filter(body -> body.inStack())
                .forEach(body ->
                        woods.add(body.placed().orElseThrow().piece().wood().name()));
        return woods;
    }

    /** Where the stack is at its worst, as far as there is anything to say. */
    private void weakest() {
        section.overlaps().stream()
                .max(Comparator.comparingDouble(Overlap::depth))
                .ifPresent(overlap -> row(
                        "Deepest overlap",
                        printed.size(overlap.depth()) + ", " + section.name(overlap.a()) + " and "
                                + section.name(overlap.b())));
        narrowestBearing();
        names("Leans", leaning());
        List<String> hanging = section.standing().stream()
                .filter(standing -> section.body(standing.body()).inStack() && !standing.grounded())
                .map(standing -> section.name(standing.body()))
                .toList();
        names("Only hangs", hanging);
        names(
                "No backing",
                backings.stream()
                        .filter(backing -> backing.stretches().isEmpty())
                        .map(backing -> section.name(backing.body()))
                        .toList());
        names("Raw wood shows", rawNailers());
        section.voids().stream()
                .max(Comparator.comparingDouble(Hollow::area))
                .ifPresent(hollow -> row("Largest void", Printed.decimals(hollow.area(), 2) + " sq in"));
    }

    /** What stands on another piece and falls past its bearing; what holds it back is told further down. */
    private List<String> leaning() {
        return balances.stream()
                .filter(balance -> balance.carrier() && !balance.stands())
                .map(balance -> printed.size(-balance.margin()) + " past " + section.name(balance.body()))
                .toList();
    }

    private void narrowestBearing() {
        section.standing().stream()
                .filter(standing -> section.body(standing.body()).inStack() && !standing.fixed())
                .filter(standing -> !standing.bearing().isEmpty())
                .min(Comparator.comparingDouble(Summary::bearing))
                .ifPresent(standing ->
                        row("Least bearing", printed.size(bearing(standing)) + ", " + section.name(standing.body())));
    }

    private static double bearing(Standing standing) {
        return standing.bearing().stream().mapToDouble(Standing.Bearing::width).sum();
    }

    /** Raw wood that the worst eye sees; all of it on the room side while no eye is given. */
    private List<String> rawNailers() {
        Map<String, Double> shown = new LinkedHashMap<>();
        if (sights.isEmpty()) {
            section.members().stream()
                    .filter(member -> section.body(member.body()).nailer())
                    .forEach(member -> shown.merge(section.name(member.body()), member.length(), Double::sum));
        }
        sights.stream()
                .flatMap(sighting -> sighting.coverage().stream())
                .filter(coverage -> coverage.seen() > Tolerance.TOUCHING)
                .forEach(coverage -> shown.merge(section.name(coverage.body()), coverage.seen(), Math::max));
        List<String> raw = new ArrayList<>();
        shown.forEach((name, length) -> raw.add(name + " " + printed.size(length)));
        return raw;
    }

    private void names(String label, List<String> names) {
        if (!names.isEmpty()) {
            row(label, String.join(", ", names));
        }
    }

    private void row(String label, String value) {
        rows.add(new Row(label, value));
    }

    private void line(Row row) {
        List<String> lines = Display.wrap(row.value(), WIDTH - LABEL);
        for (int i = 0; i < lines.size(); i++) {
            String head = i == 0 ? row.label() : "";
            text.append((head + " ".repeat(LABEL - head.length()) + lines.get(i)).stripTrailing())
                    .append('\n');
        }
    }

    private void lines(String words, String indent) {
        Display.wrap(words, WIDTH - indent.length())
                .forEach(line -> text.append(indent).append(line).append('\n'));
    }
}

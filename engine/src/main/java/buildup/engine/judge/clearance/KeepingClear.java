package buildup.engine.judge.clearance;

import buildup.catalog.Catalog;
import buildup.catalog.fire.FireRule;
import buildup.engine.judge.clearance.FireRow.Where;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks what a stack has to keep clear of. Reads its own blocks of the document, {@code firebox:} and {@code keep-clear:}. */
public final class KeepingClear {
    private KeepingClear() {}

    /**
     * What the document asks to be kept clear.
     *
     * @param firebox the opening of a fireplace; absent when there is none
     * @param places in the order of the document
     */
    public record Wanted(Optional<Firebox> firebox, List<KeepClear> places) {
        /** Copies the list. */
        public Wanted {
            places = List.copyOf(places);
        }
    }

    /**
     * Reads both blocks; what is wrong with them is refused.
     *
     * @param root the document, read with the stack's lengths
     */
    public static Wanted read(Stack stack, Fields root, Catalog catalog, Notices notices) {
        return new Wanted(
                new FireboxReader(stack, catalog, notices).read(root), new KeepClearReader(stack, notices).read(root));
    }

    /**
     * How the stack keeps clear, with a problem for each piece that comes too near something.
     *
     * @param told whether somebody reads it: else nobody looks for cures, each of which composes the stack
     */
    public static Clearance of(Section section, Wanted wanted, boolean told, Notices notices) {
        List<KeepClearRow> kept = KeepClearRows.of(section, wanted.places());
        kept.stream().filter(KeepClearRows::tooNear).forEach(row -> {
            Notice notice = inTheWay(section, row);
            notices.add(told ? notice.cure(KeepClearCures.of(section, row, wanted.places())) : notice);
        });
        Optional<Firebox> firebox = wanted.firebox();
        if (firebox.isEmpty()) {
            return new Clearance(firebox, List.of(), kept);
        }
        notices.add(ClearanceNotices.CAUTION.notice().at(firebox.get().mark()));
        double top = section.totals().top();
        if (firebox.get().top() >= top - Tolerance.TOUCHING) {
            notices.add(ClearanceNotices.OPENING_ABOVE
                    .with("opening", Figure.length(firebox.get().top()))
                    .with("top", Figure.length(top))
                    .at(firebox.get().mark()));
            return new Clearance(firebox, List.of(), kept);
        }
        List<FireRow> fire = FireRows.of(section, firebox.get());
        Map<String, List<FireRow>> wrong = new LinkedHashMap<>();
        fire.stream()
                .filter(row -> !row.clear())
                .forEach(row -> wrong.computeIfAbsent(row.piece(), name -> new ArrayList<>())
                        .add(row));
        wrong.values().forEach(rows -> {
            FireRow worst = worst(rows);
            Notice notice = tooNear(section, firebox.get(), worst, rows, fire);
            notices.add(
                    told ? notice.cure(new FireCures(section, firebox.get(), fire).of(worst.piece(), rows)) : notice);
        });
        return new Clearance(firebox, fire, kept);
    }

    private static FireRow worst(List<FireRow> rows) {
        return rows.stream()
                .max(Comparator.comparingDouble(KeepingClear::missing))
                .orElseThrow();
    }

    /** @param rows of one piece that keep their rules not */
    private static Notice tooNear(
            Section section, Firebox firebox, FireRow worst, List<FireRow> rows, List<FireRow> all) {
        return (worst.distance() < -Tolerance.TOUCHING
                        ? ClearanceNotices.BEFORE_THE_FIRE
                        : worst.allowed().orElse(0) <= Tolerance.COINCIDENT
                                ? ClearanceNotices.WITHIN
                                : ClearanceNotices.TOO_NEAR)
                .with("away", Figure.atMost(Math.abs(worst.distance())))
                .with("where", where(worst.where()))
                .with("has", Figure.atLeast(worst.has()))
                .with("allowed", Figure.atMost(worst.allowed().orElse(0)))
                .with("rule", worst.rule().name())
                .with("others", others(worst, rows, all))
                .amount(Figure.atLeast(
                        worst.spare().isPresent()
                                ? missing(worst)
                                : -worst.margin().orElse(0)))
                .at(mark(section, firebox, worst))
                .of(worst.piece());
    }

    private static double missing(FireRow row) {
        return row.spare().isPresent() ? -row.spare().getAsDouble() : Double.POSITIVE_INFINITY;
    }

    private static Mark mark(Section section, Firebox firebox, FireRow row) {
        if (row.ofStack()) {
            return section.pieces().stream()
                    .filter(body -> body.name().equals(row.piece()))
                    .flatMap(body -> body.placed().stream())
                    .map(placed -> placed.piece().mark())
                    .findFirst()
                    .orElseThrow();
        }
        return firebox.beside().stream()
                .filter(beside -> beside.name().equals(row.piece()))
                .map(Firebox.Beside::mark)
                .findFirst()
                .orElseThrow();
    }

    private static Phrase where(Where where) {
        return switch (where) {
            case ABOVE -> ClearanceNotices.ABOVE;
            case LEFT -> ClearanceNotices.LEFT;
            case RIGHT -> ClearanceNotices.RIGHT;
        };
    }

    /** What the other rules say of the same piece. */
    private static Phrase others(FireRow worst, List<FireRow> rows, List<FireRow> all) {
        List<String> refuse = names(rows.stream().map(FireRow::rule).toList(), worst.rule());
        List<String> allow = names(
                all.stream()
                        .filter(row -> row.piece().equals(worst.piece()) && row.clear())
                        .map(FireRow::rule)
                        .toList(),
                worst.rule());
        Phrase none = Phrase.of("");
        return Phrase.of("{refuse}{allow}")
                .with(
                        "refuse",
                        refuse.isEmpty() ? none : ClearanceNotices.ALSO_REFUSE.with("rules", Listing.names(refuse)))
                .with("allow", allow.isEmpty() ? none : ClearanceNotices.ALLOW.with("rules", Listing.names(allow)));
    }

    private static List<String> names(List<FireRule> rules, FireRule without) {
        return rules.stream()
                .filter(rule -> !rule.equals(without))
                .map(FireRule::name)
                .distinct()
                .toList();
    }

    private static Notice inTheWay(Section section, KeepClearRow row) {
        Optional<Placed> placed = section.body(row.body()).placed();
        Notice notice = (row.has() < -Tolerance.TOUCHING
                        ? ClearanceNotices.REACHES_IN
                        : ClearanceNotices.TOO_LITTLE_AIR)
                .with("other", row.place().name())
                .with("kind", row.place().kind().word())
                .with("has", Figure.atMost(Math.max(0, row.has())))
                .with("clear", Figure.atLeast(row.place().clear()))
                .amount(Figure.atLeast(row.has() < 0 ? -row.has() : -row.margin()))
                .of(section.name(row.body()));
        return placed.map(found -> notice.at(found.piece().mark())).orElse(notice);
    }
}

package buildup.engine.judge.clearance;

import buildup.catalog.fire.FireBand;
import buildup.catalog.fire.FireRule;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What keeps clear of what, as sheets. */
public final class ClearanceSheets {
    private static final String FIRE =
            "NEAR THE FIRE: how far each piece may project where it is. " + Clearance.CAUTION;
    private static final String SOURCES = "FIRE RULES ASKED, as data of the catalog. " + Clearance.CAUTION;

    private final Section section;
    private final Clearance clearance;

    private ClearanceSheets(Section section, Clearance clearance) {
        this.section = section;
        this.clearance = clearance;
    }

    /** Pieces against the rules of fire, the rules with their sources, and places that are kept clear. */
    public static List<Sheet> of(Section section, Clearance clearance) {
        ClearanceSheets sheets = new ClearanceSheets(section, clearance);
        return List.of(sheets.fire(), sheets.rules(), sheets.kept());
    }

    private Sheet fire() {
        return Sheet.of("clearance", FIRE, clearance.fire())
                .name("rule", "rule", row -> row.rule().set())
                .name("edition", "edition", row -> row.rule().edition())
                .name("piece", "piece", FireRow::piece)
                .name("where", "where", row -> row.where().word())
                // what there is rounds down and what is needed rounds up: no rule is stretched by a sixteenth
                .measure("distance", "away", Quantity.LENGTH, Rounding.DOWN, FireRow::distance)
                .measureIf("needs", "needs", Quantity.LENGTH, Rounding.UP, FireRow::needs)
                .standsFor(row -> OptionalDouble.of(Double.POSITIVE_INFINITY))
                .measureIf("allowed", "may project", Quantity.LENGTH, Rounding.DOWN, FireRow::allowed)
                .standsFor(row -> OptionalDouble.of(Double.POSITIVE_INFINITY))
                .measure("has", "projects", Quantity.LENGTH, Rounding.UP, FireRow::has)
                .measureIf("margin", "projection to spare", Quantity.LENGTH, Rounding.DOWN, FireRow::margin)
                .standsFor(row -> OptionalDouble.of(Double.POSITIVE_INFINITY))
                .measureIf("spare", "distance to spare", Quantity.LENGTH, Rounding.DOWN, FireRow::spare)
                .flag("clear", "clear", FireRow::clear)
                .json()
                .wordsIf("told", "", row -> told(row) ? Optional.of("yes") : Optional.empty())
                .text()
                .tableWhere(
                        List.of("told"),
                        FIRE,
                        "rule",
                        "edition",
                        "piece",
                        "where",
                        "distance",
                        "needs",
                        "has",
                        "allowed",
                        "spare")
                .sheet()
                .askedIf(clearance.firebox().isPresent());
    }

    /** People read of what a rule bounds, and of what comes nearest to its bounds; programs read all. */
    private boolean told(FireRow row) {
        return row.allowed().isPresent()
                || clearance.fire().stream()
                        .filter(other -> other.rule().equals(row.rule()) && other.where() == row.where())
                        .min(Comparator.comparingDouble(other -> other.spare().orElse(Double.NEGATIVE_INFINITY)))
                        .filter(row::equals)
                        .isPresent();
    }

    private Sheet rules() {
        List<FireRule> rules = clearance.firebox().map(Firebox::rules).orElse(List.of());
        return Sheet.of("fireRules", SOURCES, rules)
                .name("name", "rule", FireRule::name)
                .wordsIf("clause", "clause", rule -> Optional.of(rule.clause()).filter(text -> !text.isEmpty()))
                .words("source", "seen", rule -> rule.memory() ? rule.source() + "; from memory" : rule.source())
                .saying("above", "above", rule -> said(rule.above()))
                .both()
                .saying("sides", "at the sides", rule -> said(rule.sides()))
                .both()
                .sheet()
                .askedIf(clearance.firebox().isPresent());
    }

    /** Bands in a sentence. */
    public static Phrase said(List<FireBand> bands) {
        List<Phrase> said = bands.stream().map(ClearanceSheets::said).toList();
        return Phrase.of("nothing within {nearest}; {bands}")
                .with("nearest", Figure.length(bands.get(0).from().toInches()))
                .with("bands", Listing.commas(said));
    }

    private static Phrase said(FireBand band) {
        Phrase words = band.any()
                ? Phrase.of("{from} any")
                : band.share().signum() == 0
                        ? Phrase.of("{from} up to {plus}")
                        : band.share().compareTo(BigDecimal.ONE) == 0
                                ? Phrase.of("{from} the distance less {less}")
                                : Phrase.of("{from} {share} of the distance");
        return words.with(
                        "from",
                        (band.past() ? Phrase.of("past {at}") : Phrase.of("from {at}"))
                                .with("at", Figure.length(band.from().toInches())))
                .with("plus", Figure.length(band.plus().toInches()))
                .with("less", Figure.length(-band.plus().toInches()))
                .with("share", Figure.percent(band.share().doubleValue()));
    }

    private Sheet kept() {
        return Sheet.of("keepClear", "KEPT CLEAR: air between a place and the piece nearest to it", clearance.kept())
                .name("what", "place", row -> row.place().name())
                .words("kind", "kind", row -> row.place().kind().word())
                .name("piece", "piece", row -> section.name(row.body()))
                .measure("has", "air", Quantity.LENGTH, Rounding.DOWN, KeepClearRow::has)
                .measureIf(
                        "needs",
                        "wanted",
                        Quantity.LENGTH,
                        Rounding.UP,
                        row -> row.place().clear() > Tolerance.COINCIDENT
                                ? OptionalDouble.of(row.place().clear())
                                : OptionalDouble.empty())
                .measure("margin", "air to spare", Quantity.LENGTH, Rounding.DOWN, KeepClearRow::margin)
                .sheet()
                .askedIf(!clearance.kept().isEmpty());
    }
}

package buildup.engine.judge.along;

import buildup.engine.judge.must.MustRule;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one size, alone, does to a rule.
 *
 * @param key the place of the size in the document
 * @param now what is typed there today
 * @param rule that is asked about
 * @param least the least figure over its choices, in the unit of the rule; no number where there is none
 * @param most the greatest
 * @param today whether today's stack meets the rule
 * @param meets the choice nearest to today's that meets the rule; absent when none does
 * @param turns where the rule turns, nearest to today's size first; none where it never does, or where choices are no
 *     sizes
 * @param gives the rules that are met today and not with that choice
 */
public record WhyNot(
        String key,
        String now,
        MustRule rule,
        OptionalDouble least,
        OptionalDouble most,
        boolean today,
        Optional<String> meets,
        List<Turning> turns,
        List<String> gives) {
    private static final Phrase NO_FIGURE = Phrase.of(
            "No stack of this document has the figure of '{rule}': look whether its piece has it in a report.");

    /** Copies the lists. */
    public WhyNot {
        turns = List.copyOf(turns);
        gives = List.copyOf(gives);
    }

    /** Where the rule turns nearest to today's size. */
    public Optional<Turning> turning() {
        return turns.stream().findFirst();
    }

    /** Every place where it turns, from the least up. */
    Optional<Phrase> places() {
        List<Figure> places = turns.stream()
                .sorted(Comparator.comparingDouble(Turning::value))
                .map(Turning::at)
                .toList();
        return turns.isEmpty()
                ? Optional.empty()
                : Optional.of(Phrase.of("{at}").with("at", Listing.and(places)));
    }

    /** What the size itself counts. */
    Quantity quantity() {
        return turning().map(Turning::quantity).orElse(Quantity.LENGTH);
    }

    /** Whether some choice has the figure of the rule. */
    boolean isKnown() {
        return least.isPresent();
    }

    /** Whether the figure of the rule changes at all with this size. */
    public boolean matters() {
        return most.orElse(Double.NaN) - least.orElse(Double.NaN) > Tolerance.COINCIDENT;
    }

    /** What each size does to a rule. */
    public static Sheet sheet(Optional<List<WhyNot>> why) {
        return Sheet.of("why", "WHAT EACH SIZE DOES TO IT, alone", why.orElse(List.of()))
                .name("key", "size", WhyNot::key)
                .words("now", "now", WhyNot::now)
                .figureIf("least", "least", one -> one.rule().figure().told(one.least()))
                .figureIf("most", "most", one -> one.rule().figure().told(one.most()))
                .flag("matters", "it matters", WhyNot::matters)
                .json()
                .wordsIf("meets", "meets it at", WhyNot::meets)
                .amountIf(
                        "turns",
                        "turns at",
                        WhyNot::quantity,
                        one -> one.turning().stream()
                                .mapToDouble(Turning::value)
                                .findFirst())
                .json()
                .sayingIf("places", "turns at", WhyNot::places)
                .names("gives", "then gives", WhyNot::gives)
                .sheet()
                .askedIf(why.isPresent());
    }

    /** The answer to a question why, in one or two sentences. */
    public static List<Phrase> said(List<WhyNot> why) {
        boolean today = why.get(0).today();
        if (why.stream().noneMatch(one -> one.isKnown() || one.meets().isPresent())) {
            return List.of(NO_FIGURE.with("rule", why.get(0).rule().text()));
        }
        List<String> helps = why.stream()
                .filter(one -> one.meets().isPresent())
                .map(one -> one.key() + " " + one.meets().get()
                        + (one.gives().isEmpty() ? "" : " (but then not '" + String.join("', '", one.gives()) + "')"))
                .toList();
        List<Phrase> said = new ArrayList<>();
        if (today) {
            said.add(Phrase.of("'{rule}' is met today.")
                    .with("rule", why.get(0).rule().text()));
        } else {
            said.add(Phrase.of("'{rule}' is not met today; {helps}.")
                    .with("rule", why.get(0).rule().text())
                    .with(
                            "helps",
                            helps.isEmpty()
                                    ? "no size meets it alone"
                                    : "it is met by " + String.join(", or by ", helps)));
        }
        for (WhyNot one : why) {
            said.add(hangs(one));
        }
        return said;
    }

    private static Phrase hangs(WhyNot one) {
        if (!one.matters()) {
            return Phrase.of("It does not hang on {size}.").with("size", one.key());
        }
        return one.places()
                .map(at -> Phrase.of("It turns at {size} {at}.")
                        .with("size", one.key())
                        .with("at", at))
                .orElseGet(() -> Phrase.of("It hangs on {size}.").with("size", one.key()));
    }
}

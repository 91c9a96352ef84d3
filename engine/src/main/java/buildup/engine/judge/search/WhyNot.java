package buildup.engine.judge.search;

import buildup.engine.judge.must.MustRule;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Quantity;
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
 * @param turning where the rule turns nearest to today's size; absent where it never does, or where choices are no sizes
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
        Optional<Turning> turning,
        List<String> gives) {
    /** Copies the list. */
    public WhyNot {
        gives = List.copyOf(gives);
    }

    /** What the size itself counts. */
    Quantity quantity() {
        return turning.map(Turning::quantity).orElse(Quantity.LENGTH);
    }

    /** Whether some choice has the figure of the rule. */
    boolean isKnown() {
        return least.isPresent();
    }

    /** Whether the figure of the rule changes at all with this size. */
    public boolean matters() {
        return most.orElse(Double.NaN) - least.orElse(Double.NaN) > Tolerance.COINCIDENT;
    }
}

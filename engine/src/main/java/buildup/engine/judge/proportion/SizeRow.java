package buildup.engine.judge.proportion;

import buildup.catalog.book.BookRule;
import buildup.profiles.outline.Tolerance;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a rule of the books asks at this size.
 *
 * @param least in; absent when the rule has none
 * @param most in; absent when the rule has none
 * @param has what the stack has, in; absent when it has no such part, or the rule means none
 */
public record SizeRow(BookRule rule, OptionalDouble least, OptionalDouble most, OptionalDouble has) {
    /** How the stack stands to it, in a word; absent when there is nothing to compare. */
    public Optional<String> side() {
        if (has.isEmpty()) {
            return Optional.empty();
        }
        double amount = has.getAsDouble();
        if (least.isPresent() && amount < least.getAsDouble() - Tolerance.SAW_CUT) {
            return Optional.of("under");
        }
        return Optional.of(most.isPresent() && amount > most.getAsDouble() + Tolerance.SAW_CUT ? "over" : "within");
    }
}

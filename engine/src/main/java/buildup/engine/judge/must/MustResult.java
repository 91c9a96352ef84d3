package buildup.engine.judge.must;

import buildup.shared.figure.Quantity;
import buildup.shared.notice.Mark;
import java.util.OptionalDouble;

/**
 * How a stack stands to one line under {@code must:}.
 *
 * @param rule the line as written
 * @param met whether it holds
 * @param quantity of figure and missing
 * @param figure the one that decides; absent when the stack has none of that name
 * @param missing how much is missing, not negative; absent when it is met, or when there is no figure
 * @param spare how much there is to spare; absent when it is not met
 */
public record MustResult(
        String rule,
        Mark mark,
        boolean met,
        Quantity quantity,
        OptionalDouble figure,
        OptionalDouble missing,
        OptionalDouble spare) {}

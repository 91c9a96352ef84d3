package buildup.engine.judge.must;

import buildup.shared.figure.Quantity;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Map;

/**
 * One line under {@code must:}, read.
 *
 * @param text as written
 * @param sources the columns that may be meant, the most likely first
 * @param names what narrows the figure down
 * @param comparison how the figure is held against the value
 * @param value in the unit of the quantity
 * @param within how far it may be off, for {@link Relation#EQUAL}
 */
record MustRule(
        String text,
        Mark mark,
        List<KnownFigures.Source> sources,
        Map<Role, String> names,
        Relation comparison,
        Quantity quantity,
        double value,
        double within) {
    /** How a figure is held against a value. */
    enum Relation {
        AT_MOST("<="),
        AT_LEAST(">="),
        LESS("<"),
        MORE(">"),
        EQUAL("=");

        private final String sign;

        Relation(String sign) {
            this.sign = sign;
        }

        String sign() {
            return sign;
        }
    }

    MustRule {
        sources = List.copyOf(sources);
        names = Map.copyOf(names);
    }
}

package buildup.engine.judge.must;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Quantity;
import buildup.shared.notice.Mark;
import buildup.shared.sheet.Sheet;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One line under {@code must:}, read.
 *
 * @param text as written
 * @param figure that it asks for
 * @param relation how the figure is held against the value
 * @param value in the unit of the quantity
 * @param within how far it may be off, for {@link Relation#EQUAL}
 */
public record MustRule(String text, Mark mark, AskedFigure figure, Relation relation, double value, double within) {
    /** How a figure is held against a value. */
    public enum Relation {
        /** No more than the value. */
        AT_MOST("<="),
        /** No less than it. */
        AT_LEAST(">="),
        /** Less than it. */
        LESS("<"),
        /** More than it. */
        MORE(">"),
        /** As much, within what is allowed. */
        EQUAL("=");

        private final String sign;

        Relation(String sign) {
            this.sign = sign;
        }

        /** As a line writes it. */
        public String sign() {
            return sign;
        }
    }

    /** The same under other words. */
    public MustRule called(String words) {
        return new MustRule(words, mark, figure, relation, value, within);
    }

    Quantity quantity() {
        return figure.quantity();
    }

    /**
     * How a stack stands to it, by the worst of the figures that its words leave.
     *
     * @param sheets of the stack by their keys
     */
    public MustResult on(Function<String, Optional<Sheet>> sheets) {
        return on(figure.of(sheets));
    }

    /**
     * The same by the figures themselves.
     *
     * @param figures that its words leave, infinite where nothing bounds one
     */
    public MustResult on(Collection<Double> figures) {
        if (figures.isEmpty()) {
            return new MustResult(
                    text,
                    mark,
                    false,
                    quantity(),
                    figure.rounding(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
        return figures.stream()
                .map(this::held)
                .reduce((one, other) -> worse(one) >= worse(other) ? one : other)
                .orElseThrow();
    }

    /** How bad: what is missing, or less than 0 by what there is to spare; what nothing bounds is farthest off. */
    private static double worse(MustResult met) {
        return met.met()
                ? -met.spare().orElse(Double.POSITIVE_INFINITY)
                : met.missing().orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether no figure meets both. */
    public boolean contradicts(MustRule other) {
        return figure.asksTheSame(other.figure)
                && (least() > other.most() + Tolerance.COINCIDENT || other.least() > most() + Tolerance.COINCIDENT);
    }

    private double least() {
        return switch (relation) {
            case AT_LEAST, MORE -> value;
            case EQUAL -> value - within;
            default -> Double.NEGATIVE_INFINITY;
        };
    }

    private double most() {
        return switch (relation) {
            case AT_MOST, LESS -> value;
            case EQUAL -> value + within;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    private MustResult held(double figured) {
        double room = switch (relation) {
            case AT_MOST, LESS -> value - figured;
            case AT_LEAST, MORE -> figured - value;
            case EQUAL -> within - Math.abs(figured - value);
        };
        boolean met = switch (relation) {
            case LESS, MORE -> room > Tolerance.COINCIDENT;
            default -> room >= -Tolerance.COINCIDENT;
        };
        return new MustResult(
                text,
                mark,
                met,
                quantity(),
                figure.rounding(),
                finite(figured),
                met ? OptionalDouble.empty() : finite(Math.max(0, -room)),
                met ? finite(Math.max(0, room)) : OptionalDouble.empty());
    }

    private static OptionalDouble finite(double amount) {
        return Double.isFinite(amount) ? OptionalDouble.of(amount) : OptionalDouble.empty();
    }
}

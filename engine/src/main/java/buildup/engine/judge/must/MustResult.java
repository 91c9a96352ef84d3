package buildup.engine.judge.must;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Rounding.Side;
import buildup.shared.figure.Rounding.Step;
import buildup.shared.notice.Mark;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a stack stands to one line under {@code must:}.
 *
 * @param rule the line as written
 * @param met whether it holds
 * @param quantity of figure and missing
 * @param rounding how the sheet of the figure rounds it
 * @param figure the one that decides; absent when none of that name is known, or nothing bounds it
 * @param missing how much is missing, not negative; absent when it is met, or when there is no figure
 * @param spare how much there is to spare; absent when it is not met, or when nothing bounds it
 */
public record MustResult(
        String rule,
        Mark mark,
        boolean met,
        Quantity quantity,
        Rounding rounding,
        OptionalDouble figure,
        OptionalDouble missing,
        OptionalDouble spare) {
    /** So many decimals are enough for whatever is missing. */
    private static final int MOST_PLACES = 6;

    /** Half of the least step of a printed length, in. */
    private static final double HALF_A_STEP = 1.0 / 32;

    /** Whether it is met since nothing bounds the figure. */
    public boolean endless() {
        return met && figure.isEmpty();
    }

    /** The figure as its sheet tells it; finer where that would hide what is missing. */
    public Optional<Figure> told() {
        return printed(figure, quantity == Quantity.LENGTH ? rounding : finer());
    }

    /** What is missing, never printed as nothing. */
    public Optional<Figure> lacks() {
        if (quantity == Quantity.LENGTH) {
            double lacking = missing.orElse(0);
            return printed(
                    missing,
                    lacking >= HALF_A_STEP
                            ? Rounding.NEAREST
                            : lacking >= Tolerance.HALF_A_THOUSANDTH ? Rounding.FINE : Rounding.decimals(MOST_PLACES));
        }
        Rounding finer = finer();
        return printed(missing, finer.side() == Side.DOWN ? finer.to(Side.UP) : finer);
    }

    /** What there is to spare. */
    public Optional<Figure> left() {
        return printed(spare, quantity == Quantity.LENGTH ? Rounding.NEAREST : rounding);
    }

    private Optional<Figure> printed(OptionalDouble amount, Rounding how) {
        return amount.isPresent()
                ? Optional.of(Figure.of(quantity, amount.getAsDouble()).rounded(how))
                : Optional.empty();
    }

    /** As the sheet rounds it, with more decimals where what is missing would be printed as nothing. */
    private Rounding finer() {
        int usual = rounding.step() == Step.DECIMALS ? rounding.places() : quantity.places(false);
        double lacking = missing.orElse(1);
        // in the unit of either kind in which it is the smaller number
        double least = Math.min(quantity.shown(lacking, false), quantity.shown(lacking, true));
        int places = usual;
        while (places < MOST_PLACES && least * Math.pow(10, places) < 0.5) {
            places++;
        }
        return places == usual ? rounding : Rounding.decimals(places).to(rounding.side());
    }
}

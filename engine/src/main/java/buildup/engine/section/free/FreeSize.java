package buildup.engine.section.free;

import buildup.shared.notice.Mark;
import java.util.List;

/**
 * One value of a document that a search may choose.
 *
 * @param place keys and names from the top down with dots between them, as {@code sizes.lip}
 * @param choices as they are typed, at least one
 * @param amounts what they come to, in, or in degrees; empty where the choices are no sizes
 * @param now number of the choice that stands today
 * @param spelling how sizes between the choices are typed
 */
public record FreeSize(
        String place, Mark mark, List<String> choices, List<Double> amounts, int now, SizeSpelling spelling) {
    /** Copies the lists. */
    public FreeSize {
        choices = List.copyOf(choices);
        amounts = List.copyOf(amounts);
    }

    /** Whether its choices lie along a scale, so that what lies between two of them means something too. */
    public boolean scaled() {
        return !amounts.isEmpty();
    }

    /** A size between the choices, as it is typed in their place, to the last bit that counts. */
    public String typed(double amount) {
        return spelling.typed(amount);
    }

    /** The nearest size that can be typed in their place. */
    public double rounded(double amount) {
        return spelling.rounded(amount);
    }

    /**
     * Sizes near one that are short to type: the nearest sixteenth of an inch, then those of two decimals and more in the
     * unit of the size, and last the size itself.
     */
    public List<String> typedNear(double amount) {
        return spelling.typedNear(amount);
    }

    /** How far a choice is from today's; 0 for choices that are no sizes. */
    public double change(int choice) {
        return scaled() ? Math.abs(amounts.get(choice) - amounts.get(now)) : 0;
    }
}

package buildup.engine.judge.bound.form;

import java.util.Map;
import java.util.Optional;

/**
 * What one piece may be, for all choices of the free sizes on which its entry hangs.
 *
 * @param leaveOut the number of the size that says whether it is left out; -1 where none does
 * @param stays the choice of that size with which it stays
 * @param shape the piece by what its entry says of its shape
 * @param rules the piece by what its entry says under each key that places it, {@code at} among them
 */
public record PieceForms(String name, int leaveOut, int stays, Readings shape, Map<String, Readings> rules) {
    /** The piece by what its entry says under a key that places it; absent where it says nothing. */
    public Optional<Readings> rule(String key) {
        return Optional.ofNullable(rules.get(key));
    }

    /** Whether every stack of a box has it. */
    public boolean surely(ChoiceBox box) {
        return leaveOut < 0 || (box.width(leaveOut) == 1 && box.holds(leaveOut, stays));
    }

    /** Whether some stack of a box has it. */
    public boolean maybe(ChoiceBox box) {
        return leaveOut < 0 || box.holds(leaveOut, stays);
    }
}

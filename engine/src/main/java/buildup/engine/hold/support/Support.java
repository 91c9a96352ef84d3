package buildup.engine.hold.support;

import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.LoadPath;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holds a stack.
 *
 * @param balances for each group of pieces that bears on something, where its weight falls and what keeps it
 * @param path how the weight goes to the ground
 * @param loads the user's, as far as they stand on a piece
 * @param friction the coefficient that the document asks for; absent when nothing is to rub
 * @param whole the verdict on the whole stack
 * @param trust what that verdict rests on and the document does not show
 * @param proposed where it does not stand, the least rows of fastenings that hold what falls, tried; none when there are none
 * @param cured whether it stands with all of these
 */
public record Support(
        List<Balance> balances,
        LoadPath path,
        List<Load> loads,
        OptionalDouble friction,
        Whole whole,
        List<Trust> trust,
        List<LeastRow> proposed,
        boolean cured) {
    /** Whether a stack stands. */
    public enum Answer {
        /** By its contacts and fastenings. */
        STANDS("stands"),
        /** Once small gaps have closed: the motion says how far what moves. */
        TRUST("trust"),
        /** It falls, or its loads make it fall. */
        NO("falls");

        private final String word;

        Answer(String word) {
            this.word = word;
        }

        /** In one word. */
        public String word() {
            return word;
        }
    }

    /**
     * The whole stack as rigid bodies.
     *
     * @param loadFactor the greatest by which all user loads may grow together; absent when there are none or when they do
     *     not matter, 0 when the stack falls without them
     * @param times the greatest by which all weights and loads may grow together before a fastening gives; absent when none
     *     matters; at least 1 unless the answer is no
     * @param governs what gives first: under growing loads where they matter, else under growing weights
     * @param underLoad whether it stands without its loads and falls under them
     * @param falls where the answer is no, how it falls: the first motion; then, with that held, the next
     * @param closing where the answer is trust, the motion by which gaps close
     */
    public record Whole(
            Answer answer,
            OptionalDouble loadFactor,
            OptionalDouble times,
            Optional<FirstToGive> governs,
            boolean underLoad,
            List<Fall> falls,
            Optional<Fall> closing) {
        /** Copies the list. */
        public Whole {
            falls = List.copyOf(falls);
        }

        /** Whether it stands, if need be after a small gap has closed. */
        public boolean stands() {
            return answer != Answer.NO;
        }

        /** How many times over it stands: the loads where they matter, else all; absent when nothing limits it. */
        public OptionalDouble factor() {
            return loadFactor.isPresent() ? loadFactor : times;
        }
    }

    /** Copies the lists. */
    public Support {
        balances = List.copyOf(balances);
        loads = List.copyOf(loads);
        trust = List.copyOf(trust);
        proposed = List.copyOf(proposed);
    }

    /** The same with rows of fastenings that hold what falls. */
    Support with(List<LeastRow> rows, boolean stands) {
        return new Support(balances, path, loads, friction, whole, trust, rows, stands);
    }

    /** The groups whose weight and loads fall past their bearing. */
    public List<Balance> leaning() {
        return balances.stream().filter(Balance::leans).toList();
    }

    /** What every figure here leaves out. */
    public static final String LEFT_OUT =
            "Glue, creep, knots and what differs along the run are not counted; contacts only push.";
}

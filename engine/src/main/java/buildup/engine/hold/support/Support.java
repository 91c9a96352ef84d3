package buildup.engine.hold.support;

import java.util.List;
import java.util.Optional;

/**
 * What holds a stack.
 *
 * @param balances for each piece, and for each body that carries others, how what stands there stands
 * @param path how the weight goes to the ground
 * @param loads the user's, as far as they stand on a piece
 * @param whole the verdict on the whole stack; absent while no fastenings are given, since then every hanging piece falls
 */
public record Support(List<Balance> balances, LoadPath path, List<Load> loads, Optional<Verdict> whole) {
    /**
     * The whole stack as rigid bodies.
     *
     * @param stands whether the weights alone have an equilibrium
     * @param factor the greatest by which all user loads may grow together; infinite when they do not matter, 0 when the
     *     stack does not stand
     * @param governs the contact or fastener of which a little more would help most; empty when there is none
     */
    public record Verdict(boolean stands, double factor, String governs) {}

    /** What every figure here leaves out. */
    public static final String LEFT_OUT =
            "Friction, glue, creep, knots and the run beyond one foot are not counted; contacts only push.";

    public Support {
        balances = List.copyOf(balances);
        loads = List.copyOf(loads);
    }
}

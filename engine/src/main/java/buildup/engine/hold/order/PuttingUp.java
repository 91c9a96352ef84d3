package buildup.engine.hold.order;

import java.util.List;
import java.util.Optional;

/**
 * Whether a stack can be put up, and how.
 *
 * @param steps in the order given, a bench unit where its last piece stands
 * @param instead the nearest order that can be put up, when the one given cannot and another can
 * @param proved whether no order nearer to the given one goes
 * @param propped whether in that order some unit goes up before all that carries or backs it
 * @param join the fewest pieces that would have to be joined on the bench first, when no order goes; empty when that is
 *     not known either
 * @param driving one for each row of fastenings
 */
public record PuttingUp(
        List<PutUp> steps,
        Optional<List<Unit>> instead,
        boolean proved,
        boolean propped,
        List<Integer> join,
        List<Driving> driving) {
    /** Copies the lists. */
    public PuttingUp {
        steps = List.copyOf(steps);
        join = List.copyOf(join);
        driving = List.copyOf(driving);
    }

    /** Whether every unit goes in, in the order given. */
    public boolean possible() {
        return steps.stream().allMatch(PutUp::goes);
    }
}

package buildup.engine.room.surface;

import buildup.engine.room.run.Saw;
import java.util.Optional;

/**
 * A sprung molding rolled about its lower back edge until its top has come down by as much as the ceiling has.
 *
 * @param where in the stretch: its ends or the place where the ceiling is lowest
 * @param along from the stretch's left end, in
 * @param down how far its top comes down, in
 * @param spring of it then, degrees from the wall
 * @param projection of its outermost place then, in
 * @param opens how far the top of the flat that lay on the wall then stands off it, in
 * @param drawn, rolled settings of the saw for the cut at that end, flat on the table; absent where that is square, and
 *     between the ends
 */
public record Rolled(
        GapAlong of,
        String where,
        double along,
        double down,
        double spring,
        double projection,
        double opens,
        Optional<Saw.Flat> drawn,
        Optional<Saw.Flat> rolled) {}

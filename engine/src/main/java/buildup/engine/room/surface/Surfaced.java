package buildup.engine.room.surface;

import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The room as it is along the runs of a job.
 *
 * @param gaps one for each stick that comes nearest to a surface that was measured
 * @param ways to take what is not straight
 * @param rolled sprung moldings under a ceiling that is not level along them
 * @param sloped sprung moldings under a ceiling that slopes as it comes out from the wall
 */
public record Surfaced(List<GapAlong> gaps, List<Remedy> ways, List<Rolled> rolled, List<SlopedCrown> sloped) {
    /** Nothing was measured. */
    public static final Surfaced NOTHING = new Surfaced(List.of(), List.of(), List.of(), List.of());

    public Surfaced {
        gaps = List.copyOf(gaps);
        ways = List.copyOf(ways);
        rolled = List.copyOf(rolled);
        sloped = List.copyOf(sloped);
    }

    /** Where a surface comes nearest to the stack, or reaches farthest into it; absent where it stays far from it. */
    public Optional<GapAlong> tightest(Surface surface) {
        return gaps.stream()
                .filter(gap -> gap.surface() == surface && gap.near())
                .min(Comparator.comparingDouble(gap -> gap.least().amount()));
    }

    /** Where the same piece stays farthest from the same surface, of all stretches on which it comes near to it; else itself. */
    public GapAlong widest(GapAlong of) {
        return gaps.stream()
                .filter(gap -> gap.surface() == of.surface() && gap.near())
                .filter(gap ->
                        gap.fit().course().name().equals(of.fit().course().name()))
                .max(Comparator.comparingDouble(gap -> gap.most().amount()))
                .filter(widest -> widest.most().amount() > of.most().amount() + Tolerance.TOUCHING)
                .orElse(of);
    }
}

package buildup.engine.judge.clearance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a stack keeps clear.
 *
 * @param firebox absent when the document names no opening
 * @param fire each piece against each rule; none when the opening lies above the whole stack
 * @param kept each place with the piece that comes nearest, and every piece that comes too near
 */
public record Clearance(Optional<Firebox> firebox, List<FireRow> fire, List<KeepClearRow> kept) {
    /** What stands on everything that is said of fire. */
    public static final String CAUTION = "The local authority and the appliance's label decide.";

    /** Copies the lists. */
    public Clearance {
        fire = List.copyOf(fire);
        kept = List.copyOf(kept);
    }

    /** The row with the least distance to spare of those that some distance would clear. */
    public Optional<FireRow> tightest() {
        return fire.stream()
                .filter(row -> row.spare().isPresent())
                .min(Comparator.comparingDouble(row -> row.spare().orElseThrow()));
    }
}

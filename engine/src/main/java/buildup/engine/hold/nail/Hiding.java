package buildup.engine.hold.nail;

import java.util.List;
import java.util.OptionalInt;

/**
 * What becomes of a head.
 *
 * @param coveredBy the later piece that lies over it
 * @param roomSide whether it sits on the room-side walk of the finished section
 * @param quirk whether it sits in a quirk
 * @param eyes how many eyes were asked
 * @param seenBy names of the eyes that see the spot
 * @param dark whether the spot lies dark under every light that was asked; no when none was
 */
public record Hiding(
        OptionalInt coveredBy, boolean roomSide, boolean quirk, int eyes, List<String> seenBy, boolean dark) {
    public Hiding {
        seenBy = List.copyOf(seenBy);
    }

    /** Best first. */
    public enum Grade {
        COVERED,
        BEHIND,
        QUIRK,
        UNSEEN,
        SHADOW,
        SHOWS
    }

    /** How well the head is hidden, by the best grade that it earns. */
    public Grade grade() {
        if (coveredBy.isPresent()) {
            return Grade.COVERED;
        }
        if (!roomSide) {
            return Grade.BEHIND;
        }
        if (quirk) {
            return Grade.QUIRK;
        }
        if (eyes > 0 && seenBy.isEmpty()) {
            return Grade.UNSEEN;
        }
        return dark ? Grade.SHADOW : Grade.SHOWS;
    }
}

package buildup.engine.section.stack;

import java.util.Optional;

/**
 * The stick a piece is cut from, before it is ripped to fit; inches.
 *
 * @param name the profile as it was asked for, or "section" for a one-off
 * @param profileKind the trade's word for the profile, "section" for a one-off
 * @param rips whether two rules on an axis may cut it to fit: boards and plain blocking
 * @param board whether it is a board of a list
 * @param lying whether its width lies level
 */
public record Stock(
        String name, String profileKind, double thickness, double width, boolean rips, boolean board, boolean lying) {
    /** The same, its width level. */
    Stock laid() {
        return new Stock(name, profileKind, thickness, width, rips, board, true);
    }

    /** Whether the profile is known to be run with its narrow side down. */
    public Optional<String> downIsNarrow() {
        return switch (profileKind) {
            case "crown", "bed", "cove" -> Optional.of(profileKind);
            default -> Optional.empty();
        };
    }
}

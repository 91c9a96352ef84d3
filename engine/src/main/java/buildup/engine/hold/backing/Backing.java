package buildup.engine.hold.backing;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * Where a piece of trim can be nailed.
 *
 * @param body the piece
 * @param stretches the stretches of its straight faces from which a square nail meets a nailer, framing or solid wall
 *     within {@link Backings#REACH} of its far side
 */
public record Backing(int body, List<Stretch> stretches) {
    /** A stretch of a face, behind which {@code by} stands. */
    public record Stretch(int by, Point from, Point to) {}

    public Backing {
        stretches = List.copyOf(stretches);
    }
}

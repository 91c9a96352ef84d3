package buildup.engine.look.sight;

import buildup.profiles.outline.Segment;
import java.util.List;

/**
 * How well a nailer is hidden from one eye.
 *
 * @param body the nailer
 * @param exposed length of its stretches on the room-side walk and of what the eye sees of it beyond, in
 * @param visible the parts of them from which the straight line to the eye meets nothing
 * @param cures changes of one piece that hide all of it, the smallest first; empty when nothing shows, or nothing that
 *     stands before it could
 */
public record Coverage(int body, double exposed, List<Segment> visible, List<Edge> cures) {
    /**
     * Moving an edge of one piece until it just hides the nailer.
     *
     * @param body the piece
     * @param from height of its hiding arris now, in
     * @param to the height that hides, in
     */
    public record Edge(int body, double from, double to) {
        /** How far the edge moves, in. */
        public double move() {
            return Math.abs(to - from);
        }
    }

    public Coverage {
        visible = List.copyOf(visible);
        cures = List.copyOf(cures);
    }

    /** The length of what the eye sees of the nailer, in. */
    public double seen() {
        return visible.stream().mapToDouble(Segment::length).sum();
    }

    /** 1 - seen / exposed; 1 when nothing is exposed. */
    public double hiddenShare() {
        return exposed > 0 ? 1 - seen() / exposed : 1;
    }
}

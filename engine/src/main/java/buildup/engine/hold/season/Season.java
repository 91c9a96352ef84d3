package buildup.engine.hold.season;

import buildup.shared.notice.Mark;
import java.util.Optional;

/**
 * A time of the year, or of the work, that the wood lives through.
 *
 * @param moisture of the wood then, % of its dry weight
 * @param air from which it was worked out; absent when the document gives the moisture itself
 */
public record Season(String name, double moisture, Optional<Air> air, Mark mark) {
    /** The handbook's coefficients of change hold between these, %. */
    static final double LEAST = 6;

    static final double MOST = 14;

    /** Whether the coefficients hold as they are listed. */
    boolean usual() {
        return moisture >= LEAST && moisture <= MOST;
    }
}

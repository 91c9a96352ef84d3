package buildup.shared.notice;

import buildup.shared.text.Nearest;
import java.util.Collection;
import java.util.Optional;

/**
 * The cure for a name that is not known. Lengths need it too, and notices stand on lengths, so the work is done in
 * {@link Nearest}.
 */
public final class Suggestion {

    private Suggestion() {}

    /** The known name nearest to the one asked, if any is near enough to be meant. */
    public static Optional<String> nearest(String asked, Collection<String> known) {
        return Nearest.to(asked, known);
    }

    /** One sentence: {@code Did you mean X?}, else the known names in alphabet order. */
    public static String cure(String asked, Collection<String> known) {
        return Nearest.cure(asked, known);
    }
}

package buildup.shared.notice;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.text.Nearest;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The cure for a name that is not known. Lengths need it too, and notices stand on lengths, so the work is done in
 * {@link Nearest}.
 */
public final class Suggestion {

    /** More names than this in one line help nobody. */
    private static final int MOST_LISTED = 12;

    private static final Phrase MEANT = Phrase.of("Did you mean {name}?");
    private static final Phrase KNOWN = Phrase.of("Known here: {names}.");
    private static final Phrase KNOWN_AND_MORE = Phrase.of("Known here: {names} and {more} more.");
    private static final Phrase TAKE_IT_OUT = Phrase.of("Take it out.");

    private Suggestion() {}

    /** The known name nearest to the one asked, if any is near enough to be meant. */
    public static Optional<String> nearest(String asked, Collection<String> known) {
        return Nearest.to(asked, known);
    }

    /** One sentence: {@code Did you mean X?}, else the known names in alphabet order. */
    public static Phrase phrase(String asked, Collection<String> known) {
        return nearest(asked, known)
                .map(name -> MEANT.with("name", name))
                .orElseGet(() -> known.isEmpty() ? TAKE_IT_OUT : listed(new TreeSet<>(known)));
    }

    private static Phrase listed(Collection<String> known) {
        List<Text> names = known.stream().limit(MOST_LISTED).map(Text::new).toList();
        int more = known.size() - MOST_LISTED;
        return more > 0
                ? KNOWN_AND_MORE.with("names", Listing.commas(names)).with("more", Figure.count(more))
                : KNOWN.with("names", Listing.commas(names));
    }

    /** The words of {@link #phrase}. */
    public static String cure(String asked, Collection<String> known) {
        return Nearest.cure(asked, known);
    }
}

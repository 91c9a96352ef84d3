package buildup.catalog;

import buildup.catalog.entry.CatalogNotices;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.notice.Suggestion;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The cure for a name that the catalog does not hold. */
final class NearNames {

    /** More guesses than this are a list, not a guess. */
    private static final int MOST_GUESSES = 8;

    private NearNames() {}

    /**
     * One sentence: what there is of the kind asked for, else the name that was probably mistyped, else those that hold
     * the word asked for, else what is known.
     *
     * @param kinds known names, each with its kind
     */
    static Phrase cure(String asked, Map<String, String> kinds) {
        String low = asked.toLowerCase(Locale.ROOT);
        List<String> ofKind = matching(kinds, name -> low.equals(kinds.get(name)));
        List<String> mistyped =
                Suggestion.nearest(low, kinds.keySet()).map(List::of).orElse(List.of());
        List<String> holding = low.isEmpty() ? List.of() : matching(kinds, name -> name.contains(low));
        return Stream.of(ofKind, mistyped, holding)
                .filter(names -> !names.isEmpty())
                .findFirst()
                .map(NearNames::question)
                .orElseGet(() -> Suggestion.phrase(asked, kinds.keySet()));
    }

    private static List<String> matching(Map<String, String> kinds, Predicate<String> chosen) {
        return kinds.keySet().stream()
                .filter(chosen)
                .sorted()
                .limit(MOST_GUESSES)
                .toList();
    }

    private static Phrase question(List<String> names) {
        return names.size() == 1
                ? CatalogNotices.MEANT.with("name", names.get(0))
                : CatalogNotices.MEANT_ONE_OF.with(
                        "names", Listing.commas(names.stream().map(Text::new).toList()));
    }
}

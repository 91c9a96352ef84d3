package buildup.shared.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The known word nearest to a mistyped one. */
public final class Nearest {

    /** More slips than this in one word, or than a third of its letters, and a guess would only mislead. */
    private static final int MOST_SLIPS = 3;

    /** Nobody mistypes a longer name; keeps the comparison short on hostile input. */
    private static final int LONGEST_WORD = 60;

    /** Shorter parts of a word say nothing of what was meant. */
    private static final int LEAST_PART = 3;

    /** More names than this in one line help nobody. */
    private static final int MOST_LISTED = 12;

    private Nearest() {}

    /**
     * The known word with the fewest slips (a letter too many, missing, wrong, or two swapped; case does not count), if
     * few enough; among equals the first in alphabet order, so that the order of {@code known} does not matter. Before two
     * slips comes the one word that holds what was asked whole: an eastern-white-pine is called white-pine, and is no
     * white-fir.
     */
    public static Optional<String> to(String asked, Collection<String> known) {
        String low = asked.toLowerCase(Locale.ROOT);
        Optional<String> fewest = fewest(asked, known);
        return fewest.filter(word -> slips(low, word.toLowerCase(Locale.ROOT)) <= 1)
                .or(() -> holding(low, known))
                .or(() -> fewest);
    }

    /** The only word of which some parts, as blanks and hyphens divide it, are the very ones asked for: two, since one says little. */
    private static Optional<String> holding(String low, Collection<String> known) {
        List<String> parts = parts(low);
        List<String> all = known.stream()
                .filter(word -> word.length() <= LONGEST_WORD)
                .filter(word ->
                        parts.size() > 1 && parts(word.toLowerCase(Locale.ROOT)).containsAll(parts))
                .distinct()
                .toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static List<String> parts(String words) {
        return words.length() > LONGEST_WORD
                ? List.of()
                : Stream.of(words.split("[ _-]+"))
                        .filter(part -> part.length() >= LEAST_PART)
                        .toList();
    }

    private static Optional<String> fewest(String asked, Collection<String> known) {
        String low = asked.toLowerCase(Locale.ROOT);
        record Guess(String word, int slips) {}
        return known.stream()
                .filter(word -> Math.max(word.length(), asked.length()) <= LONGEST_WORD)
                .filter(word -> Math.abs(word.length() - asked.length()) <= MOST_SLIPS)
                .map(word -> new Guess(word, slips(low, word.toLowerCase(Locale.ROOT))))
                .filter(guess -> guess.slips() <= allowed(asked, guess.word()))
                .min(Comparator.comparingInt(Guess::slips).thenComparing(Guess::word))
                .map(Guess::word);
    }

    /** One sentence: {@code Did you mean X?}, else the known names in alphabet order. */
    public static String cure(String asked, Collection<String> known) {
        return to(asked, known)
                .map(name -> "Did you mean " + name + "?")
                .orElseGet(() -> known.isEmpty() ? "Take it out." : listed(new TreeSet<>(known)));
    }

    private static String listed(Collection<String> known) {
        String names = String.join(", ", known.stream().limit(MOST_LISTED).toList());
        int more = known.size() - MOST_LISTED;
        return "Known here: " + names + (more > 0 ? " and " + more + " more." : ".");
    }

    private static int allowed(String asked, String word) {
        int letters = Math.max(asked.length(), word.length());
        return letters < 2 ? 0 : Math.min(MOST_SLIPS, Math.max(1, letters / 3));
    }

    /** Damerau-Levenshtein distance, each pair of letters swapped at most once. */
    private static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}

package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Map;
import java.util.function.Predicate;

/** Takes away from a question what its fault does not need: words, lines, then ever smaller stretches of its documents. */
final class Minimizer {
    /** Questions that are asked for one finding; the smallest until then is kept. */
    private static final int MOST_TRIES = 1500;

    private final Predicate<Asked> faulty;
    private int tries;

    private Minimizer(Predicate<Asked> faulty) {
        this.faulty = faulty;
    }

    /** A smaller question with the same fault. */
    static Asked smallest(Asked asked, Predicate<Asked> faulty) {
        return new Minimizer(faulty).smaller(asked);
    }

    private Asked smaller(Asked asked) {
        Asked best = asked;
        for (int word = best.words().size() - 1; word > 0; word--) {
            Asked fewer = best.without(word);
            best = is(fewer) ? fewer : best;
        }
        for (Map.Entry<String, byte[]> part : asked.parts().entrySet()) {
            best = lines(best, part.getKey());
            best = stretches(best, part.getKey());
        }
        return best;
    }

    private boolean is(Asked asked) {
        tries++;
        return tries < MOST_TRIES && faulty.test(asked);
    }

    private static String text(Asked asked, String part) {
        return new String(asked.parts().get(part), ISO_8859_1);
    }

    private Asked lines(Asked asked, String part) {
        Asked best = asked;
        int from = 0;
        while (from < text(best, part).length()) {
            String text = text(best, part);
            int end = text.indexOf('\n', from) + 1;
            end = end == 0 ? text.length() : end;
            Asked fewer = best.with(part, (text.substring(0, from) + text.substring(end)).getBytes(ISO_8859_1));
            if (is(fewer)) {
                best = fewer;
            } else {
                from = end;
            }
        }
        return best;
    }

    private Asked stretches(Asked asked, String part) {
        Asked best = asked;
        for (int length = Math.max(1, text(best, part).length() / 2); length > 0; length /= 2) {
            int from = 0;
            while (from < text(best, part).length()) {
                String text = text(best, part);
                int end = Math.min(text.length(), from + length);
                Asked fewer = best.with(part, (text.substring(0, from) + text.substring(end)).getBytes(ISO_8859_1));
                if (is(fewer)) {
                    best = fewer;
                } else {
                    from = end;
                }
            }
        }
        return best;
    }
}

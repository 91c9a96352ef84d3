package buildup.cli.drawing.draft;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Gives names that are safe in any file format: small Latin letters, figures and hyphens; no two alike. */
final class Slugs {
    private static final int LONGEST = 60;

    private final Set<String> given = new HashSet<>();

    String next(String name) {
        String slug = slug(name);
        String free = slug;
        for (int number = 2; !given.add(free); number++) {
            free = slug + "-" + number;
        }
        return free;
    }

    /** Accents fall away; any other foreign character is written as u and its number, so that names stay apart. */
    private static String slug(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        StringBuilder slug = new StringBuilder();
        boolean gap = false;
        for (int c : plain.codePoints().toArray()) {
            if (Character.getType(c) == Character.NON_SPACING_MARK) {
                continue;
            }
            boolean latin = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
            if (!latin && !Character.isLetterOrDigit(c)) {
                gap = !slug.isEmpty();
                continue;
            }
            slug.append(gap ? "-" : "").append(latin ? Character.toString(c) : "u" + Integer.toHexString(c));
            gap = false;
        }
        if (slug.isEmpty()) {
            return "unnamed";
        }
        return slug.length() <= LONGEST ? slug.toString() : slug.substring(0, LONGEST);
    }
}

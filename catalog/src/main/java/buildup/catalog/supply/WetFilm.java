package buildup.catalog.supply;

import buildup.shared.length.Length;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far a liquid goes, as the film that it leaves while it is wet: a volume spread over an area, so that 400 ft2/gal is 231 / (400 x 144) = 0.0040 in of it.
 *
 * @param thickness while it is wet
 */
public record WetFilm(Length thickness) {
    private static final double GALLON = 231;
    private static final double FOOT = 144;
    private static final Pattern SPREAD = Pattern.compile("(\\d{1,5}(?:\\.\\d{1,9})?) ?(ft2/gal|ft2/qt|m2/l)");

    /** An area for each volume, as {@code 400 ft2/gal} or {@code 10 m2/L}; nothing when it is none, or no area. */
    public static Optional<WetFilm> read(String text) {
        Matcher spread = SPREAD.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!spread.matches() || Double.parseDouble(spread.group(1)) <= 0) {
            return Optional.empty();
        }
        double many = Double.parseDouble(spread.group(1));
        return Optional.of(new WetFilm(
                switch (spread.group(2)) {
                    case "ft2/gal" -> Length.inches(GALLON / (many * FOOT));
                    case "ft2/qt" -> Length.inches(GALLON / 4 / (many * FOOT));
                    default -> Length.millimeters(1 / many);
                }));
    }
}

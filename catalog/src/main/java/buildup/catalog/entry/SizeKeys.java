package buildup.catalog.entry;

import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.length.Length;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Reads the sizes that an entry must have.
 *
 * @param fields of the entry
 * @param name of the entry
 * @param missing what is said of a key that is not there
 * @param wrong said of a size that is not sound; takes {@code key} and {@code size}
 */
public record SizeKeys(Fields fields, String name, Function<String, Notice> missing, Kind wrong, Notices notices) {
    /** Whether a size is more than 0 and no larger than that. */
    public static Predicate<Length> upTo(Length most) {
        return length -> length.isPositive() && length.compareTo(most) <= 0;
    }

    /** The size under a key; nothing, and said so, when the key is missing or the size is not sound. */
    public Optional<Length> one(String key, Predicate<Length> sound) {
        if (!fields.needs(key, missing.apply(key))) {
            return Optional.empty();
        }
        Optional<Length> size = fields.length(key);
        size.filter(sound.negate()).ifPresent(length -> refuse(key, key, Sizes.figure(length)));
        return size.filter(sound);
    }

    /**
     * The sound sizes of a list, the least first; the others are refused one by one.
     *
     * @param single what one of them is called
     * @param none said when the key is missing
     */
    public List<Length> several(String key, String single, Notice none, Predicate<Length> sound) {
        List<Length> sizes = new ArrayList<>();
        for (Scalar text : fields.scalars(key)) {
            Optional<Length> size = fields.readLength(text);
            size.filter(sound.negate()).ifPresent(length -> refuse(key, single, new Text(text.text())));
            size.filter(sound).ifPresent(sizes::add);
        }
        fields.needs(key, none);
        sizes.sort(Comparator.naturalOrder());
        return sizes;
    }

    private void refuse(String key, String called, Value size) {
        notices.add(wrong.with("key", called)
                .with("size", size)
                .at(fields.mark(key))
                .of(name));
    }

    /** Said of a missing size where its key says enough. */
    public static Notice aLength(String key) {
        return CatalogNotices.MISSING_KEY.with("key", key).with("what", CatalogNotices.A_LENGTH);
    }
}

package buildup.catalog.wood;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How the growth rings lie in a board: which of its sides moves the more. */
public enum Sawn {
    /** Rings along the width: the width moves tangentially, the thickness radially. */
    FLAT,
    /** Rings through the thickness: the width moves radially, the thickness tangentially. */
    QUARTERED;

    /** As documents write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The one of that word, if there is one. */
    public static Optional<Sawn> named(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }
}

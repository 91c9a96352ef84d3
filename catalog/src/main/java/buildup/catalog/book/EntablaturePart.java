package buildup.catalog.book;

import java.util.Locale;

/** The three parts of an entablature, from below. */
public enum EntablaturePart {
    ARCHITRAVE,
    FRIEZE,
    CORNICE;

    /** Its word in documents and reports. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

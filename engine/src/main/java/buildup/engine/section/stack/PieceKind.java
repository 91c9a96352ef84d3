package buildup.engine.section.stack;

import java.util.Locale;

/** What a piece is to the stack. */
public enum PieceKind {
    /** Meant to be seen. */
    TRIM,
    /** Hidden blocking: counts as wood and weight, not as trim. */
    NAILER,
    /** Already standing: carries and backs, is drawn, and is in no total. */
    FRAMING;

    /** The word of the stack language. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

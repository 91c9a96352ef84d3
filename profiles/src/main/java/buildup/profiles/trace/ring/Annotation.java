package buildup.profiles.trace.ring;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Layers whose names say that they hold what is written about a drawing, and not what is drawn: the words of the US
 * National CAD Standard for annotation (ANNO with DIMS, LEGN, NOTE, SYMB, TEXT, TTLB; from memory), and the same in full.
 */
final class Annotation {
    private static final Set<String> WORDS = Set.of(
            "ANNO",
            "ANNOTATION",
            "ANNOTATIONS",
            "DIM",
            "DIMS",
            "DIMENSION",
            "DIMENSIONS",
            "LEGEND",
            "LEGN",
            "LETTERS",
            "LIST",
            "NOTE",
            "NOTES",
            "SYMB",
            "SYMBOLS",
            "TEXT",
            "TEXTS",
            "TITLE",
            "TTLB");

    private Annotation() {}

    /** Whether a line stands on such a layer or in such a group. */
    static boolean holds(Run run) {
        return run.layers().stream().anyMatch(Annotation::isMeant);
    }

    /** The lines that stand on no such layer; all of them when all do. */
    static List<Run> without(List<Run> runs) {
        List<Run> drawn = runs.stream().filter(run -> !holds(run)).toList();
        return drawn.isEmpty() ? runs : drawn;
    }

    private static boolean isMeant(String layer) {
        return Arrays.stream(layer.toUpperCase(Locale.ROOT).split("[^\\p{L}]+")).anyMatch(WORDS::contains);
    }
}

package buildup.engine.judge.must;

import buildup.shared.sheet.Column;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Set;

/** The words of a line that narrow a figure down, and the identity columns that each of them is about. */
enum Role {
    /** {@code of frieze}: the piece, or the row by its own name, as {@code of apron nails}. */
    OF("of", List.of("piece", "name", "on", "a", "what", "figure", "part", "surface", "fastening", "row", "course")),
    /** {@code .face} behind a piece: its member. */
    MEMBER(".", List.of("member")),
    /** {@code over frieze}: the second piece. */
    OVER("over", List.of("over", "b", "stretch")),
    /** {@code in raking}: a light, a season, a rule or an order. */
    IN("in", List.of("light", "season", "rule", "order")),
    /** {@code from seated}: an eye. */
    FROM("from", List.of("eye"));

    /** Columns that tell of a row to which piece it belongs, where it is known by another name. */
    private static final Set<String> PIECES = Set.of("piece", "course");

    private final String word;
    private final List<String> keys;

    Role(String word, List<String> keys) {
        this.word = word;
        this.keys = keys;
    }

    /** The word before the name. */
    String word() {
        return word;
    }

    /**
     * The keys of the columns of a sheet that this word is about: a name may stand in any of them. What is only offered is
     * asked for by what its rows are known by.
     */
    List<String> columns(Sheet sheet) {
        return keys.stream()
                .filter(key -> sheet.columns().stream()
                        .anyMatch(column -> column.key().equals(key)
                                && (column.name() || (PIECES.contains(key) && this == OF && !column.offered()))))
                .toList();
    }

    /** Whether a column is about this word, be it part of what a row is known by or not. */
    boolean is(Column column) {
        return keys.contains(column.key());
    }
}

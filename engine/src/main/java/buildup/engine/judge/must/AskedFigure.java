package buildup.engine.judge.must;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A figure of the sheets that a line asks for, with the names that narrow it down. */
public final class AskedFigure {
    private final KnownFigures.Source source;
    private final Map<Role, String> names;
    private final Map<String, String> named;

    AskedFigure(KnownFigures.Source source, Map<Role, String> names) {
        this.source = source;
        this.names = Map.copyOf(names);
        Map<String, String> byColumn = new HashMap<>();
        names.forEach((role, name) -> role.column(source.sheet()).ifPresent(key -> byColumn.put(key, name)));
        this.named = Map.copyOf(byColumn);
    }

    KnownFigures.Source source() {
        return source;
    }

    Map<Role, String> names() {
        return names;
    }

    /** The key of the sheet in which it stands. */
    public String sheet() {
        return source.sheet().key();
    }

    /** The key of its column. */
    public String column() {
        return source.column().key();
    }

    /** The names that narrow it down, by the keys of their columns. */
    public Map<String, String> named() {
        return named;
    }

    /** A sheet like the one in which it stands, without rows: that of a stack which was not asked. */
    public Sheet none() {
        Sheet own = source.sheet();
        return new Sheet(own.key(), own.title(), own.single(), false, own.columns(), List.of(), own.tables());
    }

    /** Whether another asks for the same. */
    boolean asksTheSame(AskedFigure other) {
        return sheet().equals(other.sheet())
                && source.column().key().equals(other.source.column().key())
                && source.inner().equals(other.source.inner())
                && names.equals(other.names);
    }

    /** What it counts. */
    public Quantity quantity() {
        return source.quantity();
    }

    /** How its sheet rounds it. */
    Rounding rounding() {
        return source.rounding();
    }

    /** An amount of it as its sheet tells it. */
    public Optional<Figure> told(OptionalDouble amount) {
        return amount.isPresent()
                ? Optional.of(Figure.of(quantity(), amount.getAsDouble()).rounded(rounding()))
                : Optional.empty();
    }

    /** Whether a row of its sheet is one that its words speak of. */
    boolean speaksOf(Row row) {
        return source.goesBy(row, names);
    }

    /**
     * The figures that the words leave, those of one name added where they add up; none when the stack has none.
     *
     * @param sheet of any stack, with the columns of the one in which the figure was found
     */
    public Collection<Double> of(Sheet sheet) {
        Map<List<String>, Double> found = new LinkedHashMap<>();
        int number = 0;
        for (Row row : sheet.rows()) {
            OptionalDouble figure = source.of(row);
            if (figure.isPresent() && source.goesBy(row, names)) {
                List<String> key = source.adds() ? sheet.names(row) : List.of(String.valueOf(number++));
                found.merge(key, figure.getAsDouble(), Double::sum);
            }
        }
        return found.isEmpty() && source.noneWithoutRow(sheet, names) && sheet.asked() ? List.of(0.0) : found.values();
    }
}

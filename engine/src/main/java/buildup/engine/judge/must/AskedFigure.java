package buildup.engine.judge.must;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A figure of the sheets that a line asks for, with the names that narrow it down. */
public final class AskedFigure {
    /** Where it stands: in one column, or, where the words do not say in which, in several. */
    private final List<KnownFigures.Source> sources;

    private final Map<Role, String> names;
    private final Map<String, String> named;

    /** @param sources at least one, all of one quantity */
    AskedFigure(List<KnownFigures.Source> sources, Map<Role, String> names) {
        this.sources = List.copyOf(sources);
        this.names = Map.copyOf(names);
        Map<String, String> byColumn = new HashMap<>();
        names.forEach((role, name) ->
                role.columns(source().sheet()).stream().findFirst().ifPresent(key -> byColumn.put(key, name)));
        this.named = Map.copyOf(byColumn);
    }

    /** The column in which it stands, the first of several. */
    KnownFigures.Source source() {
        return sources.get(0);
    }

    Map<Role, String> names() {
        return names;
    }

    /** The key of the sheet in which it stands, the first of several. */
    public String sheet() {
        return source().sheet().key();
    }

    /** The key of its column in that sheet. */
    public String column() {
        return source().column().key();
    }

    /** Whether it stands in several columns, of which the worst counts. */
    public boolean several() {
        return sources.size() > 1;
    }

    /** The names that narrow it down, by the keys of their columns in the first sheet. */
    public Map<String, String> named() {
        return named;
    }

    /** The sheet of that key, without rows: that of a stack which was not asked. */
    private static Sheet none(Sheet own) {
        return new Sheet(
                own.key(),
                own.title(),
                own.single(),
                false,
                own.columns().stream()
                        .map(column -> new Column(
                                column.key(), column.heading(), column.type(), column.shown(), column.traits()))
                        .toList(),
                List.of(),
                own.tables());
    }

    /** Whether another asks for the same. */
    boolean asksTheSame(AskedFigure other) {
        return keys().equals(other.keys()) && names.equals(other.names);
    }

    private List<List<String>> keys() {
        return sources.stream()
                .map(source -> List.of(
                        source.sheet().key(),
                        source.column().key(),
                        source.inner().toString()))
                .toList();
    }

    /** What it counts. */
    public Quantity quantity() {
        return source().quantity();
    }

    /** How its sheet rounds it. */
    Rounding rounding() {
        return source().rounding();
    }

    /** An amount of it as its sheet tells it. */
    public Optional<Figure> told(OptionalDouble amount) {
        return amount.isPresent()
                ? Optional.of(Figure.of(quantity(), amount.getAsDouble()).rounded(rounding()))
                : Optional.empty();
    }

    /** Whether a row of its sheet is one that its words speak of. */
    boolean speaksOf(Row row) {
        return source().goesBy(row, names);
    }

    /** The figures that the words leave in the stack in whose sheets they were looked up. */
    Collection<Double> here() {
        return figures(KnownFigures.Source::sheet);
    }

    /**
     * The figures that the words leave: 0 alone where the stack has none of the thing, infinite where nothing bounds it, and
     * no figure where none is known.
     *
     * @param sheets of any stack by their keys, with the columns of those in which the figure was found; absent for one
     *     that was not asked
     */
    public Collection<Double> of(Function<String, Optional<Sheet>> sheets) {
        return figures(source -> sheets.apply(source.sheet().key()).orElseGet(() -> none(source.sheet())));
    }

    private Collection<Double> figures(Function<KnownFigures.Source, Sheet> sheets) {
        List<Double> found = new ArrayList<>();
        boolean rows = false;
        boolean none = false;
        for (KnownFigures.Source source : sources) {
            Sheet sheet = sheets.apply(source);
            for (Row row : sheet.rows()) {
                if (source.goesBy(row, names)) {
                    rows = true;
                    source.of(row).ifPresent(found::add);
                }
            }
            none |= source.noneWithoutRow(sheet, names);
        }
        return !rows && none ? List.of(0.0) : found;
    }
}

package buildup.shared.sheet;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.sheet.Column.Shown;
import buildup.shared.sheet.Column.Trait;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * A sheet under construction: columns are named one after the other, each with what it takes from a row. A column whose
 * method ends in {@code If} may leave cells empty, and an infinite number does; of the others the schema says that they
 * are always there.
 *
 * @param <T> what a row is made from
 */
public final class Columns<T> {
    /** A blank at which a line does not end. */
    private static final String TOGETHER = "\u00A0";

    private final String key;
    private final Phrase title;
    private final boolean single;
    private final List<T> items;
    private final List<Column> columns = new ArrayList<>();
    private final List<Function<T, Cell>> takers = new ArrayList<>();
    private final List<Layout> tables = new ArrayList<>();
    private boolean silent;

    Columns(String key, Phrase title, boolean single, List<T> items) {
        this.key = key;
        this.title = title;
        this.single = single;
        this.items = List.copyOf(items);
    }

    /** Words that are part of what a row is known by. */
    public Columns<T> name(String columnKey, String heading, Function<T, String> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Words())
                        .and(Trait.ALWAYS)
                        .and(Trait.NAME),
                words(taker));
    }

    /** The same where some rows do without. */
    public Columns<T> nameIf(String columnKey, String heading, Function<T, Optional<String>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Words()).and(Trait.NAME),
                words(taker.andThen(found -> found.orElse(""))));
    }

    /** Words; where they may be empty, {@link #wordsIf}. */
    public Columns<T> words(String columnKey, String heading, Function<T, String> taker) {
        return add(Column.of(columnKey, heading, new Type.Words()).and(Trait.ALWAYS), words(taker));
    }

    /** Words that may not be there. */
    public Columns<T> wordsIf(String columnKey, String heading, Function<T, Optional<String>> taker) {
        return add(Column.of(columnKey, heading, new Type.Words()), words(taker.andThen(found -> found.orElse(""))));
    }

    /** A sentence for people. */
    public Columns<T> saying(String columnKey, String heading, Function<T, Phrase> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Saying())
                        .and(Trait.ALWAYS)
                        .shownTo(Shown.TEXT),
                row -> new Cell.Saying(taker.apply(row)));
    }

    /** A sentence for people that may not be there. */
    public Columns<T> sayingIf(String columnKey, String heading, Function<T, Optional<Phrase>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Saying()).shownTo(Shown.TEXT),
                row -> taker.apply(row).<Cell>map(Cell.Saying::new).orElse(Cell.NONE));
    }

    /** A figure that brings its quantity with it, and may not be there. */
    public Columns<T> figureIf(String columnKey, String heading, Function<T, Optional<Figure>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Amount(false)),
                row -> taker.apply(row).map(Columns::any).orElse(Cell.NONE));
    }

    /** A figure that brings its quantity with it, or words. */
    public Columns<T> value(String columnKey, String heading, Function<T, Value> taker) {
        return add(Column.of(columnKey, heading, new Type.Amount(true)), row -> any(taker.apply(row)));
    }

    private static Cell any(Value value) {
        if (value instanceof Figure figure) {
            return Double.isFinite(figure.amount()) ? new Cell.Amount(figure) : Cell.NONE;
        }
        return value instanceof Text text && !text.words().isEmpty() ? new Cell.Words(text.words()) : Cell.NONE;
    }

    /** Several sentences, for people and, in the unit of the document, for programs. */
    public Columns<T> sayings(String columnKey, String heading, Function<T, List<Phrase>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Sayings()).and(Trait.ALWAYS),
                row -> new Cell.Sayings(taker.apply(row)));
    }

    /** Yes or no. */
    public Columns<T> flag(String columnKey, String heading, Function<T, Boolean> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Flag()).and(Trait.ALWAYS),
                row -> new Cell.Flag(taker.apply(row)));
    }

    /** Yes or no, where it can be asked. */
    public Columns<T> flagIf(String columnKey, String heading, Function<T, Optional<Boolean>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Flag()),
                row -> taker.apply(row).<Cell>map(Cell.Flag::new).orElse(Cell.NONE));
    }

    /** A length to the nearest shop size. */
    public Columns<T> length(String columnKey, String heading, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, Quantity.LENGTH, taker);
    }

    /** A length that may not be there. */
    public Columns<T> lengthIf(String columnKey, String heading, Function<T, OptionalDouble> taker) {
        return measureIf(columnKey, heading, Quantity.LENGTH, Rounding.NEAREST, taker);
    }

    /** A length in thousandths. */
    public Columns<T> fine(String columnKey, String heading, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, Quantity.LENGTH, Rounding.FINE, taker);
    }

    /** A figure to the nearest usual step. */
    public Columns<T> measure(String columnKey, String heading, Quantity quantity, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, quantity, Rounding.NEAREST, taker);
    }

    /** A figure rounded in its own way. */
    public Columns<T> measure(
            String columnKey, String heading, Quantity quantity, Rounding rounding, ToDoubleFunction<T> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Measure(quantity, rounding))
                        .and(Trait.ALWAYS),
                row -> number(OptionalDouble.of(taker.applyAsDouble(row))));
    }

    /** A figure that may not be there, or be infinite. */
    public Columns<T> measureIf(
            String columnKey, String heading, Quantity quantity, Rounding rounding, Function<T, OptionalDouble> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Measure(quantity, rounding)), row -> number(taker.apply(row)));
    }

    private static Cell number(OptionalDouble amount) {
        return amount.isPresent() && Double.isFinite(amount.getAsDouble())
                ? new Cell.Decimal(amount.getAsDouble())
                : amount.isPresent() && !Double.isNaN(amount.getAsDouble()) ? new Cell.None(amount) : Cell.NONE;
    }

    /** What an empty cell of the last column stands for where a rule asks for a number. */
    public Columns<T> standsFor(Function<T, OptionalDouble> means) {
        int at = takers.size() - 1;
        Function<T, Cell> taker = takers.get(at);
        takers.set(at, row -> {
            Cell cell = taker.apply(row);
            return cell.equals(Cell.NONE) ? new Cell.None(means.apply(row)) : cell;
        });
        return this;
    }

    /** An empty cell of the last column stands for none where a rule asks for a number. */
    public Columns<T> emptyIsNone() {
        return standsFor(row -> OptionalDouble.of(0));
    }

    /** A figure whose quantity differs from row to row, and that may not be there. */
    public Columns<T> amountIf(
            String columnKey, String heading, Function<T, Quantity> quantity, Function<T, OptionalDouble> taker) {
        return figureIf(columnKey, heading, row -> {
            OptionalDouble amount = taker.apply(row);
            return amount.isPresent()
                    ? Optional.of(Figure.of(quantity.apply(row), amount.getAsDouble()))
                    : Optional.empty();
        });
    }

    /** A whole number of things. */
    public Columns<T> count(String columnKey, String heading, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, Quantity.COUNT, taker);
    }

    /** A point: two columns where people read it, {@code [x, y]} for programs. */
    public Columns<T> place(String columnKey, String heading, ToDoubleFunction<T> x, ToDoubleFunction<T> y) {
        return add(
                Column.of(columnKey, heading, new Type.Place()).and(Trait.ALWAYS),
                row -> new Cell.Place(x.applyAsDouble(row), y.applyAsDouble(row)));
    }

    /** A point that may not be there. */
    public Columns<T> placeIf(String columnKey, String heading, Function<T, Optional<Cell.Place>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Place()),
                row -> taker.apply(row).<Cell>map(found -> found).orElse(Cell.NONE));
    }

    /** Several names. */
    public Columns<T> names(String columnKey, String heading, Function<T, List<String>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Names()).and(Trait.ALWAYS),
                row -> new Cell.Names(taker.apply(row)));
    }

    /**
     * Rows of figures under names of their own.
     *
     * @param names what the figures of a row are called
     * @param rows each as long as the names
     */
    public Columns<T> called(
            String columnKey,
            String heading,
            Rounding rounding,
            Function<T, List<String>> names,
            Function<T, List<List<Double>>> rows) {
        return add(
                Column.of(columnKey, heading, new Type.Called(Quantity.LENGTH, rounding))
                        .and(Trait.ALWAYS),
                row -> new Cell.Called(names.apply(row), rows.apply(row)));
    }

    /** Several lengths, rounded in their own way. */
    public Columns<T> lengths(String columnKey, String heading, Rounding rounding, Function<T, List<Double>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Measures(Quantity.LENGTH, rounding))
                        .and(Trait.ALWAYS),
                row -> new Cell.Numbers(taker.apply(row)));
    }

    /**
     * Rows of their own below each row.
     *
     * @param inner the columns, made as a sheet of no items
     * @param taker the items of a row
     */
    public <U> Columns<T> many(String columnKey, String heading, Columns<U> inner, Function<T, List<U>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Nested(inner.columns, true, TOGETHER))
                        .and(Trait.ALWAYS),
                row -> new Cell.Rows(taker.apply(row).stream().map(inner::row).toList()));
    }

    /**
     * One object below each row.
     *
     * @param between what stands between its cells where people read it, as {@code " x "}
     */
    public <U> Columns<T> one(
            String columnKey, String heading, String between, Columns<U> inner, Function<T, Optional<U>> taker) {
        return add(
                Column.of(columnKey, heading, new Type.Nested(inner.columns, false, between)),
                row -> taker.apply(row)
                        .<Cell>map(item -> new Cell.Rows(List.of(inner.row(item))))
                        .orElse(Cell.NONE));
    }

    /** Columns for {@link #many} and {@link #one}. */
    public static <U> Columns<U> inner() {
        return new Columns<>("", Phrase.of(""), false, List.of());
    }

    /** The last column is for programs alone. */
    public Columns<T> json() {
        return last(column -> column.shownTo(Shown.JSON));
    }

    /** The last column is for people alone. */
    public Columns<T> text() {
        return last(column -> column.shownTo(Shown.TEXT));
    }

    /** The last column is for people and programs, also where it is a sentence. */
    public Columns<T> both() {
        return last(column -> column.shownTo(Shown.BOTH));
    }

    /** The last column is not set beside that of another answer. */
    public Columns<T> alone() {
        return last(column -> column.and(Trait.ALONE));
    }

    /** The first figure of the rows below a row adds up in the last column, and none of them is none. */
    public Columns<T> adds() {
        return last(column -> column.and(Trait.ADDS));
    }

    /** Of the last two columns, of names, either holds either name. */
    public Columns<T> either() {
        int at = columns.size() - 1;
        columns.set(at - 1, columns.get(at - 1).and(Trait.EITHER));
        columns.set(at, columns.get(at).and(Trait.EITHER));
        return this;
    }

    /** All columns so far tell what could be, and is not. */
    public Columns<T> offered() {
        columns.replaceAll(column -> column.and(Trait.OFFERED));
        return this;
    }

    /** No row means none in the last column, whatever is asked about. */
    public Columns<T> noneWithoutRow() {
        return noneWithoutRow(NoRow.NONE);
    }

    /** What no row means in the last column. */
    public Columns<T> noneWithoutRow(NoRow means) {
        return last(column -> column.noRow(means));
    }

    /**
     * No row means none in the last column for those that were asked; of any other nothing is known.
     *
     * @param asked under a column of names
     */
    public Columns<T> noneWithoutRow(String nameKey, List<String> asked) {
        Set<Set<String>> none = new HashSet<>();
        if (!asked.isEmpty()) {
            none.add(Set.of());
        }
        asked.forEach(one -> none.add(Set.of(one)));
        return noneWithoutRow(new NoRow(List.of(nameKey), none));
    }

    private Columns<T> last(UnaryOperator<Column> change) {
        int at = columns.size() - 1;
        columns.set(at, change.apply(columns.get(at)));
        return this;
    }

    /** One of the tables in which people read it; without any, all columns stand in one. */
    public Columns<T> table(String tableTitle, String... keys) {
        return table(Phrase.of(tableTitle), keys);
    }

    /** The same under a title that holds figures. */
    public Columns<T> table(Phrase tableTitle, String... keys) {
        tables.add(Layout.of(tableTitle, Arrays.asList(keys)));
        return this;
    }

    /** A table for each word of a column, as one for each light. */
    public Columns<T> tableFor(String apart, String tableTitle, String... keys) {
        return table(tableTitle, keys).lastTable(layout -> layout.apart(apart));
    }

    /** A table with a line for each row of a nested column, as for each price of an item. */
    public Columns<T> tableOfEach(String nested, String tableTitle, String... keys) {
        return table(tableTitle, keys).lastTable(layout -> layout.each(nested));
    }

    /** A table of the rows in which one of these columns holds something. */
    public Columns<T> tableWhere(List<String> holds, String tableTitle, String... keys) {
        return table(tableTitle, keys).lastTable(layout -> layout.where(holds));
    }

    /** The last table has a column for each word of that column, with the last of its keys below. */
    public Columns<T> across(String columnKey) {
        return lastTable(layout -> layout.across(columnKey));
    }

    private Columns<T> lastTable(UnaryOperator<Layout> change) {
        int at = tables.size() - 1;
        tables.set(at, change.apply(tables.get(at)));
        return this;
    }

    /** Programs alone read it. */
    public Columns<T> silent() {
        silent = true;
        return this;
    }

    /** People alone read it: what it says stands in other sheets too. */
    public Columns<T> people() {
        columns.replaceAll(column -> column.shownTo(Shown.TEXT));
        return this;
    }

    /** The sheet. */
    public Sheet sheet() {
        List<Layout> layouts = silent || !tables.isEmpty()
                ? tables
                : List.of(Layout.of(
                        title,
                        columns.stream()
                                .filter(column -> column.shown() != Shown.JSON)
                                .map(Column::key)
                                .toList()));
        return new Sheet(
                key, title, single, true, columns, items.stream().map(this::row).toList(), layouts);
    }

    private Row row(T item) {
        return new Row(takers.stream().map(taker -> taker.apply(item)).toList());
    }

    private Columns<T> add(Column column, Function<T, Cell> taker) {
        columns.add(column);
        takers.add(taker);
        return this;
    }

    private static <T> Function<T, Cell> words(Function<T, String> taker) {
        return row -> {
            String words = taker.apply(row);
            return words.isEmpty() ? Cell.NONE : new Cell.Words(words);
        };
    }
}

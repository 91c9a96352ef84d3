package buildup.shared.sheet;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Column.Shown;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A sheet under construction: columns are named one after the other, each with what it takes from a row. An infinite
 * number leaves its cell empty.
 *
 * @param <T> what a row is made from
 */
public final class Columns<T> {
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
        return add(new Column(columnKey, heading, new Type.Words(), true, Shown.BOTH), words(taker));
    }

    /** Words. */
    public Columns<T> words(String columnKey, String heading, Function<T, String> taker) {
        return add(new Column(columnKey, heading, new Type.Words(), false, Shown.BOTH), words(taker));
    }

    /** Words that may not be there. */
    public Columns<T> wordsIf(String columnKey, String heading, Function<T, Optional<String>> taker) {
        return add(
                new Column(columnKey, heading, new Type.Words(), false, Shown.BOTH),
                row -> taker.apply(row).<Cell>map(Cell.Words::new).orElse(Cell.NONE));
    }

    /** A sentence for people. */
    public Columns<T> saying(String columnKey, String heading, Function<T, Phrase> taker) {
        return add(
                new Column(columnKey, heading, new Type.Saying(), false, Shown.TEXT),
                row -> new Cell.Saying(taker.apply(row)));
    }

    /** Yes or no. */
    public Columns<T> flag(String columnKey, String heading, Function<T, Boolean> taker) {
        return add(
                new Column(columnKey, heading, new Type.Flag(), false, Shown.BOTH),
                row -> new Cell.Flag(taker.apply(row)));
    }

    /** A length to the nearest shop size. */
    public Columns<T> length(String columnKey, String heading, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, Quantity.LENGTH, taker);
    }

    /** A length that may not be there. */
    public Columns<T> lengthIf(String columnKey, String heading, Function<T, OptionalDouble> taker) {
        return measureIf(columnKey, heading, Quantity.LENGTH, Rounding.NEAREST, taker);
    }

    /** A figure to the nearest usual step. */
    public Columns<T> measure(String columnKey, String heading, Quantity quantity, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, quantity, Rounding.NEAREST, taker);
    }

    /** A figure rounded in its own way. */
    public Columns<T> measure(
            String columnKey, String heading, Quantity quantity, Rounding rounding, ToDoubleFunction<T> taker) {
        return measureIf(columnKey, heading, quantity, rounding, row -> OptionalDouble.of(taker.applyAsDouble(row)));
    }

    /** A figure that may not be there. */
    public Columns<T> measureIf(
            String columnKey, String heading, Quantity quantity, Rounding rounding, Function<T, OptionalDouble> taker) {
        return add(new Column(columnKey, heading, new Type.Measure(quantity, rounding), false, Shown.BOTH), row -> {
            OptionalDouble amount = taker.apply(row);
            return amount.isPresent() && Double.isFinite(amount.getAsDouble())
                    ? new Cell.Number(amount.getAsDouble())
                    : Cell.NONE;
        });
    }

    /** A figure whose quantity differs from row to row, and that may not be there. */
    public Columns<T> amountIf(
            String columnKey, String heading, Function<T, Quantity> quantity, Function<T, OptionalDouble> taker) {
        return add(new Column(columnKey, heading, new Type.Amount(), false, Shown.BOTH), row -> {
            OptionalDouble amount = taker.apply(row);
            return amount.isPresent() && Double.isFinite(amount.getAsDouble())
                    ? new Cell.Amount(Figure.of(quantity.apply(row), amount.getAsDouble()))
                    : Cell.NONE;
        });
    }

    /** A whole number of things. */
    public Columns<T> count(String columnKey, String heading, ToDoubleFunction<T> taker) {
        return measure(columnKey, heading, Quantity.COUNT, taker);
    }

    /** A point: two columns where people read it, {@code [x, y]} for programs. */
    public Columns<T> place(String columnKey, String heading, ToDoubleFunction<T> x, ToDoubleFunction<T> y) {
        return add(
                new Column(columnKey, heading, new Type.Place(), false, Shown.BOTH),
                row -> new Cell.Place(x.applyAsDouble(row), y.applyAsDouble(row)));
    }

    /** Several names. */
    public Columns<T> names(String columnKey, String heading, Function<T, List<String>> taker) {
        return add(
                new Column(columnKey, heading, new Type.Names(), false, Shown.BOTH),
                row -> new Cell.Names(taker.apply(row)));
    }

    /** Several numbers. */
    public Columns<T> numbers(String columnKey, String heading, Quantity quantity, Function<T, List<Double>> taker) {
        return add(
                new Column(columnKey, heading, new Type.Measures(quantity, Rounding.NEAREST), false, Shown.BOTH),
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
                new Column(columnKey, heading, new Type.Nested(inner.columns, true, " "), false, Shown.BOTH),
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
                new Column(columnKey, heading, new Type.Nested(inner.columns, false, between), false, Shown.BOTH),
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
        return last(Shown.JSON);
    }

    /** The last column is for people alone. */
    public Columns<T> text() {
        return last(Shown.TEXT);
    }

    private Columns<T> last(Shown shown) {
        int at = columns.size() - 1;
        Column column = columns.get(at);
        columns.set(at, new Column(column.key(), column.heading(), column.type(), column.name(), shown, column.sums()));
        return this;
    }

    /** Rows of one name add up in the last column, and no row means none. */
    public Columns<T> sums() {
        int at = columns.size() - 1;
        Column column = columns.get(at);
        columns.set(at, new Column(column.key(), column.heading(), column.type(), column.name(), column.shown(), true));
        return this;
    }

    /** One of the tables in which people read it; without any, all columns stand in one. */
    public Columns<T> table(String tableTitle, String... keys) {
        tables.add(new Layout(Phrase.of(tableTitle), Arrays.asList(keys), Optional.empty()));
        return this;
    }

    /** A table for each word of a column, as one for each light. */
    public Columns<T> tableFor(String apart, String tableTitle, String... keys) {
        tables.add(new Layout(Phrase.of(tableTitle), Arrays.asList(keys), Optional.of(apart)));
        return this;
    }

    /** Programs alone read it. */
    public Columns<T> silent() {
        silent = true;
        return this;
    }

    /** The sheet. */
    public Sheet sheet() {
        List<Layout> layouts = silent || !tables.isEmpty()
                ? tables
                : List.of(new Layout(
                        title,
                        columns.stream()
                                .filter(column -> column.shown() != Shown.JSON)
                                .map(Column::key)
                                .toList(),
                        Optional.empty()));
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

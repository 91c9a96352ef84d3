package buildup.cli.tell;

import buildup.cli.tell.Beside.Pair;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What differs between two answers, for other programs: figure by figure, the second less the first. */
public final class BesideJson {
    private final SheetJson cells;

    private BesideJson(FigurePrinter printer) {
        this.cells = new SheetJson(printer);
    }

    /**
     * Puts how many figures there are, how many of them differ, and which; a block for each sheet.
     *
     * @param all laid flat
     * @param printer of what is said in sentences
     */
    public static void put(Json json, List<Beside> all, FigurePrinter printer) {
        BesideJson written = new BesideJson(printer);
        Json differences = new Json();
        all.forEach(beside -> differences.put(beside.sheet().key(), written.rows(beside)));
        json.put("figures", (double) all.stream().mapToLong(Beside::figures).sum())
                .put("differing", (double)
                        all.stream().mapToLong(Beside::differing).sum())
                .put("differences", differences);
    }

    /** The schema of what is put: the keys of the two counts and of the differences. */
    public static Json schema() {
        Json count = new Json().put("type", "integer").put("minimum", 0);
        Json figure = new Json().texts("type", List.of("number", "string", "boolean", "array"));
        Json row = new Json().put("type", "object").put("additionalProperties", new Json().put("type", "string"));
        Json properties = new Json()
                .put(
                        "row",
                        SheetSchema.described(row, "what the row is known by, key by key; absent where there is one"))
                .put(
                        "number",
                        SheetSchema.described(
                                new Json().put("type", "integer").put("minimum", 2),
                                "which one of rows known by the same; absent for the first"))
                .put(
                        "only",
                        SheetSchema.described(
                                new Json().texts("enum", List.of("a", "b")), "the answer that alone has this row"))
                .put("figure", SheetSchema.described(new Json().put("type", "string"), "the key of the figure"))
                .put("a", SheetSchema.described(figure, "the figure of the first; absent where it has none"))
                .put("b", SheetSchema.described(figure, "the figure of the second; absent where it has none"))
                .put(
                        "difference",
                        SheetSchema.described(
                                new Json().put("type", "number"), "b less a; absent where either is no number"));
        Json difference = SheetSchema.object(properties, List.of())
                .put(
                        "oneOf",
                        List.of(
                                new Json().texts("required", List.of("only")),
                                new Json().texts("required", List.of("figure"))));
        Json blocks = new Json().put("type", "object").put("additionalProperties", SheetSchema.list(difference));
        return new Json()
                .put("figures", SheetSchema.described(count, "how many figures were set beside each other"))
                .put("differing", SheetSchema.described(count, "how many of them differ, or stand in one alone"))
                .put(
                        "differences",
                        SheetSchema.described(
                                blocks,
                                "a block for each sheet, with the figures that differ by more than a saw can cut, or"
                                        + " than is printed of them"));
    }

    private List<Json> rows(Beside beside) {
        List<Json> rows = new ArrayList<>();
        for (Pair pair : beside.pairs()) {
            if (!pair.both()) {
                rows.add(named(pair).put("only", pair.a().isPresent() ? "a" : "b"));
            } else {
                pair.figures().filter(i -> !pair.alike(i)).forEach(i -> rows.add(differing(pair, i)));
            }
        }
        return rows;
    }

    private static Json named(Pair pair) {
        Json row = new Json();
        int name = 0;
        for (Column column : pair.columns()) {
            if (column.name()) {
                String said = pair.names().get(name++);
                if (!said.isEmpty()) {
                    row.put(column.key(), said);
                }
            }
        }
        Json json = pair.names().isEmpty() ? new Json() : new Json().put("row", row);
        return pair.number() == 1 ? json : json.put("number", pair.number());
    }

    private Json differing(Pair pair, int i) {
        Json json = named(pair).put("figure", pair.columns().get(i).key());
        cells.value(json, "a", pair.cellOfA(i));
        cells.value(json, "b", pair.cellOfB(i));
        OptionalDouble more = pair.more(i);
        return json.put("difference", more);
    }
}

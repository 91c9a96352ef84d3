package buildup.cli.compare;

import buildup.cli.compare.Comparison.Block;
import buildup.cli.compare.Comparison.Pair;
import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Quantity;
import buildup.cli.compare.Sheet.Row;
import buildup.cli.report.JsonReport;
import buildup.cli.tell.Json;
import buildup.engine.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two stacks for other programs: each as its own report, and block by block the figures in which they differ, b less a.
 * {@code comparison.schema.json} says what each key means.
 */
public final class ComparisonJson {
    private ComparisonJson() {}

    /** The object; without differences when one of the two was refused. */
    public static String write(Answer a, Answer b) {
        Json json = new Json().put("a", JsonReport.object(a)).put("b", JsonReport.object(b));
        Comparison.of(a, b).ifPresent(comparison -> {
            Json differences = new Json();
            comparison.blocks().forEach(block -> differences.put(block.heads().key(), rows(block)));
            json.put("figures", comparison.figures())
                    .put("differing", comparison.differing())
                    .put("differences", differences);
        });
        return json.written() + "\n";
    }

    private static List<Json> rows(Block block) {
        List<Json> rows = new ArrayList<>();
        for (Pair pair : block.pairs()) {
            if (pair.a().isEmpty() || pair.b().isEmpty()) {
                rows.add(named(block, pair).put("only", pair.a().isPresent() ? "a" : "b"));
                continue;
            }
            for (int i = 0; i < block.heads().quantities().size(); i++) {
                if (!pair.alike(i)) {
                    rows.add(differing(block, pair, i));
                }
            }
        }
        return rows;
    }

    private static Json named(Block block, Pair pair) {
        Json json = new Json();
        for (int i = 0; i < pair.names().size(); i++) {
            json.put(
                    block.heads().names().get(i).key(),
                    Optional.of(pair.names().get(i)).filter(name -> !name.isEmpty()));
        }
        return pair.number() == 1 ? json : json.put("number", pair.number());
    }

    private static Json differing(Block block, Pair pair, int i) {
        Quantity quantity = block.heads().quantities().get(i);
        Json json = named(block, pair).put("figure", quantity.head().key());
        put(json, "a", pair.a(), i);
        put(json, "b", pair.b(), i);
        OptionalDouble more = pair.more(i);
        return json.put("difference", more);
    }

    private static void put(Json json, String key, Optional<Row> row, int i) {
        Figure figure = row.orElseThrow().figures().get(i);
        json.put(key, figure.words()).put(key, figure.number());
    }
}

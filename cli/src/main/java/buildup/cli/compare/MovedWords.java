package buildup.cli.compare;

import buildup.cli.compare.Comparison.Block;
import buildup.cli.compare.Comparison.Pair;
import buildup.cli.compare.Sheet.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Which pieces sit elsewhere: those that move together in one phrase, those that change their size edge by edge. */
final class MovedWords {
    private static final List<String> EDGES = List.of("bottom", "top", "back", "face");

    private MovedWords() {}

    /** In steps of what counts as alike, so that the same pieces go together in every unit. */
    private record Way(long up, long out) {
        static Way of(double up, double out) {
            return new Way(Math.round(up / Comparison.ALIKE), Math.round(out / Comparison.ALIKE));
        }
    }

    static List<String> of(Comparison comparison, Told told) {
        Block block = comparison.block(SectionSheets.PLACES);
        Map<Way, List<String>> together = new LinkedHashMap<>();
        Map<Way, String> ways = new HashMap<>();
        List<String> resized = new ArrayList<>();
        for (Pair pair : block.pairs()) {
            if (pair.a().isEmpty() || pair.b().isEmpty()) {
                continue;
            }
            OptionalDouble up = moved(block, pair, "bottom", "top");
            OptionalDouble out = moved(block, pair, "back", "face");
            if (up.isEmpty() || out.isEmpty()) {
                resized.add(edges(block, pair, told));
            } else {
                Way way = Way.of(up.getAsDouble(), out.getAsDouble());
                ways.put(way, how(up.getAsDouble(), out.getAsDouble(), told));
                together.computeIfAbsent(way, one -> new ArrayList<>())
                        .add(pair.names().get(0));
            }
        }
        together.remove(new Way(0, 0));
        List<String> lines = new ArrayList<>();
        together.forEach((way, names) -> lines.add(String.join(", ", names) + ": " + ways.get(way)));
        lines.addAll(resized);
        return lines;
    }

    /** How far a piece moves on one axis; absent where its two edges do not move alike. */
    private static OptionalDouble moved(Block block, Pair pair, String low, String high) {
        double first = pair.more(block.heads().at(low)).orElseThrow();
        double second = pair.more(block.heads().at(high)).orElseThrow();
        return Math.abs(first - second) > Comparison.ALIKE ? OptionalDouble.empty() : OptionalDouble.of(first);
    }

    private static String how(double up, double out, Told told) {
        List<String> ways = new ArrayList<>();
        if (Math.abs(up) > Comparison.ALIKE) {
            ways.add((up > 0 ? "up " : "down ") + told.length(Math.abs(up)));
        }
        if (Math.abs(out) > Comparison.ALIKE) {
            ways.add((out > 0 ? "out " : "in ") + told.length(Math.abs(out)));
        }
        return String.join(", ", ways);
    }

    private static String edges(Block block, Pair pair, Told told) {
        List<String> edges = new ArrayList<>();
        for (String edge : EDGES) {
            int at = block.heads().at(edge);
            if (!pair.alike(at)) {
                edges.add(edge + " "
                        + told.change(
                                pair.a().orElseThrow().figures().get(at),
                                pair.b().orElseThrow().figures().get(at),
                                Kind.LENGTH));
            }
        }
        return pair.names().get(0) + ": " + String.join(", ", edges);
    }
}

package buildup.cli.compare;

import buildup.cli.tell.Beside.Pair;
import buildup.cli.tell.FigureChange;
import buildup.profiles.outline.Tolerance;
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

    /** In steps as fine as two runs of sums come, so that the same pieces go together in every unit. */
    private record Way(long up, long out) {
        static Way of(double up, double out) {
            return new Way(Math.round(up / Tolerance.SNAP), Math.round(out / Tolerance.SNAP));
        }
    }

    static List<String> of(Comparison comparison, FigureChange change) {
        Map<Way, List<String>> together = new LinkedHashMap<>();
        Map<Way, String> ways = new HashMap<>();
        List<String> resized = new ArrayList<>();
        for (Pair pair : comparison.pairs("pieces")) {
            if (!pair.both() || EDGES.stream().allMatch(edge -> pair.alike(pair.at(edge)))) {
                continue;
            }
            OptionalDouble up = moved(pair, "bottom", "top");
            OptionalDouble out = moved(pair, "back", "face");
            if (up.isEmpty() || out.isEmpty()) {
                resized.add(edges(pair, change));
            } else {
                Way way = Way.of(up.getAsDouble(), out.getAsDouble());
                ways.put(way, how(up.getAsDouble(), out.getAsDouble(), change));
                together.computeIfAbsent(way, one -> new ArrayList<>())
                        .add(pair.names().get(0));
            }
        }
        List<String> lines = new ArrayList<>();
        together.forEach((way, names) -> lines.add(String.join(", ", names) + ": " + ways.get(way)));
        lines.addAll(resized);
        return lines;
    }

    /** How far a piece moves on one axis; absent where its two edges do not move alike. */
    private static OptionalDouble moved(Pair pair, String low, String high) {
        double first = pair.more(pair.at(low)).orElseThrow();
        double second = pair.more(pair.at(high)).orElseThrow();
        return Math.abs(first - second) < Tolerance.SAW_CUT ? OptionalDouble.of(first) : OptionalDouble.empty();
    }

    private static String how(double up, double out, FigureChange change) {
        List<String> ways = new ArrayList<>();
        if (Math.abs(up) >= Tolerance.SAW_CUT) {
            ways.add((up > 0 ? "up " : "down ") + change.length(up));
        }
        if (Math.abs(out) >= Tolerance.SAW_CUT) {
            ways.add((out > 0 ? "out " : "in ") + change.length(out));
        }
        return String.join(", ", ways);
    }

    private static String edges(Pair pair, FigureChange change) {
        List<String> edges = new ArrayList<>();
        for (String edge : EDGES) {
            int at = pair.at(edge);
            if (!pair.alike(at)) {
                edges.add(edge + " " + change.change(pair.columns().get(at), pair.cellOfA(at), pair.cellOfB(at)));
            }
        }
        return pair.names().get(0) + ": " + String.join(", ", edges);
    }
}

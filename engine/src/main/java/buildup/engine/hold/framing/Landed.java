package buildup.engine.hold.framing;

import buildup.engine.hold.fixing.Fixing;
import buildup.engine.hold.framing.Landing.Into;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows of a document as they hold on a stretch where some of their nails go between the studs or the joists.
 *
 * @param missing the rows that miss there, the one first of which the smallest share lands
 * @param rows all rows, as they hold there
 */
public record Landed(List<Landing> missing, List<Fixed> rows) {
    /** Copies the lists. */
    public Landed {
        missing = List.copyOf(missing);
        rows = List.copyOf(rows);
    }

    /** One for each stretch on which nails miss studs or joists; of two stretches the better one is left out. */
    public static List<Landed> of(Section section, List<Fixed> rows, List<Landing> landings) {
        Map<List<String>, List<Landing>> stretches = new LinkedHashMap<>();
        landings.stream()
                .filter(landing -> landing.into() == Into.STUDS || landing.into() == Into.JOISTS)
                .filter(landing -> !landing.misses().isEmpty())
                .forEach(landing -> stretches
                        .computeIfAbsent(List.of(landing.run(), landing.stretch()), key -> new ArrayList<>())
                        .add(landing));
        List<Map<String, Double>> shares =
                stretches.values().stream().map(Landed::shares).toList();
        List<List<Landing>> missing = List.copyOf(stretches.values());
        List<Landed> all = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            Map<String, Double> own = shares.get(i);
            boolean outdone = false;
            for (int j = 0; j < shares.size(); j++) {
                outdone |= j != i && noBetter(shares.get(j), own) && (j < i || !noBetter(own, shares.get(j)));
            }
            if (!outdone) {
                all.add(of(section, rows, missing.get(i), own));
            }
        }
        return List.copyOf(all);
    }

    private static Landed of(Section section, List<Fixed> rows, List<Landing> missing, Map<String, Double> shares) {
        List<Landing> worstFirst = missing.stream()
                .sorted((a, b) -> Double.compare(a.share(), b.share()))
                .toList();
        List<Fixed> held = rows.stream()
                .map(row -> shares.containsKey(row.fastening().name())
                        ? Fixing.landed(section, row, shares.get(row.fastening().name()))
                        : row)
                .toList();
        return new Landed(worstFirst, held);
    }

    private static Map<String, Double> shares(List<Landing> missing) {
        Map<String, Double> shares = new LinkedHashMap<>();
        missing.forEach(
                landing -> shares.merge(landing.fixed().fastening().name(), landing.share(), (a, b) -> Math.min(a, b)));
        return shares;
    }

    /** Whether of no row a greater share lands on one stretch than on another. */
    private static boolean noBetter(Map<String, Double> one, Map<String, Double> other) {
        return other.entrySet().stream().allMatch(row -> one.getOrDefault(row.getKey(), 1.0) <= row.getValue());
    }
}

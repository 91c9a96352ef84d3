package buildup.engine.judge.must;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The keys of a document that ask for the sheets which it does not have of itself. */
final class AskingKey {
    private static final String PLAN = "plan";

    static final String COST = "costInAll";

    /** By what the keys of the sheets begin with. */
    private static final Map<String, String> KEYS = keys();

    private AskingKey() {}

    private static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("support.loads", "loads");
        keys.put("support.pulls", "fastenings");
        keys.put("nails", "fastenings");
        keys.put("proposals", "fastenings");
        keys.put("order.nails", "fastenings");
        keys.put("order.units", "bench");
        keys.put("eyes", "eyes");
        keys.put("seen", "eyes");
        keys.put("coverage", "eyes");
        keys.put("approach", "approach");
        keys.put("sun", "lights.day");
        keys.put("landings", "plan.studs");
        keys.put("proposedLandings", "plan.studs");
        keys.put("blocks", PLAN);
        keys.put("copes", PLAN);
        keys.put("surface", "plan.stretches.ceiling");
        keys.put("rolled", "plan.stretches.ceiling");
        keys.put("sloped", "space.ceiling.slope");
        keys.put("fasteners", "supplies");
        keys.put("finishFaces", "supplies");
        keys.put("gluedFaces", "supplies");
        keys.put("supplies", "supplies");
        keys.put("season", "seasons");
        keys.put("movements", "seasons");
        keys.put("openings", "seasons");
        keys.put("tolerance", "tolerance");
        keys.put("proportion", "proportion");
        keys.put("clearance", "firebox");
        keys.put("fire", "firebox");
        keys.put("keepClear", "keep-clear");
        keys.put(COST, "stock");
        return keys;
    }

    /**
     * The key that asks for a sheet; absent where every document has it, or where the document has the key.
     *
     * @param held keys that the document holds at its root
     */
    static Optional<String> of(String sheet, Set<String> held) {
        Optional<String> key = KEYS.keySet().stream()
                .filter(sheet::startsWith)
                .max(Comparator.comparingInt(String::length))
                .map(KEYS::get);
        Optional<String> needed = sheet.equals(COST) && !held.contains(PLAN) ? Optional.of(PLAN) : key;
        return needed.filter(one -> !held.contains(one));
    }
}

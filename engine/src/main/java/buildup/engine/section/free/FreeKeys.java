package buildup.engine.section.free;

import buildup.shared.figure.Quantity;
import java.util.Map;
import java.util.Optional;

/** What the values behind the keys of a document count that are no lengths. */
final class FreeKeys {
    /** By the first key of a place, or its first two, and by the last. */
    private static final Map<String, Map<String, Quantity>> NO_LENGTHS = Map.ofEntries(
            Map.entry(
                    "lights",
                    Map.of(
                            "altitude", Quantity.ANGLE,
                            "azimuth", Quantity.ANGLE,
                            "latitude", Quantity.ANGLE,
                            "longitude", Quantity.ANGLE,
                            "faces", Quantity.ANGLE,
                            "window", Quantity.ANGLE,
                            "hour", Quantity.CLOCK,
                            "utc-offset", Quantity.RATIO)),
            Map.entry("pieces", Map.of("turn", Quantity.ANGLE, "spring", Quantity.ANGLE)),
            Map.entry("fastenings", Map.of("angle", Quantity.ANGLE, "per", Quantity.COUNT)),
            Map.entry("loads", Map.of("load", Quantity.LINE_FORCE)),
            Map.entry("friction", Map.of("friction", Quantity.RATIO)),
            Map.entry(
                    "seasons",
                    Map.of(
                            "moisture", Quantity.MOISTURE,
                            "humidity", Quantity.MOISTURE,
                            "temperature", Quantity.RATIO)),
            Map.entry("tolerance", Map.of("builds", Quantity.COUNT, "seed", Quantity.COUNT)),
            Map.entry("plan", Map.of("corner", Quantity.ANGLE)),
            Map.entry(
                    "stock",
                    Map.of(
                            "price", Quantity.MONEY,
                            "miter", Quantity.MONEY,
                            "cope", Quantity.MONEY,
                            "return", Quantity.MONEY,
                            "butt", Quantity.MONEY,
                            "square", Quantity.MONEY,
                            "scarf", Quantity.MONEY,
                            "waste", Quantity.MOISTURE)),
            Map.entry("supplies.fasteners", Map.of("box", Quantity.COUNT, "on-hand", Quantity.COUNT)),
            Map.entry(
                    "supplies",
                    Map.of(
                            "spare", Quantity.MOISTURE,
                            "coats", Quantity.COUNT,
                            "packs", Quantity.RATIO,
                            "on-hand", Quantity.RATIO,
                            "coverage", Quantity.RATIO)));

    private FreeKeys() {}

    /**
     * What a value counts. A share in percent counts as moisture does, which is kept in percent.
     *
     * @param place keys and names from the top down with dots between them
     */
    static Quantity quantity(String place) {
        String[] keys = place.split("\\.", -1);
        // a member of a piece goes by whatever name it has, and where it is to lie is a length
        boolean member = keys.length > 2 && keys[keys.length - 2].equals("at");
        String two = keys.length > 1 ? keys[0] + "." + keys[1] : keys[0];
        return Optional.ofNullable(NO_LENGTHS.getOrDefault(two, NO_LENGTHS.get(keys[0])))
                .filter(known -> !member)
                .map(known -> known.get(keys[keys.length - 1]))
                .orElse(Quantity.LENGTH);
    }
}

package buildup.cli.command.odd;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * A small document in which one key stands where it may stand: its block of the document that holds every key, the pieces,
 * and what else that block asks for. Whatever is written at the key, may be anything.
 */
final class SmallDocument {
    /** What every stack here has. */
    private static final Set<String> ALWAYS = Set.of("units", "wood", "sizes", "space", "pieces");

    /** What is asked of a run along the walls. */
    private static final Set<String> ON_A_PLAN =
            Set.of("stock", "supplies", "firebox", "keep-clear", "table-saw-cove", "fastenings", "loads");

    /** Text that is written as it stands. */
    private record Raw(String text) {}

    private final Map<String, Object> document;
    private final String key;

    private SmallDocument(Map<String, Object> document, String key) {
        this.document = document;
        this.key = key;
    }

    /** Of a stack, about {@code space.wall.from} or the like. */
    static SmallDocument ofAStack(String key) {
        String block = key.replaceAll("\\..*", "");
        Map<String, Object> document = read(EveryKey.STACK);
        document.keySet()
                .removeIf(other -> !ALWAYS.contains(other)
                        && !other.equals(block)
                        && !(other.equals("plan") && ON_A_PLAN.contains(block)));
        return new SmallDocument(document, key);
    }

    /** Of an order, about {@code items.feet} or the like. */
    static SmallDocument ofAnOrder(String key) {
        Map<String, Object> document = read(EveryKey.ORDER);
        if (!key.equals("catalog")) {
            document.remove("catalog");
        }
        return new SmallDocument(document, key);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> read(String text) {
        LoadSettings plain =
                LoadSettings.builder().setSchema(new FailsafeSchema()).build();
        return new LinkedHashMap<>((Map<String, Object>) new Load(plain).loadFromString(text));
    }

    /** Whether runs along the walls are in it. */
    boolean planned() {
        return document.containsKey("plan");
    }

    /** As it is. */
    String text() {
        return written(document, 0);
    }

    /** With something at the key, in place of what stood there; {@code KEY} in it is the key's own last word. */
    String with(String odd) {
        List<String> way = List.of(key.split("\\."));
        return written(put(document, way, new Raw(odd.replace("KEY", way.get(way.size() - 1)))), 0);
    }

    /** A copy in which the first place that the way leads to holds the value. */
    @SuppressWarnings("unchecked")
    private static Object put(Object node, List<String> way, Object value) {
        if (way.isEmpty()) {
            return value;
        }
        if (node instanceof List<?> list && !list.isEmpty()) {
            List<Object> copy = new ArrayList<>(list);
            int at = 0;
            while (at + 1 < list.size() && !leads(list.get(at), way)) {
                at++;
            }
            int which = leads(list.get(at), way) ? at : 0;
            copy.set(which, put(list.get(which), way, value));
            return copy;
        }
        Map<String, Object> copy =
                node instanceof Map<?, ?> map ? new LinkedHashMap<>((Map<String, Object>) map) : new LinkedHashMap<>();
        Object below = copy.getOrDefault(way.get(0), Map.of());
        copy.put(way.get(0), put(below, way.subList(1, way.size()), value));
        return copy;
    }

    /** How far a way is there already: what it names first, and below that the rest. */
    private static boolean leads(Object node, List<String> way) {
        if (way.isEmpty()) {
            return true;
        }
        if (node instanceof List<?> list) {
            return list.stream().anyMatch(one -> leads(one, way));
        }
        return node instanceof Map<?, ?> map
                && map.containsKey(way.get(0))
                && leads(map.get(way.get(0)), way.subList(1, way.size()));
    }

    private static String written(Object node, int indent) {
        String margin = " ".repeat(indent);
        if (node instanceof Raw raw) {
            return raw.text.replace("\n", "\n" + margin);
        }
        if (node instanceof Map<?, ?> map && !map.isEmpty()) {
            return map.entrySet().stream()
                    .map(entry -> margin + entry.getKey() + ":" + value(entry.getValue(), indent))
                    .collect(Collectors.joining("\n"));
        }
        if (node instanceof List<?> list && !list.isEmpty()) {
            return list.stream().map(one -> margin + "-" + value(one, indent)).collect(Collectors.joining("\n"));
        }
        return node instanceof Map<?, ?> ? "{}" : node instanceof List<?> ? "[]" : String.valueOf(node);
    }

    private static String value(Object node, int indent) {
        boolean deep =
                node instanceof Map<?, ?> map && !map.isEmpty() || node instanceof List<?> list && !list.isEmpty();
        return (deep ? "\n" : " ") + written(node, indent + 2);
    }
}

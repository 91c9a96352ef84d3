package buildup.cli;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The schemas that the program prints, asked by a validator of others' making. */
public final class Schemas {
    private static final List<String> ALL = List.of("report", "cuts", "profile", "quote", "trace");

    /** Each as it is printed, read once. */
    private static final Map<String, Schema> READ = new ConcurrentHashMap<>();

    private Schemas() {}

    /**
     * What the schema of that name has against the JSON; nothing when all is well.
     *
     * @param name as {@code buildup schema} is asked for it
     */
    public static List<String> faults(String name, String json) {
        return READ.computeIfAbsent(name, Schemas::read).validate(json, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static Schema read(String name) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Ran.of("schema", name).out());
    }

    /**
     * What the schema of a command has against what it has printed; nothing when that is no JSON.
     *
     * @param words of the command line
     */
    static List<String> faults(List<String> words, String out) {
        boolean json = words.contains("json") && out.startsWith("{");
        if (!json || !ALL.contains(words.get(0))) {
            return List.of();
        }
        boolean two = words.get(0).equals("report") && out.startsWith("{\n  \"a\": {");
        boolean offer = words.containsAll(List.of("quote", "customer"));
        return faults(two ? "comparison" : offer ? "offer" : words.get(0), out);
    }
}

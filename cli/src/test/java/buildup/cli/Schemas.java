package buildup.cli;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** The schemas that the program prints, asked by a validator of others' making. */
public final class Schemas {
    private Schemas() {}

    /**
     * What the schema of that name has against the JSON; nothing when all is well.
     *
     * @param name as {@code buildup schema} is asked for it
     */
    public static List<String> faults(String name, String json) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Ran.of("schema", name).out())
                .validate(json, InputFormat.JSON)
                .stream()
                .map(Object::toString)
                .toList();
    }
}

package buildup.cli.tell;

import buildup.shared.length.LengthUnit;
import buildup.shared.sheet.Sheet;
import java.util.Arrays;
import java.util.List;

/**
 * The schema (JSON Schema, draft 2020-12) of a whole file: its title, the unit of its document, the blocks of its sheets
 * and its notices. When anything was refused there are title, unit and notices alone.
 */
public final class FileSchema {
    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private static final String NUMBERS = "Numbers have at most six decimals: inches, degrees, pounds and the units"
            + " that each key names, whatever the unit of the document. Nothing is null: what is not known is absent, and"
            + " a list without rows is empty. When anything was refused there are title, units and notices alone.";

    private FileSchema() {}

    /**
     * The schema of a file.
     *
     * @param name of the schema, as it is asked for
     * @param title of the schema
     * @param blocks the sheets of the file, as a document answers that asks for as little as can be
     * @param notices the sheet of its notices
     */
    public static Json of(String name, String title, List<Sheet> blocks, Sheet notices) {
        return of(name, title, content(blocks, notices));
    }

    /** The schema of a file whose content is known. */
    public static Json of(String name, String title, Json content) {
        return head(name, title, NUMBERS).putAll(content);
    }

    /** What stands first in each schema. */
    public static Json head(String name, String title, String description) {
        return new Json()
                .put("$schema", DIALECT)
                .put("$id", "urn:buildup:" + name)
                .put("title", title)
                .put("description", description);
    }

    /** The same for a file that lies within another. */
    public static Json content(List<Sheet> blocks, Sheet notices) {
        Json properties = new Json()
                .put("title", new Json().put("type", "string").put("description", "of the document, or its file"))
                .put("units", units());
        SheetSchema.put(properties, blocks);
        SheetSchema.put(properties, List.of(notices));
        Json refused =
                new Json().put("properties", new Json().put("notices", new Json().put("contains", level("refusal"))));
        List<String> keys = SheetSchema.always(blocks);
        return SheetSchema.object(properties, List.of("title", "units", "notices"))
                .put("if", refused)
                .put("then", new Json().put("maxProperties", 3))
                .put("else", new Json().texts("required", keys));
    }

    private static Json level(String level) {
        return new Json()
                .put("properties", new Json().put("level", new Json().put("const", level)))
                .texts("required", List.of("level"));
    }

    private static Json units() {
        List<String> symbols =
                Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).toList();
        return new Json()
                .texts("enum", symbols)
                .put("description", "the unit of the document, in which sentences are written");
    }

    /**
     * The schema of a file of two answers beside each other: each as it is by itself, and what differs; without that when
     * either was refused.
     *
     * @param one the schema of an answer by itself
     */
    public static Json ofTwo(String name, String title, Json one) {
        return head(name, title, NUMBERS).putAll(two()).put("$defs", new Json().put("one", one));
    }

    /**
     * The schema of a file of one answer, or of two beside each other.
     *
     * @param one the schema of an answer by itself
     */
    public static Json ofOneOrTwo(String name, String title, Json one) {
        return head(name, title, NUMBERS)
                .put("anyOf", List.of(reference("one"), two()))
                .put("$defs", new Json().put("one", one));
    }

    private static Json two() {
        Json properties = new Json()
                .put("a", reference("the first"))
                .put("b", reference("the second"))
                .putAll(BesideJson.schema());
        List<String> differences = List.of("figures", "differing", "differences");
        Json together = new Json();
        differences.forEach(key -> together.texts(key, differences));
        return SheetSchema.object(properties, List.of("a", "b")).put("dependentRequired", together);
    }

    private static Json reference(String meaning) {
        return new Json().put("$ref", "#/$defs/one").put("description", meaning);
    }
}

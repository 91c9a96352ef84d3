package buildup.cli.tell;

import java.util.function.Supplier;

/**
 * A schema that can be printed.
 *
 * @param name by which it is asked for
 * @param content made when it is asked for
 */
public record Schema(String name, Supplier<Json> content) {
    /** As a file. */
    public String written() {
        return content.get().written() + "\n";
    }
}

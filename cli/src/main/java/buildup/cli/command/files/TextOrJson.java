package buildup.cli.command.files;

import java.util.function.Consumer;

/** The two forms of commands that answer people and programs alone. */
public enum TextOrJson {
    text,
    json;

    /** Asks for one. */
    public static void addTo(CommandForm form, Consumer<TextOrJson> taker) {
        form.option(TextOrJson.class, "--format", "FORMAT", "${COMPLETION-CANDIDATES} (default: text).", taker);
    }
}

package buildup.shared.edit;

/** What is to stand at a place. */
public sealed interface Content {

    /** One value, as its reader is to see it; it is written with quotes where it needs them. */
    record Text(String text) implements Content {}

    /**
     * A value as it stands in the file, in one line: {@code { solid: no }}, {@code [out 3/4, up 1]}, {@code "3,5"}. It is
     * taken over sign by sign.
     */
    record Yaml(String source) implements Content {}
}

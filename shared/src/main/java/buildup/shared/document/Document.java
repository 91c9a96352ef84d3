package buildup.shared.document;

/**
 * A file that was read.
 *
 * @param file its name, as messages call it
 */
public record Document(String file, Mapping root) {}

package buildup.shared.figure;

/** Words that stay as they are: a name, a code, a stretch of the document. */
public record Text(String words) implements Value {}

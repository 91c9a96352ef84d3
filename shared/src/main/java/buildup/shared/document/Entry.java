package buildup.shared.document;

/** One key of a mapping and what it holds. */
public record Entry(Scalar key, Node value) {}

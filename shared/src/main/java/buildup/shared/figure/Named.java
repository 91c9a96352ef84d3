package buildup.shared.figure;

/** A value under the name by which a sentence has a place for it. */
public record Named(String name, Value value) {}

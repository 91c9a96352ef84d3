package buildup.engine.section.stack;

import java.util.OptionalDouble;

/**
 * How far the sizes of a piece stray, plus and minus, where its document says so; in.
 *
 * @param width of its stick; absent when the lists are to say
 * @param thickness of its stick; absent when the lists are to say
 */
public record OwnSpread(OptionalDouble width, OptionalDouble thickness) {
    /** The lists say. */
    public static final OwnSpread NONE = new OwnSpread(OptionalDouble.empty(), OptionalDouble.empty());

    /** Whether the document says either. */
    public boolean given() {
        return width.isPresent() || thickness.isPresent();
    }
}

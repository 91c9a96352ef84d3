package buildup.engine.judge.along;

import java.util.List;

/**
 * What is asked of a stack against each of its free sizes.
 *
 * @param drawn one curve for each line and size
 * @param without the places of the free sizes that have no curve: what is chosen there lies on no scale, or there are more
 *     than are drawn
 */
public record SizeCurves(List<FigureCurve> drawn, List<String> without) {
    /** Of a stack without a free size. */
    public static final SizeCurves NONE = new SizeCurves(List.of(), List.of());

    /** Copies the lists. */
    public SizeCurves {
        drawn = List.copyOf(drawn);
        without = List.copyOf(without);
    }
}

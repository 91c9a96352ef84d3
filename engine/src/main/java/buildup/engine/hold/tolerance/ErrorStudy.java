package buildup.engine.hold.tolerance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What the errors of sizes do to a stack.
 *
 * @param settings how errors were drawn
 * @param sources what strays
 * @param figures what that does
 * @param advice what would help where it matters
 */
public record ErrorStudy(
        ErrorSettings settings, List<ErrorSource> sources, List<ErrorFigure> figures, List<ErrorAdvice> advice) {
    /** Copies the lists. */
    public ErrorStudy {
        sources = List.copyOf(sources);
        figures = List.copyOf(figures);
        advice = List.copyOf(advice);
    }

    /** Whether the document asks for it. */
    public boolean asked() {
        return settings.asked();
    }

    /** Number of the figure that fails most often of those that are right as drawn; where none fails, the one nearest to it. */
    public Optional<Integer> deciding() {
        return IntStream.range(0, figures.size())
                .boxed()
                .filter(i ->
                        figures.get(i).chance().isPresent() && figures.get(i).sound())
                .max(Comparator.comparingDouble(
                                (Integer i) -> figures.get(i).chance().orElse(0))
                        .thenComparingDouble(i -> -spare(figures.get(i))));
    }

    /** How many of its own strayings lie between a figure and what is wrong. */
    private static double spare(ErrorFigure figure) {
        double room = Math.min(
                figure.drawn() - figure.least().orElse(Double.NEGATIVE_INFINITY),
                figure.most().orElse(Double.POSITIVE_INFINITY) - figure.drawn());
        return figure.rss() > 0 ? room / figure.rss() : Double.POSITIVE_INFINITY;
    }

    /** Numbers of the sources, the one that matters most to a figure first; what does nothing is left out. */
    public List<Integer> order(ErrorFigure figure) {
        return IntStream.range(0, sources.size())
                .boxed()
                .filter(source -> figure.share(source) > LEAST_SHARE)
                .sorted(Comparator.comparingDouble((Integer source) -> figure.share(source))
                        .reversed())
                .toList();
    }

    /** A source that brings less of the variance is not worth a word. */
    private static final double LEAST_SHARE = 0.01;
}

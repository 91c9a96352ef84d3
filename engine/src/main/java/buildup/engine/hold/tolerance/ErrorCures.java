package buildup.engine.hold.tolerance;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.tolerance.Assembly.Adjustable;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.WidthWay;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Seeks what would make a figure come out right: sizes held closer, or one joint made adjustable. Each is tried. */
final class ErrorCures {
    /** Enough builds are right when no more than this share is not. */
    static final double RIGHT = 0.01;

    /** How close a size can be held: a careful hand, and one with a gauge; common practice, no source. */
    private static final List<Double> HELD = List.of(1.0 / 64, 1.0 / 128);

    /** More sizes than this are not held at once. */
    private static final int MOST_HELD = 3;

    /** An adjustable joint that takes off less than this share of what a figure strays is not worth its work. */
    private static final double WORTH = 0.1;

    private final Section section;
    private final List<Fixed> fixed;
    private final List<Wanted> wanted;
    private final ErrorStudy study;

    ErrorCures(Section section, List<Fixed> fixed, List<Wanted> wanted, ErrorStudy study) {
        this.section = section;
        this.fixed = fixed;
        this.wanted = wanted;
        this.study = study;
    }

    /** The fewest sizes to be held, least closely, and the joint to be made adjustable; none of either where none helps. */
    List<ErrorAdvice> of(int figure) {
        List<ErrorAdvice> advice = new ArrayList<>();
        held(figure).ifPresent(advice::add);
        adjustable(figure).ifPresent(advice::add);
        return advice;
    }

    private Optional<ErrorAdvice> held(int figure) {
        List<Integer> order = study.order(study.figures().get(figure)).stream()
                .filter(source -> study.sources().get(source).piece() >= 0)
                .toList();
        for (int count = 1; count <= Math.min(MOST_HELD, order.size()); count++) {
            for (double to : HELD) {
                List<Integer> held = order.subList(0, count);
                List<ErrorSource> closer = new ArrayList<>(study.sources());
                held.forEach(source -> closer.set(source, closer.get(source).heldTo(to)));
                double chance = chance(closer, Optional.empty(), figure);
                if (!closer.equals(study.sources()) && chance <= RIGHT) {
                    return Optional.of(new ErrorAdvice(
                            figure,
                            held,
                            OptionalDouble.of(to),
                            OptionalInt.empty(),
                            Optional.empty(),
                            OptionalDouble.empty(),
                            chance));
                }
            }
        }
        return Optional.empty();
    }

    private double chance(List<ErrorSource> sources, Optional<Adjustable> adjustable, int figure) {
        Assembly assembly = Assembly.of(section, sources, adjustable);
        List<Gauged> gauged = List.of(Gauges.of(assembly, fixed, wanted).get(figure));
        return (double) Trials.run(assembly, sources, gauged, study.settings())
                        .get(0)
                        .fails()
                / study.settings().builds();
    }

    private Optional<ErrorAdvice> adjustable(int figure) {
        double strays = study.figures().get(figure).rss();
        return candidates().stream()
                .map(candidate -> new Tried(candidate, rss(candidate, figure)))
                .filter(tried -> tried.rss < (1 - WORTH) * strays)
                .min(Comparator.comparingDouble(Tried::rss))
                .map(tried -> advice(tried.candidate, figure));
    }

    private record Tried(Adjustable candidate, double rss) {}

    private double rss(Adjustable candidate, int figure) {
        Assembly assembly = Assembly.of(section, study.sources(), Optional.of(candidate));
        List<Gauged> gauged = List.of(Gauges.of(assembly, fixed, wanted).get(figure));
        return Tolerances.rss(Slopes.of(assembly, study.sources(), gauged)[0]);
    }

    private ErrorAdvice advice(Adjustable candidate, int figure) {
        Box box = section.body(candidate.piece()).outline().box();
        boolean low =
                placed(candidate.piece()).piece().rules().low(candidate.axis()).isPresent();
        return new ErrorAdvice(
                figure,
                List.of(),
                OptionalDouble.empty(),
                OptionalInt.of(candidate.piece()),
                Optional.of(candidate.axis()),
                OptionalDouble.of(
                        low ? candidate.axis().high(box) : candidate.axis().low(box)),
                chance(study.sources(), Optional.of(candidate), figure));
    }

    /** Boards and plain blocking that one edge places: the other edge may be ripped on site. */
    private List<Adjustable> candidates() {
        List<Adjustable> candidates = new ArrayList<>();
        for (int i = 0; i < section.pieces().size(); i++) {
            if (section.body(i).inStack() && placed(i).piece().rips()) {
                for (Axis axis : Axis.values()) {
                    Optional<Rule> low = placed(i).piece().rules().low(axis);
                    Optional<Rule> high = placed(i).piece().rules().high(axis);
                    boolean touches = low.or(() -> high)
                            .filter(Rule.Touch.class::isInstance)
                            .isPresent();
                    if (low.isPresent() != high.isPresent() && !touches && acrossTheWidth(i, axis)) {
                        candidates.add(new Adjustable(i, axis));
                    }
                }
            }
        }
        return candidates;
    }

    /** A board is ripped across its width; planing it thinner on site is no work for a saw. */
    private boolean acrossTheWidth(int piece, Axis axis) {
        boolean lies = Math.abs(WidthWay.of(placed(piece)).x()) > 0.5;
        return lies == (axis == Axis.OUT);
    }

    private Placed placed(int piece) {
        return section.body(piece).placed().orElseThrow();
    }
}

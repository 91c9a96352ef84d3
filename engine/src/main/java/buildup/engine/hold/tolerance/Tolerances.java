package buildup.engine.hold.tolerance;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.fixing.RowEdits;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Asks whether the saw's error matters. Reads its own block of the document, {@code tolerance:}. */
public final class Tolerances {
    /** A figure that is wrong in more than one build of twenty is a fault: common practice, no source. */
    public static final double TOO_OFTEN = 0.05;

    private Tolerances() {}

    /** So many lengths are tried: what is much longer comes out. */
    private static final int MOST_LENGTHS = 2;

    /**
     * How errors are to be drawn; what is wrong with the block is refused.
     *
     * @param root the document, read with the stack's lengths
     */
    public static ErrorSettings read(Stack stack, Fields root, Notices notices) {
        boolean spread =
                stack.pieces().stream().anyMatch(piece -> piece.spread().given());
        boolean touching =
                stack.pieces().stream().anyMatch(piece -> piece.rules().touch());
        return new ErrorReader(notices).read(root, spread, touching);
    }

    /**
     * What the errors do, with notices for what fails too often.
     *
     * @param wanted between what figures have to lie, as the document says
     * @param fixed what the fastenings do as drawn
     * @param advising whether it is sought what would help; that builds the stack many times more
     */
    public static ErrorStudy of(
            Section section,
            ErrorSettings settings,
            List<Wanted> wanted,
            List<Fixed> fixed,
            Catalog catalog,
            boolean advising,
            Notices notices) {
        if (!settings.asked()) {
            return new ErrorStudy(settings, List.of(), List.of(), List.of());
        }
        ErrorStudy study = study(section, settings, wanted, fixed, ErrorSources.of(section, catalog, settings));
        List<ErrorAdvice> advice = new ArrayList<>();
        ErrorCures cures = new ErrorCures(section, fixed, wanted, study);
        for (int i = 0; i < study.figures().size(); i++) {
            ErrorFigure figure = study.figures().get(i);
            if (advising && figure.sound() && figure.chance().orElse(0) > ErrorCures.RIGHT) {
                advice.addAll(cures.of(i));
            }
        }
        ErrorStudy advised = new ErrorStudy(settings, study.sources(), study.figures(), advice);
        say(section, advised, fixed, notices);
        return advised;
    }

    /** The same without advice. */
    static ErrorStudy study(
            Section section,
            ErrorSettings settings,
            List<Wanted> wanted,
            List<Fixed> fixed,
            List<ErrorSource> sources) {
        Assembly assembly = Assembly.of(section, sources, Optional.empty());
        List<Gauged> gauged = Gauges.of(assembly, fixed, wanted);
        double[][] moved = Slopes.of(assembly, sources, gauged);
        List<Trials.Count> counts = Trials.run(assembly, sources, gauged, settings);
        List<ErrorFigure> figures = new ArrayList<>();
        for (int i = 0; i < gauged.size(); i++) {
            figures.add(figure(gauged.get(i), moved[i], counts.get(i), settings.builds()));
        }
        return new ErrorStudy(settings, sources, figures, List.of());
    }

    private static ErrorFigure figure(Gauged gauged, double[] moved, Trials.Count count, int builds) {
        double worst = Arrays.stream(moved).map(Math::abs).sum();
        return new ErrorFigure(
                gauged.name(),
                gauged.drawn(),
                gauged.least(),
                gauged.most(),
                // where pieces touch, errors do not add up in a straight line
                Math.max(worst, count.farthest() > worst + Tolerance.COINCIDENT ? count.farthest() : 0),
                rss(moved),
                count.deviation(),
                gauged.judged() ? OptionalDouble.of((double) count.fails() / builds) : OptionalDouble.empty(),
                Arrays.stream(moved).boxed().toList());
    }

    static double rss(double[] moved) {
        return Math.sqrt(Arrays.stream(moved).map(one -> one * one).sum());
    }

    private static void say(Section section, ErrorStudy study, List<Fixed> fixed, Notices notices) {
        for (int i = 0; i < study.figures().size(); i++) {
            ErrorFigure figure = study.figures().get(i);
            if (figure.sound() && figure.chance().orElse(0) > TOO_OFTEN) {
                notices.add(notice(section, study, fixed, i));
            }
        }
    }

    private static Notice notice(Section section, ErrorStudy study, List<Fixed> fixed, int number) {
        ErrorFigure figure = study.figures().get(number);
        return ToleranceNotices.ADDS_UP
                .with("figure", figure.name())
                .with("drawn", Figure.length(figure.drawn()))
                .with("limit", limit(figure))
                .with("chance", often(figure.chance().orElse(0)))
                .amount(Figure.fine(figure.rss()))
                .cure(cure(section, study, fixed, number));
    }

    private static Phrase limit(ErrorFigure figure) {
        Phrase words = figure.most().isEmpty()
                ? ToleranceNotices.UNDER
                : figure.least().isEmpty() ? ToleranceNotices.OVER : ToleranceNotices.BESIDE;
        return words.with("least", Figure.fine(figure.least().orElse(0)))
                .with("most", Figure.fine(figure.most().orElse(0)));
    }

    private static Cure cure(Section section, ErrorStudy study, List<Fixed> fixed, int number) {
        ErrorFigure figure = study.figures().get(number);
        Optional<Fixed> row = fixed.stream()
                .filter(nail -> figure.name().equals(Gauges.biteOf(nail)))
                .findFirst();
        Cure byHand = study.advice().stream()
                .filter(advice -> advice.figure() == number)
                .min((one, two) -> Double.compare(one.chance(), two.chance()))
                .map(advice -> Cure.of(words(section, study, advice)))
                .orElseGet(() -> Cure.of(
                        row.isPresent()
                                ? ToleranceNotices.NO_LONGER
                                : ToleranceNotices.MORE_ROOM.with("more", Figure.atLeast(figure.worst()))));
        return row.map(nail -> longer(nail, figure)).stream()
                .flatMap(cures -> Cure.firstOf(Stream.concat(cures, Stream.of(byHand))).stream())
                .findFirst()
                .orElse(byHand);
    }

    /** A bite is not left but bought: the next lengths sold with which it is enough, every source at its worst. */
    private static Stream<Cure> longer(Fixed nail, ErrorFigure figure) {
        double more = figure.worst() - (figure.drawn() - figure.least().orElse(figure.drawn()));
        Fastener.Cut now = nail.fastening().use();
        return now.fastener().cuts().stream()
                .filter(cut -> cut.length().toInches() - now.length().toInches() >= more - Tolerance.SAME_SIZE)
                .limit(MOST_LENGTHS)
                .map(new RowEdits(nail.fastening())::other);
    }

    /** What is to be done, in a sentence. */
    public static Phrase words(Section section, ErrorStudy study, ErrorAdvice advice) {
        Figure right = often(1 - advice.chance());
        if (advice.adjustable().isEmpty()) {
            List<String> sizes = advice.held().stream()
                    .map(source -> study.sources().get(source).name())
                    .toList();
            return ToleranceNotices.HOLD
                    .with("sizes", Listing.names(sizes))
                    .with("to", Figure.contact(advice.to().orElse(0)))
                    .with("chance", right);
        }
        int piece = advice.adjustable().getAsInt();
        Axis axis = advice.axis().orElseThrow();
        boolean low = section.body(piece)
                .placed()
                .orElseThrow()
                .piece()
                .rules()
                .low(axis)
                .isPresent();
        return ToleranceNotices.ADJUST
                .with("piece", section.name(piece))
                .with("edge", low ? axis.high() : axis.low())
                .with("at", Figure.length(advice.at().orElse(0)))
                .with("chance", right);
    }

    /** A share of builds, as finely as it may matter. */
    static Figure often(double share) {
        return Figure.of(Quantity.SHARE, share).rounded(Rounding.decimals(1));
    }
}

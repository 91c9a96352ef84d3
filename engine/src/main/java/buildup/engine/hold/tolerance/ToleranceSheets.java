package buildup.engine.hold.tolerance;

import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the errors of sizes do, as sheets. */
public final class ToleranceSheets {
    private static final Rounding TENTHS = Rounding.decimals(1);

    private final Section section;
    private final ErrorStudy study;

    private ToleranceSheets(Section section, ErrorStudy study) {
        this.section = section;
        this.study = study;
    }

    /** Figures, the sizes that matter to them, what helps, and what strays. */
    public static List<Sheet> of(Section section, ErrorStudy study) {
        ToleranceSheets sheets = new ToleranceSheets(section, study);
        return List.of(sheets.figures(), sheets.matters(), sheets.advice(), sheets.spreads());
    }

    private Sheet figures() {
        String title = "WHAT THE SAW'S ERROR COMES TO: worst case, root-sum-square, and the chance over "
                + study.settings().builds() + " builds that it is not what is wanted";
        return Sheet.of("tolerance.figures", title, study.figures())
                .name("figure", "figure", ErrorFigure::name)
                .length("drawn", "as drawn", ErrorFigure::drawn)
                .lengthIf("least", "at least", ErrorFigure::least)
                .lengthIf("most", "at most", ErrorFigure::most)
                .measure("worst", "worst case", Quantity.LENGTH, Rounding.FINE, ErrorFigure::worst)
                .measure("rss", "root-sum-square", Quantity.LENGTH, Rounding.FINE, ErrorFigure::rss)
                .measure("deviation", "standard deviation", Quantity.LENGTH, Rounding.FINE, ErrorFigure::deviation)
                .measureIf("chance", "chance", Quantity.SHARE, TENTHS, ErrorFigure::chance)
                .table(title, "figure", "drawn", "least", "most", "worst", "rss", "chance")
                .sheet()
                .askedIf(study.asked());
    }

    /** What one source does to one figure. */
    private record Matter(ErrorFigure figure, int source) {}

    private Sheet matters() {
        List<Matter> matters = new ArrayList<>();
        for (ErrorFigure figure : study.figures()) {
            study.order(figure).forEach(source -> matters.add(new Matter(figure, source)));
        }
        String title = "SIZES THAT MATTER MOST, in order; their share of what each figure strays";
        return Sheet.of("tolerance.matters", title, matters)
                .name("figure", "figure", matter -> matter.figure().name())
                .name(
                        "size",
                        "size",
                        matter -> study.sources().get(matter.source()).name())
                .measure(
                        "share",
                        "share of the straying",
                        Quantity.SHARE,
                        matter -> matter.figure().share(matter.source()))
                .measure(
                        "moves",
                        "moves it by",
                        Quantity.LENGTH,
                        Rounding.FINE,
                        matter -> matter.figure().moved().get(matter.source()))
                .wordsIf("first", "", matter -> told(matter) ? Optional.of("yes") : Optional.empty())
                .text()
                .tableWhere(List.of("first"), title, "figure", "size", "share", "moves")
                .sheet()
                .askedIf(study.asked());
    }

    /** People read of the figures that can fail, and of the height; programs read all. */
    private boolean told(Matter matter) {
        return matter.figure().chance().orElse(0) > 0 || matter.figure().name().equals("height");
    }

    private Sheet advice() {
        return Sheet.of("tolerance.advice", "WHAT WOULD HELP, tried in as many builds", study.advice())
                .name(
                        "figure",
                        "figure",
                        advice -> study.figures().get(advice.figure()).name())
                .names(
                        "hold",
                        "hold",
                        advice -> advice.held().stream()
                                .map(source -> study.sources().get(source).name())
                                .toList())
                .json()
                .lengthIf("to", "to", ErrorAdvice::to)
                .json()
                .wordsIf(
                        "adjustable",
                        "ripped on site",
                        advice -> advice.adjustable().isPresent()
                                ? Optional.of(section.name(advice.adjustable().getAsInt()))
                                : Optional.empty())
                .json()
                .measure("chance", "chance", Quantity.SHARE, TENTHS, ErrorAdvice::chance)
                .saying("advice", "what to do", advice -> Tolerances.words(section, study, advice))
                .table("WHAT WOULD HELP, tried in as many builds", "figure", "advice")
                .sheet()
                .askedIf(study.asked() && !study.advice().isEmpty());
    }

    private Sheet spreads() {
        return Sheet.of("tolerance.sizes", "SIZES THAT STRAY, plus and minus", study.sources())
                .name("size", "size", ErrorSource::name)
                .measureIf(
                        "spread",
                        "spread",
                        Quantity.LENGTH,
                        Rounding.FINE,
                        source -> wall(source) ? OptionalDouble.empty() : OptionalDouble.of(source.spread()))
                .measureIf(
                        "lean",
                        "lean",
                        Quantity.RATIO,
                        Rounding.decimals(4),
                        source -> wall(source) ? OptionalDouble.of(source.spread()) : OptionalDouble.empty())
                .saying("how", "how far", ToleranceSheets::how)
                .table("SIZES THAT STRAY, plus and minus", "size", "how")
                .sheet()
                .askedIf(study.asked());
    }

    private static boolean wall(ErrorSource source) {
        return source.what() == ErrorSource.What.WALL;
    }

    private static Phrase how(ErrorSource source) {
        return wall(source)
                ? Phrase.of("{out} in {over}")
                        .with("out", Figure.fine(source.spread() * FOOT))
                        .with("over", Figure.length(FOOT))
                : Phrase.of("{spread}").with("spread", Figure.fine(source.spread()));
    }

    private static final double FOOT = 12;
}

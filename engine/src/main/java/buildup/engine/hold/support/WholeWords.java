package buildup.engine.hold.support;

import buildup.engine.hold.support.Support.Whole;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;

/** The verdict on the whole stack as a phrase. */
public final class WholeWords {
    private WholeWords() {}

    /** As {@code stands: carries 2.8 times its weight; soffit screws govern, drawn out}. */
    public static Phrase of(Section section, Support support) {
        Whole whole = support.whole();
        return switch (whole.answer()) {
            case STANDS -> Phrase.of("Stands{factor}.").with("factor", factor(support));
            case TRUST ->
                Phrase.of("Stands once a gap has closed: {motion}{factor}.")
                        .with(
                                "motion",
                                FallWords.closing(section, whole.closing().orElseThrow()))
                        .with("factor", factor(support));
            case NO ->
                whole.underLoad()
                        ? Phrase.of("Falls under its loads{factor}: {motion}.")
                                .with("factor", factor(support))
                                .with(
                                        "motion",
                                        FallWords.of(section, whole.falls().get(0)))
                        : Phrase.of("Falls: {motion}.")
                                .with(
                                        "motion",
                                        FallWords.of(section, whole.falls().get(0)));
        };
    }

    private static Phrase factor(Support support) {
        Whole whole = support.whole();
        if (whole.factor().isEmpty()) {
            return Phrase.of(support.loads().isEmpty() ? "" : ", whatever its loads");
        }
        return Phrase.of(
                        whole.loadFactor().isPresent()
                                ? ", takes {times} its loads{governs}"
                                : ", carries {times} its weight{governs}")
                .with(
                        "times",
                        Figure.of(Quantity.TIMES, whole.factor().getAsDouble()).rounded(Rounding.TIMES))
                .with(
                        "governs",
                        whole.governs()
                                .<Value>map(governs -> Phrase.of("; {first}").with("first", governs.first()))
                                .orElse(Phrase.of("")));
    }
}

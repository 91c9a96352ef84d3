package buildup.engine.judge.must;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/** How the stack stands to what it must meet, as a sheet. */
public final class MustSheet {
    private static final Phrase ENDLESS = Phrase.of("nothing bounds it");

    private MustSheet() {}

    /** One row a line, in the order of the document. */
    public static Sheet of(List<MustResult> all) {
        return Sheet.of("must", "WHAT IT MUST MEET", all)
                .name("rule", "rule", MustResult::rule)
                .flag("met", "met", MustResult::met)
                .figureIf("figure", "figure", MustResult::told)
                .figureIf("missing", "missing", MustResult::lacks)
                .saying("spare", "to spare", met -> met.endless() ? ENDLESS : told(met.left()))
                .sheet()
                .askedIf(!all.isEmpty());
    }

    private static Phrase told(Optional<Figure> amount) {
        return amount.map(figure -> Phrase.of("{amount}").with("amount", figure))
                .orElse(Phrase.of(""));
    }
}

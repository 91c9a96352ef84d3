package buildup.engine.judge.must;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.OptionalDouble;

/** How the stack stands to what it must meet, as a sheet. */
public final class MustSheet {
    private MustSheet() {}

    /** One row a line, in the order of the document. */
    public static Sheet of(List<MustResult> all) {
        return Sheet.of("must", "WHAT IT MUST MEET", all)
                .name("rule", "rule", MustResult::rule)
                .flag("met", "met", MustResult::met)
                .amountIf("figure", "figure", MustResult::quantity, MustResult::figure)
                .amountIf("missing", "missing", MustResult::quantity, MustResult::missing)
                .saying("spare", "to spare", met -> told(met, met.spare()))
                .sheet()
                .askedIf(!all.isEmpty());
    }

    private static Phrase told(MustResult met, OptionalDouble amount) {
        return amount.isPresent()
                ? Phrase.of("{amount}").with("amount", Figure.of(met.quantity(), amount.getAsDouble()))
                : Phrase.of("");
    }
}

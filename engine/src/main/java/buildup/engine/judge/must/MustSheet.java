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
    public static Sheet of(List<Met> all) {
        return Sheet.of("must", "WHAT IT MUST MEET", all)
                .name("rule", "rule", Met::rule)
                .flag("met", "met", Met::met)
                .amountIf("figure", "figure", Met::quantity, Met::figure)
                .amountIf("missing", "missing", Met::quantity, Met::missing)
                .saying("spare", "to spare", met -> told(met, met.spare()))
                .sheet()
                .askedIf(!all.isEmpty());
    }

    private static Phrase told(Met met, OptionalDouble amount) {
        return amount.isPresent()
                ? Phrase.of("{amount}").with("amount", Figure.of(met.quantity(), amount.getAsDouble()))
                : Phrase.of("");
    }
}

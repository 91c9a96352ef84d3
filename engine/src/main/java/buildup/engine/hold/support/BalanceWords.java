package buildup.engine.hold.support;

import buildup.engine.hold.statics.FirstToGive;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;

/** What becomes of a group, as a phrase; the same in the table, in the picture and in the verdict. */
public final class BalanceWords {
    private BalanceWords() {}

    /** As {@code 2-7/8 past, falls: hold back 10.85 lb a foot at 6-3/8 up}. */
    public static Phrase so(Balance balance) {
        if (!balance.leans()) {
            return inside(balance);
        }
        return Phrase.of("{past} past, {so}")
                .with("past", Figure.length(-balance.margin()))
                .with("so", past(balance));
    }

    private static Phrase inside(Balance balance) {
        return switch (balance.kept().by()) {
            case NOTHING -> Phrase.of("falls, though its weight is inside");
            case AFTER_CLOSING -> Phrase.of("stands once the gap has closed");
            case WEIGHT, NEIGHBORS, FASTENINGS ->
                balance.middleThirdMargin() >= 0
                        ? Phrase.of("stands, well inside")
                        : Phrase.of("stands, {margin} from tipping").with("margin", Figure.length(balance.margin()));
        };
    }

    private static Phrase past(Balance balance) {
        return switch (balance.kept().by()) {
            case NOTHING -> Phrase.of("falls: {hold}").with("hold", hold(balance));
            case FASTENINGS -> held(balance, "held");
            case AFTER_CLOSING -> held(balance, "held once the gap has closed");
            case NEIGHBORS, WEIGHT -> Phrase.of("kept by what is beside it");
        };
    }

    private static Phrase held(Balance balance, String words) {
        if (balance.kept().times().isEmpty()) {
            return Phrase.of(words);
        }
        return Phrase.of(words + " {times} by {governs}")
                .with(
                        "times",
                        Figure.of(Quantity.TIMES, balance.kept().times().getAsDouble())
                                .rounded(Rounding.TIMES))
                .with("governs", balance.kept().governs().map(FirstToGive::name).orElse("its contacts"));
    }

    /** The pulls that would keep it. */
    public static Phrase hold(Balance balance) {
        Phrase back = Phrase.of((balance.outward() ? "hold back " : "hold out ") + "{holdBack} at {holdBackAt} up")
                .with("holdBack", Figure.lineForce(balance.holdBack().orElse(0)))
                .with("holdBackAt", Figure.length(balance.holdAt().y()));
        Phrase down = Phrase.of("down {holdDown} at {holdDownAt} out")
                .with("holdDown", Figure.lineForce(balance.holdDown().orElse(0)))
                .with("holdDownAt", Figure.length(balance.downAt().x()));
        if (balance.holdBack().isPresent() && balance.holdDown().isPresent()) {
            return Phrase.of("{back}, or {down}").with("back", back).with("down", down);
        }
        if (balance.holdBack().isPresent()) {
            return back;
        }
        return balance.holdDown().isPresent()
                ? Phrase.of("hold {down}").with("down", down)
                : Phrase.of("no single pull holds it");
    }
}

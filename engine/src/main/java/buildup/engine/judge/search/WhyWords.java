package buildup.engine.judge.search;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;

/** What is said of why a rule is met or not. */
public final class WhyWords {
    private static final Phrase NO_FIGURE = Phrase.of(
            "No stack of this document has the figure of '{rule}': look whether its piece has it in a report.");

    private WhyWords() {}

    /** The answer to a question why, in one or two sentences. */
    public static List<Phrase> said(List<WhyNot> why) {
        boolean today = why.get(0).today();
        if (why.stream().noneMatch(WhyNot::isKnown)) {
            return List.of(NO_FIGURE.with("rule", why.get(0).rule().text()));
        }
        List<String> helps = why.stream()
                .filter(one -> one.meets().isPresent())
                .map(one -> one.key() + " " + one.meets().get()
                        + (one.gives().isEmpty() ? "" : " (but then not '" + String.join("', '", one.gives()) + "')"))
                .toList();
        List<Phrase> said = new ArrayList<>();
        if (today) {
            said.add(Phrase.of("'{rule}' is met today.")
                    .with("rule", why.get(0).rule().text()));
        } else {
            said.add(Phrase.of("'{rule}' is not met today; {helps}.")
                    .with("rule", why.get(0).rule().text())
                    .with(
                            "helps",
                            helps.isEmpty()
                                    ? "no size meets it alone"
                                    : "it is met by " + String.join(", or by ", helps)));
        }
        for (WhyNot one : why) {
            said.add(hangs(one));
        }
        return said;
    }

    private static Phrase hangs(WhyNot one) {
        if (!one.matters()) {
            return Phrase.of("It does not hang on {size}.").with("size", one.key());
        }
        return one.turning()
                .map(turn -> Phrase.of("It turns at {size} {at}.")
                        .with("size", one.key())
                        .with("at", Figure.of(one.quantity(), turn.value()).rounded(Rounding.FINE)))
                .orElseGet(() -> Phrase.of("It hangs on {size}.").with("size", one.key()));
    }
}

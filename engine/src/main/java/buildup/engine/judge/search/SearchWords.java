package buildup.engine.judge.search;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a search has found, in sentences. */
public final class SearchWords {
    private SearchWords() {}

    /** The answer in one or two sentences. */
    public static List<Phrase> said(SearchResult result) {
        List<Phrase> said = new ArrayList<>();
        if (result.best().isEmpty()) {
            result.nearest()
                    .ifPresent(near -> said.add(near.candidate().unmet() == 0 ? faulty(near) : none(result, near)));
        } else {
            Answered first = result.best().get(0);
            said.add(
                    first.changes().isEmpty()
                            ? Phrase.of("Today's stack is the best answer{proved}.")
                                    .with("proved", proof(result.proved()))
                            : Phrase.of("Best answer{proved}: {changes}.")
                                    .with("proved", proof(result.proved()))
                                    .with("changes", changes(first)));
            result.smallest()
                    .filter(small -> !small.changes().isEmpty()
                            && !small.candidate()
                                    .choices()
                                    .equals(first.candidate().choices()))
                    .ifPresent(small -> said.add(Phrase.of("Smallest change{proved}: {changes}.")
                            .with("proved", proof(result.smallestProved()))
                            .with("changes", changes(small))));
        }
        said.add(tried(result));
        result.without().ifPresent(without -> said.add(unbuilt(result, without)));
        said.addAll(notProved(result));
        result.fault()
                .filter(any -> !result.best().isEmpty())
                .ifPresent(fault -> said.add(Phrase.of(
                                "On the way to these answers {count} {passed} a fault that today's stack has not, as: {fault}")
                        .with("count", Figure.count(result.faulty()))
                        .with(
                                "passed",
                                result.faulty() == 1 ? "was passed over: it brings" : "were passed over: they bring")
                        .with("fault", fault)));
        return said;
    }

    /** How many there are, and what became of them: who adds up what was tried and ruled out gets no more than all. */
    private static Phrase tried(SearchResult result) {
        BigInteger ruledOut = result.ruledOut();
        BigInteger settled = ruledOut.add(BigInteger.valueOf(result.judged()));
        String words = ruledOut.signum() == 0
                ? "{stacks} {all}, {judged} tried, {meeting} {meet} every line."
                : settled.equals(result.space())
                        ? "{stacks} {all}: {judged} tried, the other {ruled} ruled out; {meeting} of those tried {meet} every line."
                        : "{stacks} {all}: {judged} tried, {ruled} others ruled out; {meeting} of those tried {meet} every line.";
        return Phrase.of(words)
                .with("stacks", result.space().toString())
                .with("all", result.space().equals(BigInteger.ONE) ? "stack" : "stacks")
                .with("meet", result.meeting() == 1 ? "meets" : "meet")
                .with("ruled", ruledOut.toString())
                .with("judged", Figure.count(result.judged()))
                .with("meeting", Figure.count(result.meeting()));
    }

    /**
     * How many of those tried are no stack: they do not meet the lines, and nobody is to think that they fail them. A choice
     * of one size that makes none is told with its reason by a note.
     */
    private static Phrase unbuilt(SearchResult result, Unbuilt without) {
        Phrase count = Phrase.of("{count} of those tried could not be put together{first}")
                .with("count", Figure.count(result.unbuilt()));
        return without.changes().size() == 1
                ? count.with("first", ".")
                : count.with(
                        "first",
                        Phrase.of(", the first with {changes}: {why}")
                                .with("changes", typed(without.changes()))
                                .with("why", without.why()));
    }

    private static String typed(List<SizeChange> changes) {
        return changes.stream().map(change -> change.key() + " " + change.to()).collect(Collectors.joining(", "));
    }

    /** How near to the best the first answer is, or why nobody knows. */
    private static List<Phrase> notProved(SearchResult result) {
        if (result.proved() || result.best().isEmpty()) {
            return List.of();
        }
        return ProvedGap.of(result)
                .map(ProvedGap::said)
                .or(() -> result.proof()
                        .unbounded()
                        .map(wish -> Phrase.of(
                                        "How near that is to the best is not known: '{wish}' is known only of stacks"
                                                + " that are tried.")
                                .with("wish", wish)))
                .map(List::of)
                .orElse(List.of(Phrase.of(
                        result.goal().wishes().isEmpty()
                                ? "Whether a smaller change does is not known."
                                : "How near that is to the best is not known.")));
    }

    /** The rules that a stack does not meet, in quotes. */
    public static String unmet(Answered answered) {
        return answered.candidate().judged().musts().stream()
                .filter(must -> !must.met())
                .map(must -> "'" + must.rule() + "'")
                .collect(Collectors.joining(" and "));
    }

    private static Phrase none(SearchResult result, Answered near) {
        return Phrase.of("{none} meets every line. Fewest given up{proved}: {rules}, with {changes}.")
                .with("none", result.proof().nothingLeft() ? "No stack" : "None of those tried")
                .with("proved", proof(result.proved()))
                .with("rules", unmet(near))
                .with("changes", near.changes().isEmpty() ? "today's sizes" : changes(near));
    }

    private static Phrase faulty(Answered near) {
        return Phrase.of(
                        "Every stack that meets the lines brings a fault that today's has not. With {changes}: {fault}")
                .with("changes", changes(near))
                .with(
                        "fault",
                        near.faults().isEmpty() ? Phrase.of("") : near.faults().get(0));
    }

    private static String proof(boolean proved) {
        return proved ? "" : " (not proved)";
    }

    private static String changes(Answered answered) {
        return answered.changes().stream()
                .map(change -> change.key() + " " + change.to() + " (now " + change.from() + ")")
                .collect(Collectors.joining(", "));
    }
}

package buildup.engine.judge.search;

import buildup.engine.judge.choice.StackJudgment;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One choice of all free sizes, judged.
 *
 * @param choices the number of the choice for each free size
 * @param texts as they are typed
 * @param judged how the stack stands to the goal
 * @param changed how many sizes are other than today's
 * @param change the sum of their changes, in
 * @param missing how much of the rules is missing, as {@link Goal#missing} counts
 * @param score how far it is from what is wished; less is better
 */
public record Candidate(
        List<Integer> choices,
        List<String> texts,
        StackJudgment judged,
        int changed,
        double change,
        double missing,
        double score) {
    /** The stack that comes nearest to what is wished first. */
    static final Comparator<Candidate> BY_SCORE = Comparator.comparingDouble(Candidate::score)
            .thenComparingInt(Candidate::changed)
            .thenComparingDouble(Candidate::change)
            .thenComparing(Candidate::choices, Candidate::inOrder);

    /** The stack that differs least from today's first. */
    static final Comparator<Candidate> BY_CHANGE = Comparator.comparingInt(Candidate::changed)
            .thenComparingDouble(Candidate::change)
            .thenComparingDouble(Candidate::score)
            .thenComparing(Candidate::choices, Candidate::inOrder);

    /** The stack that gives up fewest rules first, of these the one that misses them by least. */
    static final Comparator<Candidate> BY_UNMET = Comparator.comparingInt(Candidate::unmet)
            .thenComparingDouble(Candidate::missing)
            .thenComparing(BY_SCORE);

    /** Copies the lists. */
    public Candidate {
        choices = List.copyOf(choices);
        texts = List.copyOf(texts);
    }

    /** How many rules it does not meet. */
    public int unmet() {
        return judged.unmet();
    }

    /** The numbers of these rules. */
    List<Integer> given() {
        return IntStream.range(0, judged.musts().size())
                .filter(i -> !judged.musts().get(i).met())
                .boxed()
                .toList();
    }

    private static int inOrder(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = Integer.compare(one.get(i), other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}

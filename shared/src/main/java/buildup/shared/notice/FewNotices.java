package buildup.shared.notice;

import buildup.shared.figure.Figure;
import java.util.ArrayList;
import java.util.List;

/** As many notices as somebody reads, and the count of the rest. */
public final class FewNotices {
    /** So many are told; a document with more faults is another kind of file, or has one fault many times. */
    public static final int MOST = 200;

    private static final Code CODE =
            Code.of("more-notices", "There is more to say than anybody reads; the rest is counted.");
    private static final String SENTENCE = "{count} more are not listed.";
    private static final String CURE = "Mend the first ones and ask again.";
    private static final Kind NOTES = CODE.note(SENTENCE, "");
    private static final Kind PROBLEMS = CODE.problem(SENTENCE, CURE);
    private static final Kind REFUSALS = CODE.refusal(SENTENCE, CURE);

    private FewNotices() {}

    /** The first of them, and a last one that counts the rest where there are more. */
    public static List<Notice> of(List<Notice> worstFirst) {
        if (worstFirst.size() <= MOST) {
            return worstFirst;
        }
        List<Notice> few = new ArrayList<>(worstFirst.subList(0, MOST));
        few.add(rest(worstFirst.get(MOST).level(), worstFirst.size() - MOST));
        return List.copyOf(few);
    }

    /**
     * What is said of the rest.
     *
     * @param worst level among them
     */
    public static Notice rest(Level worst, int count) {
        Kind kind = switch (worst) {
            case NOTE -> NOTES;
            case PROBLEM -> PROBLEMS;
            case REFUSAL -> REFUSALS;
        };
        return kind.with("count", Figure.count(count));
    }
}

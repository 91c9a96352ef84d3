package buildup.engine.judge.search;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What there is to say of a search. */
public final class SearchNotices {
    /** Nothing can be chosen. */
    public static final Kind NOTHING_FREE = Code.of("nothing-free", "A search was asked for, and no size is free.")
            .refusal(
                    "No size of the stack is free: there is nothing to search.",
                    "Write what may change where it stands, as 'lip: between 1/8 and 1/2 by 1/16, now 1/4'.");

    /** There is no stack that answers could be held beside. */
    public static final Kind TODAY_REFUSED = Code.of(
                    "today-refused", "A search sets out from a stack that is refused as it is now.")
            .note(
                    "A search sets out from the stack as it is now, and that is refused.",
                    "Mend it, or name other sizes behind 'now'.");

    /** Nothing is asked of an answer. */
    public static final Kind NOTHING_WANTED = Code.of(
                    "nothing-wanted",
                    "A search was asked for, and the stack has to meet nothing and nothing is wished.")
            .refusal(
                    "The stack has to meet nothing: every choice would do.",
                    "Add lines under 'must:', as 'height <= 11', or under 'wish:', as 'projection near 6'.");

    /** Two lines that no stack meets together. */
    public static final Kind CONTRADICT = Code.of(
                    "rules-contradict", "Two lines under 'must:' ask one figure for what it cannot be at once.")
            .refusal("'{one}' and '{other}' cannot both be met.", "Take one of them out.");

    /** More stacks than can be judged. */
    public static final Kind LARGE = Code.of("large-space", "There are more choices than a search may try.")
            .note(
                    "The free sizes make {count} stacks; {tries} of them are tried, and the best is not proved.",
                    "For an answer that is proved, give larger steps, or raise '--tries'.");

    private static final Code SEARCH_INTERRUPTED =
            Code.of("search-interrupted", "A search was interrupted before its end.");

    private static final Kind INTERRUPTED = SEARCH_INTERRUPTED.note(
            "The search was interrupted: {judged} of {count} stacks were tried, and nothing is proved.",
            "What it tells is the best so far.");

    private static final Kind INTERRUPTED_WITHIN = SEARCH_INTERRUPTED.note(
            "The search was interrupted: {judged} of {count} stacks were tried.", "What it tells is the best so far.");

    /** Somebody had enough: with something known of the stacks that were not tried, or nothing. */
    public static Kind interrupted(boolean bounded) {
        return bounded ? INTERRUPTED_WITHIN : INTERRUPTED;
    }

    /** A size that only makes the space larger. */
    public static final Kind IDLE = Code.of("idle-size", "A free size changes no figure that is asked for.")
            .note(
                    "'{place}' changes no figure that is asked for, while the other sizes stay as they are today.",
                    "If none of them matters to it either, take its choices out: the search has {times} times as many"
                            + " stacks for them.");

    /** A choice that no stack can be made with. */
    public static final Kind NO_STACK = Code.of(
                    "choice-makes-no-stack", "With some choice of a free size no stack can be put together.")
            .note(
                    "With '{place}' at {typed}, all others as they are today, no stack can be put together: {why}",
                    "Of {looked} choices of it that were looked at, {count} make none and are no answer.");

    /** A limit that moves with what is sought. */
    public static final Kind FREE_LIMIT = Code.of(
                    "limit-is-free", "A line under 'must:' or 'wish:' holds a figure against a size that is free.")
            .refusal("'{line}' speaks of '{name}', and that size is free.", "Write the length itself.");

    /** Not one of many choices gives a stack. */
    public static final Kind NONE_BUILT = Code.of("nothing-built", "With no choice of the free sizes there is a stack.")
            .refusal("With none of the choices that were tried can the stack be put together.", "{first}");

    /** What meets all brings something else. */
    public static final Kind FAULTY = Code.of(
                    "answers-bring-faults",
                    "Every choice that meets the lines under 'must:' brings a fault that was not there.")
            .problem(
                    "Every choice that meets the lines brings a fault that today's stack has not.",
                    "Leave what it hangs on free too, or mend it by hand in the file that '-o' writes.");

    private static final Code BETWEEN_CODE = Code.of(
            "met-between-choices", "No choice meets every line under 'must:', and a size between two choices does.");

    private static final String BETWEEN = "Between two choices every line is met: '{place}' at {typed}.";

    private static final Kind EXACT = BETWEEN_CODE.note(
            BETWEEN,
            "Type '{typed}' there, make its steps finer, or write 'within' behind the line that asks for an exact value.");

    private static final Kind NARROW =
            BETWEEN_CODE.note(BETWEEN, "Type '{typed}' there, make its steps finer, or allow more behind 'within'.");

    private static final Kind FINER = BETWEEN_CODE.note(BETWEEN, "Type '{typed}' there, or make its steps finer.");

    /** A size between two choices does what none of them does. */
    public static Kind between(Between there) {
        if (!there.only()) {
            return FINER;
        }
        return there.turning().rule().contains(" within ") ? NARROW : EXACT;
    }

    /** No stack meets all. */
    private static final Kind NONE_MEETS = Code.of(
                    "nothing-meets", "No choice of the free sizes meets every line under 'must:'.")
            .problem(
                    "No choice of the free sizes meets every line under 'must:'.",
                    "Give up {rules}, or leave more sizes free.");

    /** A line lies beyond what the free sizes can do, as their bounds tell. */
    public static final Kind OUT_OF_REACH = Code.of(
                    "out-of-reach", "Whatever the free sizes are, a line under 'must:' is not met.")
            .note(
                    "'{rule}' is out of reach: whatever the free sizes are, it comes to {reach} at best.",
                    "Leave other sizes free, or ask for less.");

    private static final Kind NONE_FOUND = Code.of(
                    "none-found", "None of the stacks that a search tried meets every line under 'must:'.")
            .problem(
                    "None of the {judged} stacks that were tried meets every line under 'must:'; others may.",
                    "Give up {rules}, leave more sizes free, or raise '--tries'.");

    /** No stack meets all, of all that there are or of those that were tried. */
    public static Kind noneMeets(boolean all) {
        return all ? NONE_MEETS : NONE_FOUND;
    }

    private SearchNotices() {}
}

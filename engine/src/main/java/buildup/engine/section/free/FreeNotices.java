package buildup.engine.section.free;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What there is to say of free sizes. */
final class FreeNotices {
    private static final Code NOT_A_FREE_SIZE =
            Code.of("not-a-free-size", "A size that is left free for a search cannot be read, or leaves no choice.");

    static final Kind NOT_UNDERSTOOD = NOT_A_FREE_SIZE.refusal(
            "'{text}' does not say how '{place}' is free.",
            "Write 'between 3 and 5 by 1/8, now 3-1/2' or 'one of [1x4, 1x6], now 1x4', in quotes inside brackets.");

    static final Kind NO_VALUE = NOT_A_FREE_SIZE.refusal(
            "'{value}' in '{text}' is not a size.",
            "Write a size, as 3-1/2, or a number, an hour as 9:30 or 9.5, and a unit behind each or behind none.");

    static final Kind EMPTY = NOT_A_FREE_SIZE.refusal(
            "'{text}' leaves nothing to choose.", "Give the least size first, then a greater one.");

    static final Kind EMPTY_LIST = NOT_A_FREE_SIZE.refusal(
            "'{text}' leaves nothing to choose.", "Write the choices between the brackets, as 'one of [1x4, 1x6]'.");

    static final Kind NO_STEP = NOT_A_FREE_SIZE.refusal(
            "The step of '{text}' never comes to its end.", "Give a step greater than nothing, as 'by 1/8'.");

    static final Kind TOO_FINE = NOT_A_FREE_SIZE.refusal(
            "'{text}' has more than {most} steps.", "Give a larger step: a rule has 16 to the inch.");

    static final Kind NOW_OUTSIDE = NOT_A_FREE_SIZE.refusal(
            "What '{place}' is now, {now}, is not one of its choices.", "Give one of them behind 'now'.");

    static final Kind NOW_BEYOND = NOT_A_FREE_SIZE.refusal(
            "What '{place}' is now, {now}, does not lie between its ends.", "Give a size between them behind 'now'.");

    static final Kind NO_FAMILY = NOT_A_FREE_SIZE.refusal(
            "The catalog holds no shape '{name}' with usual sizes.", "Name one that 'profile' lists.");

    static final Kind STEP_MISSES_END = Code.of(
                    "step-misses-end", "The steps of a free size end before its greatest; that is tried as well.")
            .note("The steps of '{place}' pass its end; {last} is tried as well.", "");

    private FreeNotices() {}
}

package buildup.cli.watch;

import buildup.cli.compare.Comparison;
import buildup.engine.Answer;
import java.util.Optional;

/**
 * One followed stack: what its file says now, and the last that could be drawn.
 *
 * @param now the latest answer
 * @param good the latest answer with figures; the same as {@code now} unless that was refused
 * @param change from the good answer before it to the good one
 */
record FollowedStack(Answer now, Optional<Answer> good, Optional<Comparison> change) {
    /** The stack as it is first read. */
    static FollowedStack first(Answer answer) {
        return new FollowedStack(answer, Optional.of(answer).filter(FollowedStack::hasFigures), Optional.empty());
    }

    /** The stack after a save. */
    FollowedStack next(Answer answer) {
        return hasFigures(answer)
                ? new FollowedStack(answer, Optional.of(answer), good.flatMap(before -> Comparison.of(before, answer)))
                : new FollowedStack(answer, good, change);
    }

    /** Whether that answer has no news: the same title, notices and figures. */
    boolean says(Answer answer) {
        return now.title().equals(answer.title())
                && now.unit() == answer.unit()
                && now.notices().equals(answer.notices())
                && hasFigures(now) == hasFigures(answer)
                && Comparison.of(now, answer).map(Comparison::alike).orElse(true);
    }

    /** What can be drawn; where there is nothing, what is wrong. */
    Answer shown() {
        return good.orElse(now);
    }

    /** Whether what is drawn is older than the file. */
    boolean stale() {
        return good.isPresent() && !hasFigures(now);
    }

    private static boolean hasFigures(Answer answer) {
        return answer.known().isPresent();
    }
}

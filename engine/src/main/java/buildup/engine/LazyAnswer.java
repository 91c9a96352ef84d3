package buildup.engine;

import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A question that is answered when somebody first asks it, and what was said in answering. Several threads may ask: one
 * answers, the others wait. No question stands on itself by any way, so that none waits for ever.
 *
 * @param <T> the answer
 */
final class LazyAnswer<T> {
    private final Function<Notices, T> question;
    private final Notices notices = new Notices();
    private Optional<T> answer = Optional.empty();

    LazyAnswer(Function<Notices, T> question) {
        this.question = question;
    }

    synchronized T answer() {
        if (answer.isEmpty()) {
            answer = Optional.of(question.apply(notices));
        }
        return answer.get();
    }

    /** What was said in answering; asks if nobody did. */
    List<Notice> notices() {
        answer();
        return notices.sorted();
    }
}

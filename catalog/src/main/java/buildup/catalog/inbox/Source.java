package buildup.catalog.inbox;

import buildup.shared.notice.Level;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The file that is being read, and what there is to say of it. */
final class Source {
    /** So many faults of one kind are told one by one; of the rest, their number and where they end. */
    private static final int MOST_TOLD = 100;

    private final String name;
    private final String text;
    private final Notices notices;
    private final Map<String, Integer> told = new LinkedHashMap<>();
    private final Map<String, Integer> last = new LinkedHashMap<>();

    Source(String name, String text, Notices notices) {
        this.name = name;
        this.text = text;
        this.notices = notices;
    }

    String name() {
        return name;
    }

    String text() {
        return text;
    }

    Notice note(String code, String message, int line) {
        return Notice.note(code, message).at(new Mark(name, line, 1));
    }

    Notice problem(String code, String message, int line) {
        return Notice.problem(code, message).at(new Mark(name, line, 1));
    }

    Refused refused(String code, String message, int line, String cure) {
        return new Refused(
                Notice.refusal(code, message).at(new Mark(name, line, 1)).cure(cure));
    }

    /** Says it, unless very many of its kind have been said. */
    void tell(Notice notice) {
        int before = told.merge(notice.code(), 1, Integer::sum);
        if (before <= MOST_TOLD || notice.level() == Level.REFUSAL) {
            notices.add(notice);
        }
        last.put(notice.code(), notice.mark().map(Mark::line).orElse(1));
    }

    /** Says how many faults were not told one by one. */
    void close() {
        told.forEach((code, count) -> {
            if (count > MOST_TOLD) {
                int line = Optional.ofNullable(last.get(code)).orElse(1);
                notices.add(problem(
                                code,
                                (count - MOST_TOLD) + " more like these, the last of them in line " + line + ".",
                                line)
                        .cure("Look at how the file was saved."));
            }
        });
    }
}

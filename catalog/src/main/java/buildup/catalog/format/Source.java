package buildup.catalog.format;

import buildup.shared.figure.Figure;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
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
    private final Map<Code, Integer> told = new LinkedHashMap<>();
    private final Map<Code, Integer> last = new LinkedHashMap<>();

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

    /** A notice of a kind that names the file. */
    Notice named(Kind kind) {
        return kind.with("file", name);
    }

    FileRefused refused(Kind kind, int line) {
        return refused(kind.notice(), line);
    }

    FileRefused refused(Notice notice, int line) {
        return new FileRefused(notice.at(new Mark(name, line, 1)));
    }

    /** Says it, unless very many of its code have been said. */
    void tell(Kind kind, int line) {
        tell(kind.notice(), line);
    }

    /** Says it, unless very many of its code have been said. */
    void tell(Notice notice, int line) {
        tell(notice.at(new Mark(name, line, 1)));
    }

    private void tell(Notice notice) {
        Code code = notice.kind().code();
        int before = told.merge(code, 1, Integer::sum);
        if (before <= MOST_TOLD || notice.level() == Level.REFUSAL) {
            notices.add(notice);
        }
        last.put(code, notice.mark().map(Mark::line).orElse(1));
    }

    /** Says how many faults were not told one by one. */
    void close() {
        told.forEach((code, count) -> {
            if (count > MOST_TOLD) {
                int line = Optional.ofNullable(last.get(code)).orElse(1);
                notices.add(FormatNotices.more(code)
                        .with("more", Figure.count(count - MOST_TOLD))
                        .with("line", Figure.count(line))
                        .at(new Mark(name, line, 1)));
            }
        });
    }
}

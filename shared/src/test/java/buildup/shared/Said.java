package buildup.shared;

import buildup.shared.notice.Level;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** A notice as an inch document has it read, to be compared with what should be said. */
public record Said(Level level, String code, String message, Optional<Mark> mark, Optional<String> piece, String cure) {
    public static Said of(Notice notice) {
        return new Said(
                notice.level(),
                notice.code(),
                NoticeWords.INCHES.message(notice),
                notice.mark(),
                notice.piece(),
                NoticeWords.INCHES.cure(notice));
    }

    public static List<Said> all(Notices notices) {
        return all(notices.sorted());
    }

    public static List<Said> all(List<Notice> notices) {
        return notices.stream().map(Said::of).toList();
    }

    public static Said refusal(String code, String message) {
        return new Said(Level.REFUSAL, code, message, Optional.empty(), Optional.empty(), "");
    }

    public static Said note(String code, String message) {
        return new Said(Level.NOTE, code, message, Optional.empty(), Optional.empty(), "");
    }

    public Said at(Mark place) {
        return new Said(level, code, message, Optional.of(place), piece, cure);
    }

    public Said of(String name) {
        return new Said(level, code, message, mark, Optional.of(name), cure);
    }

    public Said cure(String wayOut) {
        return new Said(level, code, message, mark, piece, wayOut);
    }
}

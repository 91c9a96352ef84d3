package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.shared.notice.Level;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Notices as text, one line each. */
public final class NoticeText {
    /**
     * What notices share that are told in one line: all but the piece and where it is written. A refusal is about a
     * place in the file and shares its line with none at another.
     */
    private record Alike(Level level, String code, Optional<Mark> only, String sentence, String cure) {}

    private static final class Line {
        private final String place;
        private final Set<String> pieces = new LinkedHashSet<>();

        Line(String place) {
            this.place = place;
        }
    }

    private NoticeText() {}

    /**
     * Lines of level, place and sentences, in that order between double blanks: {@code problem  cornice.yaml:12:5
     * soffit: hangs on its fastenings. Nail it to what is behind it.} What is said of several pieces in the same words
     * is said once, at the place of the first.
     *
     * @param file what is said to be the place of a notice that has none
     */
    public static String write(List<Notice> notices, String file) {
        Map<Alike, Line> lines = new LinkedHashMap<>();
        for (Notice notice : notices) {
            Line line = lines.computeIfAbsent(
                    alike(notice),
                    first -> new Line(notice.mark().map(Mark::toString).orElse(file)));
            notice.piece().filter(piece -> !piece.isEmpty()).ifPresent(line.pieces::add);
        }
        StringBuilder text = new StringBuilder();
        lines.forEach((alike, line) -> text.append(word(alike.level()))
                .append("  ")
                .append(Display.plain(line.place))
                .append("  ")
                .append(Display.plain(sentence(alike, line.pieces)))
                .append('\n'));
        return text.toString();
    }

    /** The word for a level. */
    static String word(Level level) {
        return level.name().toLowerCase(Locale.ROOT);
    }

    private static Alike alike(Notice notice) {
        boolean alone = notice.level() == Level.REFUSAL || notice.piece().isEmpty();
        return new Alike(
                notice.level(),
                notice.code(),
                notice.mark().filter(mark -> alone),
                withoutPiece(notice.message(), notice.piece()),
                notice.cure());
    }

    /** The piece stands in front of its sentence already. */
    private static String withoutPiece(String message, Optional<String> piece) {
        String subject = "'" + piece.orElse("") + "'";
        if (piece.isPresent() && (message.startsWith(subject + " ") || message.startsWith(subject + ": "))) {
            return message.substring(subject.length() + 1).strip();
        }
        return message;
    }

    private static String sentence(Alike alike, Set<String> pieces) {
        String subject = pieces.isEmpty() ? "" : String.join(", ", pieces) + ": ";
        return (subject + alike.sentence() + " " + alike.cure()).strip();
    }
}

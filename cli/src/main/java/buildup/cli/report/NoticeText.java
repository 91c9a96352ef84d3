package buildup.cli.report;

import buildup.cli.table.Display;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.FewNotices;
import buildup.shared.notice.Level;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.ArrayList;
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
    private record Alike(Level level, String code, Optional<Mark> only, String sentence, String cure) {
        /** Spelled out: what a record does of itself as a key is slow to start. */
        @Override
        public int hashCode() {
            return 31 * sentence.hashCode() + cure.hashCode();
        }
    }

    /**
     * What is said of some pieces in the same words.
     *
     * @param place where the first of them is written
     * @param pieces that it is about; none when it is about the whole
     * @param sentence with its cure
     */
    public record Said(Level level, String place, List<String> pieces, String sentence) {
        public Said {
            pieces = List.copyOf(pieces);
        }

        /** The pieces it is about, by name; of very many the first {@code most} and how many more. */
        public String about(int most) {
            int rest = pieces.size() - most;
            // a count that stands for one name says less than the name
            return rest <= 1
                    ? String.join(", ", pieces)
                    : String.join(", ", pieces.subList(0, most)) + " and " + rest + " more";
        }

        private Said of(List<String> more) {
            Set<String> all = new LinkedHashSet<>(pieces);
            all.addAll(more);
            return new Said(level, place, List.copyOf(all), sentence);
        }
    }

    /** So many pieces are named of those of which the same is said; nobody reads more of them in a line. */
    private static final int MOST_NAMED = 20;

    private NoticeText() {}

    /**
     * Lines of level, place and sentences, in that order between double blanks: {@code problem  cornice.yaml:12:5
     * soffit: is held by nails only; nothing carries it. Nail it to what is behind it.} What is said of several pieces in the same words
     * is said once, at the place of the first.
     *
     * @param file what is said to be the place of a notice that has none
     * @param unit of the document
     */
    public static String write(List<Notice> notices, String file, LengthUnit unit) {
        return lines(said(notices, file, unit));
    }

    /** The same, all of them, however many, each at its own place. */
    public static String writeAll(List<Notice> notices, String file, LengthUnit unit) {
        return lines(notices.stream()
                .flatMap(notice -> said(List.of(notice), file, unit).stream())
                .toList());
    }

    private static String lines(List<Said> all) {
        StringBuilder text = new StringBuilder();
        all.forEach(said -> text.append(word(said.level()))
                .append("  ")
                .append(Display.plain(said.place()))
                .append("  ")
                .append(Display.plain(
                        said.pieces().isEmpty() ? said.sentence() : said.about(MOST_NAMED) + ": " + said.sentence()))
                .append('\n'));
        return text.toString();
    }

    /** The same before it is written as lines; of very many, the first and a count of the rest. */
    public static List<Said> said(List<Notice> notices, String file, LengthUnit unit) {
        NoticeWords words = NoticeWords.in(unit);
        Map<Alike, Said> said = new LinkedHashMap<>();
        for (Notice notice : notices) {
            Alike alike = alike(notice, words);
            String place = notice.mark().map(Mark::toString).orElse(file);
            Said first = said.getOrDefault(
                    alike, new Said(alike.level(), place, List.of(), (alike.sentence() + " " + alike.cure()).strip()));
            // what is asked about by its name is not named twice
            List<String> piece = notice.piece().filter(name -> !name.isEmpty() && !name.equals(place)).stream()
                    .toList();
            said.put(alike, first.of(piece));
        }
        return few(List.copyOf(said.values()), file, words);
    }

    /** As many as somebody reads. */
    private static List<Said> few(List<Said> all, String file, NoticeWords words) {
        if (all.size() <= FewNotices.MOST) {
            return all;
        }
        List<Said> few = new ArrayList<>(all.subList(0, FewNotices.MOST));
        Notice rest = FewNotices.rest(all.get(FewNotices.MOST).level(), all.size() - FewNotices.MOST);
        few.add(new Said(rest.level(), file, List.of(), (words.message(rest) + " " + words.cure(rest)).strip()));
        return List.copyOf(few);
    }

    /** The word for a level. */
    public static String word(Level level) {
        return level.name().toLowerCase(Locale.ROOT);
    }

    private static Alike alike(Notice notice, NoticeWords words) {
        boolean alone = notice.level() == Level.REFUSAL || notice.piece().isEmpty();
        return new Alike(
                notice.level(),
                notice.code(),
                notice.mark().filter(mark -> alone),
                withoutPiece(words.message(notice), notice.piece()),
                words.cure(notice));
    }

    /** The piece stands in front of its sentence already. */
    private static String withoutPiece(String message, Optional<String> piece) {
        String subject = "'" + piece.orElse("") + "'";
        if (piece.isPresent() && (message.startsWith(subject + " ") || message.startsWith(subject + ": "))) {
            return message.substring(subject.length() + 1).strip();
        }
        return message;
    }
}

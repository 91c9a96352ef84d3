package buildup.cli.compare;

import buildup.cli.tell.Beside.Pair;
import buildup.cli.tell.FigureChange;
import buildup.engine.Answer;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is new among the notices, what is gone and what is another figure now, as the notices themselves say it. */
record NoticeChanges(Comparison comparison, FigurePrinter printer) {
    /** A level, a code, a piece and what it names, and how many of the same were met before. */
    private record Key(List<String> names, int before) {
        /** Its level, code and piece, whatever it names besides. */
        List<String> kind() {
            return names.subList(0, 3);
        }
    }

    /** A line each, of one level. */
    List<String> of(String level) {
        Map<Key, Notice> before = byKey(comparison.a());
        Map<Key, Notice> after = byKey(comparison.b());
        Map<List<String>, Integer> met = new HashMap<>();
        Map<List<String>, List<Key>> gone = new HashMap<>();
        Map<List<String>, List<Key>> come = new HashMap<>();
        List<Pair> pairs = comparison.pairs(Comparison.NOTICES);
        List<Key> keys = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (Pair pair : pairs) {
            Key key = new Key(pair.names(), met.merge(pair.names(), 1, Integer::sum) - 1);
            keys.add(key);
            if (!pair.both()) {
                (pair.a().isEmpty() ? come : gone)
                        .computeIfAbsent(key.kind(), any -> new ArrayList<>())
                        .add(key);
            }
        }
        for (int i = 0; i < keys.size(); i++) {
            Pair pair = pairs.get(i);
            Key key = keys.get(i);
            // one that is only told of another eye, row or run stays: where it was told of before is behind it
            List<Key> last = gone.getOrDefault(key.kind(), List.of());
            boolean turned = !pair.both()
                    && last.size() == 1
                    && come.getOrDefault(key.kind(), List.of()).size() == 1;
            // of a note that stays, how much is no news
            if (!pair.names().get(0).equals(level) || pair.alike() || (pair.both() && level.equals("note"))) {
                continue;
            }
            if (turned) {
                if (pair.a().isEmpty()) {
                    Optional<String> then = said(before, last.get(0));
                    said(after, key)
                            .ifPresent(now -> lines.add("still a " + level + ": " + now
                                    + then.map(words -> " (before: " + words + ")")
                                            .orElse("")));
                }
            } else if (pair.a().isEmpty()) {
                said(after, key).ifPresent(said -> lines.add("new " + level + ": " + said));
            } else if (pair.b().isEmpty()) {
                said(before, key).ifPresent(said -> lines.add("no longer a " + level + ": " + said));
            } else {
                int at = pair.at("amount");
                String amount =
                        new FigureChange(printer).change(pair.columns().get(at), pair.cellOfA(at), pair.cellOfB(at));
                said(after, key).ifPresent(said -> lines.add("still a " + level + ", " + amount + ": " + said));
            }
        }
        return lines;
    }

    private static Map<Key, Notice> byKey(Answer answer) {
        Map<Key, Notice> notices = new HashMap<>();
        for (Notice notice : answer.notices()) {
            List<String> names = List.of(
                    notice.level().name().toLowerCase(Locale.ROOT),
                    notice.code(),
                    notice.piece().orElse(""),
                    String.join(", ", notice.about()));
            int before = 0;
            while (notices.putIfAbsent(new Key(names, before), notice) != null) {
                before++;
            }
        }
        return notices;
    }

    /** The sentence without the full stop, after the piece where it does not name it. */
    private Optional<String> said(Map<Key, Notice> notices, Key key) {
        return Optional.ofNullable(notices.get(key)).map(notice -> {
            String sentence = printer.print(notice.sentence());
            String end = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
            return notice.piece()
                    .filter(piece -> !end.contains(piece))
                    .map(piece -> piece + ": " + end)
                    .orElse(end);
        });
    }
}

package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.buy.BuySheets;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.WishRule;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Claims;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Judges stacks of one document with other sizes. Of each only those questions are asked that the goal speaks of, and the
 * rest of those that are to be proposed. Holds nothing that changes: many threads may ask.
 */
final class SearchJudge {
    private final FreeSizes free;
    private final Catalog catalog;
    private final List<MustRule> rules;
    private final List<WishRule> wishes;
    /** By the key of a sheet, the number of its group in {@link Sheets#GROUPS}. */
    private final Map<String, Integer> groups;

    private final Set<String> before;

    /**
     * @param groups by the key of a sheet, the number of its group in {@link Sheets#GROUPS}
     * @param today what is said of today's stack
     */
    SearchJudge(
            FreeSizes free,
            Catalog catalog,
            List<MustRule> rules,
            List<WishRule> wishes,
            Map<String, Integer> groups,
            List<Notice> today) {
        this.free = free;
        this.catalog = catalog;
        this.rules = List.copyOf(rules);
        this.wishes = List.copyOf(wishes);
        this.groups = Map.copyOf(groups);
        this.before = today.stream()
                .filter(notice -> notice.level() != Level.NOTE)
                .map(SearchJudge::key)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** In which group each sheet of a stack stands; asks every question but what it costs. */
    static Map<String, Integer> groups(Answers answers) {
        Map<String, Integer> groups = new HashMap<>(Map.of(BuySheets.TOTAL, Sheets.COST));
        for (int i = 0; i < Sheets.COST; i++) {
            for (Sheet sheet : Sheets.GROUPS.get(i).apply(answers)) {
                groups.put(sheet.key(), i);
            }
        }
        return groups;
    }

    /** How the stack with these sizes stands to the goal. */
    StackJudgment judge(List<String> texts) {
        Optional<Answers> known = answer(texts).known();
        if (known.isEmpty()) {
            return StackJudgment.NOT_BUILT;
        }
        Map<Integer, Map<String, Sheet>> sheets = new TreeMap<>();
        List<OptionalDouble> far = new ArrayList<>();
        for (WishRule wish : wishes) {
            far.add(
                    wish.figure().isEmpty()
                            ? OptionalDouble.empty()
                            : wish.far(key -> sheet(known.get(), key, sheets)));
        }
        return StackJudgment.of(
                rules.stream()
                        .map(rule -> rule.on(key -> sheet(known.get(), key, sheets)))
                        .toList(),
                far);
    }

    /** What that stack has of the figure of each wish. */
    List<Optional<MustResult>> wished(List<String> texts) {
        Map<Integer, Map<String, Sheet>> sheets = new TreeMap<>();
        return answer(texts)
                .known()
                .map(known -> wishes.stream()
                        .map(wish -> wish.asRule().map(rule -> rule.on(key -> sheet(known, key, sheets))))
                        .toList())
                .orElse(List.of());
    }

    private Optional<Sheet> sheet(Answers answers, String key, Map<Integer, Map<String, Sheet>> sheets) {
        int group = groups.getOrDefault(key, 0);
        Map<String, Sheet> asked = sheets.computeIfAbsent(group, number -> {
            Map<String, Sheet> all = new HashMap<>();
            Sheets.GROUPS.get(number).apply(answers).forEach(sheet -> all.put(sheet.key(), sheet));
            return all;
        });
        return Optional.ofNullable(asked.get(key));
    }

    private Answer answer(List<String> texts) {
        return Answer.untried(free.with(texts), catalog, new Claims(), new Notices(), Optional.empty());
    }

    /** What is wrong with that stack and not with today's; the lines under {@code must:} are left aside. */
    List<Phrase> faults(List<String> texts) {
        return answer(texts).notices().stream()
                .filter(notice -> notice.level() != Level.NOTE)
                .filter(notice -> !notice.code().equals("must-not-met"))
                .filter(notice -> !before.contains(key(notice)))
                .map(Notice::sentence)
                .distinct()
                .toList();
    }

    /** What a problem is about, whatever its figures. */
    private static String key(Notice notice) {
        return notice.code() + " " + notice.piece().orElse("");
    }
}

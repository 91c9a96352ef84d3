package buildup.engine;

import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.must.WishRule;
import buildup.engine.judge.search.SearchNotices;
import buildup.engine.section.free.FreeSize;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is asked of the stacks of a search.
 *
 * @param rules the lines under {@code must:} that are understood
 * @param wishes the lines under {@code wish:} that are
 */
record SearchLines(List<MustRule> rules, List<WishRule> wishes) {
    /** What a figure is held against. */
    private static final Pattern LIMIT = Pattern.compile("(?:[<>=\u2264\u2265]| near | within )(.*)");

    /** Copies the lists. */
    SearchLines {
        rules = List.copyOf(rules);
        wishes = List.copyOf(wishes);
    }

    /**
     * The lines of a document.
     *
     * @param start today's stack, whose sheets hold the figures
     * @param said what is wrong with a line
     */
    static SearchLines of(Answers start, Notices said) {
        Blocks blocks = start.blocks();
        return new SearchLines(
                Musts.rules(blocks.must(), start.sheets(), blocks.stack().lengths(), said),
                Musts.wishes(blocks.wish(), start.sheets(), blocks.stack().lengths(), said));
    }

    /** A line that does not stand in the document; none where it is not understood. */
    static List<MustRule> rules(Answers start, Scalar line, Notices said) {
        return Musts.rules(List.of(line), start.sheets(), start.blocks().stack().lengths(), said);
    }

    /** Says which lines cannot be sought for: two that no figure meets, and those held against a size that is free. */
    void sayWhatCannotBeSought(Blocks blocks, List<FreeSize> free, Notices said) {
        contradictions(said);
        Stream.of(blocks.must(), blocks.wish()).flatMap(List::stream).forEach(line -> freeLimits(line, free, said));
    }

    /** A limit that changes with what is sought is none: it would be held as it is today. */
    private static void freeLimits(Scalar line, List<FreeSize> free, Notices said) {
        for (FreeSize size : free) {
            String name = size.place().substring(size.place().indexOf('.') + 1);
            Matcher value = LIMIT.matcher(line.text());
            boolean named = value.find()
                    && List.of(value.group(1).split("[^\\p{L}0-9_-]+")).contains(name);
            if (size.place().startsWith("sizes.") && named) {
                said.add(SearchNotices.FREE_LIMIT
                        .with("line", line.text())
                        .with("name", name)
                        .at(line.mark()));
            }
        }
    }

    /** Two lines that no figure meets are told before anything is sought. */
    private void contradictions(Notices said) {
        for (int i = 0; i < rules.size(); i++) {
            for (int j = i + 1; j < rules.size(); j++) {
                if (rules.get(i).contradicts(rules.get(j))) {
                    said.add(SearchNotices.CONTRADICT
                            .with("one", rules.get(i).text())
                            .with("other", rules.get(j).text())
                            .at(rules.get(j).mark()));
                }
            }
        }
    }
}

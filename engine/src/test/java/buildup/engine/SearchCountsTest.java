package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchResult;
import buildup.engine.judge.search.SearchWords;
import buildup.engine.judge.search.StackSearch;
import buildup.engine.section.free.FreeSize;
import buildup.shared.document.Document;
import buildup.shared.figure.FigurePrinter;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What a search says it has tried and ruled out adds up, however it ends: small spaces of chance, of which few stacks may be
 * tried or all, or which somebody has enough of. More with {@code -Dbuildup.count.spaces=3000}.
 */
class SearchCountsTest {
    private static final int SPACES = Integer.getInteger("buildup.count.spaces", 24);

    private static final Pattern SAID = Pattern.compile(
            "([\\d,]+) stacks[:,] ([\\d,]+) tried(?:, (?:the other ([\\d,]+)|([\\d,]+) others) ruled out;|,) ([\\d,]+) .*");

    private final SplittableRandom random = new SplittableRandom(20);

    private String some(String... texts) {
        return texts[random.nextInt(texts.length)];
    }

    private String free() {
        int count = 2 + random.nextInt(7);
        return "between 1 and " + (7 + count) + "/8 by 1/8, now " + (8 + random.nextInt(count)) + "/8";
    }

    /** Three boards on each other; one that slides until it touches has no place that is known of all stacks. */
    private String drawn() {
        List<String> musts = new ArrayList<>(List.of(
                some(
                        "height <= " + (4 + random.nextInt(20) / 8.0),
                        "height >= " + (3 + random.nextInt(16) / 8.0),
                        "height = " + (3 + random.nextInt(16) / 8.0)),
                "projection <= " + (3 + random.nextInt(12) / 8.0),
                "area <= " + (8 + random.nextInt(8)) + " sq in",
                "top of a >= " + (1 + random.nextInt(16) / 8.0)));
        musts.removeIf(any -> random.nextInt(2) == 0);
        List<String> wishes = new ArrayList<>();
        for (int i = musts.isEmpty() ? 1 : random.nextInt(3); i > 0; i--) {
            wishes.add(some(
                    "height near " + (4 + random.nextInt(30) / 16.0),
                    "projection near " + (3 + random.nextInt(30) / 16.0),
                    "least weight",
                    "most height",
                    "least change"));
        }
        return """
                title: Boards
                wood: yellow-poplar
                sizes: { low: "%s", high: "%s", wide: "%s" }
                space: { wall: { solid: no } }
                pieces:
                  - { name: a, section: [out 2, up low], back: wall, bottom: 0 }
                  - { name: b, section: [out 1 + wide, up high], back: wall, bottom: a.top }
                  - { name: c, section: [out 2, up 1], back: wall, bottom: %s }
                must: %s
                wish: %s
                """.formatted(free(), free(), free(), random.nextInt(6) == 0 ? "touch" : "b.top", musts, wishes);
    }

    /** How many stacks of a space meet every rule, each asked by itself. */
    private static long meeting(String yaml, List<FreeSize> sizes) {
        Document document = SearchedTest.document(yaml);
        StackJudge judge = Searched.judge(document, Catalog.builtIn()).orElseThrow();
        long meeting = 0;
        for (long i = 0; i < StackSearch.count(sizes).longValueExact(); i++) {
            StackJudgment judged = judge.judge(StackSearch.texts(sizes, BigInteger.valueOf(i)));
            boolean meets = judged.built() && judged.musts().stream().allMatch(must -> must.met());
            meeting += meets ? 1 : 0;
        }
        return meeting;
    }

    private static BigInteger number(String digits) {
        return new BigInteger(digits.replace(",", ""));
    }

    @Tag("sampled")
    @Test
    void what_was_tried_and_what_was_ruled_out_are_no_more_than_all_and_all_where_the_answer_is_proved() {
        Map<String, Integer> ends = new TreeMap<>();
        for (int i = 0; i < SPACES; i++) {
            String yaml = drawn();
            AtomicInteger asked = new AtomicInteger(random.nextInt(3) == 0 ? random.nextInt(40) : Integer.MAX_VALUE);
            SearchLimits limits = new SearchLimits(
                    1 + random.nextInt(random.nextBoolean() ? 60 : 1000),
                    2,
                    1,
                    plan -> {},
                    () -> asked.get() == 0 || asked.decrementAndGet() == 0,
                    judged -> {});
            Searched searched = SearchedTest.search(yaml, limits, Optional.empty());
            SearchResult result = searched.result().orElseThrow(() -> new AssertionError(yaml + searched.notices()));
            BigInteger tried = BigInteger.valueOf(result.judged());
            BigInteger settled = tried.add(result.proof().ruledOut());
            assertThat(settled).as(yaml).isLessThanOrEqualTo(result.space());
            if (result.proof().all()) {
                assertThat(settled).as(yaml).isEqualTo(result.space());
            }
            long meeting = meeting(yaml, searched.sizes());
            assertThat(result.meeting()).as(yaml).isLessThanOrEqualTo(meeting);
            if (tried.equals(result.space())) {
                assertThat(result.meeting()).as(yaml).isEqualTo(meeting);
            }
            said(yaml, result);
            ends.merge(end(result, asked.get() == 0), 1, Integer::sum);
        }
        assertThat(ends)
                .containsKeys(
                        "all tried",
                        "all tried or ruled out",
                        "proved by a bound",
                        "not proved",
                        "interrupted",
                        "none, proved",
                        "none, not proved");
    }

    private static String end(SearchResult result, boolean interrupted) {
        boolean tried = result.space().equals(BigInteger.valueOf(result.judged()));
        if (interrupted) {
            return "interrupted";
        }
        if (result.best().isEmpty()) {
            return result.proved() ? "none, proved" : "none, not proved";
        }
        return tried
                ? "all tried"
                : !result.proved()
                        ? "not proved"
                        : result.proof().all() ? "all tried or ruled out" : "proved by a bound";
    }

    /** The sentence itself, added up as whoever reads it would. */
    private static void said(String yaml, SearchResult result) {
        List<Matcher> counts = SearchWords.said(result).stream()
                .map(FigurePrinter.INCHES::print)
                .map(SAID::matcher)
                .filter(Matcher::matches)
                .toList();
        assertThat(counts).as(yaml).hasSize(1);
        Matcher said = counts.get(0);
        BigInteger ruledOut = said.group(3) != null
                ? number(said.group(3))
                : said.group(4) != null ? number(said.group(4)) : BigInteger.ZERO;
        BigInteger settled = number(said.group(2)).add(ruledOut);
        BigInteger all = number(said.group(1));
        assertThat(settled).as(yaml).isLessThanOrEqualTo(all);
        if (result.proved() || result.nothingLeft() || said.group(3) != null) {
            assertThat(settled).as(yaml).isEqualTo(all);
        }
        assertThat(number(said.group(5))).as(yaml).isLessThanOrEqualTo(number(said.group(2)));
    }
}

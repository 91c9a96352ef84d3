package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.judge.search.Candidate;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchResult;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Spaces of which few stacks are tried and the rest is ruled out by bounds, beside trying every one of them. More, and larger
 * ones, with {@code -Dbuildup.bound.spaces=40 -Dbuildup.bound.space=100000}.
 */
class SearchBoundsTest {
    private static final int SPACES = Integer.getInteger("buildup.bound.spaces", 3);
    private static final int STACKS = Integer.getInteger("buildup.bound.space", 250);

    private static final String CORNICE = """
            title: Cornice
            wood: yellow-poplar
            sizes:
              lip: %s
              width: %s
              over: %s
              high: %s
            space: { floor: -84, ceiling: 14, projection: 9, wall: { solid: no } }
            eyes: [{ name: standing, distance: 72, height: floor + 60 }]
            lights: [{ name: raking, altitude: 24, azimuth: 40 }]
            pieces:
              - { name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 3/4 + high }
              - { name: bead, profile: board 1 x 3/4, back: wall, bottom: datum }
              - { name: frieze, profile: board 3/4 x high, back: wall, bottom: bead.top }
              - { name: bed, profile: '%s', back: frieze.face, top: frieze.top }
              - { name: soffit, kind: nailer, profile: board 3/4 x width, lay: flat, back: wall, bottom: frieze.top }
              - { name: fascia, profile: board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - lip }
              - { name: crown, profile: plain-crown 3-1/4, back: fascia.face, bottom: fascia.top - 1/2 }
              - { name: cap, profile: board 3/4 x 9, lay: flat, back: wall, face: crown.face + over, bottom: crown.top }
            """;

    private static String some(SplittableRandom random, String... texts) {
        return texts[random.nextInt(texts.length)];
    }

    /** A space of about as many stacks as are asked for, with rules and wishes by chance. */
    private static String drawn(SplittableRandom random) {
        int steps = (int) Math.max(2, Math.round(Math.pow(STACKS / 2.0, 0.25)));
        List<String> sizes = new ArrayList<>();
        for (double from : new double[] {0.25, 2.5, 0, 4.5}) {
            double least = from + random.nextInt(4) / 8.0;
            sizes.add("between " + least + " and " + (least + (steps - 1) / 16.0) + " by 0.0625, now "
                    + (least + random.nextInt(steps) / 16.0));
        }
        String bed = some(
                random,
                "one of [cove-bed 1 x 1-1/8, cove-bed 1-1/4 x 1-3/8]",
                "one of [board 3/4 x 1, cove-bed 1 x 1-1/8]");
        List<String> musts = new ArrayList<>();
        musts.add("share of frieze.face in raking <= " + (30 + random.nextInt(70)) + " %");
        musts.add("seen of soffit from standing <= 0." + (1 + random.nextInt(9)));
        musts.add("reveal of cap over crown >= " + some(random, "1/8", "1/4", "3/8"));
        musts.add("reveal of bead over frieze >= " + some(random, "1/8", "1/4"));
        musts.add(some(
                random, "projection <= 7", "height >= 9", "bears on of soffit >= 3/4", "left under the ceiling >= 4"));
        List<String> wishes = new ArrayList<>(List.of(some(
                random,
                "least weight",
                "least height",
                "projection near 6.3",
                "most share of frieze.face in raking",
                "least seen of soffit from standing",
                "most projection")));
        if (random.nextInt(2) == 0) {
            wishes.add(some(random, "least change", "projection near 5.9 x 2", "least area"));
        }
        return CORNICE.formatted(sizes.get(0), sizes.get(1), sizes.get(2), sizes.get(3), bed) + "must:\n" + lines(musts)
                + (random.nextInt(5) == 0 ? "" : "wish:\n" + lines(wishes));
    }

    private static String lines(List<String> texts) {
        return texts.stream().map(text -> "  - " + text + "\n").reduce("", String::concat);
    }

    private static SearchResult found(String yaml, long tries) {
        return SearchedTest.search(
                        yaml, new SearchLimits(tries, 1, 1, plan -> {}, () -> false, judged -> {}), Optional.empty())
                .result()
                .orElseThrow();
    }

    @Tag("sampled")
    @Test
    void what_is_ruled_out_holds_no_better_answer_than_what_trying_every_stack_finds() {
        SplittableRandom random = new SplittableRandom(20);
        int proved = 0;
        BigInteger ruledOut = BigInteger.ZERO;
        for (int i = 0; i < SPACES; i++) {
            String yaml = drawn(random);
            SearchResult all = found(yaml, 1_000_000);
            SearchResult some = found(yaml, Math.max(100, STACKS / 10));
            assertThat(all.ruledOut()).isZero();
            proved += some.proved() ? 1 : 0;
            ruledOut = ruledOut.add(some.ruledOut());
            same(yaml, all, some);
        }
        assertThat(proved).as("most are proved").isGreaterThan(SPACES / 2);
        assertThat(ruledOut).isPositive();
    }

    private static void same(String yaml, SearchResult all, SearchResult some) {
        if (some.nothingLeft()) {
            assertThat(some.best().isEmpty()).as(yaml).isEqualTo(all.best().isEmpty());
        }
        if (some.proved() && !all.best().isEmpty()) {
            Candidate best = some.best().get(0).candidate();
            assertThat(best.score())
                    .as(yaml)
                    .isCloseTo(all.best().get(0).candidate().score(), within(1e-9));
        }
        if (!all.best().isEmpty() && some.bound().isPresent()) {
            double least = Math.min(
                    some.bound().getAsDouble(),
                    some.best().isEmpty()
                            ? Double.POSITIVE_INFINITY
                            : some.best().get(0).candidate().score());
            assertThat(least)
                    .as(yaml)
                    .isLessThanOrEqualTo(all.best().get(0).candidate().score() + 1e-9);
        }
        if (some.smallestProved() && all.smallest().isPresent()) {
            assertThat(some.smallest().map(one -> one.candidate().choices()))
                    .as(yaml)
                    .hasValue(all.smallest().get().candidate().choices());
        }
        if (some.proved() && all.nearest().isPresent()) {
            assertThat(some.nearest().map(one -> one.candidate().choices()))
                    .as(yaml)
                    .hasValue(all.nearest().get().candidate().choices());
        }
    }

    @Test
    void the_answer_is_the_same_on_any_number_of_threads() {
        String yaml = drawn(new SplittableRandom(7));
        List<SearchResult> found = new ArrayList<>();
        for (int threads : new int[] {1, 3}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                found.add(pool.submit(() -> found(yaml, 120)).join());
            } finally {
                pool.shutdown();
            }
        }
        assertThat(found.get(0).best()).isEqualTo(found.get(1).best());
        assertThat(found.get(0).ruledOut()).isEqualTo(found.get(1).ruledOut());
        assertThat(found.get(0).judged()).isEqualTo(found.get(1).judged());
        assertThat(found.get(0).bound()).isEqualTo(found.get(1).bound());
    }
}

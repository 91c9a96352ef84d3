package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.TracingMatrix.Judged;
import buildup.catalog.TracingMatrix.Outcome;
import buildup.profiles.outline.Outline;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * True outlines of the catalog, traced by hands, scanners and pens. What comes out as sure is right; what is not right is
 * doubted or refused. The build tries every fifth shape with each fault, another fifth each time; {@code
 * -Dbuildup.tracings=5} tries all of them with five seeds.
 */
@Tag("long")
class NoisyTracingsTest {
    private static final int SEEDS = Integer.getInteger("buildup.tracings", 0);

    /** Without seeds of its own, the build looks at one shape of so many. */
    private static final int SAMPLE = 5;

    private static final List<String> SHAPES = List.of(
            "quarter-round 3/4 x 3/4",
            "half-round 3/8 x 11/16",
            "bead-strip 3/4 x 1-1/4",
            "neck-astragal 3/4 x 1-1/4",
            "cove-bed 1-1/4 x 1-3/8",
            "scotia 1-1/4 x 1-1/4",
            "ovolo-bed 1-1/4 x 1-3/8",
            "ogee-bed 1 x 1-1/4",
            "cyma-bed 1-1/2 x 1-3/4",
            "bead-cove-bed 1-1/4 x 1-1/2",
            "quirk-ovolo-bed 1-1/4 x 1-3/8",
            "sprung-bed-cove 9/16 x 2-1/4",
            "plain-crown 9/16 x 3-5/8",
            "cyma-crown 11/16 x 4-5/8",
            "cove-crown-45 9/16 x 3-5/8",
            "wainscot-cap 1-1/16 x 2",
            "ogee-cap 3/4 x 3-1/2",
            "corona 2-1/2 x 2",
            "backband-ogee 1-1/4 x 1-1/2",
            "casing-colonial 11/16 x 3-1/4",
            "casing-eased 3/4 x 3-1/2",
            "architrave 1-1/16 x 4-1/2",
            "base-colonial 9/16 x 4-1/4",
            "attic-base 1-1/2 x 3");

    /**
     * @param noise standard deviation, where the fault has one, in
     * @param known so many of a hundred tracings at least come out right, doubted or not
     * @param sure so many come out right and undoubted
     */
    @ParameterizedTest
    @CsvSource({
        "JITTER, 0.0005, 100, 74",
        "JITTER, 0.001, 100, 64",
        "JITTER, 0.002, 98, 53",
        "JITTER, 0.004, 96, 39",
        "JITTER, 0.008, 86, 0",
        "STAIRCASE, 0, 98, 52",
        "PEN, 0, 91, 13",
        "MISSING, 0.001, 86, 6",
        "DOUBLED, 0.002, 99, 61"
    })
    void a_tracing_that_is_not_doubted_is_right(Hand.Fault fault, double noise, int known, int sure) {
        Map<Outcome, Integer> tally = new EnumMap<>(Outcome.class);
        List<String> wrong = new ArrayList<>();
        int right = 0;
        int all = 0;
        for (int i = 0; i < SHAPES.size(); i++) {
            if (SEEDS == 0 && (i + fault.ordinal() + (int) (noise * 1000)) % SAMPLE != 0) {
                continue;
            }
            String shape = SHAPES.get(i);
            Outline truth = Asked.builtIn().profile(shape).outline();
            for (int seed = 1; seed <= Math.max(1, SEEDS); seed++) {
                Judged judged =
                        TracingMatrix.judge(truth, Hand.trace(truth, fault, noise, seed * 101L + shape.length()));
                tally.merge(judged.outcome(), 1, Integer::sum);
                all++;
                right += judged.outcome() == Outcome.RECOVERED
                                || (judged.outcome() == Outcome.MARKED
                                        && judged.faults().isEmpty())
                        ? 1
                        : 0;
                if (judged.outcome() == Outcome.WRONG) {
                    wrong.add(shape + ", seed " + seed + ": " + judged.faults());
                }
            }
        }
        assertThat(wrong).as("%s %s", fault, noise).isEmpty();
        assertThat(right * 100 / all).as("%s %s: %s", fault, noise, tally).isGreaterThanOrEqualTo(known / 2);
        if (SEEDS > 0) {
            System.getLogger(NoisyTracingsTest.class.getName())
                    .log(System.Logger.Level.INFO, "{0} {1}: {2}, right {3} of {4}", fault, noise, tally, right, all);
            assertThat(right * 100 / all).as("%s %s", fault, noise).isGreaterThanOrEqualTo(known);
            assertThat(tally.getOrDefault(Outcome.RECOVERED, 0) * 100 / all)
                    .as("%s %s", fault, noise)
                    .isGreaterThanOrEqualTo(sure);
        }
    }
}

package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.TracingMatrix.Judged;
import buildup.catalog.TracingMatrix.Outcome;
import buildup.profiles.outline.Outline;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Moldings of chance, which nothing was measured on, traced by hands, scanners and pens. The build tries a few; {@code
 * -Dbuildup.unseen=120} tries so many with each fault, from {@code -Dbuildup.unseen.seed=1} on.
 */
@Tag("long")
class UnseenTracingsTest {
    private static final int MOLDINGS = Integer.getInteger("buildup.unseen", 3);

    private static final int FIRST = Integer.getInteger("buildup.unseen.seed", 1);

    @ParameterizedTest
    @CsvSource({
        "JITTER, 0.0005, 0",
        "JITTER, 0.001, 1",
        "JITTER, 0.002, 2",
        "JITTER, 0.004, 3",
        "JITTER, 0.008, 4",
        "STAIRCASE, 0, 5",
        "PEN, 0, 6",
        "MISSING, 0.001, 7",
        "DOUBLED, 0.002, 8"
    })
    void a_tracing_of_an_unseen_molding_is_right_or_doubted(Hand.Fault fault, double noise, int turn) {
        List<String> wrong = new ArrayList<>();
        int right = 0;
        for (int seed = FIRST; seed < FIRST + MOLDINGS; seed++) {
            Outline truth = ChanceMolding.of(seed);
            Judged judged = TracingMatrix.judge(truth, Hand.trace(truth, fault, noise, seed * 31L + turn));
            right += judged.outcome() != Outcome.REFUSED && judged.faults().isEmpty() ? 1 : 0;
            if (judged.outcome() == Outcome.WRONG) {
                wrong.add("molding " + seed + ": " + judged.faults());
            }
        }
        System.getLogger(UnseenTracingsTest.class.getName())
                .log(System.Logger.Level.INFO, "{0} {1}: right {2} of {3}", fault, noise, right, MOLDINGS);
        assertThat(wrong).as("%s %s", fault, noise).isEmpty();
    }

    /** Moldings that once came out wrong without a doubt; what each of them stands for. */
    @ParameterizedTest
    @CsvSource({
        "68, JITTER, 0.0005, 0, a slight corner between two arcs taken for none",
        "75, DOUBLED, 0.002, 8, the arcs of a cyma unlike since their outer ends were smoothed",
        "181, JITTER, 0.001, 1, a fillet lost in an arc beside it",
        "201, JITTER, 0.002, 2, a small cyma taken for a slope",
        "201, DOUBLED, 0.002, 8, the same by a rough hand",
        "514, JITTER, 0.002, 2, a shallow cyma lost in the slope beside it",
        "29, JITTER, 0.001, 1, the drop of a sprung molding drawn to the rule",
        "174, DOUBLED, 0.002, 8, a radius of no step drawn to the rule",
        "513, PEN, 0, 6, a short hollow whose radius the points do not tell",
        "2020, JITTER, 0.002, 2, a chamfer taken for what stands level",
        "2006, DOUBLED, 0.002, 8, a back that bends by a third of a degree",
        "3050, DOUBLED, 0.002, 8, a slight corner at a short round taken for none",
        "9164, DOUBLED, 0.002, 8, a width of no step drawn to the rule",
        "23026, JITTER, 0.004, 3, a fillet at the foot lost in the round above it, and the height with it",
        "40083, JITTER, 0.001, 1, two lands of one back that came out apart",
        "40288, JITTER, 0.002, 2, a round that bulges beyond the flat it goes over into",
        "40345, STAIRCASE, 0, 5, lines that stay on one row of dots",
        "40361, JITTER, 0.001, 1, a width beside the rule that was meant to be on it",
        "40398, JITTER, 0.002, 2, a width pulled in by a quarter round drawn square",
        "40471, DOUBLED, 0.002, 8, a radius told by one of two rounds",
        "50234, JITTER, 0.004, 3, two shallow cymas taken for two slopes",
        "50358, DOUBLED, 0.002, 8, a shallow hollow taken for two slopes and a piece of it"
    })
    void what_was_wrong_once_is_right_or_doubted(int seed, Hand.Fault fault, double noise, int turn, String what) {
        Outline truth = ChanceMolding.of(seed);
        Judged judged = TracingMatrix.judge(truth, Hand.trace(truth, fault, noise, seed * 31L + turn));
        assertThat(judged.outcome()).as("%s: %s", what, judged.faults()).isNotEqualTo(Outcome.WRONG);
    }
}

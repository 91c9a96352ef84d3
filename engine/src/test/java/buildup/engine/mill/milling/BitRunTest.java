package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sources in reference/milling.md, "Router bits" and "Feed and depth of a bit". */
class BitRunTest {
    @ParameterizedTest
    @CsvSource({"1, 24000, 6283", "2, 18000, 9425", "2.5, 16000, 10472", "3.5, 12000, 10996", "3, 24000, 18850"})
    void the_rim_moves_as_fast_as_its_diameter_and_its_turns_make_it(double diameter, double rpm, double rim) {
        assertThat(RimSpeed.of(diameter, rpm)).isCloseTo(rim, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 22000",
        "0.75, 18000",
        "1, 16000",
        "1.25, 14000",
        "1.5, 12000",
        "2, 10000",
        "2.5, 9000",
        "3, 8000",
        "3.5, 8000"
    })
    void a_bit_turns_no_faster_than_the_strictest_table_lets_it(double diameter, double rpm) {
        assertThat(RimSpeed.mostTurns(diameter)).isCloseTo(rpm, within(1e-9));
    }

    @Test
    void no_rim_moves_faster_than_any_table_allows() {
        for (double diameter = 0.125; diameter < 12; diameter += 0.125) {
            assertThat(RimSpeed.of(diameter, RimSpeed.mostTurns(diameter)))
                    .isLessThanOrEqualTo(RimSpeed.HIGHEST + 1e-6);
        }
    }

    /** A cove bit of radius 5/8 on a bearing of 3/8 is 3/8 + 2 x 5/8 across. */
    @Test
    void a_bit_is_told_with_its_diameter_bearing_feed_and_light_passes() {
        Pass pass = Molded.milled(Molded.profile("cove 3/4 x 3/4"))
                .passes()
                .orElseThrow()
                .inOrder()
                .get(0);
        BitRun run = BitRun.of(pass).orElseThrow();
        assertThat(run.diameter()).isCloseTo(1.625, within(1e-9));
        assertThat(run.bearing()).contains(0.375);
        assertThat(run.turns()).isCloseTo(10_000, within(1e-9));
        // 10,000 x 2 x .008 / 12
        assertThat(run.feed()).isCloseTo(13.333, within(1e-3));
        // 5/8 deep, 1/4 at a time
        assertThat(run.lightPasses()).isEqualTo(3);
    }

    @Test
    void a_saw_blade_has_its_own_marking_and_is_no_bit() {
        Milled crown = Molded.milled(Molded.profile("plain-crown 3-1/4"));
        assertThat(crown.passes().orElseThrow().inOrder())
                .allSatisfy(pass -> assertThat(BitRun.of(pass)).isEmpty());
    }
}

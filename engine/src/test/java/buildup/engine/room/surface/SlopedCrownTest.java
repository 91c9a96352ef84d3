package buildup.engine.room.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.room.surface.SlopedCrown.Tilt;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Crowns under ceilings that slope, against the table of compound miters in reference/round-the-corner.md: a crown of 38
 * under a ceiling that falls by 14 degrees lies against it as one of 52 and halfway as one of 45.
 */
class SlopedCrownTest {
    private static final Offset<Double> TABLE = within(5e-5);
    private static final Offset<Double> EXACT = within(1e-9);

    private static List<SlopedCrown> crowns(double slope, String corner) {
        return crowns(slope, corner, "touch");
    }

    private static List<SlopedCrown> crowns(double slope, String corner, String top) {
        String yaml = """
                wood: yellow-poplar
                space: { floor: -84, ceiling: { height: 14, slope: %s in 12 } }
                pieces: [{ name: crown, profile: plain-crown 3-5/8, back: wall, top: %s }]
                plan: [{ left: die, right: die, stretches: [{ length: 100%s }, { length: 100 }] }]
                """.formatted(12 * slope, top, ", corner: " + corner);
        return Answer.of(
                        DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                                .orElseThrow(),
                        Catalog.builtIn())
                .known()
                .map(Answers::surfaces)
                .orElseThrow()
                .sloped();
    }

    private static SlopedCrown of(List<SlopedCrown> crowns, Tilt tilt) {
        return crowns.stream().filter(crown -> crown.tilt() == tilt).findFirst().orElseThrow();
    }

    private static void is(SlopedCrown crown, double spring, double miter, double bevel) {
        assertThat(crown.spring()).isCloseTo(spring, EXACT);
        assertThat(Math.abs(crown.flat().miter())).isCloseTo(miter, TABLE);
        assertThat(Math.abs(crown.flat().bevel())).isCloseTo(bevel, TABLE);
    }

    @Test
    void under_a_falling_ceiling_a_crown_of_38_is_cut_as_one_of_45_or_52() {
        double slope = -Math.tan(Math.toRadians(14));
        List<SlopedCrown> square = crowns(slope, "inside 90");
        is(of(square, Tilt.NONE), 38, 31.6190, 33.8629);
        is(of(square, Tilt.HALF), 45, 35.2644, 30.0000);
        is(of(square, Tilt.WHOLE), 52, 38.2385, 25.8068);
        List<SlopedCrown> wide = crowns(slope, "inside 92");
        is(of(wide, Tilt.HALF), 45, 34.3270, 29.4193);
        is(of(wide, Tilt.WHOLE), 52, 37.2702, 25.3201);
        List<SlopedCrown> bay = crowns(slope, "outside 135");
        is(of(bay, Tilt.WHOLE), 52, 18.0769, 13.6272);
    }

    /** The flats of the crown are 1/4 x 1/4 off square edges: what stands open is their length times the sine of the turn. */
    @Test
    void what_a_flat_stands_open_goes_over_from_the_ceiling_to_the_wall() {
        double slope = Math.tan(Math.toRadians(10));
        List<SlopedCrown> crowns = crowns(slope, "inside 90");
        SlopedCrown drawn = of(crowns, Tilt.NONE);
        SlopedCrown half = of(crowns, Tilt.HALF);
        SlopedCrown whole = of(crowns, Tilt.WHOLE);
        assertThat(drawn.offWall()).isZero();
        assertThat(whole.offCeiling()).isZero();
        double ten = Math.sin(Math.toRadians(10));
        double five = Math.sin(Math.toRadians(5));
        assertThat(half.offWall() / whole.offWall()).isCloseTo(five / ten, EXACT);
        assertThat(half.offCeiling() / drawn.offCeiling()).isCloseTo(five / ten, EXACT);
        assertThat(whole.spring()).isCloseTo(28, EXACT);
        assertThat(whole.height()).as("it stands steeper").isGreaterThan(drawn.height());
        assertThat(whole.projection()).isLessThan(drawn.projection());
    }

    /** By hand: 4 out, where the cove begins, a ceiling that rises 3 in 12 has risen 1. */
    @Test
    void told_to_reach_a_ceiling_that_rises_it_ends_under_it() {
        String yaml = "wood: check-wood\nspace: { floor: -84, ceiling: { height: 14, slope: 3 in 12 } }\n"
                + "pieces: [{ name: ground, kind: nailer, profile: board 4 x 6, back: wall, top: ceiling },"
                + " { name: strip, profile: board 2 x 2, back: 4, top: ceiling }]\n";
        assertThat(Answered.because(yaml, Topic.FITS))
                .isEqualTo("'strip' is to reach the ceiling and ends 1 under it: it rises 3 in 12.");
        assertThat(Answered.cure(yaml, Topic.FITS)).startsWith("Put it up to the ceiling: 'top: ceiling + 1.000'.");
        // whatever stands under it: a frieze on the wall does not stop it on its way up
        String over =
                yaml.replace("pieces: [", "pieces: [{ name: frieze, profile: board 4-3/4 x 2, back: wall, top: 6 }, ");
        assertThat(Answered.cure(over, Topic.FITS)).startsWith("Put it up to the ceiling: 'top: ceiling + 1.000'.");
        assertThat(Answered.because(over.replace("back: 4, top: ceiling", "back: 4, top: ceiling + 1.000"), Topic.FITS))
                .isEqualTo("0 left under the ceiling");
        assertThat(Answered.because(yaml.replace("back: 4, top: ceiling", "back: 4, top: ceiling - 1/2"), Topic.FITS))
                .as("a gap that is said; the ground's upper back edge is there")
                .isEqualTo("0 left under the ceiling");
    }

    /** Put 2 lower, what stands open is more by 2 times the cosine of the slope. */
    @Test
    void as_drawn_it_stands_as_far_off_the_ceiling_as_it_was_put() {
        double slope = Math.tan(Math.toRadians(10));
        double high = of(crowns(slope, "inside 90", "10"), Tilt.NONE).offCeiling();
        double low = of(crowns(slope, "inside 90", "8"), Tilt.NONE).offCeiling();
        assertThat(high).isGreaterThan(4 * Math.cos(Math.toRadians(10)));
        assertThat(low - high).isCloseTo(2 * Math.cos(Math.toRadians(10)), EXACT);
    }

    @Test
    void under_a_level_ceiling_nothing_is_said() {
        assertThat(crowns(0, "inside 90")).isEmpty();
    }
}

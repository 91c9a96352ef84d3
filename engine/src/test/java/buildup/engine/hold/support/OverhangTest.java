package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.support.Support.Answer;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Published limits of stacked blocks: M. Paterson and U. Zwick, Overhang, American Mathematical Monthly 116 (2009), 19-44.
 * Identical, homogeneous, frictionless blocks; here boards 1 x 8 flat on framing whose edge is at x = 0.
 */
class OverhangTest {
    private static final double SIXTY_FOURTH = 1.0 / 64;
    private static final double LONG = 8;

    /** The i-th from the top stands 8/(2i) beyond the one below it, one of them a little more; named b1, the top, to bn. */
    private static Held harmonic(int blocks, int one, double more) {
        List<String> pieces = new ArrayList<>();
        pieces.add("name: table, kind: framing, section: [out 40, up 10], face: 0, top: 0");
        double front = 0;
        for (int i = blocks; i >= 1; i--) {
            front += LONG / (2 * i) + (i == one ? more : 0);
            pieces.add(block("b" + i, front - LONG, blocks - i));
        }
        return Held.of(Bench.loose(pieces.toArray(String[]::new)));
    }

    private static String block(String name, double back, double level) {
        return String.format(
                Locale.ROOT, "name: %s, section: [out 8, up 1], back: %.12f, bottom: %.1f", name, back, level);
    }

    @Test
    void the_overhang_of_a_harmonic_stack_is_half_the_harmonic_number() {
        double[] published = {0, 0.5, 0.75, 11.0 / 12, 25.0 / 24};
        for (int n = 1; n <= 4; n++) {
            assertThat(overhang(n) / LONG).isCloseTo(published[n], within(1e-9));
        }
        assertThat(overhang(10) / LONG).isCloseTo(1.464484, within(1e-6));
    }

    private static double overhang(int blocks) {
        return harmonic(blocks, 0, 0).section().body(blocks).outline().box().face();
    }

    @Test
    void every_group_of_a_harmonic_stack_falls_on_the_edge_below_it() {
        Held stack = harmonic(10, 0, 0);
        for (int i = 1; i <= 10; i++) {
            Balance balance = stack.balance("b" + i);
            assertThat(balance.group()).hasSize(i);
            assertThat(balance.margin()).isCloseTo(0, within(1e-9));
            assertThat(balance.leans()).isFalse();
        }
        assertThat(stack.support().whole().answer()).as("nothing to spare").isEqualTo(Answer.STANDS);
    }

    @Test
    void a_sixty_fourth_further_in_it_stands() {
        for (int n = 2; n <= 10; n++) {
            for (int one = 1; one <= n; one++) {
                Support support = harmonic(n, one, -SIXTY_FOURTH).support();
                assertThat(support.whole().answer()).as("%d of %d", one, n).isEqualTo(Answer.STANDS);
                assertThat(support.leaning()).isEmpty();
            }
        }
    }

    @Test
    void a_sixty_fourth_further_out_it_tips_about_that_edge_and_the_motion_names_the_blocks_above_it() {
        for (int n = 2; n <= 10; n++) {
            for (int one = 1; one <= n; one++) {
                Held stack = harmonic(n, one, SIXTY_FOURTH);
                Support support = stack.support();
                assertThat(support.whole().answer()).as("%d of %d", one, n).isEqualTo(Answer.NO);
                Fall.Part part = support.whole().falls().get(0).first();
                assertThat(stack.names(part.pieces()))
                        .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, one)
                                .mapToObj(i -> "b" + i)
                                .toList());
                assertThat(part.way()).isEqualTo(Fall.Way.TIPS_OUT);
                String below = one == n ? "table" : "b" + (one + 1);
                assertThat(stack.section().name(part.on().orElseThrow())).isEqualTo(below);
                double edge = stack.section()
                        .body(stack.number(below))
                        .outline()
                        .box()
                        .face();
                assertThat(part.about().orElseThrow().distance(new Point(edge, n - one)))
                        .isLessThan(1e-6);
            }
        }
    }

    /** Bottom [-4, 4], on it [-8, 0] and [0, 8]; all that stands out moved by so much. */
    private static Held counterweight(double out, boolean left) {
        List<String> pieces = new ArrayList<>(List.of(
                "name: table, kind: framing, section: [out 40, up 10], face: 0, top: 0", block("bottom", -4 + out, 0)));
        if (left) {
            pieces.add(block("left", -8 + out, 1));
        }
        pieces.add(block("right", out, 1));
        return Held.of(Bench.loose(pieces.toArray(String[]::new)));
    }

    @Test
    void a_counterweight_lets_three_blocks_reach_farther_than_the_harmonic_stack() {
        Held stack = counterweight(0, true);
        assertThat(stack.section().totals().projection()).isEqualTo(LONG);
        assertThat(stack.support().whole().answer()).isEqualTo(Answer.STANDS);
        assertThat(stack.balance("right").margin()).as("its front end").isCloseTo(0, within(1e-9));
        assertThat(stack.balance("left").margin()).as("its back end").isCloseTo(0, within(1e-9));
        assertThat(stack.balance("bottom").margin()).as("the edge of the table").isCloseTo(0, within(1e-9));
    }

    @Test
    void without_its_counterweight_it_tips() {
        Held stack = counterweight(0, false);
        Fall.Part part = stack.support().whole().falls().get(0).first();
        assertThat(stack.names(part.pieces())).containsExactly("bottom", "right");
        assertThat(stack.section().name(part.on().orElseThrow())).isEqualTo("table");
    }

    @Test
    void a_sixty_fourth_either_way_decides_about_the_counterweight_too() {
        assertThat(counterweight(-SIXTY_FOURTH, true).support().whole().stands())
                .isTrue();
        Held out = counterweight(SIXTY_FOURTH, true);
        Fall.Part part = out.support().whole().falls().get(0).first();
        assertThat(out.names(part.pieces())).containsExactly("bottom", "left", "right");
        assertThat(out.section().name(part.on().orElseThrow())).isEqualTo("table");
    }
}

package buildup.engine.look.light;

import static buildup.engine.look.view.Drawn.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.look.view.Drawn;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The shadows of single members under a ray at 45 degrees: closed forms of reference/light-and-sight.md. The light is
 * the drafting light (Radford's Cyclopedia of Construction, vol. 1, "Shades and Shadows").
 */
class ShadowOraclesTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double ROOT = Math.sqrt(2);

    /** The face of the wall below every member: piece p0, from y = -10 up to the member's foot. */
    private static Outline wall(double top) {
        return Outline.rectangle(new Box(-1, -10, 0, top));
    }

    private static Shone under45(Outline... outlines) {
        return Shone.at(Drawn.section(false, outlines), 45);
    }

    /** Where the shadow on the wall p0 ends, as y. */
    private static double edge(Shone light) {
        Shadow shadow = light.shadow("p0", "face");
        assertThat(shadow.kind()).isEqualTo(Band.Lit.CAST);
        assertThat(shadow.caster()).hasValue(1);
        return shadow.from().y();
    }

    static Outline cavetto(double r) {
        return Drawn.outline(
                new Arc(at(0, -r), at(r, 0), at(r, -r), false),
                new Line(at(r, 0), at(-1, 0)),
                new Line(at(-1, 0), at(-1, -r)),
                new Line(at(-1, -r), at(0, -r)));
    }

    static Outline ovolo(double r) {
        return Drawn.outline(
                new Arc(at(0, -r), at(r, 0), at(0, 0), true),
                new Line(at(r, 0), at(-1, 0)),
                new Line(at(-1, 0), at(-1, -r)),
                new Line(at(-1, -r), at(0, -r)));
    }

    static Outline halfRound(double r) {
        return Drawn.outline(
                new Arc(at(0, -r), at(0, r), at(0, 0), true),
                new Line(at(0, r), at(-1, r)),
                new Line(at(-1, r), at(-1, -r)),
                new Line(at(-1, -r), at(0, -r)));
    }

    static Outline cymaRecta(double r) {
        return Drawn.outline(
                new Arc(at(0, -2 * r), at(r, -r), at(0, -r), true),
                new Arc(at(r, -r), at(2 * r, 0), at(2 * r, -r), false),
                new Line(at(2 * r, 0), at(-1, 0)),
                new Line(at(-1, 0), at(-1, -2 * r)),
                new Line(at(-1, -2 * r), at(0, -2 * r)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void a_shelf_darkens_the_wall_by_its_overhang(double p) {
        Shone light = under45(wall(0), Outline.rectangle(new Box(-1, 0, p, 0.75)));
        assertThat(edge(light)).isCloseTo(-p, EXACT);
        assertThat(light.shadow("p0", "face").dark()).isCloseTo(p, EXACT);
        assertThat(light.shadow("p0", "face").overhang()).hasValueCloseTo(p, EXACT);
        assertThat(light.shadow("p0", "face").depth()).hasValueCloseTo(p, EXACT);
        assertThat(light.shadow("p1", "bottom").kind()).isEqualTo(Band.Lit.SHADE);
        assertThat(light.length("p1", "face", Band.Lit.LIT)).isCloseTo(0.75, EXACT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void a_fascia_under_a_corona_is_lit_below_the_set_back(double p) {
        double h = 1.25;
        Outline fascia = Outline.rectangle(new Box(-1, -h, 0, 0));
        Shone light = under45(fascia, Outline.rectangle(new Box(-1, 0, p, 0.75)));
        assertThat(light.length("p0", "face", Band.Lit.LIT)).isCloseTo(Math.max(0, h - p), EXACT);
        assertThat(light.dark("p0", "face")).isCloseTo(Math.min(h, p), EXACT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void a_cavetto_is_wholly_dark_and_leaves_the_wall_below_lit(double r) {
        Shone light = under45(wall(-r), cavetto(r));
        assertThat(light.dark("p1", "m0")).isCloseTo(r * Math.PI / 2, EXACT);
        assertThat(light.length("p1", "m0", Band.Lit.SHADE))
                .as("turned away above 45")
                .isCloseTo(r * Math.PI / 4, EXACT);
        assertThat(light.shadows("p0", "face"))
                .as("the ray from the top edge meets its upper end")
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void an_ovolo_is_lit_down_to_45_degrees_and_throws_its_shadow_0_414_r_below(double r) {
        Shone light = under45(wall(-r), ovolo(r));
        List<Band> bands = light.bands("p1", "m0");
        assertThat(bands).extracting(Band::lit).containsExactly(Band.Lit.SHADE, Band.Lit.LIT);
        assertThat(bands.get(1).segment().from().near(at(r / ROOT, -r / ROOT), 1e-9))
                .isTrue();
        assertThat(edge(light)).isCloseTo(-r * ROOT, EXACT);
        assertThat(light.shadow("p0", "face").dark()).isCloseTo(0.41421 * r, within(1e-5 * r));
        assertThat(light.shadow("p0", "face").overhang())
                .as("of the tangent point")
                .hasValueCloseTo(r / ROOT, EXACT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void a_half_round_is_in_shade_from_45_degrees_below_level(double r) {
        Shone light = under45(wall(-r), halfRound(r));
        List<Band> bands = light.bands("p1", "m0");
        assertThat(bands).extracting(Band::lit).containsExactly(Band.Lit.SHADE, Band.Lit.LIT);
        assertThat(bands.get(0).segment().to().near(at(r / ROOT, -r / ROOT), 1e-9))
                .isTrue();
        assertThat(edge(light)).isCloseTo(-r * ROOT, EXACT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void a_cyma_recta_is_dark_in_its_hollow_and_lit_on_the_round_from_the_middle_to_45_degrees(double r) {
        Shone light = under45(wall(-2 * r), cymaRecta(r));
        assertThat(light.dark("p1", "m1")).as("hollow").isCloseTo(r * Math.PI / 2, EXACT);
        assertThat(light.bands("p1", "m0")).extracting(Band::lit).containsExactly(Band.Lit.SHADE, Band.Lit.LIT);
        assertThat(light.length("p1", "m0", Band.Lit.LIT)).isCloseTo(r * Math.PI / 4, EXACT);
        assertThat(edge(light)).isCloseTo(-r - r * ROOT, EXACT);
        assertThat(-2 * r - edge(light)).isCloseTo(0.41421 * r, within(1e-5 * r));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void a_scotia_under_a_lip_as_far_out_as_it_is_high_is_wholly_dark(double r) {
        // between two fillets a quarter r above and a quarter 2r below it; the lip as far beyond the foot as all is
        // high
        double fillet = 0.125;
        double head = fillet;
        double foot = -3 * r - fillet;
        Outline scotia = Drawn.outline(
                new Arc(at(0, -3 * r), at(-2 * r, -r), at(0, -r), false),
                new Arc(at(-2 * r, -r), at(-r, 0), at(-r, -r), false),
                new Line(at(-r, 0), at(-r, head)),
                new Line(at(-r, head), at(-3 * r, head)),
                new Line(at(-3 * r, head), at(-3 * r, foot)),
                new Line(at(-3 * r, foot), at(0, foot)),
                new Line(at(0, foot), at(0, -3 * r)));
        Shone light = under45(wall(foot), scotia, Outline.rectangle(new Box(-3 * r, head, head - foot, head + r)));
        assertThat(light.dark("p1", "m2")).as("upper fillet").isCloseTo(fillet, EXACT);
        assertThat(light.dark("p1", "m6")).as("lower fillet").isCloseTo(fillet, EXACT);
        assertThat(light.dark("p1", "m0")).isCloseTo(2 * r * Math.PI / 2, EXACT);
        assertThat(light.dark("p1", "m1")).isCloseTo(r * Math.PI / 2, EXACT);
        assertThat(light.length("p1", "m0", Band.Lit.LIT)).isZero();
        assertThat(light.length("p1", "m1", Band.Lit.LIT)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2.5})
    void chords_in_place_of_the_arc_miss_the_shadow_s_edge_by_no_more_than_their_error_and_less_the_finer(double r) {
        double before = Double.POSITIVE_INFINITY;
        for (double error : new double[] {r / 10, r / 100, r / 1000, r / 10000}) {
            double worst = 0;
            // several rays: at one angle a vertex may happen to be the tangent point
            for (int angle = 31; angle < 60; angle += 2) {
                worst = Math.max(worst, missedBy(r, angle, error));
            }
            assertThat(worst).as("radius %s, chord error %s", r, error).isLessThan(before / 3);
            assertThat(worst).isPositive();
            before = worst;
        }
    }

    /**
     * An ovolo's shadow ends where the tangent ray meets the wall, at y = -r / cos a; a chord outline, inside the arc by
     * at most e measured square to the ray, at most e / cos a above it.
     */
    private static double missedBy(double r, double degrees, double error) {
        double exact = -r / Math.cos(Math.toRadians(degrees));
        Section chorded = Drawn.section(false, wall(-r), Drawn.chorded(ovolo(r), error));
        double miss = Shone.at(chorded, degrees).shadow("p0", "face").from().y() - exact;
        double ours = Shone.at(Drawn.section(false, wall(-r), ovolo(r)), degrees)
                .shadow("p0", "face")
                .from()
                .y();
        assertThat(ours).as("the true arc").isCloseTo(exact, within(1e-9));
        assertThat(miss).isBetween(-1e-9, error / Math.cos(Math.toRadians(degrees)) + 1e-9);
        return miss;
    }

    @Test
    void an_outline_turned_to_chords_keeps_its_straight_members() {
        assertThat(Drawn.chorded(wall(0), 0.1)).isEqualTo(wall(0));
    }
}

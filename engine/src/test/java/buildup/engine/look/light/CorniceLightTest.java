package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Notices;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked example B of reference/light-and-sight.md: this project's own arithmetic. */
class CorniceLightTest {
    private static final Offset<Double> NEAR = within(0.001);

    private static final String TEXT = Bench.resource("/reference-cornice.yaml");
    private final Bench cornice = Bench.sound(TEXT);

    private Shone at(double angle) {
        return Shone.at(cornice.section(), angle);
    }

    @Test
    void the_drafting_light_stands_at_45_degrees_in_section() {
        Shone light = Shone.distant(cornice.section(), 35.264, 45);
        assertThat(light.lighting().sectionAngle()).hasValueCloseTo(45.0, NEAR);
        assertThat(Lights.sectionAngle(40, 60)).isCloseTo(59.21, within(0.005));
        assertThat(Lights.sectionAngle(40, -60)).isCloseTo(59.21, within(0.005));
        assertThat(Lights.sectionAngle(35, 0)).isCloseTo(35, within(1e-12));
    }

    @Test
    void at_45_degrees_the_lip_darkens_the_frieze_from_the_bed_to_its_middle() {
        Shone light = at(45);
        Shadow frieze = light.shadow("frieze", "face");
        assertThat(light.caster("frieze", "face")).isEqualTo("fascia");
        assertThat(frieze.kind()).isEqualTo(Band.Lit.CAST);
        assertThat(frieze.dark()).isCloseTo(2.375, within(1e-9));
        assertThat(frieze.share()).isCloseTo(0.576, NEAR);
        assertThat(frieze.overhang()).hasValueCloseTo(3.5, within(1e-9));
        assertThat(frieze.depth()).hasValueCloseTo(3.5, within(1e-9));
        assertThat(frieze.box().top()).isCloseTo(4.875, within(1e-9));
        assertThat(frieze.box().bottom()).isCloseTo(2.5, within(1e-9));
        assertThat(frieze.from().y()).as("walked upward").isCloseTo(2.5, within(1e-9));
        assertThat(frieze.to().y()).isCloseTo(4.875, within(1e-9));
        assertThat(frieze.soft()).as("sharp in parallel light").isEmpty();
    }

    @Test
    void at_45_degrees_the_bed_is_wholly_dark_and_the_fascia_lit() {
        Shone light = at(45);
        for (String member : new String[] {"bottom", "cove", "fillet"}) {
            assertThat(light.length("bed", member, Band.Lit.LIT)).as(member).isZero();
        }
        assertThat(light.dark("bed", "cove")).isCloseTo(Math.PI / 2, within(1e-9));
        assertThat(light.shadows("fascia", "face")).isEmpty();
        assertThat(light.length("fascia", "face", Band.Lit.LIT)).isCloseTo(1.5, within(1e-9));
    }

    @Test
    void at_45_degrees_the_cap_darkens_the_crown_down_to_8_346() {
        Shone light = at(45);
        Shadow crown = light.shadow("crown", "face");
        assertThat(light.caster("crown", "face")).isEqualTo("cap");
        assertThat(crown.box().top()).isCloseTo(10.061, NEAR);
        assertThat(crown.box().bottom()).isCloseTo(8.346, NEAR);
    }

    @Test
    void at_30_degrees_the_shadow_on_the_frieze_is_short() {
        Shone light = at(30);
        Shadow frieze = light.shadow("frieze", "face");
        assertThat(light.caster("frieze", "face")).isEqualTo("fascia");
        assertThat(frieze.box().bottom()).isCloseTo(3.979, NEAR);
        assertThat(frieze.dark()).isCloseTo(0.896, NEAR);
    }

    @Test
    void at_59_21_degrees_the_lip_still_governs_and_reaches_the_bead() {
        Shone light = Shone.distant(cornice.section(), 40, 60);
        Shadow frieze = light.shadow("frieze", "face");
        assertThat(frieze.share()).isCloseTo(1, within(1e-9));
        assertThat(light.caster("frieze", "face"))
                .as("also of a face dark from end to end")
                .isEqualTo("fascia");
        assertThat(frieze.depth()).as("the edge falls beyond the face").isEmpty();
        assertThat(frieze.overhang()).hasValueCloseTo(3.5, within(1e-9));
        assertThat(light.caster("bead", "face")).isEqualTo("fascia");
        assertThat(light.shadow("bead", "face").box().bottom()).isCloseTo(0.546, NEAR);
        Shadow fascia = light.shadow("fascia", "face");
        assertThat(light.caster("fascia", "face")).isEqualTo("cap");
        assertThat(fascia.box().top()).isCloseTo(7.5, within(1e-9));
        assertThat(fascia.box().bottom()).isCloseTo(6.074, NEAR);
    }

    @Test
    void at_60_degrees_the_cap_governs() {
        Shone light = at(60);
        assertThat(light.shadow("frieze", "face").share()).isCloseTo(1, within(1e-9));
        assertThat(light.caster("frieze", "face")).isEqualTo("cap");
        assertThat(light.caster("bead", "face")).isEqualTo("cap");
        Shadow bead = light.shadow("bead", "face");
        assertThat(bead.box().bottom()).as("the lip alone would give 0.371").isCloseTo(0.317, NEAR);
        assertThat(bead.overhang()).hasValueCloseTo(6.6259 - 1, NEAR);
        assertThat(bead.depth()).hasValueCloseTo(10.061 - 0.317, NEAR);
    }

    @Test
    void the_cap_takes_over_from_the_lip_at_59_67_degrees() {
        assertThat(at(59.66).caster("frieze", "face")).isEqualTo("fascia");
        assertThat(at(59.69).caster("frieze", "face")).isEqualTo("cap");
    }

    @Test
    void a_soffit_of_3_and_three_sixteenths_lights_exactly_half_the_frieze() {
        Bench narrow = Bench.sound(TEXT.replace("board 3/4 x 3-1/2, lay: flat", "board 3/4 x 3-3/16, lay: flat"));
        Shadow frieze = Shone.at(narrow.section(), 45).shadow("frieze", "face");
        assertThat(frieze.share()).isCloseTo(0.5, within(1e-9));
        assertThat(frieze.box().bottom()).isCloseTo(2.8125, within(1e-9));
    }

    @Test
    void the_light_of_a_stack_that_gives_none_is_the_drafting_light() {
        assertThat(cornice.stack().lights()).singleElement().satisfies(light -> {
            assertThat(light.name()).isEqualTo("drafting");
            assertThat(light.mark()).isEmpty();
        });
        // Radford's Cyclopedia of Construction, vol. 1, "Shades and Shadows": 45 degrees in plan and elevation
        assertThat(Lights.of(cornice.section(), new Notices()).get(0).sectionAngle())
                .hasValueCloseTo(45.0, within(1e-9));
    }
}

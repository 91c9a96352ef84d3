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
import org.junit.jupiter.api.Test;

/** Members on which no light arrives: the shadow's edge falls beyond them, and yet they have a caster and an overhang. */
class DarkFromEndToEndTest {
    /** A face that leans back, from one inch out at its foot to the plane at its head. */
    private static Outline leaning(double foot) {
        return Drawn.polygon(at(1, foot), at(0, foot + 2), at(-1, foot + 2), at(-1, foot));
    }

    @Test
    void a_leaning_face_under_a_shelf_measures_the_overhang_from_its_foot() {
        // at 45 degrees the shelf's lower arris (5, 2) throws its ray to (1, -2), below the foot (1, 0)
        Section section = Drawn.section(false, leaning(0), Outline.rectangle(new Box(-1, 2, 5, 2.75)));
        Shadow shadow = Shone.at(section, 45).shadow("p0", "m0");
        assertThat(shadow.share()).isCloseTo(1, within(1e-9));
        assertThat(shadow.depth()).isEmpty();
        assertThat(shadow.overhang()).hasValueCloseTo(5.0 - 1, within(1e-9));
    }

    @Test
    void it_does_so_too_behind_an_apron_that_hangs_lower_than_its_foot() {
        Section section = Drawn.section(false, leaning(0), Outline.rectangle(new Box(3, -1, 3.5, 8)));
        Shadow shadow = Shone.at(section, 45).shadow("p0", "m0");
        assertThat(shadow.share()).isCloseTo(1, within(1e-9));
        assertThat(shadow.overhang()).hasValueCloseTo(3.5 - 1, within(1e-9));
    }

    @Test
    void a_leaning_face_over_a_shelf_lit_from_below_measures_it_from_its_head() {
        // from a lamp at (40, -40) the ray over the shelf's upper arris (5, 0) meets x = 0 at 5 x 40 / 35, over 2
        Section section = Drawn.section(false, leaning(0), Outline.rectangle(new Box(-1, -0.75, 5, 0)));
        Shadow shadow = Shone.lamp(section, 40, -40, 0).shadow("p0", "m0");
        assertThat(shadow.share()).isCloseTo(1, within(1e-9));
        assertThat(shadow.depth()).isEmpty();
        assertThat(shadow.overhang()).hasValueCloseTo(5.0, within(1e-9));
    }

    /**
     * Under a ray at 45 degrees an arris at (x, y) throws it to y - x on the plane of the wall, on which the hollow
     * stands with its foot at 0. The lip over it: 0.707 - 1 = -0.293. The rail that hangs free farther out: from 3.1 -
     * 3.3 = -0.2 down to 3 - 3.6 = -0.6, so that it takes over where the lip's shadow ends.
     */
    @Test
    void the_caster_of_a_hollow_is_what_throws_its_ray_lowest_on_the_line_of_its_foot() {
        double root = Math.sqrt(0.5);
        Outline hollow = Drawn.outline(
                new Arc(at(0, 0), at(1 - root, root), at(1, 0), false),
                new Line(at(1 - root, root), at(-1, root)),
                new Line(at(-1, root), at(-1, 0)),
                new Line(at(-1, 0), at(0, 0)));
        Outline lip = Outline.rectangle(new Box(-1, root, 1, 1.5));
        Outline rail = Outline.rectangle(new Box(3.3, 3, 3.6, 3.1));
        Section both = Drawn.section(false, hollow, lip, rail);
        assertThat(Shone.at(both, 45).shadow("p0", "m0").share()).isCloseTo(1, within(1e-9));
        assertThat(Shone.at(both, 45).caster("p0", "m0")).isEqualTo("p2");
        assertThat(Shone.at(both, 45).shadow("p0", "m0").overhang()).hasValueCloseTo(3.6, within(1e-9));
        Section alone = Drawn.section(false, hollow, lip);
        assertThat(Shone.at(alone, 45).caster("p0", "m0")).isEqualTo("p1");
    }
}

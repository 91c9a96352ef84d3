package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.look.view.Drawn;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A lamp before a shelf on a wall's face: similar triangles give every edge. */
class LampTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double THICK = 0.75;

    /** A face p0 from 30 below the shelf p1 to 30 above it. */
    private static Section shelf(double overhang) {
        return Drawn.section(
                false, Outline.rectangle(new Box(-1, -30, 0, 30)), Outline.rectangle(new Box(0, 0, overhang, THICK)));
    }

    @ParameterizedTest
    @CsvSource({"5.5, 40, 30", "5.5, 60, 80", "2, 12, 4", "1, 72, 60"})
    void the_shadow_of_a_shelf_reaches_as_far_down_as_the_lamp_s_slope_over_its_lower_arris(
            double p, double x, double y) {
        double edge = -y * p / (x - p);
        Shone lamp = Shone.lamp(shelf(p), x, y, 0);
        Shadow shadow = lamp.shadow("p0", "face");
        assertThat(lamp.lighting().sectionAngle()).as("a lamp has none").isEmpty();
        assertThat(lamp.caster("p0", "face")).isEqualTo("p1");
        assertThat(shadow.from().y()).isCloseTo(edge, EXACT);
        assertThat(shadow.to().y()).isCloseTo(0, EXACT);
        assertThat(shadow.overhang()).hasValueCloseTo(p, EXACT);
        assertThat(shadow.depth()).hasValueCloseTo(-edge, EXACT);
        assertThat(shadow.soft()).as("of a lamp without width").isEmpty();
        assertThat(shadow.share()).isCloseTo(-edge / 30, EXACT);
    }

    @Test
    void a_lamp_of_some_width_blurs_the_edge_between_those_of_its_two_ends() {
        double width = 8;
        double near = -30 * 5.5 / (40 - width / 2 - 5.5);
        double far = -30 * 5.5 / (40 + width / 2 - 5.5);
        Shadow shadow = Shone.lamp(shelf(5.5), 40, 30, width).shadow("p0", "face");
        assertThat(shadow.soft()).hasValueCloseTo(far - near, EXACT);
        assertThat(shadow.from().y()).as("the edge is that of its middle").isBetween(near, far);
    }

    @Test
    void the_wider_the_lamp_the_softer_the_edge() {
        double before = 0;
        for (double width : new double[] {1, 2, 4, 8, 16}) {
            double soft = Shone.lamp(shelf(5.5), 40, 30, width)
                    .shadow("p0", "face")
                    .soft()
                    .orElseThrow();
            assertThat(soft).isGreaterThan(before);
            before = soft;
        }
    }

    @Test
    void a_blur_that_leaves_the_member_ends_with_it() {
        Section low = Drawn.section(
                false, Outline.rectangle(new Box(-1, -6, 0, 0)), Outline.rectangle(new Box(-1, 0, 5.5, THICK)));
        // the edges of the near end: at -5.41 for a lamp of 8, at -6.73, past the foot, for one of 20
        assertThat(Shone.lamp(low, 40, 30, 8).shadow("p0", "face").soft())
                .hasValueCloseTo(30 * 5.5 / (40 - 4 - 5.5) - 30 * 5.5 / (40 + 4 - 5.5), EXACT);
        assertThat(Shone.lamp(low, 40, 30, 20).shadow("p0", "face").soft())
                .hasValueCloseTo(6 - 30 * 5.5 / (40 + 10 - 5.5), EXACT);
    }

    @Test
    void a_lamp_below_throws_the_shadow_upward_over_the_upper_arris() {
        double edge = THICK + (THICK + 20) * 5.5 / (40 - 5.5);
        Shone lamp = Shone.lamp(shelf(5.5), 40, -20, 6);
        List<Shadow> faces = lamp.shadows("p0", "face");
        assertThat(faces).hasSize(1);
        assertThat(faces.get(0).from().y()).isCloseTo(THICK, EXACT);
        assertThat(faces.get(0).to().y()).isCloseTo(edge, EXACT);
        assertThat(faces.get(0).overhang()).hasValueCloseTo(5.5, EXACT);
        assertThat(faces.get(0).depth()).as("the edge is above the arris").hasValueCloseTo(THICK - edge, EXACT);
        assertThat(lamp.shadow("p1", "top").kind()).isEqualTo(Band.Lit.SHADE);
        assertThat(lamp.length("p1", "bottom", Band.Lit.LIT))
                .as("the underside is lit")
                .isCloseTo(5.5, EXACT);
        double soft = (THICK + 20) * 5.5 / (40 - 3 - 5.5) - (THICK + 20) * 5.5 / (40 + 3 - 5.5);
        assertThat(faces.get(0).soft()).hasValueCloseTo(soft, EXACT);
    }

    @Test
    void a_face_wholly_dark_under_a_lamp_below_names_its_caster() {
        // the face over the shelf ends under the shadow's edge
        Section high = Drawn.section(
                false, Outline.rectangle(new Box(-1, -30, 0, 2)), Outline.rectangle(new Box(0, 0, 5.5, THICK)));
        Shone lamp = Shone.lamp(high, 40, -20, 0);
        assertThat(lamp.caster("p0", "face")).isEqualTo("p1");
        assertThat(lamp.shadow("p0", "face").share()).isCloseTo(1, EXACT);
        assertThat(lamp.shadow("p0", "face").depth()).isEmpty();
    }

    @Test
    void a_lamp_close_under_the_shelf_lights_its_underside_to_the_wall() {
        Shone lamp = Shone.lamp(shelf(5.5), 3, -1, 0);
        assertThat(lamp.length("p1", "bottom", Band.Lit.LIT)).isCloseTo(5.5, EXACT);
        assertThat(lamp.shadow("p1", "face").kind()).isEqualTo(Band.Lit.SHADE);
    }

    @Test
    void a_lamp_in_the_wood_the_wall_or_the_floor_is_said_with_its_place() {
        said("{ distance: 2, height: 1/2 }", "Lamp 'reading' is inside the shelf.");
        said("{ distance: -3, height: 20 }", "Lamp 'reading' is inside the wall.");
        said("{ distance: 30, height: floor - 1 }", "Lamp 'reading' is inside the floor.");
    }

    private static void said(String at, String message) {
        assertThat(Shone.said("lights:\n  - { name: reading, at: " + at + ", width: 4 }"))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.code()).isEqualTo("impossible-light-or-eye");
                    assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
                    assertThat(NoticeWords.INCHES.cure(notice))
                            .isEqualTo("Hang it in the room: 'at: { distance: 60, height: floor + 80 }'.");
                    assertThat(notice.mark().orElseThrow()).hasToString("stack.yaml:4:5");
                });
    }

    @Test
    void a_lamp_without_a_place_is_said() {
        assertThat(Shone.said("lights:\n  - { name: reading, at: { distance: 30 } }"))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("Lamp 'reading' has no place.");
                    assertThat(NoticeWords.INCHES.cure(notice))
                            .isEqualTo("Write 'at: { distance: 60, height: floor + 80 }'.");
                    assertThat(notice.mark().orElseThrow().line()).isEqualTo(4);
                });
    }
}

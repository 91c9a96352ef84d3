package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Worked examples D and E of reference/worked-examples.md, as far as placing and composing go: this project's own
 * arithmetic. The datum of D is the top of the backband.
 */
class DoorHeadTest {
    private static final Offset<Double> NEAR = within(0.002);

    private final Bench head = Bench.in(
            "{ wall: { from: -4-5/8, covering: 1/2 } }",
            "name: casing, profile: board 3/4 x 3-1/2, back: wall, top: datum - 1-1/8",
            "name: backband, profile: check-backband 1-5/8 x 1-1/2, back: wall, at: { shoulder: casing.top }",
            "name: frieze back, kind: nailer, profile: board 3/4 x 9-1/4, back: 1/16, bottom: backband.top",
            "name: frieze, profile: board 3/4 x 9-1/4, back: frieze back.face, bottom: backband.top",
            "name: bed, profile: check-bed 1-1/4 x 1-1/4, back: frieze.face, top: frieze.top",
            "name: soffit, profile: board 3/4 x 5-1/2, lay: flat, back: 1/16, face: 5-1/16, bottom: frieze.top",
            "name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: 1/16, face: 6-1/16, bottom: soffit.top");

    private Outline outline(String name) {
        return head.piece(name).outline();
    }

    @Test
    void the_frieze_bears_on_the_flat_of_the_backband_alone() {
        List<Bearing> back = head.standing("frieze back").bearing();
        List<Bearing> front = head.standing("frieze").bearing();
        double width = back.get(0).width() + front.get(0).width();
        assertThat(width).isCloseTo(1.4375, NEAR);
        assertThat(back.get(0).from().x()).isCloseTo(0.0625, NEAR);
        assertThat(front.get(0).to().x()).as("where the arris begins to ease").isCloseTo(1.5, NEAR);
        assertThat(front).extracting(bearing -> head.name(bearing.on())).containsExactly("backband");
    }

    @Test
    void the_frieze_stands_a_sixteenth_inside_the_face_of_the_backband() {
        assertThat(head.box("backband").face() - head.box("frieze").face()).isCloseTo(0.0625, NEAR);
    }

    @Test
    void areas_and_centroids_are_those_of_the_example() {
        assertThat(outline("frieze").area() + outline("frieze back").area()).isCloseTo(13.875, NEAR);
        assertThat((outline("frieze").centroid().x()
                                + outline("frieze back").centroid().x())
                        / 2)
                .isCloseTo(0.8125, NEAR);
        assertThat(outline("bed").area()).isCloseTo(0.7771, NEAR);
        assertThat(outline("bed").centroid().x()).isCloseTo(1.9848, NEAR);
        assertThat(outline("soffit").area()).isCloseTo(3.75, NEAR);
        assertThat(outline("soffit").centroid().x()).isCloseTo(2.5625, NEAR);
        assertThat(outline("cap").area()).isCloseTo(4.5, NEAR);
        assertThat(outline("cap").centroid().x()).isCloseTo(3.0625, NEAR);
    }

    @Test
    void the_head_over_the_backband_weighs_4_668_a_foot_and_hangs_out_past_its_bearing() {
        List<String> above = List.of("frieze back", "frieze", "bed", "soffit", "cap");
        double area = 0;
        double moment = 0;
        for (String name : above) {
            area += outline(name).area();
            moment += outline(name).area() * outline(name).centroid().x();
        }
        assertThat(area).isCloseTo(22.902, NEAR);
        assertThat(moment).isCloseTo(36.206, NEAR);
        assertThat(moment / area).isCloseTo(1.5809, NEAR);
        Section section = head.section();
        double weight = section.bodies().stream()
                .filter(body -> above.contains(body.name()))
                .mapToDouble(Composer::weightPerFoot)
                .sum();
        assertThat(weight).isCloseTo(4.668, NEAR);
    }

    @Test
    void casing_and_backband_are_fixed_to_the_wall_and_the_frieze_stands_on_them() {
        assertThat(head.standing("casing").fixed()).isTrue();
        assertThat(head.standing("backband").fixed()).isTrue();
        assertThat(head.standing("frieze").grounded()).isTrue();
        assertThat(head.standing("frieze").fixed()).as("1/16 clear of the wall").isFalse();
    }

    @Test
    void the_air_behind_the_frieze_is_open_at_the_top_and_no_void() {
        assertThat(head.section().voids()).isEmpty();
    }

    @Test
    void the_bearing_of_the_soffit_ends_at_2_when_the_bed_is_said_to_be_fixed() {
        String text = Bench.resource("/reference-cornice.yaml");
        Bench carried = Bench.sound(text.replace("name: bed,", "name: bed, fixed: case,"));
        double end = carried.standing("soffit").bearing().stream()
                .map(Bearing::to)
                .mapToDouble(Point::x)
                .max()
                .orElseThrow();
        assertThat(end).as("worked example E").isCloseTo(2.0, NEAR);
        assertThat(carried.notices("support-that-only-hangs"))
                .noneMatch(notice -> notice.piece().filter("soffit"::equals).isPresent());
    }

    @Test
    void what_lies_on_the_bed_in_a_weighs_3_211_a_foot_with_its_resultant_at_3_345() {
        Bench cornice = Bench.sound(Bench.resource("/reference-cornice.yaml"));
        double area = 0;
        double moment = 0;
        for (String name : List.of("soffit", "fascia", "block A", "block B", "wedge", "crown", "cap")) {
            Outline outline = cornice.piece(name).outline();
            area += outline.area();
            moment += outline.area() * outline.centroid().x();
        }
        assertThat(area).as("worked example E").isCloseTo(15.753, NEAR);
        assertThat(moment / area).isCloseTo(3.345, NEAR);
        assertThat(area * 29.35 / 144).isCloseTo(3.211, NEAR);
    }
}

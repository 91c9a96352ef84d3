package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.view.Drawn;
import buildup.engine.look.view.RandomScene;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every light on every section. */
class ShadowLawsTest {
    private static final int SECTIONS = Integer.getInteger("buildup.sections", 100);

    /** Without floor and ceiling: lamps hang where they please. */
    private final Section cornice = Bench.sound(
                    Bench.resource("/reference-cornice.yaml").replace("floor: -84, ceiling: 12, projection: 8, ", ""))
            .section();

    @Test
    void lit_shade_and_cast_together_are_each_member_s_length() {
        for (int angle = 1; angle < 90; angle += 4) {
            coversEveryMember(cornice, Shone.at(cornice, angle), "reference cornice, angle " + angle);
        }
    }

    @Test
    void they_are_so_on_a_hundred_random_sections_and_shadows_are_just_what_is_not_lit() {
        for (long seed = 0; seed < 100; seed++) {
            Section section =
                    Drawn.section(false, new RandomScene(seed).bodies().toArray(Outline[]::new));
            coversEveryMember(section, Shone.at(section, 1 + seed % 88), "seed " + seed);
            coversEveryMember(section, Shone.lamp(section, 60, 40 - seed, 3), "seed " + seed + ", lamp");
        }
    }

    private static void coversEveryMember(Section section, Shone light, String where) {
        List<Member> members = section.members();
        for (int i = 0; i < members.size(); i++) {
            int member = i;
            double bands = light.lighting().bands().stream()
                    .filter(band -> band.member() == member)
                    .mapToDouble(band -> band.segment().length())
                    .sum();
            double dark = light.lighting().bands().stream()
                    .filter(band -> band.member() == member && band.lit() != Band.Lit.LIT)
                    .mapToDouble(band -> band.segment().length())
                    .sum();
            double shadows = light.lighting().shadows().stream()
                    .filter(shadow -> shadow.member() == member)
                    .mapToDouble(Shadow::dark)
                    .sum();
            assertThat(bands)
                    .as(where + ", member " + i)
                    .isCloseTo(members.get(i).length(), within(1e-5));
            assertThat(shadows).as(where + ", member " + i).isCloseTo(dark, within(1e-9));
        }
    }

    @Test
    void a_member_asked_alone_has_the_shadows_that_it_has_among_all() {
        Lights asked = Lights.asked(cornice, new Composer.Known());
        for (int angle = 5; angle < 90; angle += 20) {
            Light light = new Light.Distant("light", angle, 0, Optional.empty());
            List<Shadow> all = Shone.at(cornice, angle).lighting().shadows();
            for (int i = 0; i < cornice.members().size(); i++) {
                int number = i;
                Member member = cornice.members().get(i);
                assertThat(asked.shadows(light, one -> one == member, true))
                        .as("angle %s, member %s", angle, i)
                        .isEqualTo(all.stream()
                                .filter(shadow -> shadow.member() == number)
                                .toList());
            }
        }
        assertThat(asked.shadows(new Light.Distant("under the floor", -10, 0, Optional.empty()), any -> true, true))
                .as("a light that cannot shine")
                .isEmpty();
    }

    @Test
    void a_cast_shadow_names_a_caster_that_stands_on_the_ray_by_its_edge() {
        for (int angle = 2; angle < 90; angle += 3) {
            castersStandOnTheRay(cornice, angle, "reference cornice");
        }
    }

    @Tag("sampled")
    @Test
    void casters_stand_so_on_random_sections_whose_pieces_do_not_overlap() {
        int sound = 0;
        for (long seed = 0; seed < SECTIONS; seed++) {
            Section section =
                    Drawn.section(false, new RandomScene(seed).bodies().toArray(Outline[]::new));
            if (section.overlaps().isEmpty()) {
                sound++;
                castersStandOnTheRay(section, 3 + (int) seed * 7 % 84, "seed " + seed);
            }
        }
        assertThat(sound).isGreaterThan(SECTIONS / 3);
    }

    private static void castersStandOnTheRay(Section section, int angle, String where) {
        for (Shadow shadow : Shone.at(section, angle).lighting().shadows()) {
            String which = where + ", angle " + angle + ", " + shadow;
            boolean cast = shadow.kind() == Band.Lit.CAST;
            assertThat(shadow.caster().isPresent()).as(which).isEqualTo(cast);
            assertThat(shadow.overhang().isPresent()).as(which).isEqualTo(cast);
            if (cast && shadow.depth().isPresent()) {
                // along the ray: depth over overhang is its slope
                assertThat(shadow.depth().getAsDouble())
                        .as(which)
                        .isCloseTo(shadow.overhang().getAsDouble() * Math.tan(Math.toRadians(angle)), within(1e-5));
            }
        }
    }

    @Test
    void a_higher_light_never_darkens_less_of_an_upright_face_under_a_shelf() {
        Section shelf = Drawn.section(
                false, Outline.rectangle(new Box(-1, -10, 0, 0)), Outline.rectangle(new Box(-1, 0, 3, 0.75)));
        double before = 0;
        for (int angle = 1; angle < 90; angle++) {
            double dark = Shone.at(shelf, angle).dark("p0", "face");
            assertThat(dark).isCloseTo(Math.min(10, 3 * Math.tan(Math.toRadians(angle))), within(1e-6));
            assertThat(dark).isGreaterThanOrEqualTo(before - 1e-9);
            before = dark;
        }
    }

    @Test
    void more_azimuth_off_square_makes_the_shadow_deeper_from_either_hand_alike() {
        double before = 0;
        for (int azimuth = 0; azimuth < 85; azimuth += 7) {
            double left = Shone.distant(cornice, 30, azimuth).dark("frieze", "face");
            double right = Shone.distant(cornice, 30, -azimuth).dark("frieze", "face");
            assertThat(left).isEqualTo(right).isGreaterThanOrEqualTo(before);
            before = left;
        }
    }

    @Test
    void a_lamp_carried_off_along_a_direction_comes_to_light_as_parallel_rays_do() {
        for (int angle : new int[] {10, 30, 45, 60, 80}) {
            Shone parallel = Shone.at(cornice, angle);
            double before = worst(parallel, lamp(angle, 1e2));
            for (double far : new double[] {1e3, 1e4, 1e5}) {
                double worst = worst(parallel, lamp(angle, far));
                assertThat(worst).as("%s degrees, %s in", angle, far).isLessThanOrEqualTo(before / 5 + 1e-9);
                before = worst;
            }
            assertThat(worst(parallel, lamp(angle, 1e6)))
                    .as("%s degrees", angle)
                    .isLessThan(2e-4);
        }
    }

    private Shone lamp(int angle, double far) {
        return Shone.lamp(cornice, far * Math.cos(Math.toRadians(angle)), far * Math.sin(Math.toRadians(angle)), 0);
    }

    private double worst(Shone a, Shone b) {
        double worst = 0;
        for (Member member : cornice.members()) {
            String piece = cornice.name(member.body());
            worst = Math.max(worst, Math.abs(a.dark(piece, member.member()) - b.dark(piece, member.member())));
        }
        return worst;
    }
}

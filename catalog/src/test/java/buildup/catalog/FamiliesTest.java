package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.entry.Sizes;
import buildup.catalog.family.Family;
import buildup.profiles.Profile;
import buildup.profiles.member.Sprung;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Stroke;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FamiliesTest {

    private static final double EXACT = 1e-9;

    private final Asked asked = Asked.builtIn();

    private static Stream<Family> families() {
        return Asked.BUILT_IN.families().stream();
    }

    private static Stream<Family> solid() {
        return families().filter(family -> family.spring().isEmpty());
    }

    private static Stream<Family> sprung() {
        return families().filter(family -> family.spring().isPresent());
    }

    private List<Profile> usual(Family family) {
        return family.usual().stream()
                .map(sizes -> asked.profile(family.name() + " " + Sizes.call(sizes, LengthUnit.INCH)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("families")
    void every_family_draws_a_sound_outline_in_every_usual_size(Family family) {
        assertThat(family.usual()).isNotEmpty();
        for (Profile profile : usual(family)) {
            assertThat(Soundness.faults(profile.outline().strokes()))
                    .as(profile.name())
                    .isEmpty();
            assertThat(profile.outline().box().back()).isEqualTo(0, within(EXACT));
            assertThat(profile.outline().box().bottom()).isEqualTo(0, within(EXACT));
            assertThat(profile.kind()).isEqualTo(family.kind());
        }
        assertThat(asked.notices()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("solid")
    void a_solid_profile_fills_the_box_of_its_size(Family family) {
        List<Profile> usual = usual(family);
        int level = List.of("thickness", "projection").contains(family.sizes().get(0)) ? 0 : 1;
        for (int i = 0; i < usual.size(); i++) {
            Box box = usual.get(i).outline().box();
            assertThat(box.width()).isEqualTo(family.usual().get(i).get(level).toInches(), within(EXACT));
            assertThat(box.height())
                    .isEqualTo(family.usual().get(i).get(1 - level).toInches(), within(EXACT));
        }
    }

    /** drop = w cos S + b sin S, projection = w sin S + a cos S; plane trigonometry of the stick's corners. */
    @ParameterizedTest
    @MethodSource("sprung")
    void a_sprung_profile_drops_and_projects_as_its_spring_says(Family family) {
        for (Profile profile : usual(family)) {
            Sprung stick = ((Profile.Spring) profile.stick()).sprung();
            double s = Math.toRadians(stick.spring());
            Box box = profile.outline().box();
            assertThat(box.height())
                    .isEqualTo(stick.width() * Math.cos(s) + stick.ceilingEdge() * Math.sin(s), within(EXACT));
            assertThat(box.width())
                    .isEqualTo(stick.width() * Math.sin(s) + stick.wallEdge() * Math.cos(s), within(EXACT));
        }
    }

    @ParameterizedTest
    @MethodSource("sprung")
    void the_flats_of_a_sprung_profile_are_upright_and_level(Family family) {
        double hundredth = Math.toRadians(0.01);
        for (Profile profile : usual(family)) {
            Line wall = only(profile.outline(), "wall-flat");
            Line ceiling = only(profile.outline(), "ceiling-flat");
            assertThat(wall.direction(0).angle()).isEqualTo(-Math.PI / 2, within(hundredth));
            assertThat(Math.abs(ceiling.direction(0).angle())).isEqualTo(Math.PI, within(hundredth));
            assertThat(wall.from().x()).isEqualTo(0, within(EXACT));
            assertThat(ceiling.from().y()).isEqualTo(profile.outline().box().top(), within(EXACT));
            assertThat(wall.length()).isGreaterThan(0.25);
            assertThat(ceiling.length()).isGreaterThan(0.25);
        }
    }

    @Test
    void the_trade_finds_its_kinds() {
        assertThat(families().map(Family::kind).distinct())
                .contains(
                        "quarter round",
                        "half round",
                        "bead",
                        "astragal",
                        "cove",
                        "scotia",
                        "bed",
                        "crown",
                        "cap",
                        "drip",
                        "backband",
                        "casing",
                        "base",
                        "base cap",
                        "base shoe",
                        "stop",
                        "panel mold",
                        "chair rail",
                        "picture rail",
                        "nosing",
                        "stool",
                        "apron",
                        "brick mold");
        assertThat(families()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(families()).allSatisfy(family -> assertThat(family.about()).isNotBlank());
    }

    @Test
    void curved_members_are_arcs_and_not_a_rectangle() {
        assertThat(families().filter(family -> !family.name().startsWith("plain-crown")))
                .allSatisfy(family -> assertThat(usual(family).get(0).outline().strokes())
                        .extracting(Stroke::segment)
                        .hasAtLeastOneElementOfType(Arc.class));
    }

    /** Worked example A of the reference stack: bottom 1/4, a cove of radius 1, a fillet of 3/8. */
    @Test
    void the_cove_bed_is_a_bottom_a_cove_and_a_fillet() {
        Outline bed = asked.profile("cove-bed 1-1/4 x 1-3/8").outline();
        assertThat(bed.strokes())
                .containsExactly(
                        new Stroke(new Line(new Point(0, 0), new Point(0.25, 0)), "bottom"),
                        new Stroke(new Arc(new Point(0.25, 0), new Point(1.25, 1), new Point(1.25, 0), false), "cove"),
                        new Stroke(new Line(new Point(1.25, 1), new Point(1.25, 1.375)), "fillet"),
                        new Stroke(new Line(new Point(1.25, 1.375), new Point(0, 1.375)), "top"),
                        new Stroke(new Line(new Point(0, 1.375), new Point(0, 0)), "back"));
        assertThat(bed.area()).isEqualTo(1.25 * 1.375 - Math.PI / 4, within(EXACT));
    }

    /** Worked example A: with a = b = 1/4 a face of 3-1/4 drops 2.7150 and projects 2.1979. */
    @Test
    void a_plain_crown_of_three_and_a_quarter_is_asked_for_by_its_width() {
        Profile crown = asked.profile("plain-crown 3-1/4");
        assertThat(crown.name()).isEqualTo("plain-crown 3-1/4");
        assertThat(crown.thickness()).isEqualTo(9.0 / 16);
        assertThat(crown.outline().box().height()).isEqualTo(2.7150, within(5e-5));
        assertThat(crown.outline().box().width()).isEqualTo(2.1979, within(5e-5));
    }

    /** Worked example A, the check profile without square edges: drop 2.5610, projection 2.0009. */
    @Test
    void a_crown_without_square_edges_is_a_parallelogram_cut_by_wall_and_ceiling() {
        Outline crown = Asked.with("""
                        profiles:
                          - { name: check-crown, kind: crown, sprung: { spring: 38, wall-edge: 0, ceiling-edge: 0 } }
                        """).profile("check-crown 9/16 x 3-1/4").outline();
        assertThat(crown.strokes()).hasSize(4);
        assertThat(crown.box().height()).isEqualTo(2.5610, within(5e-5));
        assertThat(crown.box().width()).isEqualTo(2.0009, within(5e-5));
        assertThat(only(crown, "wall-flat").from().y()).isEqualTo(0.9137, within(5e-5));
        assertThat(only(crown, "ceiling-flat").to().x()).isEqualTo(5.5371 - 4.25, within(5e-5));
    }

    /** reference/spring-38-45.csv: the trade's drop and projection by face width. */
    @Test
    void without_square_edges_drop_and_projection_are_those_of_the_tables() {
        Asked own = Asked.with("""
                profiles:
                  - { name: s38, sprung: { spring: 38, wall-edge: 0, ceiling-edge: 0 } }
                  - { name: s45, sprung: { spring: 45, wall-edge: 0, ceiling-edge: 0 } }
                """);
        for (String[] row : Reference.rows("spring-38-45.csv")) {
            Box at38 = own.profile("s38 9/16 x " + row[0]).outline().box();
            Box at45 = own.profile("s45 9/16 x " + row[0]).outline().box();
            assertThat(at38.height()).isEqualTo(Double.parseDouble(row[1]), within(5.1e-5));
            assertThat(at38.width()).isEqualTo(Double.parseDouble(row[2]), within(5.1e-5));
            assertThat(at45.height()).isEqualTo(Double.parseDouble(row[3]), within(5.1e-5));
            assertThat(at45.width()).isEqualTo(Double.parseDouble(row[3]), within(5.1e-5));
        }
    }

    /** Worked example D: backband top 0 to 1.625, the front arris eased 1/8, so flat to 1.5. */
    @Test
    void a_backband_has_a_shoulder_and_a_flat_top() {
        Profile band = asked.profile("backband-shoulder");
        assertThat(band.name()).isEqualTo("backband-shoulder 1-5/8 x 1-1/2");
        Line shoulder = only(band.outline(), "shoulder");
        assertThat(shoulder.from().y()).isEqualTo(shoulder.to().y()).isEqualTo(0.375);
        assertThat(shoulder.length()).isEqualTo(0.75);
        assertThat(band.outline().box().face()).isEqualTo(1.625);
        assertThat(only(band.outline(), "top").from().x()).isEqualTo(1.5);
    }

    @Test
    void a_bead_is_round_and_stands_out_to_its_size() {
        Segment nose = asked.profile("bead-strip 3/4 x 1-1/4").outline().strokes().stream()
                .filter(stroke -> stroke.member().equals("bead"))
                .findFirst()
                .orElseThrow()
                .segment();
        assertThat(((Arc) nose).radius()).isEqualTo(0.375, within(EXACT));
        assertThat(nose.box().face()).isEqualTo(1.25, within(EXACT));
    }

    private static Line only(Outline outline, String member) {
        assertThat(outline.straights(member)).as(member).hasSize(1);
        return outline.straights(member).get(0);
    }
}

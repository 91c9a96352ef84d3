package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.backing.Backing;
import buildup.engine.section.compose.ClosedVoid;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Step;
import buildup.engine.section.compose.Totals;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked example A of reference/worked-examples.md: this project's own arithmetic. */
class ReferenceCorniceTest {
    private static final Offset<Double> NEAR = within(0.002);

    /** Height of the crown's top over the datum: 7.5 + 3.25 cos 38. */
    private static final double T = 10.0610;

    private static final String TEXT = Bench.resource("/reference-cornice.yaml");
    private final Bench cornice = Bench.sound(TEXT);

    private static Bench against(String wall) {
        return Bench.sound(TEXT.replace("wall: { solid: no }", wall));
    }

    @Test
    void every_piece_sits_where_the_example_draws_it() {
        sits("case", -14, -84, 0, 6.25);
        sits("bead", 0, 0, 1, 0.75);
        sits("frieze", 0, 0.75, 0.75, 6.25);
        sits("bed", 0.75, 4.875, 2, 6.25);
        sits("soffit", 0, 6.25, 3.5, 7);
        sits("fascia", 3.5, 6, 4.25, 8);
        sits("block A", 2.25, 7, 3.5, 8);
        sits("block B", 2.75, 8, 4.25, T);
        sits("wedge", 4.25, T - 1.4443, 4.25 + 1.1284, T);
        sits("crown", 4.25, 7.5, 6.2509, T);
        sits("cap", 0, T, 6.6259, T + 0.75);
    }

    private void sits(String name, double back, double bottom, double face, double top) {
        Box box = cornice.box(name);
        assertThat(List.of(box.back(), box.bottom(), box.face(), box.top()))
                .as(name)
                .usingElementComparator((a, b) -> Math.abs(a - b) <= 0.002 ? 0 : Double.compare(a, b))
                .containsExactly(back, bottom, face, top);
    }

    @Test
    void the_totals_leave_the_case_out_and_the_area_is_the_sum_of_the_parts() {
        Totals totals = cornice.section().totals();
        assertThat(totals.area()).isCloseTo(21.5613, NEAR);
        double sum = cornice.placed().stream()
                .filter(one -> !one.name().equals("case"))
                .mapToDouble(one -> one.outline().area())
                .sum();
        assertThat(totals.area()).isCloseTo(sum, within(1e-9));
        assertThat(totals.height()).isCloseTo(10.8110, NEAR);
        assertThat(totals.projection()).isCloseTo(6.6259, NEAR);
        assertThat(totals.bottom()).isEqualTo(0);
        assertThat(totals.top()).isCloseTo(10.8110, NEAR);
        assertThat(totals.trimHeight()).isCloseTo(10.8110, NEAR);
        assertThat(totals.trimProjection()).isCloseTo(6.6259, NEAR);
        // 21.5613 sq in of wood at 29.35 lb a cubic foot, over 144
        assertThat(totals.weightPerFoot()).isCloseTo(21.5613 * 29.35 / 144, NEAR);
        assertThat(cornice.section().ceilingLeft()).hasValueCloseTo(12 - 10.8110, NEAR);
        assertThat(cornice.section().projectionLeft()).hasValueCloseTo(8 - 6.6259, NEAR);
        assertThat(cornice.section().parts()).isEqualTo(1);
        assertThat(cornice.section().overlaps()).isEmpty();
    }

    @Test
    void the_union_is_one_polygon_with_the_case() {
        assertThat(cornice.section().skin())
                .extracting(part -> part.outer().touches(0))
                .contains(true);
        assertThat(cornice.section().skin().stream().filter(part -> part.outer().touches(1)))
                .hasSize(1);
    }

    @Test
    void one_void_lies_behind_the_crown_closed_by_wood_alone() {
        List<ClosedVoid> voids = cornice.section().voids();
        assertThat(voids).hasSize(1);
        assertThat(voids.get(0).area()).isCloseTo(0.2452, NEAR);
        assertThat(voids.get(0).closedBy()).isEmpty();
        assertThat(cornice.placed())
                .noneMatch(one -> one.outline().holds(voids.get(0).at()));
    }

    @Test
    void a_solid_wall_closes_a_second_void_behind_the_blocks() {
        List<ClosedVoid> voids = against("wall: { solid: yes }").section().voids();
        assertThat(voids).extracting(ClosedVoid::closedBy).containsExactlyInAnyOrder(List.of(), List.of("wall"));
        assertThat(voids)
                .filteredOn(hollow -> hollow.closedBy().equals(List.of("wall")))
                .singleElement()
                .satisfies(hollow -> assertThat(hollow.area()).isCloseTo(7.9178, NEAR));
    }

    @Test
    void a_solid_wall_takes_the_cap_s_back_and_leaves_the_walk_as_it_is() {
        Bench solid = against("wall: { solid: yes }");
        assertThat(solid.walk()).isEqualTo(cornice.walk());
        assertThat(solid.reveals()).isEqualTo(cornice.reveals());
        assertThat(solid.contacts()).contains("wall backs cap 0.750", "wall backs soffit 0.750");
        assertThat(solid.section().overlaps())
                .as("case and wall stood there before")
                .isEmpty();
    }

    @Test
    void the_running_boxes_grow_as_the_example_lists_them() {
        List<String> rows = new ArrayList<>();
        for (Step step : cornice.section().steps()) {
            rows.add(cornice.name(step.body()) + " " + Bench.three(step.height()) + " " + Bench.three(step.projection())
                    + " " + Bench.three(step.top()));
        }
        assertThat(rows)
                .containsExactly(
                        "bead 0.750 1.000 0.750",
                        "frieze 6.250 1.000 6.250",
                        "bed 6.250 2.000 6.250",
                        "soffit 7.000 3.500 7.000",
                        "fascia 8.000 4.250 8.000",
                        "block A 8.000 4.250 8.000",
                        "block B 10.061 4.250 10.061",
                        "wedge 10.061 5.378 10.061",
                        "crown 10.061 6.251 10.061",
                        "cap 10.811 6.626 10.811");
    }

    @Test
    void the_pieces_touch_in_just_the_eighteen_places_of_the_example() {
        assertThat(cornice.contacts())
                .containsExactlyInAnyOrder(
                        "bead carries frieze 0.750",
                        "frieze backs bed 1.375",
                        "frieze carries soffit 0.750",
                        "bed carries soffit 1.250",
                        "soffit backs fascia 0.750",
                        "soffit carries block A 1.250",
                        "block A backs fascia 1.000",
                        "block A carries block B 0.750",
                        "fascia carries block B 0.750",
                        "fascia backs crown 0.500",
                        "block B backs crown 0.414",
                        "block B backs wedge 1.444",
                        "block B carries cap 1.500",
                        "crown carries cap 0.714",
                        "wedge carries cap 1.128",
                        "case backs bead 0.750",
                        "case backs frieze 5.500",
                        "case meets soffit 0.000");
    }

    @Test
    void the_walk_goes_over_fifteen_members() {
        assertThat(cornice.walk())
                .containsExactly(
                        "bead bottom 1.000",
                        "bead face 0.750",
                        "bead top 0.250",
                        "frieze face 4.125",
                        "bed bottom 0.250",
                        "bed cove 1.571",
                        "bed fillet 0.375",
                        "soffit bottom 1.500",
                        "fascia back 0.250",
                        "fascia bottom 0.750",
                        "fascia face 1.500",
                        "crown face 3.250",
                        "cap bottom 0.375",
                        "cap face 0.750",
                        "cap top 6.626");
    }

    @Test
    void steps_along_the_walk_stand_on_the_first_row_of_each_piece() {
        Map<Integer, Double> steps = new TreeMap<>();
        List<Member> members = cornice.section().members();
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).step().isPresent()) {
                steps.put(i, members.get(i).step().getAsDouble());
            }
        }
        assertThat(steps.keySet()).containsExactly(3, 4, 7, 8, 11, 12);
        near(List.copyOf(steps.values()), -0.25, 1.25, 1.5, 0.75, 2.0009, 0.375);
        near(cornice.section().reveals().stream().map(Reveal::step).toList(), -0.25, 1.25, 1.5, 0.75, 2.0009, 0.375);
    }

    private static void near(List<Double> actual, double... expected) {
        assertThat(actual.stream().mapToDouble(Double::doubleValue).toArray()).containsExactly(expected, NEAR);
    }

    @Test
    void six_reveals_stand_at_the_six_joints() {
        assertThat(cornice.reveals())
                .containsExactly(
                        "bead over frieze 0.250 level",
                        "frieze over bed 4.125 upright",
                        "soffit over bed 1.500 level",
                        "fascia over soffit 0.250 upright",
                        "fascia over crown 1.500 upright",
                        "cap over crown 0.375 level");
        assertThat(cornice.section().reveals().get(0).at()).isEqualTo(new Point(0.75, 0.75));
        assertThat(cornice.section().reveals().get(0).to()).isEqualTo(new Point(1, 0.75));
    }

    @Test
    void a_member_projects_as_far_as_its_greatest_x() {
        assertThat(cornice.section().members().get(5).projection()).as("cove").isCloseTo(2, NEAR);
        assertThat(cornice.section().members().get(11).projection()).as("crown").isCloseTo(6.2509, NEAR);
    }

    @Test
    void every_piece_of_trim_has_something_behind_it_to_nail_into() {
        Map<String, List<String>> behind = new TreeMap<>();
        for (Backing backing : cornice.backings()) {
            behind.put(
                    cornice.name(backing.body()),
                    backing.stretches().stream()
                            .map(stretch -> cornice.name(stretch.by()))
                            .distinct()
                            .sorted()
                            .toList());
        }
        assertThat(behind)
                .containsOnlyKeys("bead", "frieze", "bed", "fascia", "crown", "cap")
                .containsEntry("bead", List.of("case"))
                .containsEntry("frieze", List.of("case"))
                .containsEntry("fascia", List.of("block A", "block B", "soffit"))
                .containsEntry("crown", List.of("block B", "wedge"))
                .containsEntry("cap", List.of("block A", "block B", "wedge"));
        assertThat(behind.get("bed")).contains("case", "soffit");
        assertThat(cornice.notices("no-backing")).isEmpty();
    }

    @Test
    void the_bed_only_hangs_so_the_soffit_counts_on_the_frieze_alone() {
        assertThat(cornice.standing("bead").fixed()).isTrue();
        assertThat(cornice.standing("frieze").fixed()).isTrue();
        assertThat(cornice.standing("bed").grounded()).isFalse();
        assertThat(cornice.standing("soffit").bearing()).singleElement().satisfies(bearing -> {
            assertThat(cornice.name(bearing.on())).isEqualTo("frieze");
            assertThat(bearing.width()).isCloseTo(0.75, NEAR);
            assertThat(bearing.to()).isEqualTo(new Point(0.75, 6.25));
        });
        assertThat(cornice.standing("cap").bearing())
                .extracting(bearing -> cornice.name(bearing.on()))
                .containsExactly("block B");
    }

    @Test
    void nothing_about_it_is_worse_than_a_note() {
        assertThat(cornice.notices()).allMatch(notice -> notice.level() == Level.NOTE);
        assertThat(cornice.codes())
                .containsOnly("counts-as-fixed", "hangs-on-its-fastenings", "support-that-only-hangs");
    }

    @Test
    void the_crown_end_for_end_exchanges_drop_and_projection() {
        Box box = Bench.loose("name: crown, profile: check-crown 9/16 x 3-1/4, spring: 52, back: wall, bottom: datum")
                .box("crown");
        assertThat(box.height()).isCloseTo(2.0009, NEAR);
        assertThat(box.width()).isCloseTo(2.5610, NEAR);
    }

    @Test
    void square_edges_of_a_quarter_lower_and_push_out_the_crown() {
        Box box = Bench.loose(
                        "name: crown, profile: check-crown-edged 9/16 x 3-1/4, spring: 38, back: wall, bottom: datum")
                .box("crown");
        assertThat(box.height()).isCloseTo(2.7150, NEAR);
        assertThat(box.width()).isCloseTo(2.1979, NEAR);
    }
}

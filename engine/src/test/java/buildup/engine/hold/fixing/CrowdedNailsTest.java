package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.nail.Check;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Nails that want the same place, points on the far face, and cures that are none. */
class CrowdedNailsTest {
    private static final String ROOM = "{ floor: -80, ceiling: 24, wall: { covering: 1/2 } }";
    private static final List<String> SHELF = List.of(
            "name: panel, profile: board 3/4 x 5-1/2, back: wall + 3/8, top: datum",
            "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum",
            "name: nailer, kind: nailer, section: [out 1-1/2, up 1-1/2], back: wall, bottom: frieze.top",
            "name: soffit, profile: board 3/4 x 5, lay: flat, back: wall, bottom: nailer.top",
            "name: cap, profile: board 3/4 x 7, lay: flat, back: wall, bottom: soffit.top");
    private static final String ACROSS = "name: across, piece: nailer, use: 15 ga x 2-1/2, at: { up: 6-1/4 }";
    private static final String DOWN = "name: down, piece: soffit, use: 16 ga x 2, at: { out: 3/4 }";

    private static List<String> crossing(String... rows) {
        return Driven.in(ROOM, SHELF, rows).said().stream()
                .filter(said -> said.contains("nails-that-cross"))
                .map(said -> said.replaceFirst("^PROBLEM nails-that-cross \\S+ \\d+ ", ""))
                .toList();
    }

    @Test
    void two_rows_that_cross_are_told_where_with_a_start_at_which_they_do_not() {
        assertThat(crossing(ACROSS, DOWN))
                .containsExactly("'across' (15 ga x 2-1/2) and 'down' (16 ga x 2) cross at 3/4 out, 6-1/4 up, 0 along"
                        + " the run. | Give 'down' 'first: 8'.");
        assertThat(crossing(ACROSS, DOWN + ", first: 8")).isEmpty();
    }

    @Test
    void rows_of_other_spacings_meet_farther_along() {
        assertThat(crossing(ACROSS + ", spacing: 16, first: 4", DOWN + ", spacing: 12"))
                .singleElement()
                .asString()
                .contains("36 along the run");
    }

    @Test
    void rows_that_never_meet_along_the_run_do_not_cross() {
        assertThat(crossing(ACROSS + ", spacing: 16, first: 4", DOWN + ", spacing: 16"))
                .isEmpty();
        assertThat(crossing(ACROSS, DOWN.replace("out: 3/4", "out: 2-1/4")))
                .as("clear in the section")
                .isEmpty();
    }

    @Test
    void two_heads_in_one_place_are_told() {
        assertThat(crossing(DOWN, DOWN.replace("down", "again").replace("16 ga", "15 ga")))
                .singleElement()
                .asString()
                .startsWith("'down' (16 ga x 2) and 'again' (15 ga x 2) share a place at 3/4 out, 7-3/4 up, 0 along");
    }

    @Test
    void a_first_past_its_spacing_or_before_the_run_is_refused() {
        for (String first : List.of("-1", "17")) {
            assertThat(Driven.in(ROOM, SHELF, ACROSS + ", first: " + first).said())
                    .anyMatch(said -> said.startsWith("REFUSAL not-a-size") && said.contains("along the run"));
        }
    }

    private static final String FLUSH = "name: flush, piece: cap, use: screw 8 x 1-1/2, at: { out: 2-1/2 }";

    @Test
    void a_point_on_the_far_face_is_told_and_does_not_hold() {
        Driven driven = Driven.in(ROOM, SHELF, FLUSH);
        assertThat(driven.said())
                .anyMatch(said -> said.startsWith("PROBLEM nail-at-the-far-face cap")
                        && said.contains("ends 0 from the bottom of 'soffit'. Wants 1/16"));
        assertThat(driven.nail(1).holds()).isFalse();
        assertThat(driven.nail(1).check(Check.Rule.POINT).orElseThrow().has()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_point_at_a_joint_between_two_pieces_is_inside_the_wood() {
        Driven driven = Driven.in(ROOM, SHELF, "piece: cap, use: screw 8 x 1-1/2, at: { out: 1 }");
        assertThat(driven.nail(1).check(Check.Rule.POINT).orElseThrow().met()).isTrue();
        assertThat(driven.said()).noneMatch(said -> said.contains("nail-at-the-far-face"));
    }

    @Test
    void no_pin_is_proposed_in_place_of_a_screw() {
        assertThat(Driven.in(ROOM, SHELF, FLUSH).said()).noneMatch(said -> said.contains("23 ga"));
    }

    @Test
    void wood_beside_a_nail_that_nobody_asks_for_has_no_figure() {
        Driven driven = Driven.in(
                "{ wall: { solid: yes } }",
                List.of("name: rail, profile: board 3/4 x 24, back: wall, bottom: 0"),
                "piece: rail, use: 15 ga x 2, at: { up: 12 }");
        assertThat(driven.nail(1).edge()).isEmpty();
        assertThat(driven.nail(1).holds()).isTrue();
        assertThat(driven.said()).isEmpty();
    }

    @Test
    void a_cure_in_another_fastener_never_holds_less() {
        Random random = new Random(11);
        int cured = 0;
        for (int i = 0; i < 60; i++) {
            double thick = 1 + Math.rint(8 * random.nextDouble()) / 8;
            List<String> pieces = List.of(
                    "name: block, kind: nailer, section: [out 4, up 3], back: 0, bottom: 0",
                    "name: face, section: [out " + thick + ", up 3], back: block.face, bottom: 0");
            String use = List.of("18 ga x 2", "21 ga x 1", "screw 6 x 2", "18 ga x 1-3/4", "16 ga x 2")
                    .get(random.nextInt(5));
            Driven driven =
                    Driven.in("{ wall: { solid: no } }", pieces, "piece: face, use: " + use + ", at: { up: 1-1/2 }");
            List<String> other = new ArrayList<>(driven.said());
            other.removeIf(said -> !said.matches(".*\\| Use [a-z0-9 ]+ (x|finish|casing).*"));
            if (!other.isEmpty()) {
                String cure = other.get(0).replaceFirst(".*\\| Use (.*)\\.$", "$1");
                Driven cureDriven = Driven.in(
                        "{ wall: { solid: no } }", pieces, "piece: face, use: " + cure + ", at: { up: 1-1/2 }");
                assertThat(cureDriven.nail(1).allowable())
                        .as("%s for %s", cure, use)
                        .isGreaterThanOrEqualTo(driven.nail(1).allowable());
                assertThat(cureDriven.nail(1).sound())
                        .as("%s for %s", cure, use)
                        .isTrue();
                cured++;
            }
        }
        assertThat(cured).isGreaterThan(3);
    }

    private static List<String> upper(boolean wedge, String... rows) {
        return Driven.in(WorkedNailsTest.ROOM, WorkedNailsTest.cornice(wedge), rows).said().stream()
                .filter(said -> said.contains("upper-edge-not-held"))
                .toList();
    }

    @Test
    void a_crown_with_nothing_behind_its_upper_edge_is_told_with_the_block_that_would_serve() {
        // A of the worked examples: the wedge 1/8 clear of the back has legs 1.4443 down and 1.1284 out, spring 38
        assertThat(upper(false))
                .singleElement()
                .asString()
                .startsWith("PROBLEM upper-edge-not-held crown")
                .endsWith("Nothing is behind the upper edge of 'crown'. | Add a block behind it, 1-7/16 high x 1-1/8"
                        + " wide at the top, its face beveled 38.0° off plumb.");
        assertThat(upper(true)).isEmpty();
    }

    @Test
    void a_crown_nailed_at_its_foot_alone_is_told_to_be_nailed_above_too() {
        String foot = "piece: crown, use: 18 ga x 1-1/4, at: { up: 8 }, angle: 0";
        assertThat(upper(true, foot)).singleElement().asString().contains("no row is driven in its upper half");
        assertThat(upper(true, foot, "piece: crown, use: 18 ga x 1-1/2, at: { up: 9-1/2 }"))
                .isEmpty();
    }
}

package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The way of the weight; those of the worked examples stand in their own tests. */
class LoadPathTest {
    private static final String CASE = "name: case, kind: framing, section: [out 4, up 4], face: 0, top: 0";
    private static final String ONE = "name: one, section: [out 1, up 1], back: 2, bottom: 3";
    private static final String TWO = "name: two, section: [out 1, up 1], back: 3, bottom: 3";
    private static final Point SEAM = new Point(3, 3.5);

    private static Held held(String... pieces) {
        return Held.of(Bench.loose(pieces));
    }

    private static List<String> restsOn(Held held, String name) {
        return held.names(held.path().restsOn(held.number(name)));
    }

    private static List<String> through(Held held, String name) {
        return held.names(held.path().through(held.number(name)));
    }

    private static boolean reaches(Held held, String name) {
        return held.path().reachesGround(held.number(name));
    }

    @Test
    void a_stack_in_mid_air_reaches_nothing() {
        Held air = held(ONE, TWO, "name: lid, section: [out 2, up 1], back: 2, bottom: one.top");
        assertThat(restsOn(air, "one")).isEmpty();
        assertThat(restsOn(air, "two")).as("one backs it").containsExactly("one");
        assertThat(restsOn(air, "lid")).containsExactly("one", "two");
        assertThat(through(air, "one")).containsExactly("one", "two", "lid");
        for (String name : List.of("one", "two", "lid")) {
            assertThat(reaches(air, name)).as(name).isFalse();
        }
    }

    @Test
    void a_piece_hangs_on_what_it_is_nailed_to_before_what_backs_it() {
        Held plain = held(CASE, ONE, TWO, "name: rail, section: [out 1, up 1], back: 3, bottom: two.top");
        Held nailed = plain.nail("n", "rail", "two", new Point(3.5, 4), -90, 1, 1);
        assertThat(restsOn(nailed, "rail")).containsExactly("two");
        Held turned = held(CASE, ONE, TWO).nail("n", "one", "two", SEAM, 0, 1, 1);
        assertThat(restsOn(turned, "one")).containsExactly("two");
    }

    @Test
    void a_piece_nailed_from_behind_hangs_on_the_piece_with_the_head() {
        Held nailed = held(
                        CASE,
                        "name: shelf, section: [out 4, up 1], back: -4, bottom: 0",
                        "name: under, section: [out 1, up 1], back: -1, top: -10")
                .nail("n", "shelf", "under", new Point(-0.5, 0), -90, 1, 1);
        assertThat(restsOn(nailed, "under")).containsExactly("shelf");
        assertThat(reaches(nailed, "under")).isTrue();
    }

    @Test
    void a_piece_rests_on_what_the_document_fixes_it_to() {
        Held fixed = held(CASE, "name: rail, fixed: case, section: [out 1, up 1], back: 8, bottom: 3");
        assertThat(restsOn(fixed, "rail")).containsExactly("case");
        assertThat(reaches(fixed, "rail")).isTrue();
        Held nowhere = held(CASE, "name: rail, fixed: wall, section: [out 1, up 1], back: 8, bottom: 3");
        assertThat(restsOn(nowhere, "rail")).isEmpty();
    }

    @Test
    void a_strip_under_a_hanging_piece_is_met_last() {
        Held under = held(CASE, ONE, "name: strip, section: [out 1, up 1/4], back: 2, top: one.bottom");
        assertThat(restsOn(under, "strip"))
                .as("nothing below it, so what is above")
                .containsExactly("one");
    }

    @Test
    void pieces_that_hang_on_one_another_in_a_circle_hang_on_nothing() {
        Held circle = held(CASE, ONE, TWO, "name: block, section: [out 1, up 1], back: -2, bottom: 0")
                .nail("there", "one", "two", SEAM, 0, 1, 1)
                .nail("back", "two", "one", SEAM, 180, 1, 1);
        assertThat(restsOn(circle, "one")).containsExactly("two");
        assertThat(restsOn(circle, "two")).containsExactly("one");
        assertThat(reaches(circle, "one")).isFalse();
        assertThat(reaches(circle, "two")).isFalse();
        assertThat(through(circle, "block")).containsExactly("block");
        assertThat(through(circle, "case")).containsExactly("block");
        assertThat(through(circle, "one")).containsExactly("one");
        assertThat(circle.balance("block").weight()).isCloseTo(Held.WOOD, within(1e-9));
        assertThat(circle.limit()).isEmpty();
    }

    @Test
    void a_piece_with_one_foot_in_a_circle_and_one_on_the_ground_is_carried_by_the_ground() {
        Held circle = held(CASE, ONE, TWO, "name: side, section: [out 2, up 8], back: 0, top: 4")
                .nail("there", "one", "two", SEAM, 0, 1, 1)
                .nail("back", "two", "one", SEAM, 180, 1, 1)
                .nail("home", "side", "case", new Point(0, -1), 180, 1, 1)
                .nail("away", "side", "one", new Point(2, 3.5), 0, 1, 1);
        assertThat(restsOn(circle, "side")).containsExactly("case", "one");
        assertThat(through(circle, "case")).contains("side");
        assertThat(reaches(circle, "side")).isTrue();
    }

    @Test
    void what_lies_on_two_supports_goes_through_neither_alone() {
        Held bridge = held(
                CASE,
                "name: left, section: [out 1, up 1], back: -4, bottom: 0",
                "name: right, section: [out 1, up 1], back: -1, bottom: 0",
                "name: lintel, section: [out 4, up 1], back: -4, bottom: left.top");
        assertThat(through(bridge, "left")).containsExactly("left");
        assertThat(through(bridge, "right")).containsExactly("right");
        assertThat(through(bridge, "case")).containsExactly("left", "right", "lintel");
    }

    @Test
    void the_ceiling_is_no_ground() {
        Held hung = Held.of(Bench.in(
                "{ ceiling: 8, wall: { solid: no } }", "name: rail, section: [out 1, up 1], back: 2, top: ceiling"));
        assertThat(restsOn(hung, "rail")).containsExactly("ceiling");
        assertThat(reaches(hung, "rail")).isFalse();
    }
}
